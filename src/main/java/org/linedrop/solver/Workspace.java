package org.linedrop.solver;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Inner;
import org.linedrop.network.Law;
import org.linedrop.network.Network;

/**
 * Memory of the kernel for one structure of network: plan of elimination, matrices, state of the last solve. A solve
 * leaves its answer here until {@link #snapshot()}; nothing of it enters the next solve. One thread at a time.
 */
@Inner
public final class Workspace {
    final Network structure;
    final SymmetricPart symmetric;
    final Tree tree;
    final FlowCheck flowCheck;
    /** Branches of the border, in order of number. */
    final int[] borderBranch;
    /** Place of a branch in the border, -1 when it is not there. */
    final int[] borderOf;

    final double[] flow;
    final double[] pressure;
    final int[] state;
    final double[] lawResidual;
    final double[] slope;
    final double[] imbalance;
    /** Derivatives of border rows: by border flow (dense), inlet, outlet, reference. */
    final double[] byFlow;

    final double[] byInlet;
    final double[] byOutlet;
    final double[] byReference;
    final double[] flowStep;
    final double[] pressureStep;
    final double[] oldFlow;
    final double[] oldPressure;
    final double[] watchedFlow;
    final double[] watchedPressure;
    final double[] stageFlow;
    final double[] stagePressure;
    /** What each law row counts for in the norm of the second attempt. */
    final double[] weight;

    final double[] nearFlow;
    final double[] nearPressure;
    double watchedNorm;
    int release;
    final double[] bestFlow;
    final double[] bestPressure;
    final Slack slack;
    final Regions regions;
    final Step step;
    final double[] two = new double[Law.SLOTS];
    final double[] five = new double[5];
    final double[][] legFlow;
    final double[][] legDrop;
    final double[][] legSlope;
    final int[] group;
    double[] history = new double[256];

    double pressureScale = 1;
    double flowScale = 1;
    double meritPressure = 1;
    double meritFlow = 1;
    /** Conductance of a leak past each device, over its wide-open one. */
    double leak;
    /** By how much kinks of devices are rounded, Pa. */
    double rounding;
    /** Whether the direct way has failed: slower, surer arithmetic and searches. */
    boolean careful;
    /** Norm that was last halved, and the step that did it. */
    double markedNorm;

    int markedStep;
    double largestDrop;
    double norm;
    double correction;
    /** Largest flow correction of the step before, where it was taken in full; else 0. */
    double lastCorrection;

    double largestLawResidual;
    /** By how much a device that is shut or passes one flow passes another. */
    double largestFlowOff;

    double largestImbalance;
    int iterations;
    int continuations;
    int historyCount;
    Outcome outcome = Outcome.STALLED;
    int notPhysicalPoint = -1;
    /** Whether the draws were proved not to be met after the steps failed. */
    boolean proved;

    @Nullable Network solved;

    /** What the checks before a solve say of that network, once they were made. */
    @Nullable Outcome refused;

    boolean checked;

    private Workspace(Network network) {
        structure = network;
        int points = network.pointCount();
        int branches = network.branchCount();
        symmetric = new SymmetricPart(network);
        tree = new Tree(network);
        flowCheck = new FlowCheck(network);
        borderOf = new int[branches];
        int count = 0;
        for (int b = 0; b < branches; b++) {
            borderOf[b] = network.kind(b) == Network.Kind.LAW ? -1 : count++;
        }
        borderBranch = new int[count];
        for (int b = 0; b < branches; b++) {
            if (borderOf[b] >= 0) {
                borderBranch[borderOf[b]] = b;
            }
        }
        flow = new double[branches];
        pressure = new double[points];
        state = new int[branches];
        lawResidual = new double[branches];
        slope = new double[branches];
        imbalance = new double[points];
        byFlow = new double[count * count];
        byInlet = new double[count];
        byOutlet = new double[count];
        byReference = new double[count];
        flowStep = new double[branches];
        pressureStep = new double[points];
        oldFlow = new double[branches];
        oldPressure = new double[points];
        watchedFlow = new double[branches];
        watchedPressure = new double[points];
        stageFlow = new double[branches];
        stagePressure = new double[points];
        weight = new double[branches];
        nearFlow = new double[branches];
        nearPressure = new double[points];
        bestFlow = new double[branches];
        bestPressure = new double[points];
        group = new int[points];
        slack = new Slack(this);
        regions = new Regions(this);
        step = new Step(this);
        int junctions = network.junctionCount();
        legFlow = new double[junctions][];
        legDrop = new double[junctions][];
        legSlope = new double[junctions][];
        for (int j = 0; j < junctions; j++) {
            int legs = network.junction(j).legs();
            legFlow[j] = new double[legs];
            legDrop[j] = new double[legs];
            legSlope[j] = new double[legs * legs];
        }
    }

    /**
     * Makes the memory for networks of one structure and analyses the structure.
     *
     * @param network the network, or any refilled from it
     * @return a workspace
     */
    public static Workspace of(Network network) {
        return new Workspace(network);
    }

    /**
     * Mass flow of a branch after the last solve.
     *
     * @param branch number of the branch
     * @return kg/s, positive from its first point to its second
     */
    public double massFlowKgPerS(int branch) {
        return flow[branch];
    }

    /**
     * Total pressure of a point after the last solve.
     *
     * @param point number of the point
     * @return Pa over the network's zero
     */
    public double totalPressurePa(int point) {
        return pressure[point];
    }

    /**
     * State of a device or junction after the last solve.
     *
     * @param branch number of the branch
     * @return the state its law gave; 0 for ordinary branches
     */
    public int state(int branch) {
        return state[branch];
    }

    /**
     * Newton steps of the last solve.
     *
     * @return count, the second attempt included
     */
    public int iterations() {
        return iterations;
    }

    /**
     * Copies the last solve out.
     *
     * @return an immutable solution
     * @throws IllegalStateException when nothing was solved yet
     */
    public Solution snapshot() {
        return Solution.of(this);
    }

    void record(double residual) {
        if (historyCount == history.length) {
            history = java.util.Arrays.copyOf(history, 2 * historyCount);
        }
        history[historyCount++] = residual;
    }

    /** Takes on the coefficients of a network; its choices depend on the network alone. */
    void bind(Network network) {
        if (!network.sharesStructureWith(structure)) {
            throw new IllegalArgumentException(
                    "this workspace was made for another structure; make one with Workspace.of(network)");
        }
        if (solved != network || continuations > 0) {
            tree.choose(network);
            solved = network;
            checked = false;
        }
        iterations = 0;
        continuations = 0;
        leak = 0;
        rounding = 0;
        careful = false;
        slack.on = false;
        proved = false;
        historyCount = 0;
        notPhysicalPoint = -1;
        outcome = Outcome.STALLED;
    }
}
