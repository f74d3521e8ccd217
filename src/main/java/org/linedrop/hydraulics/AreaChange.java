package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Sudden and conical changes of bore. Every coefficient is on the velocity head of the SMALLER bore, a loss of total
 * pressure; {@code beta = d_small/d_large}, 0 (out of or into the open) to 1. The turbulent coefficient is used at every
 * Reynolds number, plus K1/Re.
 *
 * <p>K1 is {@code 30 (1 - beta^2)} in both directions, so that a law has one slope through rest: Idelchik quotes 30/Re
 * for a sudden change of bore in creeping flow; half of Sampson's exact loss of a hole, {@code 6 pi/Re} a side, says 19.
 * The laminar form for parabolic profiles is a second opinion only.
 */
public final class AreaChange {
    /** Borda and Carnot's loss of an expansion. */
    public static final Formula EXPANSION = new Formula(
            "Borda-Carnot",
            "K = (1 - beta^2)^2 on the small bore, + K1/Re",
            new Source("Hydraulic Institute Engineering Data Book, 2nd ed. 1990", "eq. 3.B.3", Status.PUBLISHED),
            "uniform turbulent profile, exact type");

    /** Idelchik's loss of a sharp-edged contraction. */
    public static final Formula CONTRACTION = new Formula(
            "sudden contraction",
            "K = 0.5 (1 - beta^2)^0.75 on the small bore, + K1/Re",
            new Source("I. E. Idelchik, Handbook of Hydraulic Resistance", "diagram 4-9", Status.FROM_MEMORY),
            "sharp edge; published 0.22 to 0.35 at area ratio 0.5");

    /** Published spread of a contraction: at area ratio 0.5 0.22 to 0.35 about 0.30, at 0.9 0.015 to 0.09. */
    public static final Band CONTRACTION_BAND = Band.ratios(
            0.65,
            1.25,
            new Source(
                    "contraction from jet area (Streeter and Wylie table), 0.5 (1 - A), Idelchik, Rennels",
                    "",
                    Status.PUBLISHED));

    private static final double CREEPING_K1 = 30; // Idelchik, sudden change of bore at Re under 10; from memory

    private AreaChange() {}

    /**
     * Loss of a sudden expansion.
     *
     * @param beta small bore over large bore, 0 to 1
     * @return K on the small bore
     */
    public static double expansionK(double beta) {
        double rest = 1 - beta * beta;
        return rest * rest;
    }

    /**
     * Loss of a sudden contraction.
     *
     * @param beta small bore over large bore, 0 to 1
     * @return K on the small bore
     */
    public static double contractionK(double beta) {
        return 0.5 * Math.pow(1 - beta * beta, 0.75);
    }

    /**
     * Numerator of the low Reynolds number term of every change of bore.
     *
     * @param beta small bore over large bore, 0 to 1
     * @return K1 on the small bore
     */
    public static double k1(double beta) {
        return CREEPING_K1 * (1 - beta * beta);
    }

    /**
     * Total-pressure drop of a sudden change of bore, by flow direction.
     *
     * @param flowM3PerS          volume flow in m3/s, positive from the first bore to the second
     * @param firstBoreM          first bore in m, over zero; infinite is a vessel
     * @param secondBoreM         second bore in m, over zero; infinite is a vessel, not both
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double firstBoreM,
            double secondBoreM,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        of(firstBoreM, secondBoreM, flowM3PerS >= 0, densityKgPerM3, dynamicViscosityPaS)
                .pressureDrop(flowM3PerS, valueAndSlope);
    }

    /**
     * The loss of a sudden change of bore for one direction of flow.
     *
     * @param firstBoreM          first bore in m, over zero; infinite is a vessel
     * @param secondBoreM         second bore in m, over zero; infinite is a vessel, not both
     * @param forward             true for flow from the first bore to the second
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return its law, on the smaller bore
     */
    public static LocalLoss of(
            double firstBoreM, double secondBoreM, boolean forward, double densityKgPerM3, double dynamicViscosityPaS) {
        double small = Math.min(firstBoreM, secondBoreM);
        double beta = small / Math.max(firstBoreM, secondBoreM);
        boolean widens = secondBoreM > firstBoreM == forward;
        double k = widens ? expansionK(beta) : contractionK(beta);
        return LocalLoss.of(small, k, k1(beta), densityKgPerM3, dynamicViscosityPaS);
    }
}
