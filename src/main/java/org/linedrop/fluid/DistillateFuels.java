package org.linedrop.fluid;

import java.util.List;

/** Diesel grades and jet fuel. */
final class DistillateFuels {
    private DistillateFuels() {}

    /** Slope of the D341 line of diesel, fitted to the geometric mid-points of the DOE ranges at -20, 20 and 40 C. */
    private static final double DIESEL_SLOPE = 4.2506;
    /** Slope of the D341 line of n-dodecane, used for jet fuel. */
    private static final double JET_SLOPE = 3.8355;

    static CatalogueFluid en590() {
        return diesel("diesel EN 590", 835, 2.8, 2.0, 4.5, "EN 590");
    }

    static CatalogueFluid number2() {
        return diesel("diesel 2-D", 845, 2.6, 1.9, 4.1, "ASTM D975 No. 2-D, from memory");
    }

    static CatalogueFluid winter() {
        return diesel("diesel winter", 815, 1.8, 1.3, 2.4, "ASTM D975 No. 1-D, from memory");
    }

    private static CatalogueFluid diesel(
            String name, double rho15, double usual, double least, double most, String specification) {
        double at40K = PropertyLaw.ZERO_C_K + 40;
        PropertyLaw density = PetroleumLaws.ExpandedDensity.fuel(rho15);
        Property viscosity = Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        line(at40K, usual, DIESEL_SLOPE, density),
                        -20,
                        100,
                        Sources.DOE_DIESEL,
                        Grade.B,
                        1,
                        1,
                        "4 % of the mid curve; " + Text.number(least) + " to " + Text.number(most)
                                + " mm2/s at 40 C by " + specification)
                .between(line(at40K, least, DIESEL_SLOPE, density), line(at40K, most, DIESEL_SLOPE, density));
        Property vapour = Property.of(
                PropertyKind.VAPOUR_PRESSURE,
                new SimpleLaws.ExponentialPressure(60, PropertyLaw.ZERO_C_K + 20, 6000),
                0,
                60,
                Sources.MEMORY,
                Grade.C,
                0.05 / 0.06,
                0.10 / 0.06,
                "order 0.05 to 0.1 kPa at 20 C, negligible for cavitation");
        return distillate(
                name, rho15, Grade.B, density, viscosity, vapour, "10 to 20 %", Range.celsius(-30, 120), List.of());
    }

    static CatalogueFluid jet() {
        PropertyLaw density = PetroleumLaws.ExpandedDensity.fuel(799);
        Property viscosity = Property.of(
                PropertyKind.DYNAMIC_VISCOSITY,
                line(PropertyLaw.ZERO_C_K - 20, 4.1, JET_SLOPE, density),
                -40,
                100,
                Sources.JET,
                Grade.C,
                0.85,
                1.15,
                "15 %");
        Property vapour = Property.of(
                PropertyKind.VAPOUR_PRESSURE,
                new SimpleLaws.ExponentialPressure(300, PropertyLaw.ZERO_C_K + 20, 5500),
                0,
                60,
                Sources.MEMORY,
                Grade.C,
                0.5,
                2,
                "order of magnitude");
        return distillate(
                "jet A-1",
                799,
                Grade.C,
                density,
                viscosity,
                vapour,
                "10 to 20 %",
                Range.celsius(-40, 120),
                List.of("liners are judged for jet fuel as for diesel"));
    }

    private static PropertyLaw line(double temperatureK, double level, double slope, PropertyLaw density) {
        return new Combinations.Dynamic(
                new PetroleumLaws.WaltherViscosity(D341.sloped(temperatureK, level * 1e-6, slope)), density);
    }

    private static CatalogueFluid distillate(
            String name,
            double rho15,
            Grade grade,
            PropertyLaw density,
            Property viscosity,
            Property vapour,
            String bulkError,
            Range range,
            List<String> remarks) {
        return new CatalogueFluid(
                name,
                "diesel",
                Property.of(
                        PropertyKind.DENSITY,
                        density,
                        -20,
                        90,
                        Sources.API_DENSITY,
                        grade,
                        0.985,
                        1.015,
                        "0.1 % once the density at 15 C is known; between fuels 1.5 %"),
                viscosity,
                vapour,
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        new PetroleumLaws.Modulus(rho15),
                        -30,
                        90,
                        Sources.API_MODULUS,
                        Grade.C,
                        1,
                        1.2,
                        bulkError + " below handbook figures"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        new PetroleumLaws.SpecificHeat(rho15),
                        0,
                        200,
                        Sources.CRAGOE,
                        grade,
                        0.93,
                        1,
                        "up to 7 % above the DOE figure"),
                range,
                remarks);
    }
}
