package org.linedrop.solver;

import java.util.Arrays;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/**
 * The Newton step: the symmetric part by sparse Cholesky, the flows of devices and junction legs as a dense border by
 * their Schur complement. Each border branch stands in the symmetric part with its wide-open conductance and the border
 * takes it out again, so the symmetric part is never singular while every point is tied to a given pressure.
 */
final class Step {
    /** The slope in the matrix is floored at this part of a branch's nominal secant; the residual knows no floor. */
    private static final double SLOPE_FLOOR = 1e-9;
    /** Floor for laws whose drop does not change with flow, over the ratio of the scales. */
    private static final double FLAT_FLOOR = 1e-10;
    /** Slope of a flat law in the first linear solve, over the ratio of the scales. */
    private static final double FLAT_START = 1e-3;
    /**
     * A branch that is still off its law by F gets at least this part of the slope that a square law would have at the
     * flow that F drives; at the solution of a square law that is a quarter of its slope, so the last steps are true.
     */
    private static final double OFF_LAW_FLOOR = 0.5;

    /** Passes in which devices may change their pieces before the first step. */
    private static final int SETTLING_PASSES = 6;

    private final Workspace w;
    private final SymmetricPart symmetric;
    private final int border;
    private final double[] conductance;
    private final double[] right;
    /** Inverse of the symmetric part times the incidence of each border branch. */
    private final double[][] influence;

    private final double[] borderRight;
    private final DenseLu lu;
    private final Regions regions;

    Step(Workspace workspace) {
        w = workspace;
        symmetric = workspace.symmetric;
        border = workspace.borderBranch.length;
        conductance = new double[workspace.flow.length];
        right = new double[symmetric.size];
        influence = new double[border][symmetric.size];
        borderRight = new double[border];
        lu = new DenseLu(border);
        regions = workspace.regions;
    }

    /** Starts from rest: every branch linear with its nominal slope, devices wide open. False when singular. */
    boolean fromRest(Network network) {
        symmetric.clear();
        for (int b = 0; b < conductance.length; b++) {
            double slope = network.nominalSlopePaPerKgPerS(b);
            conductance[b] =
                    1 / (slope > 0 ? slope : FLAT_START * network.pressureScalePa() / network.flowScaleKgPerS());
            symmetric.add(b, conductance[b]);
        }
        if (!factorSymmetric()) {
            return false;
        }
        fillRight(network, true);
        symmetric.solve(right);
        spread(network, true);
        return true;
    }

    /**
     * After {@link #fromRest}: lets the devices find their pieces while the lines stay linear, in the border alone, for the
     * symmetric part stays as it is. Some passes are plenty for a start.
     */
    void settle(Network network) {
        influences(network);
        for (int pass = 0; pass < SETTLING_PASSES; pass++) {
            boolean changed = Residual.border(w, network);
            if (pass > 0 && !changed) {
                return;
            }
            openAroundFloating(network);
            if (!schur(network)) {
                return;
            }
            for (int k = 0; k < border; k++) {
                borderRight[k] = -w.lawResidual[w.borderBranch[k]];
            }
            lu.solve(borderRight);
            Arrays.fill(right, 0);
            for (int k = 0; k < border; k++) {
                subtract(influence[k], borderRight[k]);
            }
            for (int b = 0; b < conductance.length; b++) {
                int k = w.borderOf[b];
                w.flow[b] += conductance[b] * across(network, b, right) + (k >= 0 ? borderRight[k] : 0);
            }
            for (int i = 0; i < w.pressure.length; i++) {
                w.pressure[i] += at(i, right);
            }
        }
    }

