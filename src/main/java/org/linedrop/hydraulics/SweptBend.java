package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A bent-tube elbow: the excess that turning costs over a straight bore, plus the friction of the arc, plus K1/Re. One
 * instance is one shape; it is immutable.
 *
 * <p>Ito 1960 gives the total loss of a smooth bend of 45, 90 or 180 degrees, with {@code x = R/r}:
 * {@code K = 0.00241 a theta Re^-0.17 x^0.84} over {@code Re/x^2 = 91} and {@code K = 0.00873 a fc theta x} below, where
 * {@code fc = 0.304 Re^-0.25 + 0.029 x^-0.5}. The two forms are joined by smoothstep over {@code Re/x^2 = 80 to 100}. The
 * excess is that total less Colebrook's smooth friction on the arc; other angles lie on straight lines of the excess over
 * the angle through 0, 45, 90 and 180 degrees. It is held below Re 20000 and above 400000, the ends of the data (corners
 * rounded over a tenth in ln Re, 0.5 per cent at most).
 *
 * <p>Against measured excess of smooth bends, R/D 1 to 10, 45 to 90 degrees: 17 per cent. Under 45 degrees at R/D 1 it is
 * up to half too high. 180 degrees at R/D 1 rests on Ito's steep term alone. Walls of e/D 0.002 double the excess.
 */
public final class SweptBend {
    /** Ito's bend law. */
    public static final Formula FORMULA = new Formula(
            "Ito, smooth bends",
            "K = 0.00241 a theta Re^-0.17 (R/r)^0.84 less smooth friction of the arc, + f arc + K1/Re",
            new Source("H. Ito, Trans. ASME J. Basic Eng. 82, 1960, 131-143", "", Status.FROM_MEMORY),
            "R/D 1 to 10, Re 2e4 to 4e5, held outside; 17 %");

    /** Spread of the excess: measured 17 per cent about the law, doubled by a rough wall. */
    public static final Band BAND = Band.ratios(
            0.7,
            2.0,
            new Source(
                    "Hydraulic Institute Engineering Data Book, 2nd ed. 1990, figs. IIIB-5A and 5B: smooth within 17 %,"
                            + " rough e/D 0.002 twice; Idelchik's excess at R/D 1.5",
                    "", Status.PUBLISHED));

    /** Spread over 90 degrees at R/D under 1.5, where only Ito's steep term speaks: Idelchik has 0.29 for 0.68. */
    public static final Band BAND_TIGHT_RETURN = Band.ratios(
            0.42,
            2.0,
            new Source("I. E. Idelchik, Handbook of Hydraulic Resistance, diagram 6-1", "", Status.FROM_MEMORY));

    /** Tightest bend, R/D: below it no data; use {@link MitreElbow}. */
    public static final double TIGHTEST = 1;

    /** Widest bend, R/D: above it take the arc as a {@link CurvedBore}. */
    public static final double WIDEST = 50;

    /** Reynolds number below which the excess is held: the data end there. */
    public static final double LOWEST_REYNOLDS = 2e4;

    /** Reynolds number above which the excess is held: the data end there. */
    public static final double HIGHEST_REYNOLDS = 4e5;

    private static final double LOWEST_RE = Math.log(LOWEST_REYNOLDS);
    private static final double HIGHEST_RE = Math.log(HIGHEST_REYNOLDS);
    private static final double CORNER = 0.1;
    /** Under the corner of Re 18097 no logarithm is needed to know that the excess is held. */
    private static final double SURELY_HELD = 18_000;

    private static final double JOIN_FROM = 80;
    private static final double JOIN_TO = 100;
    private static final double[] ANGLES_DEG = {0, 45, 90, 180};
    private static final double[] K1 = {0, 500, 800, 1000}; // Darby 2001, bends; Hooper 1981 has the same

    private final double radiusRatio;
    private final double arc;
    private final double k1;
    private final double powerForm;
    private final double factorForm;
    private final double heldExcess;

    private SweptBend(double angleRad, double radiusOverBore) {
        double degrees = Math.toDegrees(angleRad);
        double x = 2 * radiusOverBore;
        radiusRatio = x;
        arc = angleRad * radiusOverBore;
        k1 = Joins.interpolate(ANGLES_DEG, K1, degrees);
        double[] scale = {0, 45 * alpha45(x), 90 * alpha90(x), 180 * alpha180(x)};
        double alphaTheta = Joins.interpolate(ANGLES_DEG, scale, degrees);
        powerForm = 0.00241 * alphaTheta * Math.pow(x, 0.84);
        factorForm = 0.00873 * alphaTheta * x;
        double[] held = new double[2];
        excessAt(Math.exp(LOWEST_RE), held);
        heldExcess = held[0];
    }

