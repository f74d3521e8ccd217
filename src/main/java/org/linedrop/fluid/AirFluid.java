package org.linedrop.fluid;

import java.util.List;

/** Dry air for vent and vacuum lines. */
final class AirFluid {
    private AirFluid() {}

    private static final double STANDARD_PA = 101325;

    static CatalogueFluid air() {
        return new CatalogueFluid(
                "air",
                "air",
                Property.of(
                        PropertyKind.DENSITY,
                        new GasLaws.IdealDensity(STANDARD_PA, 287.055),
                        -60,
                        200,
                        Sources.IDEAL_GAS,
                        Grade.A,
                        1,
                        1,
                        "0.2 % at 101.325 kPa; proportional to the absolute pressure"),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        new GasLaws.SutherlandViscosity(),
                        -60,
                        200,
                        Sources.US_ATMOSPHERE,
                        Grade.A,
                        0.987,
                        1.013,
                        "1.3 %"),
                Property.unknown(PropertyKind.VAPOUR_PRESSURE, "a gas has none", Sources.IDEAL_GAS),
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        new SimpleLaws.Constant(STANDARD_PA),
                        -60,
                        200,
                        Sources.IDEAL_GAS,
                        Grade.A,
                        1,
                        1.4,
                        "isothermal: equals the absolute pressure; adiabatic 1.4 times that"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        new SimpleLaws.Polynomial(1e3, List.of(1.00567, 1.50284e-05, 4.08349e-07, -4.07013e-13)),
                        -60,
                        200,
                        Sources.AIR_HEAT,
                        Grade.A,
                        0.999,
                        1.001,
                        "0.1 %"),
                Range.celsius(-60, 200),
                List.of());
    }
}
