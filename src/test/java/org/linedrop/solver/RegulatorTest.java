package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/** A return-type feed with a bypass regulator: one answer from everywhere, in each of its three states. */
class RegulatorTest {
    private static final int REGULATOR = 5;

    @Test
    void everyStateIsReached() {
        Solution control =
                Solver.usual().solve(AdjointTest.feed(2, 3e5, 0.02, 0, 80).build());
        assertThat(control.state(REGULATOR)).isEqualTo(DeviceLaw.IN_CONTROL);
        double held = control.totalPressurePa(3) - 3e5 - 5e5 * control.massFlowKgPerS(REGULATOR);
        assertThat(held).isCloseTo(0, within(1e-3));
        Solution wide =
                Solver.usual().solve(AdjointTest.feed(2, 1e4, 0.02, 0, 80).build());
        assertThat(wide.state(REGULATOR)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(wide.totalPressurePa(3)).isGreaterThan(1e4);
        Solution shut =
                Solver.usual().solve(AdjointTest.feed(2, 6e5, 0.02, 0, 80).build());
        assertThat(shut.state(REGULATOR)).isEqualTo(DeviceLaw.SHUT);
        assertThat(shut.massFlowKgPerS(REGULATOR)).isCloseTo(0, within(1e-12));
        assertThat(shut.totalPressurePa(3)).isLessThan(6e5);
        // behind the shut regulator the return is full and still
        assertThat(shut.totalPressurePa(4)).isCloseTo(0, within(1e-6));
    }

    /** Undamped steps go round in circles on such circuits; here every one of 200 starts arrives, without continuation. */
    @Test
    void oneAnswerFromAnyStart() {
        Random random = new Random(7);
        Network network = AdjointTest.feed(2, 3e5, 0.02, 0, 80).build();
        Solution fromRest = Solver.usual().solve(network);
        Workspace w = Workspace.of(network);
        for (int i = 0; i < 200; i++) {
            Network other = network.refilled(AdjointTest.feed(
                    0.1 + 20 * random.nextDouble(),
                    7e5 * random.nextDouble(),
                    0.08 * random.nextDouble(),
                    2e5 * random.nextDouble() - 1e5,
                    10 + 120 * random.nextDouble()));
            Solution start =
                    Solver.of(new Options(1 + random.nextInt(6), 1e-9, 1e-9)).solve(other);
            assertThat(Solver.usual().solve(network, start, w)).isEqualTo(Outcome.CONVERGED);
            assertThat(w.snapshot().continuations()).isZero();
            assertThat(w.iterations()).describedAs("start %d", i).isLessThanOrEqualTo(15);
            for (int b = 0; b < network.branchCount(); b++) {
                assertThat(w.massFlowKgPerS(b))
                        .isCloseTo(fromRest.massFlowKgPerS(b), within(1e-9 * fromRest.flowScaleKgPerS()));
            }
        }
    }
}
