package org.linedrop.fluid;

import java.util.List;
import java.util.function.Function;
import org.linedrop.fact.Source;

/** Water, and water with ethylene or propylene glycol from 0 to 60 % by volume. */
final class WaterFluids {
    private WaterFluids() {}

    static final String FAMILY = "water-glycol coolant";
    static final double MOST_PERCENT = 60;

    /** One row of the fits to the inhibited-glycol tables of ASHRAE, made for this library. */
    private record Row(
            double volumePercent,
            double massPercent,
            double lowC,
            List<Double> density,
            List<Double> viscosity,
            double tailSlopeK,
            List<Double> bulkGpa,
            List<Double> heat) {}

    private static final List<Row> ETHYLENE = List.of(
            new Row(
                    30,
                    32.4,
                    -10,
                    List.of(1051.78, -0.2777481, -0.002431587),
                    List.of(-9.6795718, 6.5689896, -1.8521518, 0.24209336),
                    1861.8,
                    List.of(2.78, -0.006),
                    List.of(3.588555, 0.002841124, -4.630152e-08)),
            new Row(
                    40,
                    42.5,
                    -20,
                    List.of(1066.804, -0.3073358, -0.00243288),
                    List.of(-18.246544, 14.76932, -4.410192, 0.51055446),
                    2058.2,
                    List.of(2.96, -0.008),
                    List.of(3.401007, 0.003353727, 1.486436e-09)),
            new Row(
                    50,
                    52.4,
                    -35,
                    List.of(1081.082, -0.3381546, -0.002431868),
                    List.of(-17.785299, 14.123847, -4.1283872, 0.47889564),
                    2217.0,
                    List.of(3.09, -0.0095),
                    List.of(3.203361, 0.003860728, 2.147278e-08)),
            new Row(
                    60,
                    62.2,
                    -35,
                    List.of(1094.637, -0.3698251, -0.002432508),
                    List.of(-5.1743236, 2.0520962, -0.33473432, 0.094510956),
                    2350.1,
                    List.of(3.2, -0.011),
                    List.of(2.996593, 0.004358265, 3.157762e-08)));

    private static final List<Row> PROPYLENE = List.of(
            new Row(
                    30,
                    30.6,
                    -10,
                    List.of(1036.239, -0.3433383, -0.00255441),
                    List.of(2.5040765, -4.1264192, 1.1505915, -0.017571115),
                    1833.1,
                    List.of(2.77, -0.0085),
                    List.of(3.792801, 0.002753642, -3.387916e-08)),
            new Row(
                    40,
                    40.4,
                    -15,
                    List.of(1045.12, -0.392631, -0.002571809),
                    List.of(1.6584271, -2.5870003, 0.41860677, 0.096107758),
                    1895.5,
                    List.of(2.88, -0.011),
                    List.of(3.635728, 0.003300522, -9.44073e-19)),
            new Row(
                    50,
                    50.1,
                    -25,
                    List.of(1052.704, -0.4404042, -0.002566435),
                    List.of(-0.54815045, -1.1809234, 0.2223772, 0.097875876),
                    2299.9,
                    List.of(2.93, -0.0125),
                    List.of(3.454708, 0.003857337, 2.319902e-08)),
            new Row(
                    60,
                    60.0,
                    -35,
                    List.of(1058.998, -0.4867025, -0.002539038),
                    List.of(11.061075, -12.158999, 3.6278196, -0.23891198),
                    2526.8,
                    List.of(2.92, -0.0135),
                    List.of(3.250372, 0.004414313, -3.241969e-08)));

    /** Freezing points, C, over per cent by volume: ASHRAE tables (published); the last of ethylene from its fit. */
    private static final SimpleLaws.Table FREEZING_ETHYLENE = new SimpleLaws.Table(
            List.of(0.0, 4.4, 8.9, 13.6, 18.1, 22.0, 25.8, 29.6, 33.5, 37.5, 41.5, 45.5, 49.6, 53.7, 57.8, 60.0),
            List.of(
                    0.0, -1.4, -3.2, -5.4, -7.8, -10.2, -12.7, -15.4, -18.6, -22.3, -26.4, -31.1, -36.4, -42.6, -48.3,
                    -50.9));

