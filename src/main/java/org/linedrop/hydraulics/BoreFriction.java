package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Friction of a straight round bore: {@code dp = f (L/d) rho v^2/2}, odd in the flow.
 *
 * <p>In laminar flow the law is {@code 128 mu L Q/(pi d^4)} exactly, linear through zero. Factor and its accuracy:
 * {@link FrictionFactor}. The slope is {@code c (2 f |Q| + Q^2 df/dQ)}.
 *
 * <p>One instance is one bore with one fluid, its constants computed once; it is immutable.
 */
public final class BoreFriction {
    /** Darcy and Weisbach's law. */
    public static final Formula FORMULA = new Formula(
            "Darcy-Weisbach",
            "dp = f (L/d) rho v^2/2",
            new Source("definition of the Darcy friction factor", "", Status.DERIVED),
            "developed flow; 4 % turbulent, 10 to 15 % in the transition span");

    private final double boreM;
    private final double roughness;
    private final Transition transition;
    private final double densityKgPerM3;
    private final double dynamicViscosityPaS;
    private final double laminarSlope;
    private final double squareFactor;

    private BoreFriction(
            double boreM,
            double lengthM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS) {
        this.boreM = boreM;
        this.roughness = roughnessM / boreM;
        this.transition = transition;
        this.densityKgPerM3 = densityKgPerM3;
        this.dynamicViscosityPaS = dynamicViscosityPaS;
        double area = Reynolds.areaM2(boreM);
        laminarSlope = 32 * dynamicViscosityPaS * lengthM / (boreM * boreM * area);
        squareFactor = squareFactor(boreM, lengthM, densityKgPerM3);
    }

    private static double squareFactor(double boreM, double lengthM, double densityKgPerM3) {
        double area = Reynolds.areaM2(boreM);
        return 0.5 * densityKgPerM3 * lengthM / (boreM * area * area);
    }

    /**
     * A straight bore with a fluid in it.
     *
     * @param boreM               bore in m, over zero
     * @param lengthM             length in m, not negative
     * @param roughnessM          roughness in m, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return the law of that bore
     */
    public static BoreFriction of(
            double boreM,
            double lengthM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS) {
        return new BoreFriction(boreM, lengthM, roughnessM, transition, densityKgPerM3, dynamicViscosityPaS);
    }

    /**
     * Pressure drop of a straight bore.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore in m, over zero
     * @param lengthM             length in m, not negative
     * @param roughnessM          roughness in m, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double boreM,
            double lengthM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        of(boreM, lengthM, roughnessM, transition, densityKgPerM3, dynamicViscosityPaS)
                .pressureDrop(flowM3PerS, valueAndSlope);
    }

    /**
     * Pressure drop of this bore.
     *
     * @param flowM3PerS    volume flow in m3/s, any sign
     * @param valueAndSlope modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the flow,
     *                      Pa s/m3
     */
    public void pressureDrop(double flowM3PerS, double[] valueAndSlope) {
        double reynolds = Reynolds.of(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS);
        if (!(reynolds > transition.fromReynolds())) {
            laminarDrop(flowM3PerS, valueAndSlope);
            return;
        }
        FrictionFactor.evaluate(reynolds, roughness, transition, valueAndSlope);
        turbulentDrop(flowM3PerS, reynolds, valueAndSlope[0], valueAndSlope[1], squareFactor, valueAndSlope);
    }

    /**
     * Pressure drop of this bore with a friction factor that bores of the same shape and fluid work out once.
     *
     * @param flowM3PerS volume flow in m3/s, any sign
     * @param slots      modified: slot 0 the drop, slot 1 its derivative as in {@link #pressureDrop(double, double[])}
     * @param at         two slots from here hold the factor and its derivative in the Reynolds number, over 1
     * @param first      true to work the factor out and leave it there, false to take what a bore with
     *                   {@link #sharesFactorWith} left there at the same flow
     */
    public void pressureDrop(double flowM3PerS, double[] slots, int at, boolean first) {
        double reynolds = Reynolds.of(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS);
        if (!(reynolds > transition.fromReynolds())) {
            laminarDrop(flowM3PerS, slots);
            return;
        }
        if (first) {
            FrictionFactor.evaluate(reynolds, roughness, transition, slots);
            slots[at] = slots[0];
            slots[at + 1] = slots[1];
        }
        turbulentDrop(flowM3PerS, reynolds, slots[at], slots[at + 1], squareFactor, slots);
    }

    /**
     * Whether two bores have the same friction factor at every volume flow.
     *
     * @param other another bore
     * @return true when all but their lengths is the same
     */
    public boolean sharesFactorWith(BoreFriction other) {
        return boreM == other.boreM
                && roughness == other.roughness
                && transition.equals(other.transition)
                && densityKgPerM3 == other.densityKgPerM3
                && dynamicViscosityPaS == other.dynamicViscosityPaS;
    }

    private void laminarDrop(double flow, double[] valueAndSlope) {
        valueAndSlope[0] = laminarSlope * flow;
        valueAndSlope[1] = laminarSlope;
    }

    /** Turns factor and slope in Re, as they stand in the slots, into drop and slope in flow. */
    static void fromFactor(
            double flow, double reynolds, double boreM, double lengthM, double density, double[] valueAndSlope) {
        turbulentDrop(
                flow,
                reynolds,
                valueAndSlope[0],
                valueAndSlope[1],
                squareFactor(boreM, lengthM, density),
                valueAndSlope);
    }

    private static void turbulentDrop(
            double flow, double reynolds, double f, double fSlope, double squareFactor, double[] valueAndSlope) {
        double size = Math.abs(flow);
        valueAndSlope[1] = squareFactor * size * (2 * f + reynolds * fSlope);
        valueAndSlope[0] = squareFactor * f * flow * size;
    }
}
