package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;

/** Every way a solve can end, each with the state reached. */
class OutcomeTest {
    private static final Law SQUARE = Prescribed.pressurePower(1e6, 2);

    private static Solution solve(NetworkBuilder b) {
        return Solver.usual().solve(b.build());
    }

    @Test
    void twoTanksAndNothingElse() {
        NetworkBuilder b = Network.builder();
        b.fixedPoint(1000);
        b.fixedPoint(2000);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.totalPressurePa(1)).isEqualTo(2000);
    }

    @Test
    void twoTanksJoinedByOneLine() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(4e6), b.fixedPoint(0), SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(0)).isCloseTo(2, within(1e-12));
    }

    @Test
    void deadLegsCarryNothing() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(5000);
        int joint = b.freePoint(0.05);
        int end = b.freePoint(0);
        int further = b.freePoint(0);
        b.branch(tank, joint, SQUARE);
        int dead = b.branch(joint, end, SQUARE);
        int lift = b.branch(further, end, Prescribed.plus(SQUARE, -300));
        Solution s = solve(b);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(dead)).isZero();
        assertThat(s.massFlowKgPerS(lift)).isZero();
        assertThat(s.totalPressurePa(end)).isCloseTo(2500, within(1e-9));
        assertThat(s.totalPressurePa(further)).isCloseTo(2200, within(1e-9));
    }

    /** A balanced bridge of square laws, but not of the linear ones that the start uses: the cross flow ends at zero. */
    @Test
    void zeroFlowBridge() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(9e4);
        int left = b.freePoint(0);
        int right = b.freePoint(0);
        int end = b.fixedPoint(0);
        b.branch(tank, left, Prescribed.pressurePower(4e6, 2));
        b.branch(left, end, Prescribed.pressurePower(5e6, 2));
        b.branch(tank, right, Prescribed.pressurePower(8e6, 2));
        // the same drop split as on the left, by a line with half of it laminar
        b.branch(right, end, Prescribed.laminar(1e-3, 1, 0.01, 0, 1000));
        int cross = b.branch(left, right, SQUARE);
        Solution balanced = solve(b);
        assertThat(balanced.outcome()).describedAs(balanced.detail()).isEqualTo(Outcome.CONVERGED);

        NetworkBuilder square = Network.builder();
        tank = square.fixedPoint(9e4);
        left = square.freePoint(0);
        right = square.freePoint(0);
        end = square.fixedPoint(0);
        square.branch(tank, left, Prescribed.pressurePower(4e6, 2));
        square.branch(left, end, Prescribed.pressurePower(5e6, 2));
        double laminar = 4e4 / 0.1;
        // 0.1 kg/s on both sides: 40 and 50 kPa
        square.branch(tank, right, Prescribed.pressurePower(laminar, 1));
        square.branch(right, end, Prescribed.pressurePower(5e4 / Math.pow(0.1, 1.75), 1.75));
        cross = square.branch(left, right, Prescribed.pressurePower(1e6, 2));
        Solution s = solve(square);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(cross)).isCloseTo(0, within(1e-9));
        assertThat(s.massFlowKgPerS(0)).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void closedLoopWithoutReference() {
        NetworkBuilder b = Network.builder();
        b.fixedPoint(0);
        int suction = b.freePoint(0);
        int delivery = b.freePoint(0);
        b.branch(suction, delivery, PrescribedPump.polynomial(new double[] {10, 0, -1e6}, 1000, 9.81));
        b.branch(delivery, suction, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.NO_PRESSURE_REFERENCE);
        assertThat(s.pointsWithoutReference()).containsExactly(suction, delivery);
        assertThat(s.detail()).contains("points [1, 2] are tied to no given pressure");
        assertThat(s.history()).hasSize(1);
    }

    @Test
    void drawWithNoWayIn() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        b.branch(tank, b.freePoint(0.1), SQUARE);
        int island = b.freePoint(0.2);
        int neighbour = b.freePoint(0);
        b.branch(island, neighbour, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.CUT_OFF);
        assertThat(s.cutOffPoints()).containsExactly(island, neighbour);
        assertThat(s.limitingCut()).isNotNull();
        assertThat(s.limitingCut().branches()).isEmpty();
        assertThat(s.limitingCut().neededKgPerS()).isEqualTo(0.2);
    }

    @Test
    void drawBehindACheckValveTheWrongWay() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int draw = b.freePoint(0.1);
        int valve = b.device(draw, tank, -1, OneWay.check(SQUARE, 1e5));
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.CUT_OFF);
        assertThat(s.limitingCut().branches()).containsExactly(valve);
        assertThat(s.limitingCut().passesKgPerS()).isZero();
    }

    @Test
    void demandThatNoPumpCanMeet() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0);
        int rail = b.freePoint(0.30);
        int second = b.freePoint(0.25);
        Law pump = PrescribedPump.pressureTable(
                new double[] {0, 0.2, 0.47}, new double[] {5e5, 4e5, 0}, PrescribedPump.Between.STRAIGHT);
        int pumpBranch = b.branch(tank, delivery, pump, 0, 0.47);
        b.branch(delivery, rail, SQUARE);
        b.branch(rail, second, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.DEMAND_NOT_MET);
        Cut cut = s.limitingCut();
        assertThat(cut.branches()).containsExactly(pumpBranch);
        assertThat(cut.points()).containsExactly(delivery, rail, second);
        assertThat(cut.inward()).isTrue();
        assertThat(cut.neededKgPerS()).isCloseTo(0.55, within(1e-12));
        assertThat(cut.passesKgPerS()).isEqualTo(0.47);
        assertThat(s.detail())
                .isEqualTo("demand not met: points [1, 2, 3] need 0.550000 kg/s in, branches [0] can pass"
                        + " 0.470000 kg/s");
    }

    @Test
    void demandJustMetIsSolved() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0.47);
        b.branch(tank, delivery, Prescribed.pressurePower(10, 1), 0, 0.4);
        b.branch(tank, delivery, Prescribed.pressurePower(10, 1), 0, 0.07);
        assertThat(solve(b).outcome()).isEqualTo(Outcome.CONVERGED);
    }

    @Test
    void fixedDisplacementPumpWithNoWayOut() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0.1);
        int pump = b.device(tank, delivery, -1, new FixedFlow(0.5, 1e5));
        int valve = b.device(tank, delivery, -1, OneWay.check(SQUARE, 1e5));
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.DEMAND_NOT_MET);
        assertThat(s.limitingCut().inward()).isFalse();
        assertThat(s.limitingCut().branches()).containsExactly(pump, valve);
        assertThat(s.limitingCut().neededKgPerS()).isCloseTo(0.4, within(1e-12));
    }

    @Test
    void fixedDisplacementPumpAlone() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0.5);
        b.device(tank, delivery, -1, new FixedFlow(0.5, 1e5));
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.NO_PRESSURE_REFERENCE);
        assertThat(s.pointsWithoutReference()).containsExactly(delivery);
    }

    @Test
    void fixedDisplacementPumpOverARelief() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0.1);
        int pump = b.device(tank, delivery, -1, new FixedFlow(0.5, 1e5));
        int relief = b.device(delivery, tank, -1, OneWay.relief(3e5, 1e4, 0, Prescribed.pressurePower(1e4, 2), 1e4));
        Solution s = solve(b);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(pump)).isCloseTo(0.5, within(1e-12));
        assertThat(s.massFlowKgPerS(relief)).isCloseTo(0.4, within(1e-12));
        assertThat(s.totalPressurePa(delivery)).isCloseTo(3e5 + 4e3, within(1e-6));
        assertThat(s.state(relief)).isEqualTo(DeviceLaw.IN_CONTROL);
    }

    @Test
    void suctionUnderVapourPressure() {
        NetworkBuilder b = Network.builder().ambient(101325);
        int tank = b.fixedPoint(0);
        int high = b.freePoint(0);
        int suction = b.freePoint(0.3);
        b.branch(tank, high, SQUARE);
        b.branch(high, suction, Prescribed.plus(SQUARE, -8e4));
        b.vapour(high, 20000);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.NOT_PHYSICAL);
        assertThat(s.notPhysicalPoint()).isEqualTo(high);
        assertThat(s.totalPressurePa(high)).isCloseTo(-9e4, within(1e-6));
        assertThat(s.detail()).startsWith("not physical at point 1");
    }

    @Test
    void pressureUnderZeroAbsolute() {
        NetworkBuilder b = Network.builder().ambient(101325);
        int tank = b.fixedPoint(0);
        int draw = b.freePoint(0.35);
        b.branch(tank, draw, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).isEqualTo(Outcome.NOT_PHYSICAL);
        assertThat(s.notPhysicalPoint()).isEqualTo(draw);
        assertThat(s.massFlowKgPerS(0)).isEqualTo(0.35);
    }

    @Test
    void withoutAmbientNothingIsCheckedForVacuum() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(0), b.freePoint(35), SQUARE);
        assertThat(solve(b).outcome()).isEqualTo(Outcome.CONVERGED);
    }

    @Test
    void budgetSpentKeepsTheBestState() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int joint = b.freePoint(0.02);
        int low = b.fixedPoint(0);
        b.branch(tank, joint, Prescribed.pressurePower(1e7, 2));
        b.branch(joint, low, Prescribed.pressurePower(3e7, 1.75));
        Solution s = Solver.of(new Options(2, 1e-9, 1e-9)).solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.BUDGET_SPENT);
        assertThat(s.iterations()).isEqualTo(2);
        assertThat(s.history()).hasSize(3);
        assertThat(s.history().get(2)).isLessThan(s.history().get(0));
        assertThat(s.detail()).startsWith("budget spent after 2 steps");
    }

    /** A law that falls with flow breaks the contract; the solver says so instead of looping. */
    @Test
    void lawThatCannotBeMetStalls() {
        NetworkBuilder b = Network.builder();
        Law impossible = (flow, out) -> {
            out[0] = 1e5 + 1e5 / (1 + flow * flow);
            out[1] = 1;
        };
        b.branch(b.fixedPoint(1e4), b.fixedPoint(0), impossible);
        Solution s = solve(b);
        assertThat(s.outcome()).isIn(Outcome.STALLED, Outcome.BUDGET_SPENT);
        assertThat(s.lawResidual()).isGreaterThan(1e-3);
        assertThat(s.history()).isNotEmpty();
    }

    /** Behind two check valves that face each other's way out nothing flows; the pressure there is an interval. */
    @Test
    void regionBehindShutValves() {
        NetworkBuilder b = Network.builder();
        int low = b.fixedPoint(1e5);
        int high = b.fixedPoint(3e5);
        int between = b.freePoint(0);
        int dead = b.freePoint(0);
        int in = b.device(low, between, -1, OneWay.check(SQUARE, 1e5));
        int out = b.device(between, high, -1, OneWay.check(SQUARE, 1e5));
        b.branch(between, dead, SQUARE);
        b.branch(high, low, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.massFlowKgPerS(in)).isCloseTo(0, within(1e-12));
        assertThat(s.massFlowKgPerS(out)).isCloseTo(0, within(1e-12));
        assertThat(s.floatingPoints()).isEqualTo(List.of(between, dead));
        assertThat(s.totalPressurePa(between)).isBetween(1e5, 3e5);
        assertThat(s.massFlowKgPerS(3)).isCloseTo(Math.sqrt(0.2), within(1e-12));
    }

    /** The check of flows cannot know: the relief in front of the draw never opens. */
    @Test
    void drawBehindAReliefThatStaysShut() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int joint = b.freePoint(0.02);
        int behind = b.freePoint(0.03);
        int further = b.freePoint(0.01);
        b.branch(tank, joint, SQUARE);
        int relief = b.device(joint, behind, -1, OneWay.relief(3e5, 1e4, 0, SQUARE, 1e5));
        b.branch(behind, further, SQUARE);
        Solution s = solve(b);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CUT_OFF);
        assertThat(s.cutOffPoints()).containsExactly(behind, further);
        assertThat(s.limitingCut().branches()).containsExactly(relief);
        assertThat(s.limitingCut().neededKgPerS()).isCloseTo(0.04, within(1e-9));
        assertThat(s.flowImbalance()).isGreaterThan(1e-9);
    }

    /** However low the pressure behind it, a relief in control passes what its inlet and slope allow: (3 - 2) bar / slope. */
    @Test
    void drawBehindAReliefThatHoldsItsInlet() {
        for (double draw : new double[] {0.0999, 0.15}) {
            NetworkBuilder b = Network.builder();
            int tank = b.fixedPoint(3e5);
            int behind = b.freePoint(0);
            int end = b.freePoint(draw);
            b.branch(behind, end, SQUARE);
            int relief = b.device(tank, behind, -1, OneWay.relief(2e5, 1e6, 0, SQUARE, 1e5));
            b.device(end, tank, -1, OneWay.check(SQUARE, 1e5));
            Solution s = solve(b);
            if (draw < 0.1) {
                assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
                continue;
            }
            assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.DEMAND_NOT_MET);
            assertThat(s.limitingCut().points()).containsExactly(behind, end);
            assertThat(s.limitingCut().branches()).contains(relief);
            assertThat(s.limitingCut().inward()).isTrue();
            assertThat(s.limitingCut().neededKgPerS()).isCloseTo(draw, within(1e-12));
            assertThat(s.limitingCut().passesKgPerS()).isCloseTo(0.1, within(1e-9));
        }
    }

    /** However high the pressure before it, a reducing regulator with a slope passes (set - outlet) / slope. */
    @Test
    void supplyBeforeARegulatorThatHoldsItsOutlet() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int fed = b.freePoint(-0.15);
        int regulator = b.device(fed, tank, -1, OneWay.reducing(2e5, 1e6, 0, SQUARE, 1e5));
        Solution s = solve(b);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.DEMAND_NOT_MET);
        assertThat(s.limitingCut().points()).containsExactly(fed);
        assertThat(s.limitingCut().branches()).containsExactly(regulator);
        assertThat(s.limitingCut().inward()).isFalse();
        assertThat(s.limitingCut().neededKgPerS()).isCloseTo(0.15, within(1e-12));
        assertThat(s.limitingCut().passesKgPerS()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void builderNamesWhatIsWrong() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        assertThatThrownBy(() -> b.branch(tank, 7, SQUARE)).hasMessage("there is no point 7; points are 0 to 0");
        assertThatThrownBy(() -> b.branch(tank, tank, SQUARE)).hasMessageContaining("must join two points");
        assertThatThrownBy(() -> b.fixedPoint(Double.NaN))
                .hasMessageContaining("point 1: given pressure must be finite");
        assertThatThrownBy(() -> b.freePoint(Double.NaN)).hasMessageContaining("draw must be finite");
        assertThatThrownBy(() -> b.vapour(0, -1)).hasMessageContaining("vapour pressure must be at least 0 Pa");
        assertThatThrownBy(() -> Prescribed.loss(-1, 0.1, 1000))
                .hasMessage("loss coefficient must be above 0, but is -1.0");
        assertThatThrownBy(() -> new Options(0, 1e-9, 1e-9)).hasMessageContaining("must be above 0");
    }
}
