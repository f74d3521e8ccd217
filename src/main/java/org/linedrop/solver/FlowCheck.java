package org.linedrop.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.network.Network;

/**
 * Looks before the solve whether any flow at all can meet the draws: a maximum flow by shortest augmenting paths (J.
 * Edmonds and R. M. Karp, J. ACM 19 (1972) 248-264) through the limited branches, everything joined by unlimited ones
 * taken as one. Given pressures take or give any flow. The minimum cut is what limits.
 */
final class FlowCheck {
    /** A shortfall under this part of what is asked is rounding. */
    private static final double ROUNDING = 1e-9;

    private final int points;
    private final int[] group;
    private final double[] need;
    private final double[] asked;
    private final double[] flow;
    private final int[] limited;
    private int limitedCount;
    private final int[] arrivedBy;
    private final boolean[] reached;
    private final int[] queue;
    private int root;
    private int unmet = -1;
    private boolean inward;

    FlowCheck(Network network) {
        points = network.pointCount();
        int branches = network.branchCount();
        group = new int[points];
        need = new double[points];
        asked = new double[points];
        flow = new double[branches];
        limited = new int[branches];
        arrivedBy = new int[points];
        reached = new boolean[points];
        queue = new int[points];
    }

    /** True when the draws can be met. When false, {@link #cut} tells why. */
    boolean feasible(Network network) {
        join(network);
        unmet = -1;
        Arrays.fill(need, 0);
        Arrays.fill(asked, 0);
        for (int i = 0; i < points; i++) {
            int g = Groups.find(group, i);
            need[g] += network.drawKgPerS(i);
            asked[g] += Math.abs(network.drawKgPerS(i));
        }
        for (int k = 0; k < limitedCount; k++) {
            int b = limited[k];
            double least = network.leastFlowKgPerS(b);
            double most = network.mostFlowKgPerS(b);
            flow[b] = Math.max(least, Math.min(most, 0));
            int from = Groups.find(group, network.from(b));
            int to = Groups.find(group, network.to(b));
            need[from] += flow[b];
            need[to] -= flow[b];
            asked[from] += Math.abs(flow[b]);
            asked[to] += Math.abs(flow[b]);
        }
        for (int g = 0; g < points; g++) {
            if (group[g] == g && g != root && !settle(network, g)) {
                unmet = g;
                return false;
            }
        }
        return true;
    }

    private void join(Network network) {
        root = -1;
        for (int i = 0; i < points; i++) {
            group[i] = i;
            if (network.fixed(i)) {
                root = root < 0 ? i : root;
                group[i] = root;
            }
        }
        limitedCount = 0;
        for (int b = 0; b < flow.length; b++) {
            if (network.leastFlowKgPerS(b) == Double.NEGATIVE_INFINITY
                    && network.mostFlowKgPerS(b) == Double.POSITIVE_INFINITY) {
                Groups.join(group, network.from(b), network.to(b));
            } else {
                limited[limitedCount++] = b;
            }
        }
        root = root < 0 ? -1 : Groups.find(group, root);
    }

    /** Brings the need of a set of points to zero; other sets keep a need of their own sign or lose it. */
    private boolean settle(Network network, int g) {
        double slack = ROUNDING * asked[g];
        while (Math.abs(need[g]) > slack) {
            inward = need[g] > 0;
            int end = search(network, g);
            if (end < 0) {
                return false;
            }
            double amount = end == root ? Math.abs(need[g]) : Math.min(Math.abs(need[g]), Math.abs(need[end]));
            for (int i = end; i != g; i = towards(network, i)) {
                amount = Math.min(amount, room(network, arrivedBy[i], i));
            }
            for (int i = end; i != g; ) {
                int b = arrivedBy[i];
                int before = towards(network, i);
                // inward: flow runs from i towards g; outward: the other way
                boolean along = (Groups.find(group, network.from(b)) == i) == inward;
                flow[b] += along ? amount : -amount;
                i = before;
            }
            double signed = inward ? amount : -amount;
            need[g] -= signed;
            if (end != root) {
                need[end] += signed;
            }
        }
        return true;
    }

    /** Breadth first from g over branches with room, to the root or to a set with the opposite need; -1 when none. */
    private int search(Network network, int g) {
        Arrays.fill(reached, false);
        int count = 0;
        queue[count++] = g;
        reached[g] = true;
        for (int k = 0; k < count; k++) {
            int i = queue[k];
            if (i != g && (i == root || (inward ? need[i] < -ROUNDING * asked[i] : need[i] > ROUNDING * asked[i]))) {
                return i;
            }
            for (int l = 0; l < limitedCount; l++) {
                int b = limited[l];
                int from = Groups.find(group, network.from(b));
                int to = Groups.find(group, network.to(b));
                int other = from == i ? to : to == i ? from : -1;
                if (other >= 0 && !reached[other]) {
                    arrivedBy[other] = b;
                    if (room(network, b, other) > 0) {
                        reached[other] = true;
                        queue[count++] = other;
                    }
                }
            }
        }
        return -1;
    }

    /** How much more flow can pass the branch between set {@code other} and the set nearer to the start of the search. */
    private double room(Network network, int b, int other) {
        boolean along = (Groups.find(group, network.from(b)) == other) == inward;
        return along ? network.mostFlowKgPerS(b) - flow[b] : flow[b] - network.leastFlowKgPerS(b);
    }

    private int towards(Network network, int i) {
        int b = arrivedBy[i];
        int from = Groups.find(group, network.from(b));
        return from == i ? Groups.find(group, network.to(b)) : from;
    }

    /** The limiting cut of the last check, null when it was met. Allocates; for snapshots. */
    @Nullable Cut cut(Network network) {
        if (unmet < 0) {
            return null;
        }
        List<Integer> behind = new ArrayList<>();
        double needed = 0;
        for (int i = 0; i < points; i++) {
            if (reached[Groups.find(group, i)]) {
                behind.add(i);
                needed += inward ? network.drawKgPerS(i) : -network.drawKgPerS(i);
            }
        }
        List<Integer> across = new ArrayList<>();
        double passes = 0;
        for (int k = 0; k < limitedCount; k++) {
            int b = limited[k];
            boolean from = reached[Groups.find(group, network.from(b))];
            boolean to = reached[Groups.find(group, network.to(b))];
            if (from == to) {
                continue;
            }
            across.add(b);
            boolean helps = to == inward;
            double most = helps ? network.mostFlowKgPerS(b) : -network.leastFlowKgPerS(b);
            if (most < 0) {
                needed -= most;
            } else {
                passes += most;
            }
        }
        return new Cut(behind, across, inward, needed, passes);
    }

    /** Whether nothing at all can pass the limiting cut and nothing is forced through it. */
    boolean cutOff(Network network) {
        for (int k = 0; k < limitedCount; k++) {
            int b = limited[k];
            boolean from = reached[Groups.find(group, network.from(b))];
            boolean to = reached[Groups.find(group, network.to(b))];
            if (from != to) {
                double most = to == inward ? network.mostFlowKgPerS(b) : -network.leastFlowKgPerS(b);
                if (most != 0) {
                    return false;
                }
            }
        }
        return true;
    }
}
