package org.linedrop.fluid;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Source;

/** Engine, gear, transmission, hydraulic and power-steering oils, each from its viscosity at 40 and 100 C. */
final class OilFluids {
    private OilFluids() {}

    static final String ENGINE = "engine oil (mineral/synthetic)";
    static final String GEAR = "gear oil / ATF";
    static final String HYDRAULIC = "mineral hydraulic / power-steering oil";

    private static final double LOW_ANCHOR_K = PropertyLaw.ZERO_C_K + 40;
    private static final double HIGH_ANCHOR_K = PropertyLaw.ZERO_C_K + 100;

    /**
     * An oil.
     *
     * @param name   canonical name
     * @param family compatibility word
     * @param at40   kinematic viscosity at 40 C, mm2/s
     * @param at100  at 100 C, mm2/s
     * @param rho15  density at 15 C, kg/m3
     * @param source of the viscosities
     * @param grade  how good they are
     */
    private record Oil(
            String name, String family, double at40, double at100, double rho15, Source source, Grade grade) {}

    /** Typical figures: the first five engine oils and both 90 gear oils are class B, the rest of memory class C. */
    private static final List<Oil> OILS = List.of(
            engine("0W-20", 44.0, 8.5, 845, Grade.B),
            engine("5W-30", 64.0, 11.0, 855, Grade.B),
            engine("10W-40", 96.0, 14.3, 868, Grade.B),
            engine("15W-50", 125.0, 17.4, 872, Grade.B),
            engine("20W-50", 165.0, 18.5, 887, Grade.B),
            engine("0W-30", 58.0, 11.2, 845, Grade.C),
            engine("0W-40", 77.0, 13.8, 848, Grade.C),
            engine("5W-20", 48.0, 8.4, 852, Grade.C),
            engine("5W-40", 84.0, 14.0, 856, Grade.C),
            engine("5W-50", 108.0, 17.8, 860, Grade.C),
            engine("10W-30", 70.0, 10.7, 866, Grade.C),
            engine("10W-60", 160.0, 23.5, 860, Grade.C),
            engine("15W-40", 108.0, 14.5, 876, Grade.C),
            engine("SAE 30", 93.0, 10.8, 885, Grade.C),
            engine("SAE 40", 138.0, 14.3, 890, Grade.C),
            engine("SAE 50", 210.0, 19.0, 895, Grade.C),
            new Oil("ATF", GEAR, 34.5, 7.4, 855, Sources.ATF, Grade.B),
            new Oil("ATF low viscosity", GEAR, 29.0, 6.3, 845, Sources.ATF, Grade.B),
            new Oil("gear oil 75W-90", GEAR, 105, 15.2, 875, Sources.MEMORY, Grade.B),
            new Oil("gear oil 80W-90", GEAR, 140, 14.5, 897, Sources.MEMORY, Grade.B),
            new Oil("gear oil 75W-140", GEAR, 175, 25.5, 880, Sources.MEMORY, Grade.C),
            new Oil("hydraulic oil VG 32", HYDRAULIC, 32, 5.45, 872, Sources.ISO_VG, Grade.B),
            new Oil("hydraulic oil VG 46", HYDRAULIC, 46, 6.8, 878, Sources.MEMORY, Grade.B),
            new Oil("hydraulic oil VG 22", HYDRAULIC, 22, 4.3, 866, Sources.MEMORY, Grade.C),
            new Oil("hydraulic oil VG 68", HYDRAULIC, 68, 8.7, 882, Sources.MEMORY, Grade.C),
            new Oil("power steering fluid ATF type", HYDRAULIC, 34.5, 7.4, 855, Sources.ATF, Grade.C),
            new Oil("power steering fluid synthetic", HYDRAULIC, 19.0, 6.1, 830, Sources.MEMORY, Grade.C));

    private static Oil engine(String sae, double at40, double at100, double rho15, Grade grade) {
        return new Oil("engine oil " + sae, ENGINE, at40, at100, rho15, Sources.MEMORY, grade);
    }

    static List<CatalogueFluid> all() {
        List<CatalogueFluid> all = new ArrayList<>();
        for (Oil oil : OILS) {
            all.add(build(oil));
        }
        return List.copyOf(all);
    }

    private static CatalogueFluid build(Oil oil) {
        PropertyLaw density = PetroleumLaws.ExpandedDensity.oil(oil.rho15());
        PropertyLaw line = new PetroleumLaws.WaltherViscosity(
                D341.through(LOW_ANCHOR_K, oil.at40() * 1e-6, HIGH_ANCHOR_K, oil.at100() * 1e-6));
        PropertyLaw usual = new Combinations.Dynamic(line, density);
        double spread = oil.grade() == Grade.C ? 0.20 : 0.15;
        boolean veryHigh = ViscosityIndex.veryHigh(line);
        Property viscosity = Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        usual,
                        0,
                        150,
                        oil.source(),
                        oil.grade(),
                        1,
                        1,
                        "grade spread " + Text.number(100 * spread)
                                + " %; the form 3 to 5 % from 40 C up, growing to 40 % at 5 C")
                .between(
                        new PetroleumLaws.ColdSpread(usual, 1 - spread, false, LOW_ANCHOR_K),
                        new PetroleumLaws.ColdSpread(usual, 1 + spread, true, LOW_ANCHOR_K));
        Range range = Range.celsius(veryHigh ? 0 : -30, veryHigh ? 130 : 150);
        return new CatalogueFluid(
                oil.name(),
                oil.family(),
                density(density, oil.grade()),
                viscosity,
                negligible(),
                modulus(oil.rho15()),
                heat(oil.rho15()),
                veryHigh
                        ? range.hardBelow(
                                0,
                                "a very-high-VI fluid is not extrapolated into the cold: it is far thicker"
                                        + " there than its two points say")
                        : range.hardBelow(-40, "further than 10 K below its range"),
                List.of());
    }

    static Property density(PropertyLaw law, Grade grade) {
        return Property.of(
                PropertyKind.DENSITY,
                law,
                -20,
                150,
                Sources.API_DENSITY,
                grade,
                0.98,
                1.02,
                "1 %; a synthetic oil up to 2 % lighter at 120 C");
    }

    static Property negligible() {
        return Property.of(
                PropertyKind.VAPOUR_PRESSURE,
                new SimpleLaws.Constant(1),
                -40,
                100,
                Sources.MEMORY,
                Grade.B,
                0.1,
                10,
                "negligible, under 10 Pa at 100 C; dissolved air governs cavitation");
    }

    static Property modulus(double rho15) {
        return Property.of(
                PropertyKind.BULK_MODULUS,
                new PetroleumLaws.Modulus(rho15),
                -30,
                90,
                Sources.API_MODULUS,
                Grade.B,
                1,
                1.25,
                "0 to 20 % below handbook figures");
    }

    static Property heat(double rho15) {
        return Property.of(
                PropertyKind.SPECIFIC_HEAT,
                new PetroleumLaws.SpecificHeat(rho15),
                0,
                200,
                Sources.CRAGOE,
                Grade.B,
                0.97,
                1.09,
                "3 %; hot mono-grade oils 3 to 5 % and synthetic ones 7 to 9 % higher");
    }
}
