package org.linedrop.solver;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Inner;
import org.linedrop.network.Network;

/**
 * Solves networks: active-piece Newton on flows and pressures, each step halved until the scaled residual falls by the
 * rule of L. Armijo (Pacific J. Math. 16 (1966) 1-3). When that fails, once more from rest with surer arithmetic and line
 * searches, and with leaks past the devices that are taken away in stages.
 *
 * <p>Converged means: node imbalance at most {@code flowTolerance} times the largest flow, every law residual at most
 * {@code pressureTolerance} times the pressure scale, the last full correction at most {@code flowTolerance} times the
 * largest flow, and one more step taken, unless corrections shrink so fast that it would be under 1e-14 of the largest
 * flow (P. Deuflhard, Newton Methods for Nonlinear Problems (2004) 2.1: the next correction is at most the last times the
 * ratio of the last two). Immutable; one solver serves any number of threads, each with its own workspace.
 */
@Inner
public final class Solver {
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
            Residual.evaluate(w, network);
            Residual.freeze(w, network);
            w.record(w.norm);
            return refused;
        }
        Outcome outcome = Outcome.STALLED;
        if (start == null ? fromRest(network, w) : from(start, network, w)) {
            outcome = Newton.run(network, w, options);
        }
        if (outcome == Outcome.STALLED) {
            outcome = SecondAttempt.run(network, w, options);
        }
        return outcome == Outcome.CONVERGED ? Checks.after(network, w) : outcome;
    }

    /** No flow, every point at the first given pressure. */
    static void atRest(Network network, Workspace w) {
        Arrays.fill(w.flow, 0);
        double level = 0;
        for (int i = network.pointCount() - 1; i >= 0; i--) {
            level = network.fixed(i) ? network.fixedPressurePa(i) : level;
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = network.fixed(i) ? network.fixedPressurePa(i) : level;
        }
    }

    /** One linear solve from {@link #atRest}; false when singular. */
    static boolean fromRest(Network network, Workspace w) {
        Residual.evaluate(w, network);
        Residual.scale(w, network);
        if (!w.step.fromRest(network)) {
            return false;
        }
        double part = w.slack.part();
        for (int b = 0; b < w.flow.length; b++) {
            w.flow[b] += part * w.flowStep[b];
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] += part * w.pressureStep[i];
        }
        if (!w.careful && w.borderBranch.length > 0) {
            w.step.settle(network);
        }
        w.tree.balance(network, w);
        return true;
    }

    private static boolean from(Solution start, Network network, Workspace w) {
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
        return true;
    }
}
