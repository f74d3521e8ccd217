package org.linedrop.benchmarks;

import java.util.concurrent.TimeUnit;
import org.linedrop.network.Network;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A tree-like net with a cross-line for every hundred pipes: planned and solved cold. The table is made with 100,000
 * pipes; the smoke run takes a small one.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TreeNetBenchmark {
    /** Number of pipes. */
    @Param("1000")
    public int pipes;

    private Network network;

    /** Builds, solves and checks. */
    @Setup
    public void build() {
        network = Nets.treeLike(pipes).build();
        Nets.check(network, planAndSolve());
    }

    /**
     * The plan of elimination and the solve.
     *
     * @return the memory with the answer
     */
    @Benchmark
    public Workspace planAndSolve() {
        Workspace workspace = Workspace.of(network);
        if (Solver.usual().solve(network, null, workspace) != Outcome.CONVERGED) {
            throw new IllegalStateException("did not converge");
        }
        return workspace;
    }
}
