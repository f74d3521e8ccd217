package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Total-pressure loss of a fitting, {@code dp = (K + K1/Re) rho v^2/2} on one bore.
 *
 * <p>Because {@code Re} is proportional to {@code v}, the second term is linear in the flow: the loss passes through zero
 * with a finite slope, is odd in the flow and rises strictly wherever {@code K} or {@code K1} is positive. With
 * {@code K1 = 0} (a bare K from a textbook) the slope at zero flow is zero, and a solver must floor it.
 *
 * <p>One instance is one fitting with one fluid, its constants computed once; it is immutable.
 */
public final class LocalLoss {
    /** Loss coefficient with a low Reynolds number term. */
    public static final Formula FORMULA = new Formula(
            "local loss",
            "dp = (K + K1/Re) rho v^2/2",
            new Source(
                    "R. Darby, Chemical Engineering Fluid Mechanics, 2nd ed., 2001, table of 3-K constants"
                            + " (form of the low Re term); W. B. Hooper, Chem. Eng. 88, 1981",
                    "",
                    Status.PUBLISHED),
            "fully turbulent K; K1/Re within a factor of two");

    private final double linear;
    private final double quadratic;

    private LocalLoss(double linear, double quadratic) {
        this.linear = linear;
        this.quadratic = quadratic;
    }

    /**
     * A fitting with a fluid in it.
     *
     * @param boreM               bore the coefficients refer to in m, over zero
     * @param turbulentK          K at high Reynolds number, not negative
     * @param k1                  numerator of the low Reynolds number term, not negative; 0 takes K exactly
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return the law of that fitting
     */
    public static LocalLoss of(
            double boreM, double turbulentK, double k1, double densityKgPerM3, double dynamicViscosityPaS) {
        double area = Reynolds.areaM2(boreM);
        return new LocalLoss(
                0.5 * k1 * dynamicViscosityPaS / (boreM * area), // K1/Re x rho v^2/2 = K1 mu v/(2 d)
                0.5 * turbulentK * densityKgPerM3 / (area * area));
    }

    /**
     * Pressure drop of this fitting.
     *
     * @param flowM3PerS    volume flow in m3/s, any sign
     * @param valueAndSlope modified: slot 0 the total-pressure drop in Pa with the sign of the flow, slot 1 its
     *                      derivative in the flow, Pa s/m3
     */
    public void pressureDrop(double flowM3PerS, double[] valueAndSlope) {
        double size = Math.abs(flowM3PerS);
        valueAndSlope[0] = flowM3PerS * (linear + quadratic * size);
        valueAndSlope[1] = linear + 2 * quadratic * size;
    }

    /**
     * Adds the pressure drop of this fitting to what stands in the slots.
     *
     * @param flowM3PerS    volume flow in m3/s, any sign
     * @param valueAndSlope modified: slot 0 grows by the drop in Pa, slot 1 by its derivative in the flow, Pa s/m3
     */
    public void addPressureDrop(double flowM3PerS, double[] valueAndSlope) {
        double size = Math.abs(flowM3PerS);
        valueAndSlope[0] += flowM3PerS * (linear + quadratic * size);
        valueAndSlope[1] += linear + 2 * quadratic * size;
    }

    /**
     * Pressure drop of a fitting whose K is constant.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore the coefficients refer to in m, over zero
     * @param turbulentK          K at high Reynolds number, not negative
     * @param k1                  numerator of the low Reynolds number term, not negative; 0 takes K exactly
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the total-pressure drop in Pa with the sign of the flow, slot 1 its
     *                            derivative in the flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double boreM,
            double turbulentK,
            double k1,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        of(boreM, turbulentK, k1, densityKgPerM3, dynamicViscosityPaS).pressureDrop(flowM3PerS, valueAndSlope);
    }

    /**
     * Pressure drop of a part whose coefficient depends on the direction of flow. Value and slope are continuous at
     * rest because both directions share K1.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore the coefficients refer to in m, over zero
     * @param forwardK            K at high Reynolds number for flow over zero, not negative
     * @param backwardK           K at high Reynolds number for flow under zero, not negative
     * @param k1                  numerator of the low Reynolds number term, not negative
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the total-pressure drop in Pa with the sign of the flow, slot 1 its
     *                            derivative in the flow, Pa s/m3
     */
    static void directed(
            double flowM3PerS,
            double boreM,
            double forwardK,
            double backwardK,
            double k1,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double k = flowM3PerS >= 0 ? forwardK : backwardK;
        pressureDrop(flowM3PerS, boreM, k, k1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
    }

    /**
     * Loss coefficient at a Reynolds number.
     *
     * @param reynolds      Reynolds number, over zero
     * @param turbulentK    K at high Reynolds number
     * @param k1            numerator of the low Reynolds number term
     * @param valueAndSlope modified: slot 0 the coefficient, slot 1 its derivative in the Reynolds number
     */
    static void coefficient(double reynolds, double turbulentK, double k1, double[] valueAndSlope) {
        double low = k1 / reynolds;
        valueAndSlope[0] = turbulentK + low;
        valueAndSlope[1] = -low / reynolds;
    }
}
