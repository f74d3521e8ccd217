package org.linedrop.hydraulics;

/** How laws are joined: polynomials that keep value and slope continuous. */
final class Joins {
    private Joins() {}

    /** Smoothstep: 0 up to 0, 1 from 1, slope 0 at both. */
    static double step(double t) {
        if (t <= 0) {
            return 0;
        }
        return t >= 1 ? 1 : t * t * (3 - 2 * t);
    }

    /** Derivative of {@link #step}. */
    static double stepSlope(double t) {
        return t <= 0 || t >= 1 ? 0 : 6 * t * (1 - t);
    }

    /**
     * {@code max(x, floor)} with its corner rounded by a parabola over {@code floor - half .. floor + half}: the floor
     * itself is kept exactly, and the largest deviation is {@code half/4}, at the corner.
     */
    static double roundedFloor(double x, double floor, double half) {
        double above = x - floor + half;
        if (above <= 0) {
            return floor;
        }
        return above >= 2 * half ? x : floor + above * above / (4 * half);
    }

    /** Derivative of {@link #roundedFloor}. */
    static double roundedFloorSlope(double x, double floor, double half) {
        double above = x - floor + half;
        if (above <= 0) {
            return 0;
        }
        return above >= 2 * half ? 1 : above / (2 * half);
    }

    /** {@code min(x, cap)}, rounded like {@link #roundedFloor}. */
    static double roundedCap(double x, double cap, double half) {
        return -roundedFloor(-x, -cap, half);
    }

    /** Derivative of {@link #roundedCap}. */
    static double roundedCapSlope(double x, double cap, double half) {
        return roundedFloorSlope(-x, -cap, half);
    }

    /** A straight line through a table; the end values hold outside. */
    static double interpolate(double[] x, double[] y, double at) {
        if (at <= x[0]) {
            return y[0];
        }
        for (int i = 1; i < x.length; i++) {
            if (at <= x[i]) {
                return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
            }
        }
        return y[y.length - 1];
    }

    /**
     * Continues a law below a flow through zero, {@code a Q + b Q^3} with the value and slope of the law at the join.
     * Where the law is linear there (exponent 1) this is a straight line; it rises for every exponent under 3.
     *
     * @param flow     flow, any sign, not larger than the join
     * @param join     flow at the join, over zero
     * @param drop     the law's drop at the join
     * @param slope    the law's slope at the join
     * @param out      modified: value and slope
     */
    static void continueToZero(double flow, double join, double drop, double slope, double[] out) {
        double secant = drop / join;
        double cubic = (slope - secant) / (2 * join * join);
        double linear = secant - cubic * join * join;
        out[0] = flow * (linear + cubic * flow * flow);
        out[1] = linear + 3 * cubic * flow * flow;
    }

    /** Adds a loss K + K1/Re on a bore to what stands in the slots. */
    static void addLocal(
            double flow, double boreM, double k, double k1, double density, double viscosity, double[] out) {
        double drop = out[0];
        double slope = out[1];
        LocalLoss.pressureDrop(flow, boreM, k, k1, density, viscosity, out);
        out[0] += drop;
        out[1] += slope;
    }

    /** Checks a shape parameter; NaN fails. */
    static double within(String what, double value, double low, double high, String advice) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    what + " " + value + " is outside the law: it must be from " + low + " to " + high + "; " + advice);
        }
        return value;
    }
}
