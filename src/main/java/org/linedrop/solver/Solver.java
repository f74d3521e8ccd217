package org.linedrop.solver;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Inner;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/**
 * Solves networks: active-piece Newton on flows and pressures, each step halved until the scaled residual falls by the
 * rule of L. Armijo (Pacific J. Math. 16 (1966) 1-3), with continuation in the devices' slopes when that fails.
 *
 * <p>Converged means: node imbalance at most {@code flowTolerance} times the largest flow, every law residual at most
 * {@code pressureTolerance} times the pressure scale, the last full correction at most {@code flowTolerance} times the
 * largest flow, and one more step taken, unless corrections shrink so fast that it would be under 1e-14 of the largest
 * flow (P. Deuflhard, Newton Methods for Nonlinear Problems (2004) 2.1: the next correction is at most the last times the
 * ratio of the last two). Immutable; one solver serves any number of threads, each with its own
 * workspace.
 */
@Inner
public final class Solver {
    private static final double ARMIJO = 1e-4;
    /** A correction under this share of the largest flow is rounding. */
    private static final double ROUNDING = 1e-14;

    private static final int MOST_HALVINGS = 30;
    /** Part of a step when the matrix is singular. */
    private static final double FAILED = -1;
    /** No step has been let go since the norm last fell. */
    private static final int NOT_WATCHED = -1;
    /** Steps that may pass over a kink without lowering the norm. */
    private static final int WATCHED_STEPS = 8;
    /** Slopes unchanged, pieces joined smoothly. */
    private static final double JOINED = Double.MIN_NORMAL;
    /** Multiples of each device's natural slope on the way down to the law itself. */
    private static final double[] SOFTENING = {1e3, 1e2, 10, 1, 0.1, 0.01, JOINED, 0};

    private final Options options;

    private Solver(Options options) {
        this.options = options;
    }

    /**
     * A solver.
     *
     * @param options budget and tolerances
     * @return the solver
     */
    public static Solver of(Options options) {
        return new Solver(options);
    }

    /**
     * A solver with {@link Options#usual()}.
     *
     * @return the solver
     */
    public static Solver usual() {
        return new Solver(Options.usual());
    }

    /**
     * Solves from rest in memory of its own.
     *
     * @param network the network
     * @return the solution, or the best state reached with the reason
     */
    public Solution solve(Network network) {
        Workspace workspace = Workspace.of(network);
        solve(network, null, workspace);
        return workspace.snapshot();
    }

    /**
     * The kernel: solves in the caller's memory and allocates nothing after the workspace's first use.
     *
     * @param network   the network
     * @param start     where to start, of a network with the same numbers of points and branches; null to start from rest
     * @param workspace modified: memory made for this network's structure; holds the answer afterwards
     * @return how the solve ended
     */
    public Outcome solve(Network network, @Nullable Solution start, Workspace workspace) {
        workspace.bind(network);
        workspace.outcome = run(network, start, workspace);
        return workspace.outcome;
    }

    private Outcome run(Network network, @Nullable Solution start, Workspace w) {
        atRest(network, w);
        Outcome refused = Checks.before(network, w);
        if (refused != null) {
            Residual.evaluate(w, network, 0);
            Residual.freeze(w, network);
            w.record(w.norm);
            return refused;
        }
        Outcome outcome = start == null ? fromRest(network, w) : from(start, network, w);
        if (outcome == Outcome.CONVERGED) {
            outcome = newton(network, w, 0);
        }
        if (outcome == Outcome.STALLED && w.borderBranch.length > 0) {
            outcome = continued(network, w);
            w.starved = outcome == Outcome.STALLED ? w.step.starvedRegion(network) : -1;
            outcome = w.starved >= 0 ? Outcome.CUT_OFF : outcome;
        }
        return outcome == Outcome.CONVERGED ? Checks.after(network, w) : outcome;
    }

    private static void atRest(Network network, Workspace w) {
        Arrays.fill(w.flow, 0);
        double level = 0;
        for (int i = network.pointCount() - 1; i >= 0; i--) {
            level = network.fixed(i) ? network.fixedPressurePa(i) : level;
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = network.fixed(i) ? network.fixedPressurePa(i) : level;
        }
    }

