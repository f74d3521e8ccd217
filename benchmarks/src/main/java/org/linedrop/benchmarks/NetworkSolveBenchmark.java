package org.linedrop.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.concurrent.TimeUnit;
import org.linedrop.network.Network;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
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
import org.openjdk.jmh.annotations.TearDown;

/**
 * The kernel on the looped circuit of 26 runs and 16 unknown points: cold from rest, and warm from the solution of a
 * circuit whose draws are 2 per cent smaller. Each thread has its own workspace; run with {@code -t 1} and {@code -t 2}
 * for the gain of a second core. The answer is checked by walking every branch and point, and the kernel must allocate
 * nothing.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class NetworkSolveBenchmark {
    private static final int CALLS = 1000;

    /** What the runs are made of. */
    @Param
    public Loops.Kind kind;

    private final Solver solver = Solver.usual();
    private Network network;
    private Workspace workspace;
    private Solution near;

    /** Builds the circuit, solves it once and checks the answer. */
    @Setup
    public void build() {
        network = Loops.network(kind, 1);
        near = solver.solve(Loops.network(kind, 0.98));
        workspace = Workspace.of(network);
        for (Outcome outcome : new Outcome[] {cold(), warm()}) {
            if (outcome != Outcome.CONVERGED) {
                throw new IllegalStateException("" + outcome);
            }
            Loops.check(network, workspace);
        }
        if (!(near.iterations() <= 12 && workspace.iterations() <= near.iterations())) {
            throw new IllegalStateException("steps: " + near.iterations() + ", " + workspace.iterations());
        }
    }

    /** After the run everything is compiled: a call must leave less than a byte of garbage. */
    @TearDown
    public void countGarbage() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < CALLS; i++) {
            cold();
            warm();
        }
        double bytes = (threads.getThreadAllocatedBytes(thread) - before) / (2.0 * CALLS);
        System.out.println("bytes allocated per kernel call: " + bytes);
        if (!(bytes < 1)) {
            throw new IllegalStateException("the kernel allocates: " + bytes + " bytes a call");
        }
    }

    /**
     * From rest.
     *
     * @return how it ended
     */
    @Benchmark
    public Outcome cold() {
        return solver.solve(network, null, workspace);
    }

    /**
     * From the solution of a circuit whose draws differ by 2 per cent.
     *
     * @return how it ended
     */
    @Benchmark
    public Outcome warm() {
        return solver.solve(network, near, workspace);
    }
}
