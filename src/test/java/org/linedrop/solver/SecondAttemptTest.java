package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/** The second attempt by itself, as if the direct way had failed: it must come to the same answers. */
class SecondAttemptTest {
    private static final Law SQUARE = Prescribed.pressurePower(1e6, 2);
    private static final Options USUAL = Options.usual();

    private static Workspace bound(Network network) {
        Workspace w = Workspace.of(network);
        w.bind(network);
        Solver.atRest(network, w);
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        return w;
    }

    private static Outcome attempt(Network network, Workspace w, Options options) {
        Outcome outcome = SecondAttempt.run(network, w, options);
        assertThat(w.careful).as("its arithmetic ends with it").isFalse();
        assertThat(w.leak).as("no leak is left").isZero();
        assertThat(w.continuations).isEqualTo(1);
        return outcome;
    }

    @Test
    void aTreeOfLinesIsSolvedWithoutStages() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int joint = b.freePoint(0);
        b.branch(tank, joint, Prescribed.pressurePower(1e7, 2));
        b.branch(joint, b.freePoint(0.02), Prescribed.pressurePower(2e7, 2));
        b.branch(b.freePoint(0.03), joint, Prescribed.pressurePower(1e7, 1.75));
        Network network = b.build();
        Workspace w = bound(network);
        assertThat(attempt(network, w, USUAL)).isEqualTo(Outcome.CONVERGED);
        assertThat(w.flow[0]).isCloseTo(0.05, within(1e-14));
        assertThat(w.pressure[joint]).isCloseTo(75_000, within(1e-6));
    }

    @Test
    void aReliefValveLetsGoOfWhatIsTooMuch() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int delivery = b.freePoint(0.1);
        b.device(tank, delivery, -1, new FixedFlow(0.5, 1e5));
        b.device(delivery, tank, -1, OneWay.relief(3e5, 1e4, 0, Prescribed.pressurePower(1e4, 2), 1e4));
        Network network = b.build();
        Workspace w = bound(network);
        assertThat(attempt(network, w, USUAL)).isEqualTo(Outcome.CONVERGED);
        assertThat(w.flow[0]).isCloseTo(0.5, within(1e-10));
        assertThat(w.flow[1]).isCloseTo(0.4, within(1e-10));
        assertThat(w.pressure[delivery]).isCloseTo(3e5 + 4e3, within(1e-3));
    }

    @Test
    void betweenShutValvesNothingFlows() {
        NetworkBuilder b = Network.builder();
        int low = b.fixedPoint(1e5);
        int high = b.fixedPoint(3e5);
        int between = b.freePoint(0);
        b.device(low, between, -1, OneWay.check(SQUARE, 1e5));
        b.device(between, high, -1, OneWay.check(SQUARE, 1e5));
        b.branch(between, b.freePoint(0), SQUARE);
        b.branch(high, low, SQUARE);
        Network network = b.build();
        Workspace w = bound(network);
        assertThat(attempt(network, w, USUAL)).isEqualTo(Outcome.CONVERGED);
        assertThat(w.flow[0]).isCloseTo(0, within(1e-9));
        assertThat(w.flow[1]).isCloseTo(0, within(1e-9));
        assertThat(w.flow[3]).isCloseTo(Math.sqrt(0.2), within(1e-9));
        assertThat(w.pressure[between]).isBetween(1e5, 3e5);
    }

    @Test
    void itAgreesWithTheDirectWay() {
        Random random = new Random(3);
        int compared = 0;
        for (int i = 0; i < 60; i++) {
            Network network = valves(random);
            Solution direct = Solver.usual().solve(network);
            if (direct.outcome() != Outcome.CONVERGED || direct.continuations() > 0) {
                continue;
            }
            Workspace w = bound(network);
            assertThat(attempt(network, w, USUAL)).as("network %s", i).isEqualTo(Outcome.CONVERGED);
            for (int b = 0; b < network.branchCount(); b++) {
                assertThat(w.flow[b])
                        .as("network %s, branch %s", i, b)
                        .isCloseTo(direct.massFlowKgPerS(b), within(1e-7 * direct.flowScaleKgPerS()));
            }
            compared++;
        }
        assertThat(compared).isGreaterThan(40);
    }

    /** A chain of points with lines, check and relief valves between them and over them. */
    private static Network valves(Random random) {
        NetworkBuilder b = Network.builder();
        int points = 3 + random.nextInt(4);
        b.fixedPoint(2e5);
        for (int i = 1; i < points; i++) {
            b.freePoint(random.nextInt(3) == 0 ? 0.02 * random.nextDouble() : 0);
        }
        int end = b.fixedPoint(1e4);
        for (int i = 0; i < points; i++) {
            int next = i + 1 < points ? i + 1 : end;
            b.branch(i, next, Prescribed.pressurePower(Math.pow(10, 5 + 2 * random.nextDouble()), 2));
        }
        for (int k = 0; k < 2; k++) {
            int from = random.nextInt(points);
            int to = (from + 1 + random.nextInt(points - 1)) % points;
            b.device(
                    from,
                    to,
                    -1,
                    random.nextBoolean()
                            ? OneWay.check(SQUARE, 1e5)
                            : OneWay.relief(1e5 * random.nextDouble(), 1e5, 0, SQUARE, 5e4));
        }
        return b.build();
    }

    @Test
    void ofTwoBadStatesTheBetterIsKept() {
        NetworkBuilder b = Network.builder();
        Law impossible = (flow, out) -> {
            out[0] = 1e5 + 1e5 / (1 + flow * flow);
            out[1] = 1;
        };
        int high = b.fixedPoint(1e4);
        int low = b.fixedPoint(0);
        b.branch(high, low, impossible);
        b.branch(high, low, SQUARE);
        Network network = b.build();
        Workspace w = bound(network);
        w.flow[1] = 0.1;
        // the more flow, the less it is off: a state that no step from rest comes to
        w.flow[0] = 1e3;
        double direct = Residual.evaluate(w, network);
        Outcome outcome = attempt(network, w, USUAL);
        assertThat(outcome).isIn(Outcome.STALLED, Outcome.BUDGET_SPENT);
        assertThat(Residual.evaluate(w, network)).isLessThanOrEqualTo(direct * (1 + 1e-12));
    }

    @Test
    void itKeepsToItsBudget() {
        Random random = new Random(5);
        for (int budget : new int[] {1, 2, 5}) {
            Network network = valves(random);
            Workspace w = bound(network);
            Outcome outcome = attempt(network, w, new Options(budget, 1e-14, 1e-14));
            assertThat(w.iterations).isLessThanOrEqualTo(budget + 1);
            if (outcome != Outcome.CONVERGED) {
                assertThat(outcome).isEqualTo(Outcome.BUDGET_SPENT);
            }
        }
    }
}
