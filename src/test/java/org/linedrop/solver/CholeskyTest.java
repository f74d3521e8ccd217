package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.junit.jupiter.api.Test;

/** Factorising again over the kept pattern gives EJML's factor, bit for bit. */
class CholeskyTest {
    private static final int SIZE = 60;

    @Test
    void sameBitsAsTheLibrary() {
        Random random = new Random(1910);
        for (int i = 0; i < 50; i++) {
            boolean[][] joined = new boolean[SIZE][SIZE];
            for (int k = 0; k < 2 * SIZE; k++) {
                int a = random.nextInt(SIZE);
                int b = random.nextInt(SIZE);
                joined[a][b] = a != b;
                joined[b][a] = a != b;
            }
            DMatrixSparseCSC matrix = new DMatrixSparseCSC(SIZE, SIZE, 5 * SIZE);
            int at = 0;
            for (int column = 0; column < SIZE; column++) {
                matrix.col_idx[column] = at;
                for (int row = 0; row < SIZE; row++) {
                    if (row == column || joined[row][column]) {
                        matrix.nz_rows[at++] = row;
                    }
                }
            }
            matrix.col_idx[SIZE] = at;
            matrix.nz_length = at;
            matrix.indicesSorted = true;
            Cholesky own = new Cholesky(matrix);
            for (int again = 0; again < 4; again++) {
                fill(matrix, random);
                CholeskyUpLooking_DSCC library = new CholeskyUpLooking_DSCC();
                assertThat(library.decompose(matrix)).isTrue();
                assertThat(own.decompose()).isTrue();
                assertThat(own.factor().nz_rows).startsWith(library.getL().nz_rows);
                for (int p = 0; p < library.getL().nz_length; p++) {
                    assertThat(own.factor().nz_values[p]).isEqualTo(library.getL().nz_values[p]);
                }
            }
        }
    }

    @Test
    void notPositiveDefiniteIsSaidAndForgotten() {
        DMatrixSparseCSC matrix = new DMatrixSparseCSC(2, 2, 4);
        matrix.col_idx = new int[] {0, 2, 4};
        matrix.nz_rows = new int[] {0, 1, 0, 1};
        matrix.nz_length = 4;
        matrix.nz_values = new double[] {2, 1, 1, 2};
        Cholesky own = new Cholesky(matrix);
        assertThat(own.decompose()).isTrue();
        double pivot = own.factor().nz_values[2];
        matrix.nz_values = new double[] {1, 2, 2, 1};
        assertThat(own.decompose()).isFalse();
        matrix.nz_values = new double[] {2, 1, 1, 2};
        assertThat(own.decompose()).isTrue();
        assertThat(own.factor().nz_values[2]).isEqualTo(pivot);
    }

    private static void fill(DMatrixSparseCSC matrix, Random random) {
        double[] diagonal = new double[SIZE];
        for (int column = 0; column < SIZE; column++) {
            for (int p = matrix.col_idx[column]; p < matrix.col_idx[column + 1]; p++) {
                int row = matrix.nz_rows[p];
                if (row < column) {
                    double value = Math.pow(10, 4 * random.nextDouble());
                    matrix.nz_values[p] = -value;
                    matrix.nz_values[matrix.nz_index(column, row)] = -value;
                    diagonal[row] += value;
                    diagonal[column] += value;
                }
            }
        }
        for (int column = 0; column < SIZE; column++) {
            matrix.nz_values[matrix.nz_index(column, column)] = diagonal[column] + 1;
        }
    }
}
