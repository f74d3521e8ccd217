package org.linedrop.solver;

import java.util.Arrays;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;

/**
 * Sparse Cholesky of a matrix whose pattern stays: the first factorisation is EJML's; it leaves the pattern of the factor,
 * and the later ones are the same up-looking arithmetic in the same order over that pattern, without looking for it again.
 * Every factor has the bits EJML's would have. Nothing is allocated after the first factorisation.
 */
final class Cholesky {
    private final DMatrixSparseCSC matrix;
    private final CholeskyUpLooking_DSCC first = new CholeskyUpLooking_DSCC();
    private DMatrixSparseCSC factor;
    /** Columns of each row of the factor, left of the diagonal, in the order in which they are eliminated. */
    private int[] columns = new int[0];

    private int[] rowStart = new int[0];
    /** Place up to which each column of the factor is filled. */
    private int[] filled = new int[0];

    private double[] x = new double[0];

    Cholesky(DMatrixSparseCSC matrix) {
        this.matrix = matrix;
        this.factor = matrix;
    }

    /** Factorises; false when the matrix is not positive definite. NaN and infinity may pass: look at the pivots. */
    boolean decompose() {
        if (rowStart.length == 0) {
            first.setStructureLocked(false);
            if (!first.decompose(matrix)) {
                return false;
            }
            factor = first.getL();
            keepPattern();
            return true;
        }
        return refactor();
    }

    DMatrixSparseCSC factor() {
        return factor;
    }

    private void keepPattern() {
        int n = matrix.numCols;
        filled = new int[n];
        x = new double[n];
        rowStart = new int[n + 1];
        columns = new int[factor.nz_length - n];
        int[] parent = new int[n];
        TriangularSolver_DSCC.eliminationTree(matrix, false, parent, null);
        int[] row = new int[n];
        int[] marks = new int[n];
        for (int k = 0; k < n; k++) {
            int top = TriangularSolver_DSCC.searchNzRowsElim(matrix, k, parent, row, marks);
            System.arraycopy(row, top, columns, rowStart[k], n - top);
            rowStart[k + 1] = rowStart[k] + n - top;
        }
    }

    private boolean refactor() {
        int n = matrix.numCols;
        int[] start = factor.col_idx;
        int[] rows = factor.nz_rows;
        double[] values = factor.nz_values;
        for (int k = 0; k < n; k++) {
            filled[k] = start[k] + 1;
            // the upper triangle of column k; a column ends with its diagonal or goes on under it
            for (int p = matrix.col_idx[k]; p < matrix.col_idx[k + 1] && matrix.nz_rows[p] <= k; p++) {
                x[matrix.nz_rows[p]] = matrix.nz_values[p];
            }
            double d = x[k];
            x[k] = 0;
            for (int r = rowStart[k]; r < rowStart[k + 1]; r++) {
                int i = columns[r];
                double lki = x[i] / values[start[i]];
                x[i] = 0;
                int end = filled[i]++;
                for (int p = start[i] + 1; p < end; p++) {
                    x[rows[p]] -= values[p] * lki;
                }
                d -= lki * lki;
                values[end] = lki;
            }
            if (d <= 0) {
                return false;
            }
            values[start[k]] = Math.sqrt(d);
        }
        return true;
    }

    /**
     * The same factor without a single subtraction, for a matrix that is a sum over branches of conductance times
     * incidence: what is eliminated is conductances, between rows and to the given pressures, and they only grow. Every
     * pivot has full precision however far apart the conductances are, where the usual way loses all digits of the
     * smaller ones (W. K. Grassmann, M. I. Taksar and D. P. Heyman, Oper. Res. 33 (1985) 1107-1116).
     *
     * @param toGiven modified: conductance of each row to given pressures
     */
    boolean decomposeUnsubtracted(double[] toGiven) {
        if (rowStart.length == 0 && !analyse()) {
            return false;
        }
        int n = matrix.numCols;
        int[] start = factor.col_idx;
        int[] rows = factor.nz_rows;
        double[] values = factor.nz_values;
        Arrays.fill(values, 0, factor.nz_length, 0);
        for (int k = 0; k < n; k++) {
            // row k of the factor: its entries in earlier columns, each column filled from the top
            filled[k] = start[k] + 1;
            for (int p = matrix.col_idx[k]; p < matrix.col_idx[k + 1] && matrix.nz_rows[p] < k; p++) {
                x[matrix.nz_rows[p]] = -matrix.nz_values[p];
            }
            for (int r = rowStart[k]; r < rowStart[k + 1]; r++) {
                int i = columns[r];
                values[filled[i]++] = x[i];
                x[i] = 0;
            }
        }
        for (int k = 0; k < n; k++) {
            double pivot = toGiven[k];
            for (int p = start[k] + 1; p < start[k + 1]; p++) {
                pivot += values[p];
            }
            if (!(pivot > 0 && pivot < Double.POSITIVE_INFINITY)) {
                return false;
            }
            for (int p = start[k] + 1; p < start[k + 1]; p++) {
                int i = rows[p];
                double part = values[p] / pivot;
                toGiven[i] += part * toGiven[k];
                int at = start[i] + 1;
                for (int q = p + 1; q < start[k + 1]; q++) {
                    while (rows[at] != rows[q]) {
                        at++;
                    }
                    values[at] += part * values[q];
                }
            }
            double root = Math.sqrt(pivot);
            values[start[k]] = root;
            for (int p = start[k] + 1; p < start[k + 1]; p++) {
                values[p] /= -root;
            }
        }
        return true;
    }

    /** Solves in place for one right-hand side; what is nothing so far is passed over, the bits are those of the library. */
    void solve(double[] x) {
        int n = matrix.numCols;
        int[] start = factor.col_idx;
        int[] rows = factor.nz_rows;
        double[] values = factor.nz_values;
        for (int k = 0; k < n; k++) {
            if (x[k] != 0) {
                double xk = x[k] / values[start[k]];
                x[k] = xk;
                for (int p = start[k] + 1; p < start[k + 1]; p++) {
                    x[rows[p]] -= values[p] * xk;
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double xk = x[k];
            for (int p = start[k] + 1; p < start[k + 1]; p++) {
                xk -= values[p] * x[rows[p]];
            }
            x[k] = xk / values[start[k]];
        }
    }

    /** Finds the pattern on numbers that cannot fail. */
    private boolean analyse() {
        double[] kept = matrix.nz_values.clone();
        for (int k = 0; k < matrix.numCols; k++) {
            for (int p = matrix.col_idx[k]; p < matrix.col_idx[k + 1]; p++) {
                matrix.nz_values[p] = matrix.nz_rows[p] == k ? matrix.numCols : -1;
            }
        }
        boolean done = decompose();
        System.arraycopy(kept, 0, matrix.nz_values, 0, kept.length);
        return done;
    }
}
