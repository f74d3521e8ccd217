package org.linedrop.network;

import org.linedrop.fluid.FluidState;
import org.linedrop.hydraulics.Reynolds;
import org.linedrop.hydraulics.Transition;

/**
 * The fluid of one part at its own temperature.
 *
 * @param temperatureK        temperature
 * @param densityKgPerM3      density
 * @param dynamicViscosityPaS viscosity
 * @param vapourPressurePa    absolute vapour pressure, NaN where unknown
 * @param transition          rule between laminar and turbulent
 */
public record Stream(
        double temperatureK,
        double densityKgPerM3,
        double dynamicViscosityPaS,
        double vapourPressurePa,
        Transition transition) {

    static Stream of(FluidState state, Transition transition) {
        return new Stream(
                state.temperatureK(),
                state.densityKgPerM3(),
                state.dynamicViscosityPaS(),
                state.vapourPressurePa(),
                transition);
    }

    /**
     * Mean velocity.
     *
     * @param massFlowKgPerS mass flow, any sign
     * @param boreM          bore
     * @return m/s with the sign of the flow; 0 where the bore is infinite
     */
    public double velocityMPerS(double massFlowKgPerS, double boreM) {
        return Double.isInfinite(boreM) ? 0 : Reynolds.velocityMPerS(massFlowKgPerS / densityKgPerM3, boreM);
    }

    /**
     * Velocity head.
     *
     * @param massFlowKgPerS mass flow, any sign
     * @param boreM          bore
     * @return Pa, not negative; 0 where the bore is infinite
     */
    public double velocityHeadPa(double massFlowKgPerS, double boreM) {
        double velocity = velocityMPerS(massFlowKgPerS, boreM);
        return 0.5 * densityKgPerM3 * velocity * velocity;
    }

    /**
     * Reynolds number.
     *
     * @param massFlowKgPerS mass flow, any sign
     * @param boreM          bore
     * @return not negative
     */
    public double reynolds(double massFlowKgPerS, double boreM) {
        return Math.abs(massFlowKgPerS) / (Math.PI / 4 * boreM * dynamicViscosityPaS);
    }
}
