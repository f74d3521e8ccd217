package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;

/** Networks small enough to solve by hand, and every way a solve can end. */
class SolverTest {
    @Test
    void treeFollowsItsDraws() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int joint = b.freePoint(0);
        int left = b.freePoint(0.02);
        int right = b.freePoint(0.03);
        int feed = b.branch(tank, joint, Prescribed.pressurePower(1e7, 2));
        b.branch(joint, left, Prescribed.pressurePower(2e7, 2));
        b.branch(right, joint, Prescribed.pressurePower(1e7, 1.75));
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(feed)).isCloseTo(0.05, within(1e-15));
        assertThat(s.totalPressurePa(joint)).isCloseTo(1e5 - 1e7 * 0.0025, within(1e-6));
        assertThat(s.totalPressurePa(left)).isCloseTo(75000 - 2e7 * 0.0004, within(1e-6));
        assertThat(s.totalPressurePa(right)).isCloseTo(75000 - 1e7 * Math.pow(0.03, 1.75), within(1e-6));
    }

    @Test
    void loopSplitsByTheSquareRoot() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int end = b.freePoint(3);
        int one = b.branch(tank, end, Prescribed.pressurePower(4, 2));
        int two = b.branch(tank, end, Prescribed.pressurePower(1, 2));
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(one)).isCloseTo(1, within(1e-12));
        assertThat(s.massFlowKgPerS(two)).isCloseTo(2, within(1e-12));
        assertThat(s.iterations()).isLessThan(12);
    }

    @Test
    void pumpAndLineMeet() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0);
        int top = b.fixedPoint(9 * 9810);
        b.branch(tank, delivery, PrescribedPump.polynomial(new double[] {25, 0, -1.5e5}, 1000, 9.81));
        int line = b.branch(delivery, top, Prescribed.headPower(2.5e5, 2, 1000, 9.81));
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(line)).isCloseTo(1000 * Math.sqrt(16 / 4e5), within(1e-10));
    }
}
