package org.linedrop.report.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Rows and columns for the places of a diagram: from where they are, the front on top, or in the order of flow where that
 * is not known. Joined places never share a row.
 */
public final class Grid {
    /** Places nearer than this share of the whole are side by side. */
    private static final double NEAR = 0.04;

    private final int[] row;
    private final int[] column;
    private final int[] counts;
    private final boolean placed;

    private Grid(int[] row, int[] column, int[] counts, boolean placed) {
        this.row = row;
        this.column = column;
        this.counts = counts;
        this.placed = placed;
    }

    /**
     * Somewhere in a diagram.
     *
     * @param ahead how far to the front; NaN where not known
     * @param left  how far to the left; NaN where not known
     */
    public record Spot(double ahead, double left) {}

    /**
     * A line from place to place, in the sense of flow.
     *
     * @param from number of the first place
     * @param to   number of the last
     */
    public record Join(int from, int to) {}

    /**
     * Lays out.
     *
     * @param spots the places
     * @param joins the lines
     * @return their rows and columns
     */
    public static Grid of(List<Spot> spots, List<Join> joins) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Spot spot : spots) {
            low = Double.isNaN(spot.ahead()) ? low : Math.min(low, spot.ahead());
            high = Double.isNaN(spot.ahead()) ? high : Math.max(high, spot.ahead());
        }
        boolean placed = high > low;
        int[] rows = placed ? placedRows(spots, joins, high - low) : layers(spots.size(), joins);
        int most = Arrays.stream(rows).max().orElse(0);
        int[] counts = new int[most + 1];
        int[] columns = new int[spots.size()];
        for (int r = 0; r <= most; r++) {
            List<Integer> here = new ArrayList<>();
            for (int i = 0; i < rows.length; i++) {
                if (rows[i] == r) {
                    here.add(i);
                }
            }
            order(here, spots, joins, rows, columns, counts);
            for (int c = 0; c < here.size(); c++) {
                columns[here.get(c)] = c;
            }
            counts[r] = here.size();
        }
        return new Grid(rows, columns, counts, placed);
    }

    /**
     * Row of a place.
     *
     * @param place its number
     * @return from 0 on top
     */
    public int row(int place) {
        return row[place];
    }

    /**
     * Where a place stands in its row.
     *
     * @param place its number
     * @return the middle of its share of the width, 0 to 1
     */
    public double across(int place) {
        return (column[place] + 0.5) / counts[row[place]];
    }

    /**
     * How many places a row holds.
     *
     * @param rowNumber the row
     * @return at least 1
     */
    public int count(int rowNumber) {
        return counts[rowNumber];
    }

    /**
     * How many rows there are.
     *
     * @return at least 1
     */
    public int rows() {
        return counts.length;
    }

    /**
     * Whether the places are where they are in the vehicle.
     *
     * @return false where they stand in the order of flow
     */
    public boolean placed() {
        return placed;
    }

    /** To the left what lies left; else under what it is joined to in the row above. */
    private static void order(
            List<Integer> here, List<Spot> spots, List<Join> joins, int[] rows, int[] columns, int[] counts) {
        boolean sides = here.stream()
                        .map(i -> spots.get(i).left())
                        .filter(left -> !Double.isNaN(left))
                        .distinct()
                        .count()
                > 1;
        if (sides) {
            here.sort(Comparator.comparingDouble(
                    i -> Double.isNaN(spots.get(i).left()) ? 0 : -spots.get(i).left()));
            return;
        }
        double[] under = new double[spots.size()];
        for (int i : here) {
            double sum = 0;
            int count = 0;
            for (Join join : joins) {
                int other = join.from() == i ? join.to() : join.to() == i ? join.from() : -1;
                if (other >= 0 && rows[other] < rows[i]) {
                    sum += (columns[other] + 0.5) / counts[rows[other]];
                    count++;
                }
            }
            under[i] = count == 0 ? 0.5 : sum / count;
        }
        here.sort(Comparator.comparingDouble(i -> under[i]));
    }

    /** Front on top; what lies side by side and is joined goes into rows of its own, in the sense most lines take. */
    private static int[] placedRows(List<Spot> spots, List<Join> joins, double span) {
        double[] ahead = new double[spots.size()];
        for (int i = 0; i < ahead.length; i++) {
            ahead[i] = Double.isNaN(spots.get(i).ahead())
                    ? beside(i, spots, joins)
                    : spots.get(i).ahead();
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < ahead.length; i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble(i -> -ahead[i]));
        int[] cluster = new int[ahead.length];
        int clusters = 0;
        for (int n = 0; n < order.size(); n++) {
            boolean far = n > 0 && ahead[order.get(n - 1)] - ahead[order.get(n)] > NEAR * span;
            clusters += far ? 1 : 0;
            cluster[order.get(n)] = clusters;
        }
        int upward = 0;
        for (Join join : joins) {
            upward += Integer.compare(cluster[join.from()], cluster[join.to()]);
        }
        int[] rows = new int[ahead.length];
        int next = 0;
        for (int c = 0; c <= clusters; c++) {
            int number = c;
            List<Join> inside = joins.stream()
                    .filter(join -> cluster[join.from()] == number && cluster[join.to()] == number)
                    .toList();
            int[] layer = layers(ahead.length, inside);
            int deepest = 0;
            for (int i = 0; i < ahead.length; i++) {
                deepest = cluster[i] == c ? Math.max(deepest, layer[i]) : deepest;
            }
            for (int i = 0; i < ahead.length; i++) {
                if (cluster[i] == c) {
                    rows[i] = next + (upward > 0 ? deepest - layer[i] : layer[i]);
                }
            }
            next += deepest + 1;
        }
        return packed(rows);
    }

    /** Where a place of unknown position would be: between those it is joined to. */
    private static double beside(int place, List<Spot> spots, List<Join> joins) {
        double sum = 0;
        int count = 0;
        for (Join join : joins) {
            int other = join.from() == place ? join.to() : join.to() == place ? join.from() : -1;
            if (other >= 0 && !Double.isNaN(spots.get(other).ahead())) {
                sum += spots.get(other).ahead();
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    /** The longest way to each place, lines that close a circle turned round. */
    private static int[] layers(int places, List<Join> joins) {
        List<Join> forward = withoutCircles(places, joins);
        int[] layer = new int[places];
        for (int pass = 0; pass < places; pass++) {
            for (Join join : forward) {
                layer[join.to()] = Math.max(layer[join.to()], layer[join.from()] + 1);
            }
        }
        // what nothing flows to stands just above what it feeds
        for (int i = 0; i < places; i++) {
            int place = i;
            if (forward.stream().noneMatch(join -> join.to() == place)) {
                layer[i] = forward.stream()
                        .filter(join -> join.from() == place)
                        .mapToInt(join -> layer[join.to()] - 1)
                        .min()
                        .orElse(layer[i]);
            }
        }
        return packed(layer);
    }

    private static List<Join> withoutCircles(int places, List<Join> joins) {
        List<Join> kept = new ArrayList<>();
        for (Join join : joins) {
            if (join.from() == join.to()) {
                continue;
            }
            boolean circle = reaches(join.to(), join.from(), kept, new boolean[places]);
            kept.add(circle ? new Join(join.to(), join.from()) : join);
        }
        return kept;
    }

    private static boolean reaches(int from, int to, List<Join> joins, boolean[] seen) {
        if (from == to) {
            return true;
        }
        if (seen[from]) {
            return false;
        }
        seen[from] = true;
        return joins.stream().anyMatch(join -> join.from() == from && reaches(join.to(), to, joins, seen));
    }

    /** Without empty rows. */
    private static int[] packed(int[] rows) {
        int[] used = Arrays.stream(rows).distinct().sorted().toArray();
        return Arrays.stream(rows).map(row -> Arrays.binarySearch(used, row)).toArray();
    }
}
