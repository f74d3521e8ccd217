package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Where a bore opens into a vessel: entrance when flow comes out of the vessel, exit when it goes in. Coefficients are on
 * the velocity head of the bore. K1 is Hooper's 160 of a pipe entrance, used in both directions so that the law has one
 * slope through rest; it also covers part of the second velocity head that a parabolic profile carries out.
 */
public final class PipeEnd {
    /** Entrances and exits. */
    public static final Formula FORMULA = new Formula(
            "entrance and exit",
            "K = 0.5 sharp, 0.05 bell mouth, 1.0 projecting; exit 1.0; + 160/Re",
            new Source("Hydraulic Institute Engineering Data Book, 2nd ed. 1990", "Table 32a", Status.PUBLISHED),
            "measured 0.505 for a sharp edge; uniform turbulent profile");

    /** Square edge flush with the wall. */
    public static final double SHARP_K = 0.5;

    /** Everything that flows out is lost. */
    public static final double EXIT_K = 1.0;

    private static final double LOW_RE = 160; // Hooper 1981, pipe entrance; from memory

    private PipeEnd() {}

    /**
     * Numerator of the low Reynolds number term.
     *
     * @return K1 of either direction
     */
    public static double k1() {
        return LOW_RE;
    }

    /**
     * Total-pressure drop between a vessel and a bore, by flow direction.
     *
     * @param flowM3PerS          volume flow in m3/s, positive out of the vessel into the bore
     * @param boreM               bore in m, over zero
     * @param entranceK           coefficient of the entrance, not negative
     * @param exitK               coefficient of the exit, not negative
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    static void pressureDrop(
            double flowM3PerS,
            double boreM,
            double entranceK,
            double exitK,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        LocalLoss.directed(
                flowM3PerS, boreM, entranceK, exitK, k1(), densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
    }
}
