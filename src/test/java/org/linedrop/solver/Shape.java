package org.linedrop.solver;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.linedrop.network.Network;

/** What a circuit looks like as a graph, all given pressures taken as one point. */
final class Shape {
    private Shape() {}

    /** Branches beyond those that tie all points together. */
    static int loops(Network network) {
        int[] group = new int[network.pointCount()];
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
        }
        int beyond = 0;
        for (int b = 0; b < network.branchCount(); b++) {
            int from = Groups.find(group, merged(network, network.from(b)));
            int to = Groups.find(group, merged(network, network.to(b)));
            beyond += from == to ? 1 : 0;
            Groups.join(group, from, to);
        }
        return beyond;
    }

    /**
     * Whether some branch bridges two ways side by side: points with one or two neighbours are taken out, their neighbours
     * joined, and where that comes to an end before all are gone there is a bridge (R. J. Duffin, J. Math. Anal. Appl. 10
     * (1965) 303-318; from memory).
     */
    static boolean bridged(Network network) {
        List<Set<Integer>> neighbours = new ArrayList<>();
        for (int i = 0; i < network.pointCount(); i++) {
            neighbours.add(new HashSet<>());
        }
        for (int b = 0; b < network.branchCount(); b++) {
            join(neighbours, merged(network, network.from(b)), merged(network, network.to(b)));
        }
        boolean taken = true;
        while (taken) {
            taken = false;
            for (int i = 0; i < neighbours.size(); i++) {
                List<Integer> of = new ArrayList<>(neighbours.get(i));
                if (!of.isEmpty() && of.size() <= 2) {
                    int point = i;
                    of.forEach(other -> neighbours.get(other).remove(point));
                    neighbours.get(i).clear();
                    join(neighbours, of.get(0), of.get(of.size() - 1));
                    taken = true;
                }
            }
        }
        return neighbours.stream().anyMatch(of -> !of.isEmpty());
    }

    private static void join(List<Set<Integer>> neighbours, int i, int j) {
        if (i != j) {
            neighbours.get(i).add(j);
            neighbours.get(j).add(i);
        }
    }

    private static int merged(Network network, int point) {
        if (!network.fixed(point)) {
            return point;
        }
        int first = 0;
        while (!network.fixed(first)) {
            first++;
        }
        return first;
    }
}
