package org.linedrop.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.concurrent.TimeUnit;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;
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
import org.openjdk.jmh.annotations.TearDown;

/**
 * The kernel on a looped circuit of 26 branches and 16 unknown points, one rough bore a branch: cold from rest, and warm
 * from the solution of a circuit whose draws are 2 per cent smaller. The answer is checked by walking every branch and
 * point, and the kernel must allocate nothing.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class NetworkSolveBenchmark {
    private static final int SIDE = 4;
    private static final double DENSITY = 998;
    private static final double VISCOSITY = 1.0e-3;
    private static final double TANK_PA = 3e5;

    private final Solver solver = Solver.usual();
    private Network network;
    private Workspace workspace;
    private Solution near;

    /** Builds the circuit, solves it once and checks the answer. */
    @Setup
    public void build() {
        network = circuit(1).build();
        if (network.branchCount() != 26 || network.pointCount() != SIDE * SIDE + 2) {
            throw new IllegalStateException("not the circuit that is promised");
        }
        near = solver.solve(network.refilled(circuit(0.98)));
        workspace = Workspace.of(network);
        check(cold());
        check(warm());
        if (!(near.iterations() <= 12 && workspace.iterations() < near.iterations())) {
            throw new IllegalStateException("steps: " + near.iterations() + ", " + workspace.iterations());
        }
    }

    /** After the run everything is compiled: a hundred calls must leave no garbage beyond the counter's own. */
    @TearDown
    public void countGarbage() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < 100; i++) {
            cold();
            warm();
        }
        long used = threads.getThreadAllocatedBytes(thread) - before;
        System.out.println("bytes allocated by 200 kernel calls: " + used);
        if (used > 2000) {
            throw new IllegalStateException("the kernel allocates: " + used + " bytes in 200 calls");
        }
    }

    private static NetworkBuilder circuit(double draws) {
        NetworkBuilder b = Network.builder();
        for (int i = 0; i < SIDE * SIDE; i++) {
            b.freePoint(draws * (i % 3 == 0 ? 0.06 + 0.002 * i : 0));
        }
        for (int i = 0; i < SIDE * SIDE; i++) {
            if (i % SIDE < SIDE - 1) {
                b.branch(i, i + 1, line(i));
            }
            if (i + SIDE < SIDE * SIDE) {
                b.branch(i, i + SIDE, line(i + 5));
            }
        }
        b.branch(b.fixedPoint(TANK_PA), 0, line(0));
        b.branch(b.fixedPoint(0.9 * TANK_PA), SIDE * SIDE - 1, line(1));
        return b;
    }

    private static Law line(int i) {
        return Prescribed.colebrook(0.5 + 0.05 * i, (8 + i % 4) * 1e-3, 1.5e-6, 0.5, DENSITY, VISCOSITY);
    }

    private void check(Outcome outcome) {
        if (outcome != Outcome.CONVERGED) {
            throw new IllegalStateException("" + outcome);
        }
        double[] out = new double[2];
        double[] left = new double[network.pointCount()];
        for (int b = 0; b < network.branchCount(); b++) {
            double flow = workspace.massFlowKgPerS(b);
            network.law(b).evaluate(flow, out);
            double drop = workspace.totalPressurePa(network.from(b)) - workspace.totalPressurePa(network.to(b));
            if (!(Math.abs(drop - out[0]) < 1e-9 * TANK_PA)) {
                throw new IllegalStateException("branch " + b + ": " + drop + " Pa, its law says " + out[0]);
            }
            left[network.from(b)] += flow;
            left[network.to(b)] -= flow;
        }
        for (int i = 0; i < SIDE * SIDE; i++) {
            if (!(Math.abs(left[i] + network.drawKgPerS(i)) < 1e-12)) {
                throw new IllegalStateException("point " + i + " does not balance");
            }
        }
    }

    /** From rest. */
    @Benchmark
    public Outcome cold() {
        return solver.solve(network, null, workspace);
    }

    /** From the solution of a circuit whose draws differ by 2 per cent. */
    @Benchmark
    public Outcome warm() {
        return solver.solve(network, near, workspace);
    }
}
