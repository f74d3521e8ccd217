package org.linedrop.benchmarks;

import org.linedrop.network.Network;

/**
 * The equations of a small network of ordinary laws, written out densely as a textbook does: flows and free pressures
 * unknown, a law per branch and a balance per free point, each over a scale. Free points come first in the network.
 */
final class DenseEquations {
    private final Network network;
    private final int branches;
    private final int points;
    private final double pressureScale;
    private final double flowScale;
    private final double[] out = new double[2];

    DenseEquations(Network network, int branches, int points, double pressureScale, double flowScale) {
        this.network = network;
        this.branches = branches;
        this.points = points;
        this.pressureScale = pressureScale;
        this.flowScale = flowScale;
    }

    private double pressure(int point, double[] x) {
        return point < points ? x[branches + point] : network.fixedPressurePa(point);
    }

    /** Residuals and their derivatives; the matrix must come zeroed. */
    void evaluate(double[] x, double[] r, double[][] jacobian) {
        residual(x, r);
        for (int b = 0; b < branches; b++) {
            int from = network.from(b);
            int to = network.to(b);
            network.law(b).evaluate(x[b], out);
            jacobian[b][b] = -pressureScale * out[1];
            if (from < points) {
                jacobian[b][branches + from] = pressureScale;
                jacobian[branches + from][b] = flowScale;
            }
            if (to < points) {
                jacobian[b][branches + to] = -pressureScale;
                jacobian[branches + to][b] = -flowScale;
            }
        }
    }

    /** Residuals alone. */
    void residual(double[] x, double[] r) {
        for (int i = 0; i < points; i++) {
            r[branches + i] = flowScale * network.drawKgPerS(i);
        }
        for (int b = 0; b < branches; b++) {
            int from = network.from(b);
            int to = network.to(b);
            network.law(b).evaluate(x[b], out);
            r[b] = pressureScale * (pressure(from, x) - pressure(to, x) - out[0]);
            if (from < points) {
                r[branches + from] += flowScale * x[b];
            }
            if (to < points) {
                r[branches + to] -= flowScale * x[b];
            }
        }
    }

    /** Newton from x, which becomes the solution. */
    void newton(double[] x, double tolerance, int budget) {
        int n = x.length;
        double[] r = new double[n];
        residual(x, r);
        for (int k = 0; k < budget; k++) {
            double[][] a = new double[n][n];
            evaluate(x, r, a);
            double before = norm(r);
            double[] old = x.clone();
            double[] step = r.clone();
            eliminate(a, step);
            double part = 1;
            do {
                for (int i = 0; i < n; i++) {
                    x[i] = old[i] - part * step[i];
                }
                residual(x, r);
                part /= 2;
            } while (!(norm(r) < before) && before > tolerance && part > 1e-9);
            if (norm(r) <= tolerance && before <= tolerance) {
                return;
            }
        }
        throw new IllegalStateException("dense Newton spent its budget at " + norm(r));
    }

    private static double norm(double[] r) {
        double sum = 0;
        for (double v : r) {
            sum += v * v;
        }
        return Math.sqrt(sum);
    }

    /** Gaussian elimination with partial pivoting; b becomes the solution. */
    private static void eliminate(double[][] a, double[] b) {
        int n = b.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                best = Math.abs(a[i][k]) > Math.abs(a[best][k]) ? i : best;
            }
            double[] row = a[best];
            a[best] = a[k];
            a[k] = row;
            double value = b[best];
            b[best] = b[k];
            b[k] = value;
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / row[k];
                if (factor != 0) {
                    for (int j = k + 1; j < n; j++) {
                        a[i][j] -= factor * row[j];
                    }
                    b[i] -= factor * value;
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = b[k];
            for (int j = k + 1; j < n; j++) {
                sum -= a[k][j] * b[j];
            }
            b[k] = sum / a[k][k];
        }
    }
}
