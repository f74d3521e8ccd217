package org.linedrop.solver;

import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.sparse.csc.decomposition.chol.CholeskyUpLooking_DSCC;
import org.ejml.sparse.csc.misc.TriangularSolver_DSCC;
import org.linedrop.benchmarks.Nets;
import org.linedrop.network.Network;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A square grid of rough bores with local losses, cold, beside what EJML alone needs to factorise and solve the matrix of
 * the last step again, in the same order; and the minimum-degree order on its own. In the solver's package, because the
 * matrix and the order are nobody else's business. The table is made with side 316; the smoke run takes a small one.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LargeNetBenchmark {
    private static final int MOST_STEPS = 12;

    /** Points a side. */
    @Param("24")
    public int side;

    private final CholeskyUpLooking_DSCC library = new CholeskyUpLooking_DSCC();
    private Network network;
    private Workspace workspace;
    private DMatrixSparseCSC matrix;
    private double[] right;
    private int[][] neighbours;

    /** Solves once, checks the answer, and checks that the library's factor is ours. */
    @Setup
    public void build() {
        network = Nets.grid(side).build();
        workspace = Workspace.of(network);
        if (solve() != Outcome.CONVERGED || workspace.iterations() > MOST_STEPS) {
            throw new IllegalStateException(workspace.outcome + " in " + workspace.iterations() + " steps");
        }
        Nets.check(network, workspace);
        matrix = workspace.symmetric.matrix();
        right = new double[workspace.symmetric.size];
        library.setStructureLocked(true);
        double[] x = refactorAndSolve();
        double[] own = new double[x.length];
        java.util.Arrays.fill(own, 1);
        workspace.symmetric.factor();
        workspace.symmetric.solve(own);
        if (!java.util.Arrays.equals(own, x)) {
            throw new IllegalStateException("the factor is not the library's");
        }
        neighbours = neighbours();
        if (MinimumDegree.order(neighbours).length != side * side) {
            throw new IllegalStateException("the order is no order");
        }
    }

    private int[][] neighbours() {
        int[][] all = new int[side * side][];
        for (int i = 0; i < all.length; i++) {
            int point = i;
            all[i] = java.util.stream.IntStream.of(i - side, i % side > 0 ? i - 1 : -1, i % side < side - 1 ? i + 1 : -1, i + side)
                    .filter(k -> k >= 0 && k < side * side && k != point)
                    .toArray();
        }
        return all;
    }

    /**
     * The whole cold solve; the workspace with its plan is there already.
     *
     * @return how it ended
     */
    @Benchmark
    public Outcome solve() {
        return Solver.usual().solve(network, null, workspace);
    }

    /**
     * One factorisation and one solve by the library alone.
     *
     * @return the solution for a right-hand side of ones
     */
    @Benchmark
    public double[] refactorAndSolve() {
        if (!library.decompose(matrix)) {
            throw new IllegalStateException("not positive definite");
        }
        java.util.Arrays.fill(right, 1);
        TriangularSolver_DSCC.solveL(library.getL(), right);
        TriangularSolver_DSCC.solveTranL(library.getL(), right);
        return right;
    }

    /**
     * The minimum-degree order of the grid.
     *
     * @return the order
     */
    @Benchmark
    public int[] order() {
        return MinimumDegree.order(neighbours);
    }
}
