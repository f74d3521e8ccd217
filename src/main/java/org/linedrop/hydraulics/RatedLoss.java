package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Coolers, filters and other components known from rated points.
 *
 * <p>Two points: {@code dp = a mu Q + b rho Q^2}, 10 per cent on a measured flat-channel cooler. One point:
 * {@code dp = dp_r (Q/Q_r)^n (mu/mu_r)^(2-n) (rho/rho_r)^(n-1)}, which follows from {@code f ~ Re^-(2-n)}; n 1 for laminar
 * plates, 1.3 for plates and flat channels, 1.75 for turbulent round tubes, 2 for a pure velocity-head loss; 25 per cent.
 */
public final class RatedLoss {
    /** Two rated points. */
    public static final Formula TWO_POINTS = new Formula(
            "viscous and inertial loss",
            "dp = a mu Q + b rho Q^2",
            new Source(
                    "filter makers' sheets: housing with rho Q^2, element with nu Q; ISO 3968 is the test",
                    "",
                    Status.PUBLISHED),
            "6 % as a form, 10 % from two points, on a measured flat-channel cooler");

    /** One rated point. */
    static final Formula ONE_POINT = new Formula(
            "power law with properties",
            "dp = dp_r (Q/Q_r)^n (mu/mu_r)^(2-n) (rho/rho_r)^(n-1)",
            new Source("similarity with f ~ Re^-(2-n)", "", Status.DERIVED),
            "n 1.3 plates and flat channels, 1.75 round tubes; 25 %");

    /** Exponent for plates and flat channels. */
    public static final double PLATE_EXPONENT = 1.3;

    /** Exponent for turbulent round tubes. */
    public static final double TUBE_EXPONENT = 1.75;

    /** Spread of a component known from one point. */
    public static final Band ONE_POINT_BAND = Band.ratios(
            0.75,
            1.25,
            new Source("measured flat-channel cooler: n 1.75 reads 23 % low, n 1.3 3 % high", "", Status.DERIVED));

    private RatedLoss() {}

    /**
     * Pressure drop with a viscous and an inertial term.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param viscousPerM3        a in 1/m3, not negative
     * @param inertialPerM4       b in 1/m4, not negative
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double viscousPerM3,
            double inertialPerM4,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double linear = viscousPerM3 * dynamicViscosityPaS;
        double quadratic = inertialPerM4 * densityKgPerM3;
        double size = Math.abs(flowM3PerS);
        valueAndSlope[0] = flowM3PerS * (linear + quadratic * size);
        valueAndSlope[1] = linear + 2 * quadratic * size;
    }

    /**
     * The two coefficients from two rated points of one fluid state.
     *
     * @param lowFlowM3PerS       flow of the first point in m3/s, over zero
     * @param lowDropPa           drop of the first point in Pa, over zero
     * @param highFlowM3PerS      flow of the second point in m3/s, over the first
     * @param highDropPa          drop of the second point in Pa
     * @param densityKgPerM3      density at the rated points in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity at the rated points in Pa s, over zero
     * @param coefficients        modified: slot 0 a in 1/m3, slot 1 b in 1/m4
     * @throws IllegalArgumentException when no a and b of at least zero pass through the points
     */
    public static void fit(
            double lowFlowM3PerS,
            double lowDropPa,
            double highFlowM3PerS,
            double highDropPa,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] coefficients) {
        double flowRatio = highFlowM3PerS / lowFlowM3PerS;
        double dropRatio = highDropPa / lowDropPa;
        double slack = 1e-9;
        if (!(lowFlowM3PerS > 0
                && lowDropPa > 0
                && flowRatio > 1
                && dropRatio >= flowRatio * (1 - slack)
                && dropRatio <= flowRatio * flowRatio * (1 + slack))) {
            throw new IllegalArgumentException("rated points " + lowDropPa + " Pa at " + lowFlowM3PerS + " m3/s and "
                    + highDropPa + " Pa at " + highFlowM3PerS + " m3/s: with " + flowRatio
                    + " times the flow the drop must grow by that ratio to its square; check the points");
        }
        double perFlowLow = lowDropPa / lowFlowM3PerS;
        double perFlowHigh = highDropPa / highFlowM3PerS;
        double quadratic = Math.max(0, (perFlowHigh - perFlowLow) / (highFlowM3PerS - lowFlowM3PerS));
        coefficients[0] = Math.max(0, perFlowLow - quadratic * lowFlowM3PerS) / dynamicViscosityPaS;
        coefficients[1] = quadratic / densityKgPerM3;
    }

    /**
     * Pressure drop from one rated point, taken exactly: for an exponent over 1 its slope at rest is zero, and a solver
     * must floor it.
     *
     * @param flowM3PerS     volume flow in m3/s, any sign
     * @param ratedFlowM3PerS rated flow in m3/s, over zero
     * @param ratedDropPa    rated drop in Pa, over zero
     * @param exponent       n, 1 to 2
     * @param viscosityRatio dynamic viscosity over that of the rating, over zero
     * @param densityRatio   density over that of the rating, over zero
     * @param valueAndSlope  modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the flow,
     *                       Pa s/m3
     */
    static void powerDrop(
            double flowM3PerS,
            double ratedFlowM3PerS,
            double ratedDropPa,
            double exponent,
            double viscosityRatio,
            double densityRatio,
            double[] valueAndSlope) {
        double scaled = ratedDropPa * Math.pow(viscosityRatio, 2 - exponent) * Math.pow(densityRatio, exponent - 1);
        double perFlow = scaled * Math.pow(Math.abs(flowM3PerS / ratedFlowM3PerS), exponent - 1) / ratedFlowM3PerS;
        valueAndSlope[0] = perFlow * flowM3PerS;
        valueAndSlope[1] = perFlow * exponent;
    }
}