    private static Outcome fromRest(Network network, Workspace w) {
        Residual.evaluate(w, network, 0);
        Residual.scale(w, network);
        if (!w.step.fromRest(network)) {
            return Outcome.STALLED;
        }
        for (int b = 0; b < w.flow.length; b++) {
            w.flow[b] += w.flowStep[b];
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] += w.pressureStep[i];
        }
        w.tree.balance(network, w.flow);
        return Outcome.CONVERGED;
    }

    private static Outcome from(Solution start, Network network, Workspace w) {
        if (start.branchCount() != network.branchCount() || start.pointCount() != network.pointCount()) {
            throw new IllegalArgumentException("the start has " + start.pointCount() + " points and "
                    + start.branchCount() + " branches, the network " + network.pointCount() + " and "
                    + network.branchCount());
        }
        start.copyTo(w);
        for (int i = 0; i < w.pressure.length; i++) {
            if (network.fixed(i)) {
                w.pressure[i] = network.fixedPressurePa(i);
            }
        }
        return Outcome.CONVERGED;
    }

    /**
     * First joins the pieces of the devices smoothly, then walks down their slopes; each stage starts where the one
     * before ended. When all fails, the better state by the residual of the laws themselves is kept.
     */
    private Outcome continued(Network network, Workspace w) {
        double direct = Residual.evaluate(w, network, 0);
        System.arraycopy(w.flow, 0, w.bestFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.bestPressure, 0, w.pressure.length);
        Outcome outcome = stages(network, w, SOFTENING.length - 2);
        if (outcome != Outcome.CONVERGED) {
            outcome = stages(network, w, 0);
        }
        if (outcome != Outcome.CONVERGED && !(Residual.evaluate(w, network, 0) <= direct)) {
            System.arraycopy(w.bestFlow, 0, w.flow, 0, w.flow.length);
            System.arraycopy(w.bestPressure, 0, w.pressure, 0, w.pressure.length);
            Residual.evaluate(w, network, 0);
        }
        return outcome;
    }

    private Outcome stages(Network network, Workspace w, int first) {
        w.continuations++;
        atRest(network, w);
        Outcome outcome = fromRest(network, w);
        for (int i = first; i < SOFTENING.length && outcome == Outcome.CONVERGED; i++) {
            outcome = newton(network, w, SOFTENING[i]);
        }
        return outcome;
    }

    /**
     * Runs steps from the present state. Where pieces of devices meet, no part of a step may lower the norm; then up to
     * {@link #WATCHED_STEPS} steps are let go and must end under the norm they started from (R. M. Chamberlain et al.,
     * Math. Program. Study 16 (1982) 1-17), else the state before them is restored.
     */
    private Outcome newton(Network network, Workspace w, double softening) {
        Residual.evaluate(w, network, softening);
        Residual.freeze(w, network);
        w.record(w.norm);
        w.release = NOT_WATCHED;
        double lastFull = 0;
        while (w.iterations < options.maxIterations()) {
            double part = step(network, w, softening, true);
            if (part == 0) {
                part = step(network, w, softening, false);
            }
            if (part == 0) {
                part = passOver(network, w, softening);
            }
            if (part == FAILED || expired(w)) {
                unwatch(network, w, softening);
                return Outcome.STALLED;
            }
            boolean small = part == 1 && w.correction <= options.flowTolerance() * w.flowScale;
            Residual.scale(w, network);
            w.record(w.norm);
            if (small && Residual.within(w, options)) {
                boolean rounding = w.correction * (w.correction / lastFull) <= ROUNDING * w.flowScale;
                if (!rounding || leaks(network, w)) {
                    oneMore(network, w, softening);
                }
                return Outcome.CONVERGED;
            }
            lastFull = part == 1 ? w.correction : 0;
        }
        unwatch(network, w, softening);
        return Outcome.BUDGET_SPENT;
    }

    /** Takes a step in full that no part of lowers the norm; the state before the first of them is kept. */
    private static double passOver(Network network, Workspace w, double softening) {
        if (w.borderBranch.length == 0) {
            return FAILED;
        }
        if (w.release == NOT_WATCHED) {
            w.release = w.iterations + WATCHED_STEPS;
            w.watchedNorm = w.norm;
            System.arraycopy(w.flow, 0, w.watchedFlow, 0, w.flow.length);
            System.arraycopy(w.pressure, 0, w.watchedPressure, 0, w.pressure.length);
        }
        keep(w);
        move(network, w, 1);
        return Double.isFinite(Residual.evaluate(w, network, softening)) ? 1 : FAILED;
    }

    /** Whether the steps let go have not come under the norm they started from. */
    private static boolean expired(Workspace w) {
        if (w.release != NOT_WATCHED && w.norm < w.watchedNorm) {
            w.release = NOT_WATCHED;
        }
        return w.release != NOT_WATCHED && w.iterations >= w.release;
    }

    private static void unwatch(Network network, Workspace w, double softening) {
        if (w.release != NOT_WATCHED) {
            System.arraycopy(w.watchedFlow, 0, w.flow, 0, w.flow.length);
            System.arraycopy(w.watchedPressure, 0, w.pressure, 0, w.pressure.length);
            Residual.evaluate(w, network, softening);
        }
    }

    /** Computes a step and takes as much of it as helps; returns that part, 0 when none does, FAILED without a step. */
    private double step(Network network, Workspace w, double softening, boolean far) {
        if (!w.step.factor(network, far)) {
            return FAILED;
        }
        w.step.solve(network);
        w.iterations++;
        w.correction = largest(w.flowStep);
        return advance(network, w, softening);
    }

    /** Takes the step, halved as often as needed; when no part of it helps, the old state is restored and 0 returned. */
    private double advance(Network network, Workspace w, double softening) {
        keep(w);
        double before = w.norm;
        boolean good = Residual.within(w, options);
        double part = 1;
        for (int i = 0; i <= MOST_HALVINGS; i++) {
            move(network, w, part);
            double after = Residual.evaluate(w, network, softening);
            // inside the tolerances the residual is rounding, which no step can be asked to lower
            if (after <= (1 - ARMIJO * part) * before || (good && i == 0 && Residual.within(w, options))) {
                return part;
            }
            part /= 2;
        }
        restore(w);
        Residual.evaluate(w, network, softening);
        return 0;
    }

    /** Whether a trace passes a device that is shut: the next step, straight in that piece, ends at nothing. */
    private static boolean leaks(Network network, Workspace w) {
        for (int b : w.borderBranch) {
            if (network.kind(b) == Network.Kind.DEVICE && w.state[b] == DeviceLaw.SHUT && w.flow[b] != 0) {
                return true;
            }
        }
        return false;
    }

    /** One step past the tolerances; kept unless it leaves them. */
    private void oneMore(Network network, Workspace w, double softening) {
        double before = w.norm;
        if (!w.step.factor(network, false)) {
            return;
        }
        w.step.solve(network);
        keep(w);
        move(network, w, 1);
        double after = Residual.evaluate(w, network, softening);
        if (!(after <= before || Residual.within(w, options))) {
            restore(w);
            Residual.evaluate(w, network, softening);
        }
        w.iterations++;
        w.record(w.norm);
    }

    private static void keep(Workspace w) {
        System.arraycopy(w.flow, 0, w.oldFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.oldPressure, 0, w.pressure.length);
    }

    private static void restore(Workspace w) {
        System.arraycopy(w.oldFlow, 0, w.flow, 0, w.flow.length);
        System.arraycopy(w.oldPressure, 0, w.pressure, 0, w.pressure.length);
    }

    private static void move(Network network, Workspace w, double part) {
        for (int b = 0; b < w.flow.length; b++) {
            w.flow[b] = w.oldFlow[b] + part * w.flowStep[b];
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = w.oldPressure[i] + part * w.pressureStep[i];
        }
        w.tree.balance(network, w.flow);
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
