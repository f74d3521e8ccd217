package org.linedrop.network;

import static org.linedrop.network.Prescribed.aboveZero;
import static org.linedrop.network.Prescribed.atLeastZero;
import static org.linedrop.network.Prescribed.finite;

/**
 * Devices that pass flow one way and may throttle: check valves, relief valves and bypass regulators, pressure-reducing
 * regulators. All share one residual,
 *
 * <pre>0 = min(sigma Q, -min(A, B))</pre>
 *
 * where B = p_in - p_out - open(Q) is zero when the device is wide open, A is zero when it holds what it was set to, and
 * sigma only brings flow to the unit of pressure. The state is the piece that is active. Shut: no flow. In control: A = 0
 * and pressure to spare. Wide open: B = 0 and the set point is out of reach.
 */
public final class OneWay implements DeviceLaw {
    /** Part of the typical slope that the derivative in flow keeps where a law is flat, so that the matrix stays regular. */
    private static final double FLAT = 1e-9;

    /** What the device watches. */
    private enum Watches {
        NOTHING,
        INLET,
        OUTLET
    }

    private final Watches watches;
    private final double setPa;
    private final double slopePaPerKgPerS;
    private final double flowAtSetKgPerS;
    private final Law open;
    private final double typicalSlope;

    private OneWay(Watches watches, double setPa, double slope, double flowAtSet, Law open, double typicalSlope) {
        this.watches = watches;
        this.setPa = finite("set pressure in Pa", setPa);
        this.slopePaPerKgPerS = atLeastZero("slope in Pa/(kg/s)", slope);
        this.flowAtSetKgPerS = finite("flow at the set pressure in kg/s", flowAtSet);
        this.open = open;
        this.typicalSlope = aboveZero("typical slope in Pa/(kg/s)", typicalSlope);
    }

    /**
     * A check valve, or any law that must not be passed backwards, such as a pump with a check valve: B alone decides. An
     * opening pressure is a constant part of the law.
     *
     * @param open         the law when open
     * @param typicalSlope secant slope at a typical flow in Pa/(kg/s), above 0; see {@link #secantSlope}
     * @return the device
     */
    public static OneWay check(Law open, double typicalSlope) {
        return new OneWay(Watches.NOTHING, 0, 0, 0, open, typicalSlope);
    }

    /**
     * A relief valve or bypass regulator, which opens to hold its inlet: A = p_in - p_ref - p_set - s (Q - Q0). It is shut
     * while the inlet is under p_set + p_ref - s Q0.
     *
     * @param setPa        pressure held at flow Q0 over the reference point, in Pa; over the network's zero without one
     * @param slope        s, rise of the held pressure with flow in Pa/(kg/s), at least 0; 0 is an ideal one
     * @param flowAtSet    Q0 in kg/s
     * @param open         the law when wide open
     * @param typicalSlope secant slope wide open at a typical flow in Pa/(kg/s), above 0
     * @return the device
     */
    public static OneWay relief(double setPa, double slope, double flowAtSet, Law open, double typicalSlope) {
        return new OneWay(Watches.INLET, setPa, slope, flowAtSet, open, typicalSlope);
    }

    /**
     * A pressure-reducing or dead-head regulator, which closes to hold its outlet: A = p_set + p_ref - p_out - s (Q - Q0).
     *
     * @param setPa        pressure held at flow Q0 over the reference point, in Pa; over the network's zero without one
     * @param slope        s, fall of the held pressure with flow in Pa/(kg/s), at least 0; 0 is an ideal one
     * @param flowAtSet    Q0 in kg/s
     * @param open         the law when wide open
     * @param typicalSlope secant slope wide open at a typical flow in Pa/(kg/s), above 0
     * @return the device
     */
    public static OneWay reducing(double setPa, double slope, double flowAtSet, Law open, double typicalSlope) {
        return new OneWay(Watches.OUTLET, setPa, slope, flowAtSet, open, typicalSlope);
    }

    /**
     * Secant slope of a law between zero and a flow.
     *
     * @param law     the law
     * @param flowKgPerS flow in kg/s, above 0
     * @return (drop(Q) - drop(0)) / Q in Pa/(kg/s)
     */
    public static double secantSlope(Law law, double flowKgPerS) {
        double[] out = new double[2];
        law.evaluate(0, out);
        double atRest = out[0];
        law.evaluate(aboveZero("flow in kg/s", flowKgPerS), out);
        return (out[0] - atRest) / flowKgPerS;
    }

