package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;

/** The order of elimination and the dense border, each against plain arithmetic. */
class LinearAlgebraTest {
    @Test
    void denseLuAgreesWithAnotherLibrary() {
        Random random = new Random(5);
        for (int size = 1; size < 12; size++) {
            DenseLu lu = new DenseLu(size);
            double[][] a = new double[size][size];
            double[] b = new double[size];
            for (int i = 0; i < size; i++) {
                double scale = Math.pow(10, random.nextInt(9) - 4);
                for (int j = 0; j < size; j++) {
                    a[i][j] = scale * (random.nextDouble() - 0.5);
                    lu.a[i * size + j] = a[i][j];
                    lu.rowSize[i] = Math.max(lu.rowSize[i], Math.abs(a[i][j]));
                }
                b[i] = scale * random.nextDouble();
            }
            assertThat(lu.factor()).isTrue();
            RealVector wanted =
                    new LUDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(new ArrayRealVector(b));
            double[] x = b.clone();
            lu.solve(x);
            assertThat(wanted.subtract(new ArrayRealVector(x)).getLInfNorm()).isLessThan(1e-9 * wanted.getLInfNorm());
            RealVector transposed = new LUDecomposition(new Array2DRowRealMatrix(a).transpose())
                    .getSolver()
                    .solve(new ArrayRealVector(b));
            double[] y = b.clone();
            lu.solveTransposed(y);
            assertThat(transposed.subtract(new ArrayRealVector(y)).getLInfNorm())
                    .isLessThan(1e-9 * transposed.getLInfNorm());
        }
    }

    @Test
    void singularIsSaid() {
        DenseLu lu = new DenseLu(2);
        System.arraycopy(new double[] {1, 2, 2, 4 + 1e-15}, 0, lu.a, 0, 4);
        Arrays.fill(lu.rowSize, 4);
        assertThat(lu.factor()).isFalse();
        lu.a[0] = Double.NaN;
        assertThat(lu.factor()).isFalse();
    }

    @Test
    void orderIsAPermutationAndRepeats() {
        int[][] grid = grid(20);
        int[] order = MinimumDegree.order(grid);
        assertThat(Arrays.stream(order).sorted().toArray())
                .isEqualTo(IntStream.range(0, 400).toArray());
        assertThat(MinimumDegree.order(grid)).isEqualTo(order);
    }

    @Test
    void treesGetNoFill() {
        Random random = new Random(3);
        int n = 300;
        List<List<Integer>> near = new ArrayList<>();
        near.add(new ArrayList<>());
        for (int i = 1; i < n; i++) {
            int parent = random.nextInt(i);
            near.add(new ArrayList<>(List.of(parent)));
            near.get(parent).add(i);
        }
        int[][] tree = near.stream()
                .map(l -> l.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
        assertThat(entries(tree, MinimumDegree.order(tree))).isEqualTo(n - 1);
    }

    @Test
    void gridsGetLittleFill() {
        int[][] grid = grid(40);
        int[] natural = IntStream.range(0, 1600).toArray();
        int entries = entries(grid, MinimumDegree.order(grid));
        assertThat(entries).isLessThan(entries(grid, natural) / 3);
        assertThat(entries).isLessThan(20_000);
    }

    private static int[][] grid(int side) {
        int[][] near = new int[side * side][];
        for (int i = 0; i < near.length; i++) {
            List<Integer> list = new ArrayList<>();
            if (i % side > 0) {
                list.add(i - 1);
            }
            if (i % side < side - 1) {
                list.add(i + 1);
            }
            if (i >= side) {
                list.add(i - side);
            }
            if (i + side < near.length) {
                list.add(i + side);
            }
            near[i] = list.stream().mapToInt(Integer::intValue).toArray();
        }
        return near;
    }

    /** Entries under the diagonal of the factor, by eliminating one vertex after the other. */
    private static int entries(int[][] near, int[] order) {
        int n = near.length;
        boolean[][] joined = new boolean[n][n];
        for (int i = 0; i < n; i++) {
            for (int j : near[i]) {
                joined[i][j] = true;
            }
        }
        boolean[] gone = new boolean[n];
        int entries = 0;
        for (int v : order) {
            gone[v] = true;
            int[] left =
                    IntStream.range(0, n).filter(j -> joined[v][j] && !gone[j]).toArray();
            entries += left.length;
            for (int a : left) {
                for (int b : left) {
                    joined[a][b] = a != b;
                }
            }
        }
        return entries;
    }
}
