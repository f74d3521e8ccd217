package org.linedrop.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.linedrop.network.Network;

/**
 * Draws, supplies and fixed flows that give way where they would drive the pressure beyond a limit. With them every circuit
 * has an answer. Where nothing gives way, it is that of the circuit itself. Where something does, and none of the ways
 * into its region passes more however far its pressure falls (or is driven up), the draws cannot be met: flow rises with
 * the pressure that drives it, so that no state of the circuit passes more.
 */
final class Slack {
    /** How far a region's pressure is moved to see whether a way into it would pass more, over the limit. */
    private static final double FAR = 1e9;
    /** What its law may then be off by, over the pressure scale: the usual tolerance. */
    private static final double HOLDS = 1e-9;

    private final Workspace w;
    /** What flows in for each Pa beyond the limit. */
    private final double[] conductance;

    private final boolean[] behind;
    private final boolean[] beside;
    /** The largest flow that may give way. */
    double largestKgPerS;

    private double low;
    private double high;
    private boolean inward;
    private double neededKgPerS;
    private double passesKgPerS;
    /** Whether anything may give way; when not, nothing of this takes part. */
    boolean on;

    Slack(Workspace workspace) {
        w = workspace;
        conductance = new double[workspace.pressure.length];
        behind = new boolean[workspace.pressure.length];
        beside = new boolean[workspace.pressure.length];
    }

    /** Lets flows give way beyond the given pressures by so many Pa. */
    void limit(Network network, double beyondPa) {
        low = Double.POSITIVE_INFINITY;
        high = Double.NEGATIVE_INFINITY;
        Arrays.fill(conductance, 0);
        for (int i = 0; i < conductance.length; i++) {
            if (network.fixed(i)) {
                low = Math.min(low, network.fixedPressurePa(i) - beyondPa);
                high = Math.max(high, network.fixedPressurePa(i) + beyondPa);
            } else {
                conductance[i] = Math.abs(network.drawKgPerS(i));
            }
        }
        for (int b = 0; b < w.flow.length; b++) {
            if (network.kind(b) == Network.Kind.DEVICE && !network.device(b).relatesPressures()) {
                double forced = Math.abs(network.device(b).leastFlowKgPerS());
                conductance[network.from(b)] += forced;
                conductance[network.to(b)] += forced;
            }
        }
        largestKgPerS = 0;
        for (int i = 0; i < conductance.length; i++) {
            conductance[i] = network.fixed(i) ? 0 : conductance[i];
            largestKgPerS = Math.max(largestKgPerS, conductance[i]);
            conductance[i] /= network.pressureScalePa();
        }
        on = true;
    }

    /** What a point draws, less what gives way there at the pressure of the workspace. */
    double drawKgPerS(Network network, int point) {
        return on ? network.drawKgPerS(point) - given(point) : network.drawKgPerS(point);
    }

    /** Above zero what is not drawn, under zero what is not supplied. */
    private double given(int point) {
        double p = w.pressure[point];
        return p < low ? conductance[point] * (low - p) : p > high ? conductance[point] * (high - p) : 0;
    }

    /** How much what a point draws changes with its pressure. */
    double slope(int point) {
        return on && given(point) != 0 ? conductance[point] : 0;
    }

    /** How much of a first step stays within the limits of pressure. */
    double part() {
        if (!on) {
            return 1;
        }
        double most = 0;
        for (double step : w.pressureStep) {
            most = Math.max(most, Math.abs(step));
        }
        return most > high - low ? (high - low) / most : 1;
    }

    boolean gives() {
        for (int i = 0; i < conductance.length; i++) {
            if (given(i) != 0) {
                return true;
            }
        }
        return false;
    }

    /** In the state last evaluated: looks for a region that cannot get what it draws, or rid of what it is fed. */
    boolean proves(Network network, Options options) {
        for (int i = 0; i < conductance.length; i++) {
            double given = given(i);
            if (given != 0 && proves(network, options, i, given > 0)) {
                return true;
            }
        }
        return false;
    }

    private boolean proves(Network network, Options options, int start, boolean in) {
        inward = in;
        if (!spread(network, behind, start, in)) {
            return false;
        }
        double unmet = 0;
        double needed = 0;
        for (int i = 0; i < behind.length; i++) {
            if (!behind[i] && (in ? given(i) < 0 : given(i) > 0) && !stuck(network, i, !in)) {
                // what gives way there would be more flow for the region
                return false;
            }
            if (behind[i]) {
                unmet += in ? given(i) : -given(i);
                needed += in ? network.drawKgPerS(i) : -network.drawKgPerS(i);
            }
        }
        double passes = 0;
        for (int b = 0; b < w.flow.length; b++) {
            if (crosses(network, b)) {
                double more = behind[network.to(b)] == in ? w.flow[b] : -w.flow[b];
                needed -= Math.min(more, 0);
                passes += Math.max(more, 0);
            }
        }
        neededKgPerS = needed;
        passesKgPerS = passes <= options.flowTolerance() * needed ? 0 : passes;
        return unmet > options.flowTolerance() * needed && needed > 0;
    }

    /** Whether what gives way at a point is no matter for the rest, which feels nothing of its pressure. */
    private boolean stuck(Network network, int point, boolean in) {
        return spread(network, beside, point, in);
    }

    private boolean crosses(Network network, int b) {
        return behind[network.from(b)] != behind[network.to(b)];
    }

    /** The region of a point: all whose flow into it would change with its pressure; false when a given one is there. */
    private boolean spread(Network network, boolean[] region, int start, boolean in) {
        Arrays.fill(region, false);
        region[start] = true;
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int b = 0; b < w.flow.length; b++) {
                boolean from = region[network.from(b)];
                boolean to = region[network.to(b)];
                boolean touches = from != to || (!from && refers(network, region, b));
                if (!touches || holds(network, region, b, in)) {
                    continue;
                }
                if (network.fixed(network.from(b)) || network.fixed(network.to(b))) {
                    return false;
                }
                region[network.from(b)] = true;
                region[network.to(b)] = true;
                grown = true;
            }
        }
        return true;
    }

    private static boolean refers(Network network, boolean[] region, int b) {
        return network.reference(b) >= 0 && region[network.reference(b)];
    }

    /** Whether a branch passes the same flow with the region's pressure moved far. */
    private boolean holds(Network network, boolean[] region, int b, boolean in) {
        if (network.kind(b) != Network.Kind.DEVICE) {
            return false;
        }
        double far = (in ? -FAR : FAR) * (high - low);
        double reference = network.reference(b) < 0 ? 0 : w.pressure[network.reference(b)];
        network.device(b)
                .evaluate(
                        w.flow[b],
                        w.pressure[network.from(b)] + (region[network.from(b)] ? far : 0),
                        w.pressure[network.to(b)] + (region[network.to(b)] ? far : 0),
                        reference + (refers(network, region, b) ? far : 0),
                        w.five);
        return Math.abs(w.five[0]) <= HOLDS * w.pressureScale;
    }

    /** What limits, as found last. Allocates; for snapshots. */
    Cut cut(Network network) {
        List<Integer> points = new ArrayList<>();
        List<Integer> branches = new ArrayList<>();
        for (int i = 0; i < behind.length; i++) {
            if (behind[i]) {
                points.add(i);
            }
        }
        for (int b = 0; b < w.flow.length; b++) {
            if (crosses(network, b)) {
                branches.add(b);
            }
        }
        return new Cut(points, branches, inward, neededKgPerS, passesKgPerS);
    }

    /** Whether nothing passes what limits. */
    boolean cutOff() {
        return passesKgPerS == 0;
    }
}
