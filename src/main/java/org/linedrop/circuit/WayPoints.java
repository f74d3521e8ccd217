package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.fact.Inner;

/**
 * Which way-points of a run lie before, between and behind the known places on it. Both are in flow order, but the file
 * does not say how they mix: the mixture with the shortest way is taken.
 */
@Inner
public final class WayPoints {
    private WayPoints() {}

    /**
     * Puts way-points between known places.
     *
     * @param from  where the run starts
     * @param via   its way-points in flow order
     * @param known places known on it in flow order
     * @param to    where it ends
     * @return one list more than known places: the way-points before each, and those behind the last
     */
    public static List<List<Position>> between(Position from, List<Position> via, List<Position> known, Position to) {
        int rows = known.size() + 1;
        int columns = via.size() + 1;
        // shortest[k][v]: shortest way that has passed k known places and v way-points and stands at a known place
        // (from at k = 0); the step to the next known place goes through some way-points
        double[][] shortest = new double[rows + 1][columns];
        int[][] before = new int[rows + 1][columns];
        for (int v = 1; v < columns; v++) {
            shortest[0][v] = Double.POSITIVE_INFINITY;
        }
        for (int k = 1; k <= rows; k++) {
            Position start = k == 1 ? from : known.get(k - 2);
            Position end = k == rows ? to : known.get(k - 1);
            for (int v = 0; v < columns; v++) {
                shortest[k][v] = Double.POSITIVE_INFINITY;
                for (int u = 0; u <= v; u++) {
                    double way = shortest[k - 1][u] + length(start, via.subList(u, v), end);
                    if (way < shortest[k][v]) {
                        shortest[k][v] = way;
                        before[k][v] = u;
                    }
                }
            }
        }
        List<List<Position>> gaps = new ArrayList<>();
        int v = columns - 1;
        for (int k = rows; k >= 1; k--) {
            int u = before[k][v];
            gaps.add(0, List.copyOf(via.subList(u, v)));
            v = u;
        }
        return List.copyOf(gaps);
    }

    private static double length(Position start, List<Position> via, Position end) {
        double length = 0;
        Position at = start;
        for (Position next : via) {
            length += at.distanceM(next);
            at = next;
        }
        return length + at.distanceM(end);
    }
}