    /**
     * Factorises at the evaluated state. False when singular.
     *
     * @param far true to raise the slopes of branches that are far off their law, which takes longer and safer steps but
     *            need not lower the residual; false for the true Newton matrix
     */
    boolean factor(Network network, boolean far) {
        double flat = FLAT_FLOOR * w.pressureScale / w.flowScale;
        double scale = w.pressureScale;
        symmetric.clear();
        for (int b = 0; b < conductance.length; b++) {
            double slope = w.slope[b];
            if (w.borderOf[b] < 0) {
                double nominal = network.nominalSlopePaPerKgPerS(b);
                double floor = nominal > 0 ? SLOPE_FLOOR * nominal : flat;
                if (far && nominal > 0 && slope < nominal) {
                    floor = Math.max(
                            floor,
                            OFF_LAW_FLOOR * nominal * Math.sqrt(Math.min(1, Math.abs(w.lawResidual[b]) / scale)));
                }
                slope = Math.max(slope, floor);
            }
            if (far && w.careful && w.borderOf[b] >= 0 && w.state[b] == DeviceLaw.WIDE_OPEN) {
                raise(network, b);
            }
            conductance[b] = 1 / slope;
            symmetric.add(b, conductance[b]);
        }
        if (w.slack.on) {
            for (int i = 0; i < w.pressure.length; i++) {
                symmetric.tie(i, w.slack.slope(i));
            }
        }
        if (!factorSymmetric()) {
            return false;
        }
        if (border == 0) {
            return true;
        }
        influences(network);
        openAroundFloating(network);
        return schur(network);
    }

    private void influences(Network network) {
        for (int k = 0; k < border; k++) {
            double[] z = influence[k];
            Arrays.fill(z, 0);
            addIncidence(network, w.borderBranch[k], 1, z);
            symmetric.solve(z);
        }
    }

    private boolean factorSymmetric() {
        return w.careful ? symmetric.factorUnsubtracted(conductance) : symmetric.factor();
    }

    /** A device that opens from rest is as far off a square law as a branch can be. */
    private void raise(Network network, int b) {
        if (network.kind(b) == Network.Kind.DEVICE) {
            int at = w.borderOf[b] * (border + 1);
            double off = Math.min(1, Math.abs(w.lawResidual[b]) / w.pressureScale);
            w.byFlow[at] = Math.max(w.byFlow[at], OFF_LAW_FLOOR * w.slope[b] * Math.sqrt(off));
        }
    }

    /**
     * A region whose every way is shut has lost its reference: in the matrix some of its devices follow their wide-open
     * conductance then, and no residual changes. One device per region will do when nothing flows, so that all others
     * close exactly; where draws force flow through, all of them, so that the one that has to open can. Found by
     * structure: pivots of the border lose too many digits to tell.
     */
    private void openAroundFloating(Network network) {
        regions.find(network);
        for (int k = 0; k < border; k++) {
            int b = w.borderBranch[k];
            if (network.kind(b) != Network.Kind.DEVICE || w.state[b] != DeviceLaw.SHUT) {
                continue;
            }
            int from = regions.of(network.from(b));
            int to = regions.of(network.to(b));
            boolean apart = Groups.find(w.group, from) != Groups.find(w.group, to);
            if (regions.isForced(network, from) || regions.isForced(network, to) || apart) {
                Checks.join(network, w.group, from, to);
                double open = w.byFlow[k * border + k] * conductance[b];
                w.byInlet[k] -= open;
                w.byOutlet[k] += open;
            }
        }
    }

    private boolean schur(Network network) {
        for (int k = 0; k < border; k++) {
            double size = 0;
            for (int l = 0; l < border; l++) {
                double direct = w.byFlow[k * border + l];
                double through = rowTimes(network, k, influence[l]);
                lu.a[k * border + l] = direct - through;
                size = Math.max(size, Math.max(Math.abs(direct), Math.abs(through)));
            }
            lu.rowSize[k] = size;
        }
        return lu.factor();
    }

    /** Border row k, stand-in included, times a vector of pressures. */
    private double rowTimes(Network network, int k, double[] x) {
        int b = w.borderBranch[k];
        double sum = w.byInlet[k] * at(network.from(b), x) + w.byOutlet[k] * at(network.to(b), x);
        int reference = network.reference(b);
        if (reference >= 0) {
            sum += w.byReference[k] * at(reference, x);
        }
        for (int l = 0; l < border; l++) {
            double direct = w.byFlow[k * border + l];
            if (direct != 0) {
                sum += direct * conductance[w.borderBranch[l]] * across(network, w.borderBranch[l], x);
            }
        }
        return sum;
    }

    /** Solves for the step from the evaluated residual. */
    void solve(Network network) {
        fillRight(network, false);
        symmetric.solve(right);
        for (int k = 0; k < border; k++) {
            borderRight[k] = -w.lawResidual[w.borderBranch[k]] - rowTimes(network, k, right);
        }
        lu.solve(borderRight);
        for (int k = 0; k < border; k++) {
            subtract(influence[k], borderRight[k]);
        }
        spread(network, false);
    }

