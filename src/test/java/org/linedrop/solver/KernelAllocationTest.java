package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import org.linedrop.network.Network;

/** On its own because it cannot run in an instrumented class file, which allocates: profile mutation leaves it out. */
class KernelAllocationTest {
    @Test
    void allocatesNothingAfterFirstUse() {
        Network a = KernelTest.grid(5, 1).build();
        Network b = a.refilled(KernelTest.grid(5, 1.3));
        Workspace w = Workspace.of(a);
        Solver solver = Solver.usual();
        Solution start = solver.solve(a);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        for (int i = 0; i < 2000; i++) {
            solve(solver, a, b, start, w);
        }
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < 100; i++) {
            solve(solver, a, b, start, w);
        }
        long used = threads.getThreadAllocatedBytes(thread) - before;
        // the counter itself and a late compile cost a little; one array per solve would be over 20 kB
        assertThat(used).isLessThan(2000);
    }

    private static void solve(Solver solver, Network a, Network b, Solution start, Workspace w) {
        assertConverged(solver.solve(a, null, w));
        assertConverged(solver.solve(b, start, w));
    }

    private static void assertConverged(Outcome outcome) {
        if (outcome != Outcome.CONVERGED) {
            throw new AssertionError(outcome);
        }
    }
}
