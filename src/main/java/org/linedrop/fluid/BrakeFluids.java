package org.linedrop.fluid;

import java.util.List;
import org.linedrop.fact.Source;

/** Brake fluids. Levels are from memory; the usual fluid keeps the class limits of 49 CFR 571.116. */
final class BrakeFluids {
    private BrakeFluids() {}

    private static final String GLYCOL_FAMILY = "brake fluid DOT 3/4/5.1 (glycol ether)";
    private static final String SILICONE_FAMILY = "brake fluid DOT 5 (silicone)";

    /** A glycol ether or borate ester fluid: mm2/s at -40 and 100 C, bulk modulus polynomial in GPa. */
    private record Ether(
            String name, double rho20, double cold, double hot, List<Double> bulkGpa, double wetC, double dryC) {}

    private static final List<Ether> ETHERS = List.of(
            new Ether("brake fluid DOT 3", 1030, 1200, 2.0, List.of(1.9, -0.0075), 140, 205),
            new Ether("brake fluid DOT 4", 1055, 1400, 2.2, List.of(2.01, -0.008), 155, 230),
            new Ether("brake fluid DOT 4 low viscosity", 1055, 680, 1.9, List.of(2.01, -0.008), 155, 230),
            new Ether("brake fluid DOT 5.1", 1060, 830, 2.1, List.of(2.01, -0.008), 180, 260));

    static List<CatalogueFluid> all() {
        return List.of(ether(0), ether(1), ether(2), ether(3), silicone());
    }

    private static CatalogueFluid ether(int i) {
        Ether e = ETHERS.get(i);
        PropertyLaw density = new SimpleLaws.LinearExpansion(e.rho20(), 0.00085);
        PropertyLaw line = new PetroleumLaws.WaltherViscosity(
                D341.through(PropertyLaw.ZERO_C_K - 40, e.cold() * 1e-6, PropertyLaw.ZERO_C_K + 100, e.hot() * 1e-6));
        return build(
                e.name(), GLYCOL_FAMILY, density, line, Sources.MEMORY, 120, e.bulkGpa(), 2200, e.wetC(), e.dryC());
    }

    private static CatalogueFluid silicone() {
        return build(
                "brake fluid DOT 5",
                SILICONE_FAMILY,
                new SimpleLaws.LinearExpansion(965, 0.00105),
                new SimpleLaws.SiliconeViscosity(40e-6, 763.1, 2.559),
                Sources.SILICONE,
                150,
                List.of(1.12, -0.006),
                1500,
                180,
                260);
    }

    private static CatalogueFluid build(
            String name,
            String family,
            PropertyLaw density,
            PropertyLaw line,
            Source viscositySource,
            double viscosityHighC,
            List<Double> bulkGpa,
            double heatJPerKgK,
            double wetC,
            double dryC) {
        PropertyLaw viscosity = new Combinations.Dynamic(line, density);
        return new CatalogueFluid(
                name,
                family,
                Property.of(PropertyKind.DENSITY, density, -40, 150, Sources.MEMORY, Grade.C, 0.985, 1.015, "1.5 %"),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        viscosity,
                        -40,
                        viscosityHighC,
                        viscositySource,
                        Grade.C,
                        0.75,
                        1.25,
                        "25 %"),
                Property.unknown(
                        PropertyKind.VAPOUR_PRESSURE,
                        "only least boiling points are specified: " + Text.number(dryC) + " C dry, " + Text.number(wetC)
                                + " C wet",
                        Sources.FMVSS),
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        new SimpleLaws.Polynomial(1e9, bulkGpa),
                        0,
                        120,
                        Sources.MEMORY,
                        Grade.C,
                        0.85,
                        1.15,
                        "15 %"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        new SimpleLaws.Constant(heatJPerKgK),
                        -40,
                        150,
                        Sources.MEMORY,
                        Grade.C,
                        0.9,
                        1.1,
                        "one figure for all temperatures"),
                Range.celsius(-40, 150)
                        .hardBelow(-50, "further than 10 K below its range")
                        .boiling(wetC, dryC),
                List.of());
    }
}
