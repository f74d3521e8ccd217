package org.linedrop.solver;

import java.util.Arrays;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/**
 * A spanning tree of the widest branches, rooted in the given pressures. Setting its flows from continuity takes rounding
 * off the balance where it hurts least: without it networks with bores from 0.5 to 100 mm cannot reach 1e-9.
 */
final class Tree {
    private final int points;
    private final int branches;
    /** Branches at each point: start[i] .. start[i + 1] in {@code touching}. */
    private final int[] start;

    private final int[] touching;
    private final int[] sorted;
    private final int[] heap;
    private final int[] group;
    private final boolean[] inTree;
    /** Branch towards the root, -1 for given pressures and for points without one. */
    private final int[] towardsRoot;

    /** By how much each branch is preferred, and whether only after all others. */
    private final double[] wide;

    private final boolean[] late;
    private final int[] visited;
    private final double[] rest;
    private int visitedCount;

    Tree(Network network) {
        points = network.pointCount();
        branches = network.branchCount();
        start = new int[points + 1];
        touching = new int[2 * branches];
        sorted = new int[branches];
        heap = new int[branches];
        group = new int[points];
        inTree = new boolean[branches];
        towardsRoot = new int[points];
        wide = new double[branches];
        late = new boolean[branches];
        visited = new int[points];
        rest = new double[points];
        for (int b = 0; b < branches; b++) {
            start[network.from(b) + 1]++;
            start[network.to(b) + 1]++;
        }
        for (int i = 0; i < points; i++) {
            start[i + 1] += start[i];
        }
        int[] at = start.clone();
        for (int b = 0; b < branches; b++) {
            touching[at[network.from(b)]++] = b;
            touching[at[network.to(b)]++] = b;
        }
    }

    /** Chooses the tree for the coefficients of this network. */
    void choose(Network network) {
        for (int b = 0; b < branches; b++) {
            wide[b] = network.nominalFlowKgPerS(b);
            late[b] = network.kind(b) == Network.Kind.DEVICE;
        }
        grow(network);
    }

    /**
     * Chooses it again for a state: where a wide device stands among narrow lines, rounding of its flow would drown theirs.
     * Devices that are shut come last.
     */
    void choose(Network network, Workspace w) {
        int border = w.borderBranch.length;
        for (int b = 0; b < branches; b++) {
            int k = w.borderOf[b];
            double slope = k < 0 ? w.slope[b] : Math.abs(w.byFlow[k * border + k]);
            wide[b] = 1 / slope;
            late[b] = network.kind(b) == Network.Kind.DEVICE && w.state[b] == DeviceLaw.SHUT;
        }
        grow(network);
    }

    private void grow(Network network) {
        sortFromWide();
        int root = -1;
        for (int i = 0; i < points; i++) {
            group[i] = i;
            if (network.fixed(i)) {
                root = root < 0 ? i : root;
                group[i] = root;
            }
        }
        Arrays.fill(inTree, false);
        for (int b : sorted) {
            int i = Groups.find(group, network.from(b));
            int j = Groups.find(group, network.to(b));
            if (i != j) {
                group[i] = j;
                inTree[b] = true;
            }
        }
        walk(network);
    }

    private void walk(Network network) {
        Arrays.fill(towardsRoot, -1);
        visitedCount = 0;
        for (int i = 0; i < points; i++) {
            if (network.fixed(i)) {
                visited[visitedCount++] = i;
            }
        }
        for (int k = 0; k < visitedCount; k++) {
            int i = visited[k];
            for (int t = start[i]; t < start[i + 1]; t++) {
                int b = touching[t];
                int other = network.from(b) == i ? network.to(b) : network.from(b);
                if (inTree[b] && b != towardsRoot[i] && !network.fixed(other)) {
                    towardsRoot[other] = b;
                    visited[visitedCount++] = other;
                }
            }
        }
    }

    /** Sets the flows of the tree so that every point reached from a given pressure balances. */
    void balance(Network network, Workspace w) {
        double[] flow = w.flow;
        for (int i = 0; i < points; i++) {
            rest[i] = w.slack.drawKgPerS(network, i);
        }
        for (int b = 0; b < branches; b++) {
            if (!inTree[b]) {
                rest[network.from(b)] += flow[b];
                rest[network.to(b)] -= flow[b];
            }
        }
        for (int k = visitedCount - 1; k >= 0; k--) {
            int i = visited[k];
            int b = towardsRoot[i];
            if (b >= 0) {
                boolean leaves = network.from(b) == i;
                flow[b] = leaves ? -rest[i] : rest[i];
                rest[leaves ? network.to(b) : network.from(b)] += rest[i];
            }
        }
    }

    /** Heap sort, so that nothing is allocated: ordinary branches before devices, wide before narrow, then by number. */
    private void sortFromWide() {
        for (int b = 0; b < branches; b++) {
            heap[b] = b;
        }
        for (int i = branches / 2 - 1; i >= 0; i--) {
            sift(i, branches);
        }
        for (int end = branches - 1; end >= 0; end--) {
            int last = heap[0];
            heap[0] = heap[end];
            heap[end] = last;
            sift(0, end);
            sorted[end] = last;
        }
    }

    private void sift(int from, int end) {
        int i = from;
        int moved = heap[i];
        while (2 * i + 1 < end) {
            int child = 2 * i + 1;
            if (child + 1 < end && before(heap[child], heap[child + 1])) {
                child++;
            }
            if (!before(moved, heap[child])) {
                break;
            }
            heap[i] = heap[child];
            i = child;
        }
        heap[i] = moved;
    }

    private boolean before(int a, int b) {
        if (late[a] != late[b]) {
            return late[b];
        }
        return wide[a] != wide[b] ? wide[a] > wide[b] : a < b;
    }
}
