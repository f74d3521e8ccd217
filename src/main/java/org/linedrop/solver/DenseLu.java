package org.linedrop.solver;

/** LU with row pivoting of a small dense matrix, each row judged by its own size. Caller owns nothing; no allocation. */
final class DenseLu {
    /** A pivot this small against its row's size is rounding: the matrix counts as singular. */
    private static final double SINGULAR = 1e-13;

    final int size;
    final double[] a;
    /** Size of each row before cancellation; set by the caller with the matrix. */
    final double[] rowSize;

    private final int[] pivot;
    private final double[] work;

    DenseLu(int size) {
        this.size = size;
        a = new double[size * size];
        rowSize = new double[size];
        pivot = new int[size];
        work = new double[size];
    }

    /** Factorises {@code a} in place; false when singular. */
    boolean factor() {
        for (int i = 0; i < size; i++) {
            pivot[i] = i;
        }
        for (int k = 0; k < size; k++) {
            int best = -1;
            double most = SINGULAR;
            for (int i = k; i < size; i++) {
                double relative = Math.abs(a[i * size + k]) / rowSize[i];
                if (relative > most) {
                    most = relative;
                    best = i;
                }
            }
            if (best < 0) {
                return false;
            }
            swap(k, best);
            double diagonal = a[k * size + k];
            for (int i = k + 1; i < size; i++) {
                double factor = a[i * size + k] / diagonal;
                a[i * size + k] = factor;
                if (factor != 0) {
                    for (int j = k + 1; j < size; j++) {
                        a[i * size + j] -= factor * a[k * size + j];
                    }
                }
            }
        }
        return true;
    }

    private void swap(int i, int j) {
        if (i == j) {
            return;
        }
        for (int c = 0; c < size; c++) {
            double t = a[i * size + c];
            a[i * size + c] = a[j * size + c];
            a[j * size + c] = t;
        }
        double t = rowSize[i];
        rowSize[i] = rowSize[j];
        rowSize[j] = t;
        int p = pivot[i];
        pivot[i] = pivot[j];
        pivot[j] = p;
    }

    /** Solves A x = b in place. */
    void solve(double[] b) {
        for (int i = 0; i < size; i++) {
            double sum = b[pivot[i]];
            for (int j = 0; j < i; j++) {
                sum -= a[i * size + j] * work[j];
            }
            work[i] = sum;
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = work[i];
            for (int j = i + 1; j < size; j++) {
                sum -= a[i * size + j] * b[j];
            }
            b[i] = sum / a[i * size + i];
        }
    }

    /** Solves the transposed system in place. */
    void solveTransposed(double[] b) {
        for (int i = 0; i < size; i++) {
            double sum = b[i];
            for (int j = 0; j < i; j++) {
                sum -= a[j * size + i] * work[j];
            }
            work[i] = sum / a[i * size + i];
        }
        for (int i = size - 1; i >= 0; i--) {
            double sum = work[i];
            for (int j = i + 1; j < size; j++) {
                sum -= a[j * size + i] * work[j];
            }
            work[i] = sum;
        }
        for (int i = 0; i < size; i++) {
            b[pivot[i]] = work[i];
        }
    }
}