    private void subtract(double[] z, double y) {
        for (int i = 0; i < right.length; i++) {
            right[i] -= z[i] * y;
        }
    }

    private void fillRight(Network network, boolean fromRest) {
        Arrays.fill(right, 0);
        for (int i = 0; i < w.imbalance.length; i++) {
            int r = symmetric.row[i];
            if (r >= 0) {
                right[r] = -w.imbalance[i];
            }
        }
        for (int b = 0; b < conductance.length; b++) {
            if (w.borderOf[b] < 0) {
                addIncidence(network, b, -conductance[b] * w.lawResidual[b], right);
            } else if (fromRest) {
                double difference = w.pressure[network.from(b)] - w.pressure[network.to(b)];
                addIncidence(network, b, -conductance[b] * difference, right);
            }
        }
    }

    private void spread(Network network, boolean fromRest) {
        for (int i = 0; i < w.pressureStep.length; i++) {
            w.pressureStep[i] = at(i, right);
        }
        for (int b = 0; b < conductance.length; b++) {
            double off = w.lawResidual[b];
            int k = w.borderOf[b];
            if (k >= 0) {
                off = fromRest ? w.pressure[network.from(b)] - w.pressure[network.to(b)] : 0;
            }
            w.flowStep[b] = conductance[b] * (across(network, b, right) + off);
            if (k >= 0 && !fromRest) {
                w.flowStep[b] += borderRight[k];
            }
        }
    }

    private double at(int point, double[] x) {
        int r = symmetric.row[point];
        return r < 0 ? 0 : x[r];
    }

    private double across(Network network, int b, double[] x) {
        return at(network.from(b), x) - at(network.to(b), x);
    }

    private void addIncidence(Network network, int b, double value, double[] x) {
        int i = symmetric.row[network.from(b)];
        int j = symmetric.row[network.to(b)];
        if (i >= 0) {
            x[i] += value;
        }
        if (j >= 0) {
            x[j] -= value;
        }
    }

    /**
     * Solves the transposed system at the factorised state.
     *
     * @param byFlow     weights of the output in branch flows
     * @param byPressure weights of the output in point pressures
     * @param lawPart    modified: multiplier of each law row
     * @param balancePart modified: multiplier of each balance row, 0 at fixed points
     */
    void solveTransposed(
            Network network, double[] byFlow, double[] byPressure, double[] lawPart, double[] balancePart) {
        Arrays.fill(right, 0);
        for (int i = 0; i < byPressure.length; i++) {
            if (symmetric.row[i] >= 0) {
                right[symmetric.row[i]] = byPressure[i];
            }
        }
        for (int b = 0; b < conductance.length; b++) {
            addIncidence(network, b, conductance[b] * byFlow[b], right);
        }
        symmetric.solve(right);
        for (int k = 0; k < border; k++) {
            int b = w.borderBranch[k];
            borderRight[k] = byFlow[b] - across(network, b, right);
        }
        lu.solveTransposed(borderRight);
        double[] correction = new double[right.length];
        for (int k = 0; k < border; k++) {
            addRow(network, k, borderRight[k], correction);
        }
        symmetric.solve(correction);
        for (int i = 0; i < balancePart.length; i++) {
            balancePart[i] = at(i, right) - at(i, correction);
        }
        for (int b = 0; b < conductance.length; b++) {
            int k = w.borderOf[b];
            double difference = balancePart[network.from(b)] - balancePart[network.to(b)];
            lawPart[b] = k >= 0 ? borderRight[k] : conductance[b] * (difference - byFlow[b]);
        }
    }

    /** Adds border row k, stand-in included, times a factor to a vector of pressures. */
    private void addRow(Network network, int k, double factor, double[] x) {
        int b = w.borderBranch[k];
        addAt(network.from(b), factor * w.byInlet[k], x);
        addAt(network.to(b), factor * w.byOutlet[k], x);
        if (network.reference(b) >= 0) {
            addAt(network.reference(b), factor * w.byReference[k], x);
        }
        for (int l = 0; l < border; l++) {
            double direct = w.byFlow[k * border + l];
            if (direct != 0) {
                addIncidence(network, w.borderBranch[l], factor * direct * conductance[w.borderBranch[l]], x);
            }
        }
    }

    private void addAt(int point, double value, double[] x) {
        if (symmetric.row[point] >= 0) {
            x[symmetric.row[point]] += value;
        }
    }
}
