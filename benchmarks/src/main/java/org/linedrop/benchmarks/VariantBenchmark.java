package org.linedrop.benchmarks;

import java.util.concurrent.TimeUnit;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Variants of the looped circuit as a study makes them: draws changed, coefficients refilled on the same structure, solved
 * from one stored base solution, answer copied out.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class VariantBenchmark {
    private static final int VARIANTS = 64;

    private final Solver solver = Solver.usual();
    private Network network;
    private Workspace workspace;
    private Solution base;
    private int next;

    /** Solves the base and checks that a variant is what a network built anew says. */
    @Setup
    public void build() {
        network = Loops.network(Loops.Kind.ONE_BORE, 1);
        base = solver.solve(network);
        workspace = Workspace.of(network);
        next = 7;
        double draws = draws(next);
        Solution variant = variant();
        Solution anew = solver.solve(Loops.network(Loops.Kind.ONE_BORE, draws));
        for (int b = 0; b < Loops.RUNS; b++) {
            if (!(Math.abs(variant.massFlowKgPerS(b) - anew.massFlowKgPerS(b)) < 1e-9)
                    || variant.outcome() != Outcome.CONVERGED) {
                throw new IllegalStateException("run " + b + ": " + variant.massFlowKgPerS(b) + " kg/s, built anew "
                        + anew.massFlowKgPerS(b));
            }
        }
    }

    private static double draws(int variant) {
        return 1 + 0.05 * (variant % VARIANTS - VARIANTS / 2) / VARIANTS;
    }

    /**
     * One variant.
     *
     * @return its solution
     */
    @Benchmark
    public Solution variant() {
        NetworkBuilder changed = Loops.builder(Loops.Kind.ONE_BORE, draws(next++));
        solver.solve(network.refilled(changed), base, workspace);
        return workspace.snapshot();
    }
}
