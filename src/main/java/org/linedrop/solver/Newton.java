package org.linedrop.solver;

import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/** Steps of the direct way, and what is common to both ways. */
final class Newton {
    /** Part of a step when there is none. */
    static final double FAILED = -1;
    /** No step has been let go since the norm last fell. */
    private static final int NOT_WATCHED = -1;
    /** Steps that may pass over a kink without lowering the norm. */
    static final int WATCHED_STEPS = 8;
    /** Steps of the direct way within which the norm has to be halved. */
    private static final int PATIENCE = 30;
    /** A correction under this share of the largest flow is rounding. */
    private static final double ROUNDING = 1e-14;

    private Newton() {}

    /** Runs steps from the present state. */
    static Outcome run(Network network, Workspace w, Options options) {
        begin(network, w);
        while (w.iterations < options.maxIterations()) {
            double part = quicker(network, w, options);
            if (part == FAILED || expired(w) || crawls(w, PATIENCE)) {
                unwatch(network, w);
                return Outcome.STALLED;
            }
            if (arrived(network, w, options, part)) {
                return Outcome.CONVERGED;
            }
        }
        unwatch(network, w);
        return Outcome.BUDGET_SPENT;
    }

    static void begin(Network network, Workspace w) {
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        w.record(w.norm);
        w.release = NOT_WATCHED;
        w.lastCorrection = 0;
        mark(w);
    }

    /** Ends a step. True when it was the last; then one more was taken, where it could change anything. */
    static boolean arrived(Network network, Workspace w, Options options, double part) {
        if (w.careful && part == 1) {
            w.correction = Advance.moved(w);
        }
        boolean small = part == 1 && w.correction <= options.flowTolerance() * w.flowScale;
        Residual.scale(w, network);
        w.record(w.norm);
        if (small && Residual.within(w, options)) {
            boolean rounding = w.correction * (w.correction / w.lastCorrection) <= ROUNDING * w.flowScale;
            if (!rounding || !closes(network, w)) {
                oneMore(network, w, options);
            }
            return true;
        }
        w.lastCorrection = part == 1 ? w.correction : 0;
        return false;
    }

    /**
     * Takes from devices that are shut what passes them by rounding, as the next step would, which is straight in that
     * piece. False when more than that passes.
     */
    private static boolean closes(Network network, Workspace w) {
        for (int b : w.borderBranch) {
            if (network.kind(b) == Network.Kind.DEVICE && w.state[b] == DeviceLaw.SHUT && w.flow[b] != 0) {
                if (Math.abs(w.flow[b]) > ROUNDING * w.flowScale) {
                    return false;
                }
                w.flow[b] = 0;
            }
        }
        return true;
    }

    /** The far step, else the true one, else that one in full over a kink. */
    private static double quicker(Network network, Workspace w, Options options) {
        double part = step(network, w, options, true);
        if (part == 0) {
            part = step(network, w, options, false);
        }
        return part == 0 ? passOver(network, w) : part;
    }

    static void back(Network network, Workspace w, double[] flow, double[] pressure) {
        System.arraycopy(flow, 0, w.flow, 0, flow.length);
        System.arraycopy(pressure, 0, w.pressure, 0, pressure.length);
        Residual.evaluate(w, network);
    }

    /**
     * Where pieces of devices meet, no part of a step may lower the norm; then up to {@link #WATCHED_STEPS} steps are let
     * go and must end under the norm they started from (R. M. Chamberlain et al., Math. Program. Study 16 (1982) 1-17),
     * else the state before them is restored.
     */
    private static double passOver(Network network, Workspace w) {
        if (w.borderBranch.length == 0) {
            return FAILED;
        }
        if (w.release == NOT_WATCHED) {
            w.release = w.iterations + WATCHED_STEPS;
            w.watchedNorm = w.norm;
            System.arraycopy(w.flow, 0, w.watchedFlow, 0, w.flow.length);
            System.arraycopy(w.pressure, 0, w.watchedPressure, 0, w.pressure.length);
        }
        Advance.keep(w);
        Advance.move(network, w, 1);
        return Double.isFinite(Residual.evaluate(w, network)) ? 1 : FAILED;
    }

    /** Whether the steps let go have not come under the norm they started from. */
    private static boolean expired(Workspace w) {
        if (w.release != NOT_WATCHED && w.norm < w.watchedNorm) {
            w.release = NOT_WATCHED;
        }
        return w.release != NOT_WATCHED && w.iterations >= w.release;
    }

    /** Whether so many steps have not halved the norm: too slow to arrive. */
    static boolean crawls(Workspace w, int patience) {
        if (w.norm <= 0.5 * w.markedNorm) {
            mark(w);
        }
        return w.iterations - w.markedStep >= patience;
    }

    static void mark(Workspace w) {
        w.markedNorm = w.norm;
        w.markedStep = w.iterations;
    }

    private static void unwatch(Network network, Workspace w) {
        if (w.release != NOT_WATCHED) {
            back(network, w, w.watchedFlow, w.watchedPressure);
        }
    }

    /** Computes a step and takes as much of it as helps; returns that part, 0 when none does, FAILED without a step. */
    static double step(Network network, Workspace w, Options options, boolean far) {
        return solveStep(network, w, far) ? Advance.along(network, w, options) : FAILED;
    }

    static boolean solveStep(Network network, Workspace w, boolean far) {
        if (!w.step.factor(network, far)) {
            return false;
        }
        w.step.solve(network);
        if (w.careful) {
            w.tree.choose(network, w);
        }
        w.iterations++;
        w.correction = largest(w.flowStep);
        return true;
    }

    /** One step past the tolerances; kept unless it leaves them. */
    private static void oneMore(Network network, Workspace w, Options options) {
        double before = w.norm;
        if (!w.step.factor(network, false)) {
            return;
        }
        w.step.solve(network);
        Advance.keep(w);
        Advance.move(network, w, 1);
        double after = Residual.evaluate(w, network);
        if (!(after <= before || Residual.within(w, options))) {
            Advance.restore(network, w);
        }
        w.iterations++;
        w.record(w.norm);
    }

    private static double largest(double[] values) {
        double most = 0;
        for (double v : values) {
            // written so that NaN is the largest
            if (!(Math.abs(v) <= most)) {
                most = Math.abs(v);
            }
        }
        return most;
    }
}