    /**
     * A bend of given shape.
     *
     * @param angleRad       deflection in rad, 0 (straight) to pi
     * @param radiusOverBore centre-line radius over bore, R/D, {@link #TIGHTEST} to {@link #WIDEST}
     * @return the law of that shape
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static SweptBend of(double angleRad, double radiusOverBore) {
        Joins.within("bend angle in rad", angleRad, 0, Math.PI, "split a longer turn into two bends");
        Joins.within(
                "bend radius over bore",
                radiusOverBore,
                TIGHTEST,
                WIDEST,
                "take a tighter elbow as forged and a wider turn as a curved hose");
        return new SweptBend(angleRad, radiusOverBore);
    }

    /**
     * Excess of turning over straight friction.
     *
     * @param reynolds      Reynolds number, over zero
     * @param valueAndSlope modified: slot 0 the excess coefficient on the velocity head, slot 1 its derivative in the
     *                      Reynolds number
     */
    public void excess(double reynolds, double[] valueAndSlope) {
        double log = reynolds < SURELY_HELD ? Double.NEGATIVE_INFINITY : Math.log(reynolds);
        if (log <= LOWEST_RE - CORNER) {
            valueAndSlope[0] = heldExcess;
            valueAndSlope[1] = 0;
            return;
        }
        double floored = Joins.roundedFloor(log, LOWEST_RE, CORNER);
        double held = Joins.roundedCap(floored, HIGHEST_RE, CORNER);
        double chain =
                Joins.roundedFloorSlope(log, LOWEST_RE, CORNER) * Joins.roundedCapSlope(floored, HIGHEST_RE, CORNER);
        double heldReynolds = Math.exp(held);
        excessAt(heldReynolds, valueAndSlope);
        valueAndSlope[1] *= chain * heldReynolds / reynolds;
    }

    /** Ito's total less smooth friction of the arc, at a Reynolds number inside the data. */
    private void excessAt(double reynolds, double[] out) {
        Colebrook.evaluate(reynolds, 0, out);
        double straight = out[0] * arc;
        double straightSlope = out[1] * arc;
        total(reynolds, out);
        out[0] -= straight;
        out[1] -= straightSlope;
    }

    /**
     * Ito's total loss of the smooth bend, friction of the arc included. Angles between 45, 90 and 180 degrees are
     * interpolated.
     *
     * @param reynolds      Reynolds number, over zero; Ito's range is 2e4 to 4e5
     * @param valueAndSlope modified: slot 0 the coefficient, slot 1 its derivative in the Reynolds number
     */
    void total(double reynolds, double[] valueAndSlope) {
        double power = powerForm * Math.pow(reynolds, -0.17);
        double powerSlope = -0.17 * power / reynolds;
        double blasius = 0.304 / Math.sqrt(Math.sqrt(reynolds));
        double factor = factorForm * (blasius + 0.029 / Math.sqrt(radiusRatio));
        double factorSlope = -0.25 * factorForm * blasius / reynolds;
        double scale = radiusRatio * radiusRatio * (JOIN_TO - JOIN_FROM);
        double t = reynolds / scale - JOIN_FROM / (JOIN_TO - JOIN_FROM);
        double share = Joins.step(t);
        valueAndSlope[0] = factor + share * (power - factor);
        valueAndSlope[1] =
                factorSlope + share * (powerSlope - factorSlope) + Joins.stepSlope(t) / scale * (power - factor);
    }

    /**
     * Numerator of the low Reynolds number term.
     *
     * @return K1: 500 at 45, 800 at 90, 1000 at 180 degrees, straight lines between
     */
    public double k1() {
        return k1;
    }

    /**
     * Length of the arc in bores.
     *
     * @return angle times R/D
     */
    public double arcOverBore() {
        return arc;
    }

    /**
     * Total-pressure drop of the bend.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore of the bent tube in m, over zero
     * @param roughnessM          roughness in m for the friction of the arc, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public void pressureDrop(
            double flowM3PerS,
            double boreM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        turningDrop(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        double turning = valueAndSlope[0];
        double turningSlope = valueAndSlope[1];
        BoreFriction.pressureDrop(
                flowM3PerS,
                boreM,
                arc * boreM,
                roughnessM,
                transition,
                densityKgPerM3,
                dynamicViscosityPaS,
                valueAndSlope);
        valueAndSlope[0] += turning;
        valueAndSlope[1] += turningSlope;
    }

    /**
     * Total-pressure drop of turning alone, for a bend whose arc is counted with the length of its tube.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore of the bent tube in m, over zero
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public void turningDrop(
            double flowM3PerS,
            double boreM,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        excess(Reynolds.of(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS), valueAndSlope);
        double turning = valueAndSlope[0];
        double perFlow = Reynolds.of(1, boreM, densityKgPerM3, dynamicViscosityPaS);
        double area = Reynolds.areaM2(boreM);
        double curvature = 0.5 * densityKgPerM3 / (area * area) * valueAndSlope[1] * perFlow * flowM3PerS * flowM3PerS;
        valueAndSlope[0] = 0;
        valueAndSlope[1] = curvature;
        Joins.addLocal(flowM3PerS, boreM, turning, k1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
    }

    private static double alpha45(double x) {
        return 1 + 14.2 * Math.pow(x, -1.47);
    }

    /** Ito: 0.95 + 17.2 x^-1.96 under x 19.7 and 1 above; the larger of the two is the same without the step of 1e-4. */
    private static double alpha90(double x) {
        return Math.max(1, 0.95 + 17.2 * Math.pow(x, -1.96));
    }

    private static double alpha180(double x) {
        return 1 + 116 * Math.pow(x, -4.52);
    }
}
