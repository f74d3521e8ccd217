package org.linedrop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Network;
import org.linedrop.report.JsonReport;
import org.linedrop.solver.Options;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.study.FeedCheck;

/** The thread contract: everything but a workspace is shared, and sixteen threads get the bits that one gets. */
class ThreadsTest {
    private static final int THREADS = 16;

    /** Starts all at once. */
    private static <T> List<T> all(Callable<T> job) throws InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(THREADS);
        try {
            CyclicBarrier start = new CyclicBarrier(THREADS);
            List<Future<T>> running = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                running.add(pool.submit(() -> {
                    start.await(60, TimeUnit.SECONDS);
                    return job.call();
                }));
            }
            List<T> answers = new ArrayList<>();
            for (Future<T> each : running) {
                answers.add(each.get());
            }
            return answers;
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void aSharedCircuitIsCheckedAlike() throws Exception {
        for (String name : List.of("fuel-feed-516.yaml", "twin-rails.yaml")) {
            Circuit circuit = Examples.circuit(name);
            String one = JsonReport.text(FeedCheck.of(circuit));
            assertThat(all(() -> JsonReport.text(FeedCheck.of(circuit)))).containsOnly(one);
        }
    }

    @Test
    void readingIsAlike() throws Exception {
        Circuit one = Examples.circuit("own-hose.yaml");
        assertThat(all(() -> Examples.circuit("own-hose.yaml"))).containsOnly(one);
    }

    @Test
    void aSharedSolverSolvesASharedNetworkToTheSameBits() throws Exception {
        Network network = CircuitNetwork.of(Examples.circuit("fuel-feed-516.yaml"), CircuitNetwork.Setting.USUAL)
                .network();
        Solver solver = Solver.of(Options.usual());
        List<Long> one = bits(network, solver.solve(network));
        assertThat(all(() -> bits(network, solver.solve(network)))).containsOnly(one);
    }

    private static List<Long> bits(Network network, Solution solution) {
        List<Long> bits = new ArrayList<>();
        for (int branch = 0; branch < network.branchCount(); branch++) {
            bits.add(Double.doubleToRawLongBits(solution.massFlowKgPerS(branch)));
        }
        for (int point = 0; point < network.pointCount(); point++) {
            bits.add(Double.doubleToRawLongBits(solution.totalPressurePa(point)));
        }
        return bits;
    }
}
