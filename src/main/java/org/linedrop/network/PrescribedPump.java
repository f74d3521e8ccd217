package org.linedrop.network;

import static org.linedrop.network.Prescribed.aboveZero;
import static org.linedrop.network.Prescribed.finite;
import static org.linedrop.network.Prescribed.square;

/**
 * Pumps exactly as a textbook or a user states them: the negative rise of total pressure as a law. Forward flow is from
 * suction to delivery.
 */
public final class PrescribedPump {
    private PrescribedPump() {}

    /** How a pump table is read between its rows. */
    public enum Between {
        /** Straight lines. */
        STRAIGHT,
        /** The monotone cubic of F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238-246. */
        MONOTONE_CUBIC
    }

    /**
     * A polynomial head rise, c0 + c1 Q + c2 Q^2 + ..., continued for back-flow by odd extension about the shut-off head:
     * rise(-Q) = 2 c0 - rise(Q).
     *
     * @param coefficients   c0, c1, ... in m/(m3/s)^i, at least one
     * @param densityKgPerM3 density in kg/m3, above 0
     * @param gravityMPerS2  gravity of the source in m/s2, above 0
     * @return the law
     */
    public static Law polynomial(double[] coefficients, double densityKgPerM3, double gravityMPerS2) {
        if (coefficients.length == 0) {
            throw new IllegalArgumentException("a pump polynomial needs at least its shut-off head");
        }
        double[] pressure = new double[coefficients.length];
        double factor = aboveZero("density in kg/m3", densityKgPerM3) * aboveZero("gravity in m/s2", gravityMPerS2);
        for (int i = 0; i < pressure.length; i++) {
            pressure[i] = factor * finite("coefficient " + i, coefficients[i]);
            factor /= densityKgPerM3;
        }
        return new Polynomial(pressure);
    }

    /**
     * A table of head rise against flow. Outside the table the end slopes continue, so that iterates may leave it; an
     * answer outside is for the caller to report.
     *
     * @param flowM3PerS     flows in m3/s, rising, two or more
     * @param headM          head rise in m at each flow, falling strictly from the second row on
     * @param between        how to read between rows
     * @param densityKgPerM3 density in kg/m3, above 0
     * @param gravityMPerS2  gravity of the source in m/s2, above 0
     * @return the law
     */
    public static Law table(
            double[] flowM3PerS, double[] headM, Between between, double densityKgPerM3, double gravityMPerS2) {
        aboveZero("density in kg/m3", densityKgPerM3);
        aboveZero("gravity in m/s2", gravityMPerS2);
        double[] massFlow = new double[flowM3PerS.length];
        double[] rise = new double[headM.length];
        for (int i = 0; i < massFlow.length; i++) {
            massFlow[i] = flowM3PerS[i] * densityKgPerM3;
        }
        for (int i = 0; i < rise.length; i++) {
            rise[i] = headM[i] * densityKgPerM3 * gravityMPerS2;
        }
        return pressureTable(massFlow, rise, between);
    }

    /**
     * A table of pressure rise against mass flow; see {@link #table}.
     *
     * @param massFlowKgPerS mass flows in kg/s, rising, two or more
     * @param risePa         rise of total pressure in Pa at each flow, falling strictly from the second row on
     * @param between        how to read between rows
     * @return the law
     */
    public static Law pressureTable(double[] massFlowKgPerS, double[] risePa, Between between) {
        int rows = massFlowKgPerS.length;
        if (rows < 2 || risePa.length != rows) {
            throw new IllegalArgumentException("a pump table needs two rows or more, each with flow and rise, but has "
                    + rows + " and " + risePa.length);
        }
        for (int i = 1; i < rows; i++) {
            if (!(massFlowKgPerS[i] > massFlowKgPerS[i - 1])) {
                throw new IllegalArgumentException(
                        "pump table row " + (i + 1) + ": flow must rise from row to row, but " + massFlowKgPerS[i]
                                + " kg/s follows " + massFlowKgPerS[i - 1]);
            }
            if (i > 1 && !(risePa[i] < risePa[i - 1])) {
                throw new IllegalArgumentException("pump table row " + (i + 1)
                        + ": rise must fall from the second row on, but " + risePa[i] + " Pa follows " + risePa[i - 1]);
            }
        }
        double[] x = massFlowKgPerS.clone();
        double[] y = risePa.clone();
        return new Table(x, y, between == Between.STRAIGHT ? null : monotoneSlopes(x, y));
    }

