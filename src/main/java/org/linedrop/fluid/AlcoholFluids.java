package org.linedrop.fluid;

import java.util.List;
import org.linedrop.fact.Source;

/** Ethanol and methanol. */
final class AlcoholFluids {
    private AlcoholFluids() {}

    static CatalogueFluid ethanol() {
        PropertyLaw density = new AlcoholLaws.RackettDensity(46.068, 1628.8, 0.27469, 514, 0.23178);
        return alcohol(
                "ethanol",
                density,
                "0.6 %",
                new AlcoholLaws.LogarithmicViscosity(7.875, 781.98, -3.0418),
                Sources.DIPPR_VISCOSITY,
                "3 % above -10 C, 7 % at -50 C",
                new AlcoholLaws.WagnerPressure(513.9, 6148000, -8.33803, 0.0872, -3.30575, -0.26001),
                0.03,
                "3 % above -20 C, 6 % at -40 C",
                new AlcoholLaws.MolarPolynomial(46.068, List.of(102640.0, -139.63, -0.030341, 0.0020386)),
                80,
                "2 % to 75 C, 3 % to 80 C, 6 % at 115 C",
                new AlcoholLaws.SoundSpeedModulus(density, 1228.5, -3.34));
    }

    static CatalogueFluid methanol() {
        PropertyLaw density = new AlcoholLaws.RackettDensity(32.042, 2326.7, 0.27073, 512.5, 0.24713);
        return alcohol(
                "methanol",
                density,
                "0.3 %",
                new AlcoholLaws.TwoPowerViscosity(3.79226, 0.17755, 546.563, 87.845, 7.91e-06),
                Sources.VDI,
                "5 %",
                new AlcoholLaws.WagnerPressure(513.38, 8216000, -8.72963, 1.4586, -2.78449, -0.70669),
                0.01,
                "1 % above 0 C",
                new AlcoholLaws.MolarPolynomial(32.042, List.of(105800.0, -362.23, 0.9379)),
                115,
                "1 %",
                new AlcoholLaws.SoundSpeedModulus(density, 1183.0, -3.25));
    }

    private static CatalogueFluid alcohol(
            String name,
            PropertyLaw density,
            String densityError,
            PropertyLaw viscosity,
            Source viscositySource,
            String viscosityError,
            PropertyLaw vapour,
            double vapourSpread,
            String vapourError,
            PropertyLaw heat,
            double heatHighC,
            String heatError,
            PropertyLaw bulk) {
        return new CatalogueFluid(
                name,
                name,
                Property.of(
                        PropertyKind.DENSITY, density, -60, 115, Sources.DIPPR_DENSITY, Grade.A, 1, 1, densityError),
                Property.of(
                        PropertyKind.DYNAMIC_VISCOSITY,
                        viscosity,
                        -60,
                        115,
                        viscositySource,
                        Grade.A,
                        0.95,
                        1.05,
                        viscosityError),
                Property.of(
                        PropertyKind.VAPOUR_PRESSURE,
                        vapour,
                        -60,
                        115,
                        Sources.VDI,
                        Grade.A,
                        1 - vapourSpread,
                        1 + vapourSpread,
                        vapourError),
                Property.of(
                        PropertyKind.BULK_MODULUS,
                        bulk,
                        -60,
                        115,
                        Sources.SOUND,
                        Grade.C,
                        0.95,
                        1.05,
                        "adiabatic; speed of sound at 25 C from memory"),
                Property.of(
                        PropertyKind.SPECIFIC_HEAT,
                        heat,
                        -60,
                        heatHighC,
                        Sources.DIPPR_HEAT,
                        Grade.A,
                        0.98,
                        1.02,
                        heatError),
                Range.celsius(-60, 120),
                List.of());
    }
}
