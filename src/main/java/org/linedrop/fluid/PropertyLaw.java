package org.linedrop.fluid;

import java.io.Serializable;

/**
 * One property as a function of temperature, in SI. Every implementation is a record of numbers, so that two fluids
 * made of the same data are equal. Laws do not check their range; {@link Property} and {@link Fluid} do.
 */
sealed interface PropertyLaw extends Serializable
        permits WaterLaws.KellDensity,
                WaterLaws.Viscosity,
                WaterLaws.SaturationPressure,
                WaterLaws.GlycolViscosity,
                GasLaws.IdealDensity,
                GasLaws.SutherlandViscosity,
                AlcoholLaws.RackettDensity,
                AlcoholLaws.LogarithmicViscosity,
                AlcoholLaws.TwoPowerViscosity,
                AlcoholLaws.WagnerPressure,
                AlcoholLaws.MolarPolynomial,
                AlcoholLaws.SoundSpeedModulus,
                PetroleumLaws.ExpandedDensity,
                PetroleumLaws.Modulus,
                PetroleumLaws.SpecificHeat,
                PetroleumLaws.AndradeViscosity,
                PetroleumLaws.GasolinePressure,
                PetroleumLaws.WaltherViscosity,
                PetroleumLaws.ColdSpread,
                SimpleLaws.Constant,
                SimpleLaws.Polynomial,
                SimpleLaws.ExponentialPressure,
                SimpleLaws.LinearExpansion,
                SimpleLaws.SiliconeViscosity,
                SimpleLaws.Table,
                SimpleLaws.ViscosityTable,
                Combinations.Scaled,
                Combinations.Dynamic,
                Combinations.WeightedSum,
                Combinations.WeightedLogSum,
                Combinations.WeightedInverseSum,
                Combinations.MassWeightedSum {

    /** 0 C in kelvin. */
    double ZERO_C_K = 273.15;

    /**
     * The property.
     *
     * @param temperatureK temperature, K
     * @return the property in SI; NaN when the law has no meaning there
     */
    double at(double temperatureK);
}
