package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/** Parts of the solver on numbers that can be followed by hand, and what its doors refuse. */
class PartsTest {
    private static final Law SQUARE = Prescribed.pressurePower(1e6, 2);

    private static NetworkBuilder line() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(4e4), b.fixedPoint(0), SQUARE);
        return b;
    }

    private static NetworkBuilder longer() {
        NetworkBuilder b = line();
        b.branch(0, b.freePoint(0), SQUARE);
        return b;
    }

    @Test
    void theLowestNumberLeadsAGroup() {
        int[] group = {0, 1, 2, 3, 4};
        Groups.join(group, 4, 3);
        Groups.join(group, 1, 2);
        Groups.join(group, 4, 2);
        assertThat(group[Groups.find(group, 4)]).isEqualTo(1);
        assertThat(Groups.find(group, 3)).isEqualTo(1);
        assertThat(Groups.find(group, 0)).isZero();
        Groups.join(group, 2, 4);
        assertThat(Groups.find(group, 2)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "1, 0, 1", "1, 1, 0", "1, NaN, 1", "1, 1, NaN", "-1, 1, 1"})
    void budgetAndTolerancesAreAboveZero(int iterations, double flow, double pressure) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Options(iterations, flow, pressure))
                .withMessageEndingWith("are " + iterations + ", " + flow + ", " + pressure);
        assertThat(new Options(1, 1e-300, 1e-300).maxIterations()).isEqualTo(1);
    }

    /** Rows swapped: 0 x + 2 y = 4, 3 x + y = 5; and its transpose. */
    @Test
    void denseSystemByHand() {
        DenseLu lu = new DenseLu(2);
        System.arraycopy(new double[] {0, 2, 3, 1}, 0, lu.a, 0, 4);
        lu.rowSize[0] = 2;
        lu.rowSize[1] = 3;
        assertThat(lu.factor()).isTrue();
        double[] x = {4, 5};
        lu.solve(x);
        assertThat(x).containsExactly(1, 2);
        double[] y = {3, 8};
        lu.solveTransposed(y);
        assertThat(y).containsExactly(new double[] {3.5, 1}, within(1e-15));
    }

    /** A chain of conductances 2, 3, 4 between a given pressure and three points; unit inflow at the far one. */
    @Test
    void symmetricPartIsTheMatrixOfConductances() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int one = b.freePoint(0);
        int two = b.freePoint(0);
        int three = b.freePoint(0);
        b.branch(tank, one, SQUARE);
        b.branch(two, one, SQUARE);
        b.branch(two, three, SQUARE);
        b.branch(three, two, SQUARE);
        SymmetricPart part = new SymmetricPart(b.build());
        assertThat(part.row[tank]).isEqualTo(-1);
        for (int again = 0; again < 2; again++) {
            part.clear();
            part.add(0, 2);
            part.add(1, 3);
            part.add(2, 3.5);
            part.add(3, 0.5);
            assertThat(part.factor()).isTrue();
            double[] x = new double[3];
            x[part.row[three]] = 1;
            part.solve(x);
            assertThat(x[part.row[one]]).isCloseTo(1 / 2.0, within(1e-14));
            assertThat(x[part.row[two]]).isCloseTo(1 / 2.0 + 1 / 3.0, within(1e-14));
            assertThat(x[part.row[three]]).isCloseTo(1 / 2.0 + 1 / 3.0 + 1 / 4.0, within(1e-14));
        }
        part.clear();
        assertThat(part.factor()).isFalse();
        part.add(0, Double.NaN);
        part.add(1, 3);
        part.add(2, 1);
        assertThat(part.factor()).isFalse();
    }

    @Test
    void theHistoryGrows() {
        Workspace w = Workspace.of(line().build());
        for (int i = 0; i < 300; i++) {
            w.record(i);
        }
        assertThat(w.history).startsWith(0, 1, 2).hasSize(512);
        assertThat(w.history[256]).isEqualTo(256);
        assertThat(w.history[299]).isEqualTo(299);
        assertThat(w.historyCount).isEqualTo(300);
    }

    @Test
    void aWorkspaceIsOfItsStructure() {
        Network network = line().build();
        Workspace w = Workspace.of(network);
        assertThatThrownBy(w::snapshot).hasMessageContaining("nothing was solved in this workspace yet");
        assertThatThrownBy(() -> Solver.usual().solve(longer().build(), null, w))
                .hasMessageContaining("made for another structure");
        assertThat(Solver.usual().solve(network, null, w)).isEqualTo(Outcome.CONVERGED);
        assertThat(w.massFlowKgPerS(0)).isCloseTo(0.2, within(1e-12));
        assertThat(w.totalPressurePa(0)).isEqualTo(4e4);
        assertThat(w.iterations()).isPositive();
    }

    @Test
    void aStartIsOfTheSameSize() {
        Solution small = Solver.usual().solve(line().build());
        Network network = longer().build();
        Workspace w = Workspace.of(network);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Solver.usual().solve(network, small, w))
                .withMessage("the start has 2 points and 1 branches, the network 3 and 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> small.at(new double[2], new double[2]))
                .withMessageContaining("but has 2 and 2");
        assertThatIllegalArgumentException().isThrownBy(() -> small.at(new double[1], new double[1]));
        Solution moved = small.at(new double[] {7}, new double[] {1, 2});
        assertThat(moved.massFlowKgPerS(0)).isEqualTo(7);
        assertThat(moved.totalPressurePa(1)).isEqualTo(2);
        assertThat(moved.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(moved.branchCount()).isEqualTo(1);
        assertThat(moved.pointCount()).isEqualTo(2);
    }

    @Test
    void sensitivitiesAreOfTheSolvedNetwork() {
        Network network = line().build();
        Solution s = Solver.usual().solve(network);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Adjoint.of(network, s, new double[2], new double[2]))
                .withMessage("weights must be one per branch and point, but are 2 and 2");
        assertThatIllegalArgumentException().isThrownBy(() -> Adjoint.of(network, s, new double[1], new double[1]));
        // dp = 1e6 Q^2 at 0.2 kg/s: the flow falls by 1/(2 x 1e6 x 0.2) for each pascal the law asks more
        Adjoint adjoint = Adjoint.of(network, s, new double[] {1}, new double[2]);
        assertThat(Math.abs(adjoint.lawMultiplier(0))).isCloseTo(2.5e-6, within(1e-12));
        Network raised = network.refilled(plus(1));
        Network lowered = network.refilled(plus(-1));
        assertThat(adjoint.derivative(raised, lowered, 1)).isCloseTo(-2.5e-6, within(1e-11));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> adjoint.weighted(longer().build()))
                .withMessageContaining("refilled from the solved one");
    }

    private static NetworkBuilder plus(double dropPa) {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(4e4), b.fixedPoint(0), Prescribed.plus(SQUARE, dropPa));
        return b;
    }

    /** 0.5 kg/s asked behind a pump of 0.3 kg/s and a line that passes 0.1 at most: 0.1 short of everything. */
    @Test
    void theLimitingCutNamesWhatIsNeededAndWhatPasses() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int near = b.freePoint(0);
        int far = b.freePoint(0.5);
        int pump = b.device(tank, near, -1, new FixedFlow(0.3, 1e5));
        b.branch(near, far, SQUARE);
        int narrow = b.branch(tank, far, SQUARE, -0.1, 0.1);
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.DEMAND_NOT_MET);
        Cut cut = s.limitingCut();
        assertThat(cut).isNotNull();
        assertThat(cut.points()).containsExactly(near, far);
        assertThat(cut.branches()).containsExactlyInAnyOrder(pump, narrow);
        assertThat(cut.inward()).isTrue();
        assertThat(cut.neededKgPerS()).isCloseTo(0.5, within(1e-12));
        assertThat(cut.passesKgPerS()).isCloseTo(0.4, within(1e-12));
        assertThat(s.cutOffPoints()).isEmpty();
    }

    /** A supply with nowhere to go but through a check valve that points at it. */
    @Test
    void whatIsPushedInMustGoOut() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int end = b.freePoint(-0.2);
        int valve = b.device(tank, end, -1, OneWay.check(SQUARE, 1e5));
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.CUT_OFF);
        Cut cut = s.limitingCut();
        assertThat(cut).isNotNull();
        assertThat(cut.points()).containsExactly(end);
        assertThat(cut.branches()).containsExactly(valve);
        assertThat(cut.inward()).isFalse();
        assertThat(cut.neededKgPerS()).isCloseTo(0.2, within(1e-12));
        assertThat(cut.passesKgPerS()).isZero();
        assertThat(s.cutOffPoints()).containsExactly(end);
    }
}
