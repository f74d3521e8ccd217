package org.linedrop.network;

/**
 * The law of a switching or vertical device: a residual r(flow, inlet, outlet, reference) = 0 whose flow rises with the
 * inlet pressure and falls with the outlet pressure. Regulators, relief and check valves and fixed flows are of this
 * kind. The state (shut, in control, wide open) is read off the residual, never guessed.
 *
 * <p>The solver keeps the flow of a device as an unknown of a dense border, so the residual may be vertical or flat in
 * flow. The residual is in Pa, falls nowhere with flow, and is Lipschitz with the piece named by the state.
 */
public interface DeviceLaw {
    /** State of a one-way device that passes nothing. */
    int SHUT = 0;
    /** State of a device that holds what it was set to. */
    int IN_CONTROL = 1;
    /** State of a device that no longer throttles. */
    int WIDE_OPEN = 2;

    /**
     * Evaluates the residual and the derivatives of its active piece.
     *
     * @param massFlowKgPerS mass flow, positive from inlet to outlet
     * @param inletPa        total pressure at the inlet point
     * @param outletPa       total pressure at the outlet point
     * @param referencePa    total pressure at the reference point; 0 when the device has none
     * @param out            modified: residual in Pa, then its derivatives in flow (Pa/(kg/s)), inlet, outlet and
     *                       reference pressure; at least five slots. Nothing is allocated.
     * @return the state
     */
    int evaluate(double massFlowKgPerS, double inletPa, double outletPa, double referencePa, double[] out);

    /**
     * The same with its pieces joined by curves, for solves that find no way over the kinks between them; it tends to the law
     * itself as they get sharper. Laws without kinks need nothing of their own here.
     *
     * @param massFlowKgPerS mass flow, positive from inlet to outlet
     * @param inletPa        total pressure at the inlet point
     * @param outletPa       total pressure at the outlet point
     * @param referencePa    total pressure at the reference point; 0 when the device has none
     * @param roundingPa     how far a curve stands off the kink it rounds, above 0
     * @param out            modified: as in {@link #evaluate}, with the true derivatives of the rounded law
     * @return the state of the law itself
     */
    default int evaluateRounded(
            double massFlowKgPerS,
            double inletPa,
            double outletPa,
            double referencePa,
            double roundingPa,
            double[] out) {
        return evaluate(massFlowKgPerS, inletPa, outletPa, referencePa, out);
    }

    /**
     * Slope that stands in for the device in the symmetric part of the Newton matrix and in the first linear solve: that
     * of the device wide open, or any typical one. It decides speed, not answers.
     *
     * @return slope in Pa/(kg/s), above zero
     */
    double wideOpenSlopePaPerKgPerS();

    /**
     * The largest pressure the device itself brings in (a set pressure, an opening pressure), for the pressure scale.
     *
     * @return pressure in Pa, 0 when none
     */
    default double pressureScalePa() {
        return 0;
    }

    /**
     * The least flow the device can pass.
     *
     * @return mass flow in kg/s; 0 for one-way devices, minus infinity when unlimited
     */
    default double leastFlowKgPerS() {
        return Double.NEGATIVE_INFINITY;
    }

    /**
     * The most flow the device can pass.
     *
     * @return mass flow in kg/s; infinity when unlimited
     */
    default double mostFlowKgPerS() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Whether the device ties the pressures of its two sides together in at least one state. A fixed flow does not.
     *
     * @return false when no state does
     */
    default boolean relatesPressures() {
        return true;
    }

    /**
     * The word for a state.
     *
     * @param state a value returned by {@code evaluate}
     * @return lower-case words, for example {@code in control}
     */
    default String stateWord(int state) {
        return switch (state) {
            case SHUT -> "shut";
            case IN_CONTROL -> "in control";
            default -> "wide open";
        };
    }
}