    private static final SimpleLaws.Table FREEZING_PROPYLENE = new SimpleLaws.Table(
            List.of(0.0, 4.8, 9.6, 14.5, 19.4, 23.4, 27.4, 31.4, 35.5, 39.6, 43.7, 47.8, 51.9, 56.0, 60.0),
            List.of(0.0, -1.6, -3.3, -5.1, -7.1, -9.1, -11.4, -14.1, -17.3, -21.1, -25.5, -30.6, -36.6, -43.3, -51.1));

    static CatalogueFluid water() {
        PropertyLaw density = new WaterLaws.KellDensity();
        return new CatalogueFluid(
                "water",
                FAMILY,
                Property.of(PropertyKind.DENSITY, density, 0, 130, Sources.KELL, Grade.A, 1, 1, "0.02 %"),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        new WaterLaws.Viscosity(),
                        -20,
                        110,
                        Sources.IAPWS_VISCOSITY,
                        Grade.A,
                        0.995,
                        1.005,
                        "0.5 % to 110 C, 0.3 % measured to 130 C"),
                Property.of(
                        PropertyKind.VAPOUR_PRESSURE,
                        new WaterLaws.SaturationPressure(1),
                        0,
                        373,
                        Sources.REGION_4,
                        Grade.A,
                        0.9998,
                        1.0002,
                        "0.02 %"),
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        new SimpleLaws.Polynomial(
                                1e9, List.of(1.9665817, 0.014753485, -0.00021301042, 8.8458171e-07, -1.5081971e-09)),
                        0,
                        130,
                        Sources.IF97_FIT,
                        Grade.A,
                        0.999,
                        1.001,
                        "0.1 %"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        new SimpleLaws.Polynomial(
                                1e3, List.of(4.2169488, -0.0024250851, 4.7615038e-05, -3.4753274e-07, 1.1298077e-09)),
                        0,
                        130,
                        Sources.IF97_FIT,
                        Grade.A,
                        0.999,
                        1.001,
                        "0.1 %"),
                Range.celsius(0, 130).hardBelow(-20, "far below freezing").freezing(0),
                List.of());
    }

    /**
     * Glycol and water.
     *
     * @param ethylene true for ethylene, false for propylene glycol
     * @param percent  glycol by volume, above 0 to 60
     * @return the coolant
     */
    static CatalogueFluid glycol(boolean ethylene, double percent) {
        if (!(percent > 0 && percent <= MOST_PERCENT)) {
            throw new UnknownFluidException(
                    "glycol is " + Text.number(percent) + " % by volume; allowed are 0 to 60 % (0 is water). Write for"
                            + " example \"ethylene glycol 50 %\"",
                    List.of("ethylene glycol 50 %", "propylene glycol 50 %"));
        }
        List<Row> rows = ethylene ? ETHYLENE : PROPYLENE;
        Mix mix = mix(rows, percent);
        double freezing = (ethylene ? FREEZING_ETHYLENE : FREEZING_PROPYLENE).at(percent);
        double lowC =
                Math.max(freezing, Math.max(mix.first().lowC(), mix.second().lowC()));
        double glycolMolarMass = ethylene ? 62.068 : 76.094;
        double mass = (1 - mix.share()) * mix.first().massPercent()
                + mix.share() * mix.second().massPercent();
        double waterMoles = (100 - mass) / 18.015;
        return build(
                (ethylene ? "ethylene" : "propylene") + " glycol " + Text.exact(percent) + " %",
                mix,
                waterMoles / (waterMoles + mass / glycolMolarMass),
                lowC,
                freezing,
                ethylene);
    }

    /** Two neighbouring rows and how far between them the mixture lies; row null stands for water. */
    private record Mix(Row first, Row second, double share, boolean thin, double percent) {}

    private static Mix mix(List<Row> rows, double percent) {
        Row thirty = rows.get(0);
        if (percent < thirty.volumePercent()) {
            Row water = new Row(0, 0, -20, List.of(), List.of(), 0, List.of(), List.of());
            return new Mix(water, thirty, percent / thirty.volumePercent(), true, percent);
        }
        int i = 0;
        while (i < rows.size() - 2 && percent >= rows.get(i + 1).volumePercent()) {
            i++;
        }
        double low = rows.get(i).volumePercent();
        double share = (percent - low) / (rows.get(i + 1).volumePercent() - low);
        if (share == 0 || share == 1) {
            Row row = rows.get(share == 0 ? i : i + 1);
            return new Mix(row, row, 0, false, percent);
        }
        return new Mix(rows.get(i), rows.get(i + 1), share, false, percent);
    }

    private static CatalogueFluid build(
            String name, Mix mix, double waterMoleFraction, double lowC, double freezingC, boolean ethylene) {
        Source source =
                mix.thin() ? Sources.GLYCOL_THIN : mix.share() == 0 ? Sources.ASHRAE : Sources.GLYCOL_INTERPOLATED;
        Grade grade = mix.thin() ? Grade.C : mix.share() == 0 ? Grade.A : Grade.B;
        double spread = mix.thin() ? 0.15 : ethylene && mix.percent() > 50 ? 0.10 + 0.008 * (mix.percent() - 50) : 0.10;
        String far = "; 100 to 125 C extrapolated";
        return new CatalogueFluid(
                name,
                FAMILY,
                Property.of(
                        PropertyKind.DENSITY,
                        blend(mix, WaterFluids::density, false),
                        lowC,
                        100,
                        source,
                        grade,
                        1,
                        1,
                        mix.thin() ? "about 1 %" : "0.12 % of the tables" + far),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        blend(mix, WaterFluids::viscosity, true),
                        lowC,
                        100,
                        source,
                        grade,
                        1 - spread,
                        1 + spread,
                        mix.thin()
                                ? "about 15 %"
                                : "2.1 % of the tables; between brands " + Text.number(100 * spread) + " %" + far),
                Property.of(
                        PropertyKind.VAPOUR_PRESSURE,
                        new WaterLaws.SaturationPressure(waterMoleFraction),
                        0,
                        125,
                        Sources.RAOULT,
                        mix.thin() ? Grade.C : Grade.B,
                        0.95,
                        1.05,
                        "0.3 % at the one boiling point found"),
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        blend(mix, WaterFluids::bulk, false),
                        0,
                        100,
                        Sources.SOUND,
                        Grade.C,
                        0.9,
                        1.1,
                        "10 %"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        blend(mix, WaterFluids::heat, false),
                        lowC,
                        100,
                        source,
                        grade,
                        1,
                        1,
                        mix.thin() ? "about 1 %" : "0.02 % of the tables" + far),
                Range.celsius(lowC, 125)
                        .hardBelow(lowC - 20, "further than 20 K below its range")
                        .freezing(freezingC),
                List.of());
    }

    private static PropertyLaw blend(Mix mix, Function<Row, PropertyLaw> law, boolean logarithmic) {
        PropertyLaw first = law.apply(mix.first());
        if (mix.share() == 0) {
            return first;
        }
        PropertyLaw second = law.apply(mix.second());
        return logarithmic
                ? new Combinations.WeightedLogSum(first, second, mix.share())
                : new Combinations.WeightedSum(first, second, mix.share());
    }

    private static PropertyLaw density(Row row) {
        return row.volumePercent() == 0 ? water().density().usual() : new SimpleLaws.Polynomial(1, row.density());
    }

    private static PropertyLaw viscosity(Row row) {
        return row.volumePercent() == 0
                ? water().viscosity().usual()
                : new WaterLaws.GlycolViscosity(row.viscosity(), row.tailSlopeK());
    }

    private static PropertyLaw bulk(Row row) {
        return row.volumePercent() == 0 ? water().bulk().usual() : new SimpleLaws.Polynomial(1e9, row.bulkGpa());
    }

    private static PropertyLaw heat(Row row) {
        return row.volumePercent() == 0 ? water().heat().usual() : new SimpleLaws.Polynomial(1e3, row.heat());
    }
}
