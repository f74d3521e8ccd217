package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Friction of a straight round bore: {@code dp = f (L/d) rho v^2/2}, odd in the flow.
 *
 * <p>In laminar flow the law is {@code 128 mu L Q/(pi d^4)} exactly, linear through zero. Factor and its accuracy:
 * {@link FrictionFactor}. The slope is {@code c (2 f |Q| + Q^2 df/dQ)}.
 */
public final class BoreFriction {
    /** Darcy and Weisbach's law. */
    public static final Formula FORMULA = new Formula(
            "Darcy-Weisbach",
            "dp = f (L/d) rho v^2/2",
            new Source("definition of the Darcy friction factor", "", Status.DERIVED),
            "developed flow; 4 % turbulent, 10 to 15 % in the transition span");

    private BoreFriction() {}

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
        double reynolds = Reynolds.of(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS);
        if (!(reynolds > transition.fromReynolds())) {
            double area = Reynolds.areaM2(boreM);
            double linear = 32 * dynamicViscosityPaS * lengthM / (boreM * boreM * area);
            valueAndSlope[0] = linear * flowM3PerS;
            valueAndSlope[1] = linear;
            return;
        }
        FrictionFactor.evaluate(reynolds, roughnessM / boreM, transition, valueAndSlope);
        fromFactor(flowM3PerS, reynolds, boreM, lengthM, densityKgPerM3, valueAndSlope);
    }

    /** Turns factor and slope in Re, as they stand in the slots, into drop and slope in flow. */
    static void fromFactor(
            double flow, double reynolds, double boreM, double lengthM, double density, double[] valueAndSlope) {
        double area = Reynolds.areaM2(boreM);
        double c = 0.5 * density * lengthM / (boreM * area * area);
        double f = valueAndSlope[0];
        double size = Math.abs(flow);
        valueAndSlope[1] = c * size * (2 * f + reynolds * valueAndSlope[1]);
        valueAndSlope[0] = c * f * flow * size;
    }
}
