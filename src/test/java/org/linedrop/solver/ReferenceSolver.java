package org.linedrop.solver;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;
import org.linedrop.network.Network;

/**
 * A slow second opinion for networks of ordinary branches, by another formulation and on another library: flows are a
 * particular flow plus a combination of closed loops (the null space of the balance, by dense QR), and the loops minimise
 * the content, the sum over branches of the integral of drop over flow, which is convex (E. C. Cherry, Phil. Mag. 42
 * (1951) 1161-1177; from memory). Slopes are central differences; every step ends in a Brent search along the line.
 * Pressures follow by least squares. Nothing of the solver is used.
 */
final class ReferenceSolver {
    private static final int MOST_STEPS = 400;

    private final Network network;
    private final int branches;
    private final int[] row;
    /** Branches that touch a free point, in the order of the columns. */
    private final int[] inner;

    private final RealMatrix balance;
    private final RealMatrix loops;
    private final double[] out = new double[2];
    final double[] flow;
    final double[] pressure;

    private ReferenceSolver(Network network) {
        this.network = network;
        branches = network.branchCount();
        row = new int[network.pointCount()];
        int free = 0;
        inner = IntStream.range(0, branches)
                .filter(b -> !(network.fixed(network.from(b)) && network.fixed(network.to(b))))
                .toArray();
        for (int i = 0; i < row.length; i++) {
            row[i] = network.fixed(i) ? -1 : free++;
        }
        balance = new Array2DRowRealMatrix(free, inner.length);
        RealVector draw = new ArrayRealVector(free);
        for (int i = 0; i < row.length; i++) {
            if (row[i] >= 0) {
                draw.setEntry(row[i], -network.drawKgPerS(i));
            }
        }
        for (int k = 0; k < inner.length; k++) {
            if (row[network.from(inner[k])] >= 0) {
                balance.addToEntry(row[network.from(inner[k])], k, 1);
            }
            if (row[network.to(inner[k])] >= 0) {
                balance.addToEntry(row[network.to(inner[k])], k, -1);
            }
        }
        // balance^T = Q R: the first columns of Q span the flows that draws force, the rest are loops
        QRDecomposition qr = new QRDecomposition(balance.transpose());
        RealMatrix q = qr.getQ();
        RealMatrix r = qr.getR().getSubMatrix(0, free - 1, 0, free - 1);
        RealVector forced = new QRDecomposition(r.transpose()).getSolver().solve(draw);
        int all = inner.length - 1;
        flow = new double[branches];
        spread(q.getSubMatrix(0, all, 0, free - 1).operate(forced), 1);
        loops = inner.length > free ? q.getSubMatrix(0, all, free, all) : null;
        pressure = new double[row.length];
    }

    static ReferenceSolver solve(Network network) {
        ReferenceSolver s = new ReferenceSolver(network);
        for (int b = 0; b < s.branches; b++) {
            if (network.fixed(network.from(b)) && network.fixed(network.to(b))) {
                s.alone(b);
            }
        }
        if (s.loops != null) {
            s.minimise();
        }
        s.pressures();
        return s;
    }

    private void spread(RealVector step, double size) {
        for (int k = 0; k < inner.length; k++) {
            flow[inner[k]] += size * step.getEntry(k);
        }
    }

    /** A branch between two given pressures is a problem of its own. */
    private void alone(int b) {
        double reach = network.flowScaleKgPerS();
        while (drop(b, reach) < 0 || drop(b, -reach) > 0) {
            reach *= 2;
        }
        flow[b] = new BrentSolver(1e-15, 1e-16).solve(500, m -> drop(b, m), -reach, reach);
    }

    private void minimise() {
        double scale = network.pressureScalePa();
        for (int k = 0; k < MOST_STEPS; k++) {
            RealVector gradient = loops.preMultiply(new ArrayRealVector(drops()));
            double loopResidual = gradient.getLInfNorm() / scale;
            // differences over a wide span first: a square law at rest has no slope to go by
            RealVector step = loops.operate(direction(gradient, Math.max(1e-11, Math.pow(10, -1 - k))));
            double size = along(step);
            double lastStep = size * step.getLInfNorm() / largest();
            spread(step, size);
            if (k > 12 && (lastStep < 1e-14 || (loopResidual < 1e-13 && lastStep < 1e-10))) {
                return;
            }
        }
    }

    private double largest() {
        return Math.max(Arrays.stream(flow).map(Math::abs).max().orElse(0), network.flowScaleKgPerS());
    }

    private RealVector direction(RealVector gradient, double span) {
        int count = loops.getColumnDimension();
        RealMatrix curvature = new Array2DRowRealMatrix(count, count);
        double typical = 0;
        double[] slope = new double[inner.length];
        for (int k = 0; k < slope.length; k++) {
            int b = inner[k];
            double h = Math.max(1e-5 * Math.abs(flow[b]), span * largest());
            slope[k] = (drop(b, flow[b] + h) - drop(b, flow[b] - h)) / (2 * h);
            typical = Math.max(typical, slope[k]);
        }
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = i == j ? 1e-15 * typical : 0;
                for (int k = 0; k < slope.length; k++) {
                    sum += loops.getEntry(k, i) * slope[k] * loops.getEntry(k, j);
                }
                curvature.setEntry(i, j, sum);
                curvature.setEntry(j, i, sum);
            }
        }
        try {
            return new QRDecomposition(curvature).getSolver().solve(gradient).mapMultiplyToSelf(-1);
        } catch (SingularMatrixException e) {
            return gradient.mapMultiply(-1 / typical);
        }
    }

    /** Where the content is least along a direction: its derivative there rises, so a bracket and Brent find it. */
    private double along(RealVector step) {
        UnivariateFunction derivative = t -> {
            double sum = 0;
            for (int k = 0; k < inner.length; k++) {
                sum += step.getEntry(k) * drop(inner[k], flow[inner[k]] + t * step.getEntry(k));
            }
            return sum;
        };
        double high = 1;
        if (!(derivative.value(0) < 0)) {
            return 0;
        }
        while (derivative.value(high) < 0 && high < 1e6) {
            high *= 2;
        }
        double atOne = derivative.value(1);
        if (Math.abs(atOne) < 1e-6 * Math.abs(derivative.value(0))) {
            return 1;
        }
        return derivative.value(high) < 0 ? high : new BrentSolver(1e-14, 1e-14).solve(500, derivative, 0, high);
    }

    private double[] drops() {
        double[] drops = new double[inner.length];
        for (int k = 0; k < drops.length; k++) {
            drops[k] = drop(inner[k], flow[inner[k]]);
        }
        return drops;
    }

    /** Drop of a branch between free points, given pressures counted as part of it. */
    private double drop(int b, double flowKgPerS) {
        network.law(b).evaluate(flowKgPerS, out);
        double drop = out[0];
        if (network.fixed(network.from(b))) {
            drop -= network.fixedPressurePa(network.from(b));
        }
        if (network.fixed(network.to(b))) {
            drop += network.fixedPressurePa(network.to(b));
        }
        return drop;
    }

    private void pressures() {
        double[] p = new QRDecomposition(balance.transpose())
                .getSolver()
                .solve(new ArrayRealVector(drops()))
                .toArray();
        for (int i = 0; i < row.length; i++) {
            pressure[i] = row[i] < 0 ? network.fixedPressurePa(i) : p[row[i]];
        }
    }
}
