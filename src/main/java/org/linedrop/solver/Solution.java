package org.linedrop.solver;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Inner;
import org.linedrop.network.Network;

/** What a solve reached, and how. Immutable; flows and pressures are by number of branch and point. */
@Inner
public final class Solution implements Serializable {
    private static final long serialVersionUID = 1;

    /** How the solve ended. */
    private final Outcome outcome;

    /** Mass flow of each branch, kg/s. */
    private final double[] flow;

    /** Total pressure of each point, Pa. */
    private final double[] pressure;

    /** State of each device or junction leg. */
    private final int[] state;

    /** Largest imbalance over the flow scale. */
    private final double flowImbalance;

    /** Largest law residual over the pressure scale. */
    private final double lawResidual;

    /** Flow scale, kg/s. */
    private final double flowScale;

    /** Pressure scale, Pa. */
    private final double pressureScale;

    /** Newton steps. */
    private final int iterations;

    /** Times the direct way failed. */
    private final int continuations;

    /** Residual norm at the start and after each step. */
    private final double[] history;

    /** Limiting cut, null when none. */
    private final @Nullable Cut cut;

    /** Points tied to no given pressure. */
    private final int[] withoutReference;

    /** Points whose pressure is an interval. */
    private final int[] floating;

    /** Point under its vapour pressure, -1 when none. */
    private final int notPhysicalPoint;

    private Solution(Workspace w, Network network) {
        outcome = w.outcome;
        flow = w.flow.clone();
        pressure = w.pressure.clone();
        state = w.state.clone();
        flowImbalance = w.largestImbalance / w.flowScale;
        lawResidual = w.largestLawResidual / w.pressureScale;
        flowScale = w.flowScale;
        pressureScale = w.pressureScale;
        iterations = w.iterations;
        continuations = w.continuations;
        history = java.util.Arrays.copyOf(w.history, w.historyCount);
        cut = cut(w, network);
        Checks.joinRelated(network, w.group);
        withoutReference =
                outcome == Outcome.NO_PRESSURE_REFERENCE ? pointsNotLedByFixed(network, w.group) : new int[0];
        Checks.joinActive(network, w);
        boolean solved = outcome == Outcome.CONVERGED || outcome == Outcome.NOT_PHYSICAL;
        floating = solved ? pointsNotLedByFixed(network, w.group) : new int[0];
        notPhysicalPoint = w.notPhysicalPoint;
    }

    private Solution(Solution like, double[] flow, double[] pressure) {
        this.flow = flow;
        this.pressure = pressure;
        outcome = like.outcome;
        state = like.state;
        flowImbalance = like.flowImbalance;
        lawResidual = like.lawResidual;
        flowScale = like.flowScale;
        pressureScale = like.pressureScale;
        iterations = like.iterations;
        continuations = like.continuations;
        history = like.history;
        cut = like.cut;
        withoutReference = like.withoutReference;
        floating = like.floating;
        notPhysicalPoint = like.notPhysicalPoint;
    }

    private static @Nullable Cut cut(Workspace w, Network network) {
        if (w.proved) {
            return w.slack.cut(network);
        }
        boolean refused = w.outcome == Outcome.CUT_OFF || w.outcome == Outcome.DEMAND_NOT_MET;
        return refused ? w.flowCheck.cut(network) : null;
    }

    static Solution of(Workspace w) {
        Network network = w.solved;
        if (network == null) {
            throw new IllegalStateException("nothing was solved in this workspace yet");
        }
        return new Solution(w, network);
    }

    private static int[] pointsNotLedByFixed(Network network, int[] group) {
        int[] found = new int[group.length];
        int count = 0;
        for (int i = 0; i < group.length; i++) {
            if (!network.fixed(Groups.find(group, i))) {
                found[count++] = i;
            }
        }
        return java.util.Arrays.copyOf(found, count);
    }

    void copyTo(Workspace w) {
        System.arraycopy(flow, 0, w.flow, 0, flow.length);
        System.arraycopy(pressure, 0, w.pressure, 0, pressure.length);
    }

    /**
     * Another state in the place of the solved one, to see what is read off a state change with it; how the solve ended
     * is kept, though this state was not solved for.
     *
     * @param massFlowKgPerS  one flow per branch
     * @param totalPressurePa one pressure per point
     * @return a solution with these numbers
     */
    public Solution at(double[] massFlowKgPerS, double[] totalPressurePa) {
        if (massFlowKgPerS.length != flow.length || totalPressurePa.length != pressure.length) {
            throw new IllegalArgumentException("a state has one flow per branch and one pressure per point, but has "
                    + massFlowKgPerS.length + " and " + totalPressurePa.length);
        }
        return new Solution(this, massFlowKgPerS.clone(), totalPressurePa.clone());
    }

    /**
     * How the solve ended.
     *
     * @return the outcome
     */
    public Outcome outcome() {
        return outcome;
    }

    /**
     * Number of branches.
     *
     * @return count
     */
    public int branchCount() {
        return flow.length;
    }

    /**
     * Number of points.
     *
     * @return count
     */
    public int pointCount() {
        return pressure.length;
    }

