package org.linedrop.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;
import org.linedrop.network.Network;

/**
 * The symmetric part of the Newton matrix, one row per free point: the sum over branches of conductance times the
 * incidence of the branch. Rows are kept in elimination order, so the factorisation needs no permutation; the pattern is
 * analysed once. Nothing is allocated after construction and the first factorisation.
 */
final class SymmetricPart {
    /** Row of each point in elimination order, -1 for fixed points. */
    final int[] row;

    final int size;
    private final DMatrixSparseCSC matrix;
    private final Cholesky cholesky;
    private final int[] fromRow;
    private final int[] toRow;
    private final int[] fromDiagonal;
    private final int[] toDiagonal;
    private final int[] between;
    /** Conductance of each row to given pressures. */
    private final double[] toGiven;
    /** Conductance of each row that is no branch's. */
    private final double[] tied;

    SymmetricPart(Network network) {
        int points = network.pointCount();
        int branches = network.branchCount();
        int[] plain = new int[points];
        int count = 0;
        for (int i = 0; i < points; i++) {
            plain[i] = network.fixed(i) ? -1 : count++;
        }
        size = count;
        int[][] neighbours = neighbours(network, plain, size);
        int[] order = MinimumDegree.order(neighbours);
        int[] place = new int[size];
        for (int k = 0; k < size; k++) {
            place[order[k]] = k;
        }
        row = new int[points];
        for (int i = 0; i < points; i++) {
            row[i] = plain[i] < 0 ? -1 : place[plain[i]];
        }
        matrix = pattern(neighbours, order, place);
        fromDiagonal = new int[branches];
        toDiagonal = new int[branches];
        between = new int[branches];
        fromRow = new int[branches];
        toRow = new int[branches];
        for (int b = 0; b < branches; b++) {
            int i = row[network.from(b)];
            int j = row[network.to(b)];
            fromDiagonal[b] = i < 0 ? -1 : index(i, i);
            toDiagonal[b] = j < 0 ? -1 : index(j, j);
            fromRow[b] = i;
            toRow[b] = j;
            between[b] = i < 0 || j < 0 ? -1 : index(Math.min(i, j), Math.max(i, j));
        }
        toGiven = new double[size];
        tied = new double[size];
        cholesky = new Cholesky(matrix);
    }

    private static int[][] neighbours(Network network, int[] plain, int size) {
        int[] count = new int[size];
        for (int b = 0; b < network.branchCount(); b++) {
            int i = plain[network.from(b)];
            int j = plain[network.to(b)];
            if (i >= 0 && j >= 0) {
                count[i]++;
                count[j]++;
            }
        }
        int[][] neighbours = new int[size][];
        for (int i = 0; i < size; i++) {
            neighbours[i] = new int[count[i]];
        }
        Arrays.fill(count, 0);
        for (int b = 0; b < network.branchCount(); b++) {
            int i = plain[network.from(b)];
            int j = plain[network.to(b)];
            if (i >= 0 && j >= 0) {
                neighbours[i][count[i]++] = j;
                neighbours[j][count[j]++] = i;
            }
        }
        for (int i = 0; i < size; i++) {
            neighbours[i] = sortedOnce(neighbours[i]);
        }
        return neighbours;
    }

    private static int[] sortedOnce(int[] numbers) {
        Arrays.sort(numbers);
        int count = 0;
        for (int number : numbers) {
            if (count == 0 || number != numbers[count - 1]) {
                numbers[count++] = number;
            }
        }
        return count == numbers.length ? numbers : Arrays.copyOf(numbers, count);
    }

    private static DMatrixSparseCSC pattern(int[][] neighbours, int[] order, int[] place) {
        int size = order.length;
        int entries = size;
        for (int[] of : neighbours) {
            entries += of.length;
        }
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(size, size, entries);
        int at = 0;
        for (int k = 0; k < size; k++) {
            matrix.col_idx[k] = at;
            int[] of = neighbours[order[k]];
            int[] rows = new int[of.length + 1];
            rows[0] = k;
            for (int i = 0; i < of.length; i++) {
                rows[i + 1] = place[of[i]];
            }
            Arrays.sort(rows);
            for (int r : rows) {
                matrix.nz_rows[at++] = r;
            }
        }
        matrix.col_idx[size] = at;
        matrix.nz_length = at;
        matrix.indicesSorted = true;
        return matrix;
    }

    private int index(int i, int column) {
        int at = Arrays.binarySearch(matrix.nz_rows, matrix.col_idx[column], matrix.col_idx[column + 1], i);
        if (at < 0) {
            throw new IllegalStateException("entry " + i + ", " + column + " is missing from the pattern");
        }
        return at;
    }

    /** As filled last, both triangles in the pattern, values above the diagonal only; for comparison with the library. */
    DMatrixSparseCSC matrix() {
        return matrix;
    }

    void clear() {
        Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
        Arrays.fill(tied, 0);
    }

    /** Ties a free point to a given pressure by a conductance of no branch. */
    void tie(int point, double conductance) {
        int r = row[point];
        if (r >= 0) {
            tied[r] = conductance;
            matrix.nz_values[index(r, r)] += conductance;
        }
    }

    /** Adds the conductance of a branch; only the upper triangle is filled, which is all the factorisation reads. */
    void add(int branch, double conductance) {
        if (fromDiagonal[branch] >= 0) {
            matrix.nz_values[fromDiagonal[branch]] += conductance;
        }
        if (toDiagonal[branch] >= 0) {
            matrix.nz_values[toDiagonal[branch]] += conductance;
        }
        if (between[branch] >= 0) {
            matrix.nz_values[between[branch]] -= conductance;
        }
    }

    /** Factorises; false when the matrix is not positive definite or not finite. */
    boolean factor() {
        if (size == 0) {
            return true;
        }
        if (!cholesky.decompose()) {
            return false;
        }
        DMatrixSparseCSC factor = cholesky.factor();
        // the library lets NaN and infinity through as "ok": look at the pivots
        for (int k = 0; k < size; k++) {
            double pivot = factor.nz_values[factor.col_idx[k]];
            if (!(pivot > 0 && pivot < Double.POSITIVE_INFINITY)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Factorises without subtractions, which is slower and loses no digits; false when the matrix is not positive definite
     * or not finite.
     *
     * @param conductance what was added for each branch
     */
    boolean factorUnsubtracted(double[] conductance) {
        System.arraycopy(tied, 0, toGiven, 0, size);
        for (int b = 0; b < conductance.length; b++) {
            if (between[b] < 0 && fromDiagonal[b] >= 0) {
                toGiven[fromRow[b]] += conductance[b];
            }
            if (between[b] < 0 && toDiagonal[b] >= 0) {
                toGiven[toRow[b]] += conductance[b];
            }
        }
        return size == 0 || cholesky.decomposeUnsubtracted(toGiven);
    }

    /** Solves in place for one right-hand side in elimination order. */
    void solve(double[] x) {
        if (size > 0) {
            cholesky.solve(x);
        }
    }
}