    @Override
    public int evaluate(double massFlowKgPerS, double inletPa, double outletPa, double referencePa, double[] out) {
        // backwards, where no answer lies, on a straight line: a square law turned over would draw steps further back
        open.evaluate(massFlowKgPerS < 0 ? 0 : massFlowKgPerS, out);
        double openSlope = massFlowKgPerS < 0 ? typicalSlope : out[1];
        double b = inletPa - outletPa - out[0] - (massFlowKgPerS < 0 ? typicalSlope * massFlowKgPerS : 0);
        double sigma = slopePaPerKgPerS + typicalSlope;
        double a = watches == Watches.NOTHING
                ? Double.POSITIVE_INFINITY
                : (watches == Watches.INLET ? inletPa - referencePa - setPa : setPa + referencePa - outletPa)
                        - slopePaPerKgPerS * (massFlowKgPerS - flowAtSetKgPerS);
        boolean controls = a < b;
        if (sigma * massFlowKgPerS < -(controls ? a : b)) {
            fill(out, sigma * massFlowKgPerS, sigma, 0, 0, 0);
            return SHUT;
        }
        if (!controls) {
            fill(out, -b, Math.max(openSlope, FLAT * sigma), -1, 1, 0);
            return WIDE_OPEN;
        }
        double slope = Math.max(slopePaPerKgPerS, FLAT * sigma);
        if (watches == Watches.INLET) {
            fill(out, -a, slope, -1, 0, 1);
        } else {
            fill(out, -a, slope, 0, 1, -1);
        }
        return IN_CONTROL;
    }

    /** Both minima as half of sum less hypotenuse (C. Chen and O. L. Mangasarian, Math. Program. 71 (1995) 51-69). */
    @Override
    public int evaluateRounded(
            double massFlowKgPerS,
            double inletPa,
            double outletPa,
            double referencePa,
            double roundingPa,
            double[] out) {
        int state = evaluate(massFlowKgPerS, inletPa, outletPa, referencePa, out);
        boolean backwards = massFlowKgPerS < 0;
        open.evaluate(backwards ? 0 : massFlowKgPerS, out);
        double sigma = slopePaPerKgPerS + typicalSlope;
        double bByFlow = -Math.max(backwards ? typicalSlope : out[1], FLAT * sigma);
        double b = inletPa - outletPa - out[0] - (backwards ? typicalSlope * massFlowKgPerS : 0);
        double shareOfA = 0;
        double spare = b;
        double aByFlow = -Math.max(slopePaPerKgPerS, FLAT * sigma);
        if (watches != Watches.NOTHING) {
            double a = (watches == Watches.INLET ? inletPa - referencePa - setPa : setPa + referencePa - outletPa)
                    - slopePaPerKgPerS * (massFlowKgPerS - flowAtSetKgPerS);
            spare = roundedLeast(a, b, roundingPa);
            shareOfA = share(a, b, roundingPa);
        }
        double shut = sigma * massFlowKgPerS;
        double shareOfShut = share(shut, -spare, roundingPa);
        double open = 1 - shareOfShut;
        double inlet = 1 - shareOfA + (watches == Watches.INLET ? shareOfA : 0);
        double outlet = 1 - shareOfA + (watches == Watches.OUTLET ? shareOfA : 0);
        double reference = watches == Watches.INLET ? shareOfA : watches == Watches.OUTLET ? -shareOfA : 0;
        fill(
                out,
                roundedLeast(shut, -spare, roundingPa),
                shareOfShut * sigma - open * (shareOfA * aByFlow + (1 - shareOfA) * bByFlow),
                -open * inlet,
                open * outlet,
                open * reference);
        return state;
    }

    private static double roundedLeast(double x, double y, double rounding) {
        double apart = Math.hypot(x - y, 2 * rounding);
        // without a difference of two large numbers
        return Math.min(x, y) - 2 * rounding * rounding / (apart + Math.abs(x - y));
    }

    /** Derivative of the rounded minimum in its first argument. */
    private static double share(double x, double y, double rounding) {
        double apart = Math.hypot(x - y, 2 * rounding);
        double small = 2 * rounding * rounding / (apart * (apart + Math.abs(x - y)));
        return x > y ? small : 1 - small;
    }

    private static void fill(double[] out, double r, double flow, double inlet, double outlet, double reference) {
        out[0] = r;
        out[1] = flow;
        out[2] = inlet;
        out[3] = outlet;
        out[4] = reference;
    }

    @Override
    public double wideOpenSlopePaPerKgPerS() {
        return typicalSlope;
    }

    @Override
    public double pressureScalePa() {
        double[] out = new double[2];
        open.evaluate(0, out);
        return Math.max(Math.abs(setPa), Math.abs(out[0]));
    }

    @Override
    public double leastFlowKgPerS() {
        return 0;
    }
}