    /**
     * Mass flow of a branch.
     *
     * @param branch number of the branch
     * @return kg/s, positive from its first point to its second
     */
    public double massFlowKgPerS(int branch) {
        return flow[branch];
    }

    /**
     * Total pressure of a point.
     *
     * @param point number of the point
     * @return Pa over the network's zero
     */
    public double totalPressurePa(int point) {
        return pressure[point];
    }

    /**
     * State of a device or junction.
     *
     * @param branch number of the branch
     * @return the state its law gave; 0 for ordinary branches
     */
    public int state(int branch) {
        return state[branch];
    }

    /**
     * Largest imbalance of any free point.
     *
     * @return ratio to {@link #flowScaleKgPerS()}
     */
    public double flowImbalance() {
        return flowImbalance;
    }

    /**
     * Largest residual of any law.
     *
     * @return ratio to {@link #pressureScalePa()}
     */
    public double lawResidual() {
        return lawResidual;
    }

    /**
     * The flow that imbalance and corrections are judged by.
     *
     * @return kg/s
     */
    public double flowScaleKgPerS() {
        return flowScale;
    }

    /**
     * The pressure that law residuals are judged by.
     *
     * @return Pa
     */
    public double pressureScalePa() {
        return pressureScale;
    }

    /**
     * Newton steps taken, the second attempt included.
     *
     * @return count
     */
    public int iterations() {
        return iterations;
    }

    /**
     * How often the direct way failed and the second attempt was made: from rest, with leaks past the devices taken away in
     * stages.
     *
     * @return count
     */
    public int continuations() {
        return continuations;
    }

    /**
     * 2-norm of the residual, each row over its scale: at the start, then after each step.
     *
     * @return the norms in order
     */
    public List<Double> history() {
        List<Double> list = new ArrayList<>(history.length);
        for (double h : history) {
            list.add(h);
        }
        return List.copyOf(list);
    }

    /**
     * What limits the flow.
     *
     * @return the limiting cut of {@code CUT_OFF} and {@code DEMAND_NOT_MET}, else null
     */
    public @Nullable Cut limitingCut() {
        return cut;
    }

    /**
     * Points behind the limiting cut, which no flow can reach: for want of a way, or because every device on the way is
     * shut in the state reached.
     *
     * @return numbers of points for {@code CUT_OFF}, else empty
     */
    public List<Integer> cutOffPoints() {
        return outcome == Outcome.CUT_OFF && cut != null ? cut.points() : List.of();
    }

    /**
     * Points whose pressure is tied to nothing.
     *
     * @return numbers of points for {@code NO_PRESSURE_REFERENCE}, else empty
     */
    public List<Integer> pointsWithoutReference() {
        return list(withoutReference);
    }

    /**
     * Points behind shut one-way devices without a draw: they carry no flow and their pressure is only known to lie
     * between the bounds that keep the devices shut.
     *
     * @return numbers of points
     */
    public List<Integer> floatingPoints() {
        return list(floating);
    }

    /**
     * The point furthest under its vapour pressure or under a vacuum.
     *
     * @return number of the point for {@code NOT_PHYSICAL}, else -1
     */
    public int notPhysicalPoint() {
        return notPhysicalPoint;
    }

    /**
     * One sentence on how the solve ended, in numbers of points and branches.
     *
     * @return the sentence
     */
    public String detail() {
        return switch (outcome) {
            case CONVERGED ->
                String.format(
                        Locale.ROOT,
                        "converged in %d steps: imbalance %.1e of %.3g kg/s, law residual %.1e of %.3g Pa",
                        iterations,
                        flowImbalance,
                        flowScale,
                        lawResidual,
                        pressureScale);
            case STALLED, BUDGET_SPENT ->
                String.format(
                        Locale.ROOT,
                        "%s after %d steps: imbalance %.1e of %.3g kg/s, law residual %.1e of %.3g Pa",
                        outcome.word(),
                        iterations,
                        flowImbalance,
                        flowScale,
                        lawResidual,
                        pressureScale);
            case NO_PRESSURE_REFERENCE ->
                "no pressure reference: points " + list(withoutReference) + " are tied to no given pressure";
            case CUT_OFF, DEMAND_NOT_MET -> flowDetail();
            case NOT_PHYSICAL ->
                String.format(
                        Locale.ROOT,
                        "not physical at point %d: total pressure %.6g Pa is at or under the vapour pressure or zero absolute",
                        notPhysicalPoint,
                        pressure[notPhysicalPoint]);
        };
    }

    private String flowDetail() {
        if (cut == null) {
            return outcome.word();
        }
        return String.format(
                Locale.ROOT,
                "%s: points %s need %.6g kg/s %s, branches %s can pass %.6g kg/s",
                outcome.word(),
                cut.points(),
                cut.neededKgPerS(),
                cut.inward() ? "in" : "out",
                cut.branches(),
                cut.passesKgPerS());
    }

    private static List<Integer> list(int[] values) {
        List<Integer> list = new ArrayList<>(values.length);
        for (int v : values) {
            list.add(v);
        }
        return List.copyOf(list);
    }
}