    /**
     * Constant hydraulic power: rise = P rho / m (m in kg/s), continued below a least flow by the tangent there, since the
     * rise has no limit at zero flow.
     *
     * @param powerW         hydraulic power in W, above 0
     * @param densityKgPerM3 density in kg/m3, above 0
     * @param leastM3PerS    flow in m3/s below which the tangent continues, above 0 and well under the answer
     * @return the law
     */
    public static Law constantPower(double powerW, double densityKgPerM3, double leastM3PerS) {
        aboveZero("hydraulic power in W", powerW);
        aboveZero("density in kg/m3", densityKgPerM3);
        return new ConstantPower(
                powerW * densityKgPerM3, aboveZero("least flow in m3/s", leastM3PerS) * densityKgPerM3);
    }

    /** Fritsch and Carlson's slopes: mean of the neighbouring secants, cut back so that alpha^2 + beta^2 is at most 9. */
    private static double[] monotoneSlopes(double[] x, double[] y) {
        int n = x.length;
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slope = new double[n];
        slope[0] = secant[0];
        slope[n - 1] = secant[n - 2];
        for (int i = 1; i < n - 1; i++) {
            slope[i] = secant[i - 1] * secant[i] <= 0 ? 0 : (secant[i - 1] + secant[i]) / 2;
        }
        for (int i = 0; i < n - 1; i++) {
            if (secant[i] == 0) {
                slope[i] = 0;
                slope[i + 1] = 0;
                continue;
            }
            double size = square(slope[i] / secant[i]) + square(slope[i + 1] / secant[i]);
            if (size > 9) {
                double cut = 3 / Math.sqrt(size);
                slope[i] *= cut;
                slope[i + 1] *= cut;
            }
        }
        return slope;
    }

    private static final class Polynomial implements Law {
        private final double[] c;

        Polynomial(double[] pressureCoefficients) {
            c = pressureCoefficients;
        }

        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            double size = Math.abs(massFlowKgPerS);
            double rise = 0;
            double slope = 0;
            for (int i = c.length - 1; i > 0; i--) {
                slope = slope * size + i * c[i];
                rise = (rise + c[i]) * size;
            }
            dropPaAndSlope[0] = massFlowKgPerS < 0 ? rise - c[0] : -rise - c[0];
            dropPaAndSlope[1] = -slope;
        }
    }

    private static final class Table implements Law {
        private final double[] x;
        private final double[] y;
        private final double @org.jspecify.annotations.Nullable [] slope;

        Table(double[] x, double[] y, double @org.jspecify.annotations.Nullable [] slope) {
            this.x = x;
            this.y = y;
            this.slope = slope;
        }

        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            int last = x.length - 1;
            int i = 0;
            while (i < last - 1 && massFlowKgPerS >= x[i + 1]) {
                i++;
            }
            double width = x[i + 1] - x[i];
            double secant = (y[i + 1] - y[i]) / width;
            double along = massFlowKgPerS - x[i];
            if (slope == null) {
                dropPaAndSlope[0] = -(y[i] + secant * along);
                dropPaAndSlope[1] = -secant;
            } else if (along < 0) {
                dropPaAndSlope[0] = -(y[0] + slope[0] * along);
                dropPaAndSlope[1] = -slope[0];
            } else if (along > width) {
                dropPaAndSlope[0] = -(y[last] + slope[last] * (along - width));
                dropPaAndSlope[1] = -slope[last];
            } else {
                double second = (3 * secant - 2 * slope[i] - slope[i + 1]) / width;
                double third = (slope[i] + slope[i + 1] - 2 * secant) / (width * width);
                dropPaAndSlope[0] = -(y[i] + along * (slope[i] + along * (second + along * third)));
                dropPaAndSlope[1] = -(slope[i] + along * (2 * second + 3 * along * third));
            }
        }
    }

    private record ConstantPower(double powerTimesDensity, double leastKgPerS) implements Law {
        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            double flow = Math.max(massFlowKgPerS, leastKgPerS);
            double slope = powerTimesDensity / square(flow);
            dropPaAndSlope[0] = slope * (massFlowKgPerS - flow) - powerTimesDensity / flow;
            dropPaAndSlope[1] = slope;
        }
    }
}
