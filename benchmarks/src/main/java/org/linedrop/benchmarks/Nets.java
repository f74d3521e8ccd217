package org.linedrop.benchmarks;

import org.linedrop.hydraulics.Transition;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;
import org.linedrop.solver.Workspace;

/** Large invented networks of rough bores with local losses, and the check of an answer by walking all of it. */
public final class Nets {
    private static final double DENSITY = 998;
    private static final double ROUGHNESS_M = 5e-6;
    private static final double VISCOSITY = 1.0e-3;
    private static final double HIGH_PA = 5e5;
    private static final double LOW_PA = 3e5;

    private Nets() {}

    /**
     * A square grid, fed at two opposite corners, with a draw at every seventh point.
     *
     * @param side points a side, at least 2
     * @return its builder
     */
    public static NetworkBuilder grid(int side) {
        NetworkBuilder b = Network.builder();
        int points = side * side;
        double draw = 0.6 / (points / 7 + 1);
        for (int i = 0; i < points; i++) {
            b.freePoint(i % 7 == 3 ? draw : 0);
        }
        for (int i = 0; i < points; i++) {
            if (i % side < side - 1) {
                b.branch(i, i + 1, pipe(2L * i));
            }
            if (i + side < points) {
                b.branch(i, i + side, pipe(2L * i + 1));
            }
        }
        b.branch(b.fixedPoint(HIGH_PA), 0, main());
        b.branch(b.fixedPoint(LOW_PA), points - 1, main());
        return b;
    }

    /**
     * A tree of mains and twigs, each point fed from one of lower number, with one cross-line for every hundred pipes.
     *
     * @param pipes number of pipes, at least 100
     * @return its builder
     */
    public static NetworkBuilder treeLike(int pipes) {
        NetworkBuilder b = Network.builder();
        int crossLines = pipes / 100;
        int points = pipes - crossLines;
        double draw = 0.6 / points;
        for (int i = 0; i < points; i++) {
            b.freePoint(draw);
        }
        b.branch(b.fixedPoint(HIGH_PA), 0, main());
        for (int i = 1; i < points; i++) {
            // two or three twigs a point: the depth stays that of a plumbing tree
            int parent = (int) ((i - 1) / 2.5);
            double bore = Math.max(6e-3, 60e-3 * Math.pow(i + 1.0, -0.25));
            b.branch(parent, i, bore(length(i), bore, 0.5));
        }
        for (int k = 1; k < crossLines; k++) {
            int i = points - 1 - 37 * k;
            b.branch(i, i - 19, pipe(k));
        }
        return b;
    }

    private static Law bore(double lengthM, double boreM, double lossCoefficient) {
        return Prescribed.roughBore(
                lengthM, boreM, ROUGHNESS_M, lossCoefficient, DENSITY, VISCOSITY, Transition.DEFAULT);
    }

    private static Law main() {
        return bore(5, 40e-3, 1.5);
    }

    private static double length(long i) {
        return 0.5 + 0.01 * (i * 7919 % 101);
    }

    private static Law pipe(long i) {
        double bore = (6 + i * 104_729 % 7) * 1e-3;
        return bore(length(i), bore, 0.3 + 0.1 * (i % 5));
    }

    /**
     * Checks an answer against the laws and the balance of every point.
     *
     * @param network   what was solved
     * @param workspace holds the answer
     * @throws IllegalStateException naming the branch or point that is off
     */
    public static void check(Network network, Workspace workspace) {
        double[] out = new double[2];
        double[] left = new double[network.pointCount()];
        double largest = 0;
        for (int b = 0; b < network.branchCount(); b++) {
            double flow = workspace.massFlowKgPerS(b);
            largest = Math.max(largest, Math.abs(flow));
            left[network.from(b)] += flow;
            left[network.to(b)] -= flow;
            if (network.kind(b) == Network.Kind.LAW) {
                network.law(b).evaluate(flow, out);
                double drop = workspace.totalPressurePa(network.from(b)) - workspace.totalPressurePa(network.to(b));
                if (!(Math.abs(drop - out[0]) <= 1e-9 * HIGH_PA)) {
                    throw new IllegalStateException("branch " + b + ": " + drop + " Pa, its law says " + out[0]);
                }
            }
        }
        for (int i = 0; i < network.pointCount(); i++) {
            if (!network.fixed(i) && !(Math.abs(left[i] + network.drawKgPerS(i)) <= 1e-9 * largest)) {
                throw new IllegalStateException("point " + i + " is off balance by " + left[i]);
            }
        }
    }
}
