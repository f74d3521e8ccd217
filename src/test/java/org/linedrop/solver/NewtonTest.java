package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/** When steps are enough, when they lead nowhere, and how much of one is taken, on a line whose answer is known. */
class NewtonTest {
    private static final Options USUAL = Options.usual();

    /** 40 kPa over 1e6 Q^2: 0.2 kg/s. */
    private static Network square() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(4e4), b.fixedPoint(0), Prescribed.pressurePower(1e6, 2));
        return b.build();
    }

    /** 10 kPa over 1e5 Q: 0.1 kg/s, and each kg/s off it is 1e5 Pa. */
    private static Network straight() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(1e4), b.fixedPoint(0), Prescribed.pressurePower(1e5, 1));
        return b.build();
    }

    private static Workspace at(Network network, double flow, boolean careful) {
        Workspace w = Workspace.of(network);
        w.bind(network);
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = network.fixed(i) ? network.fixedPressurePa(i) : 0;
        }
        w.flow[0] = flow;
        w.careful = careful;
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        return w;
    }

    @Test
    void stepsThatHaveNotHalvedTheNormCrawl() {
        Workspace w = Workspace.of(square());
        w.norm = 1;
        w.iterations = 10;
        Newton.mark(w);
        w.norm = 0.51;
        w.iterations = 15;
        assertThat(Newton.crawls(w, 6)).isFalse();
        w.iterations = 16;
        assertThat(Newton.crawls(w, 6)).isTrue();
        w.norm = 0.5;
        assertThat(Newton.crawls(w, 6)).as("halved, so the count begins anew").isFalse();
        assertThat(w.markedNorm).isEqualTo(0.5);
        assertThat(w.markedStep).isEqualTo(16);
        w.norm = 0.3;
        w.iterations = 22;
        assertThat(Newton.crawls(w, 6)).isTrue();
    }

    @Test
    void aStepThatWasNotTakenInFullIsNotTheLast() {
        Network network = square();
        Workspace w = at(network, 0.2, false);
        w.lastCorrection = 1;
        assertThat(Newton.arrived(network, w, USUAL, 0.5)).isFalse();
        assertThat(w.lastCorrection).isZero();
        assertThat(w.historyCount).isEqualTo(1);
    }

    @Test
    void aLargeCorrectionIsNotTheLast() {
        Network network = square();
        Workspace w = at(network, 0.2, false);
        w.correction = 1e-3;
        assertThat(Newton.arrived(network, w, USUAL, 1)).isFalse();
        assertThat(w.lastCorrection).isEqualTo(1e-3);
        // the flow tolerance is a share of the largest flow, 0.2 kg/s
        w.correction = 1.01 * USUAL.flowTolerance() * 0.2;
        assertThat(Newton.arrived(network, w, USUAL, 1)).isFalse();
        w.correction = USUAL.flowTolerance() * 0.2;
        assertThat(Newton.arrived(network, w, USUAL, 1)).isTrue();
    }

    @Test
    void aSmallCorrectionFarFromTheLawIsNotTheLast() {
        Network network = square();
        Workspace w = at(network, 0.1999, false);
        w.correction = 0;
        assertThat(Newton.arrived(network, w, USUAL, 1)).isFalse();
    }

    @Test
    void oneStepMoreIsTakenUnlessItWouldBeRounding() {
        Network network = square();
        double off = 0.2 * (1 + 1e-11);
        Workspace w = at(network, off, false);
        w.correction = 1e-12;
        w.lastCorrection = 1e-7; // the next correction is at most 1e-12 x 1e-5
        assertThat(Newton.arrived(network, w, USUAL, 1)).isTrue();
        assertThat(w.iterations).isZero();
        assertThat(w.flow[0]).isEqualTo(off);
        Workspace more = at(network, off, false);
        more.correction = 1e-12;
        more.lastCorrection = 2e-12; // it may be half of that: more than 1e-14 of 0.2
        assertThat(Newton.arrived(network, more, USUAL, 1)).isTrue();
        assertThat(more.iterations).isEqualTo(1);
        assertThat(more.historyCount).isEqualTo(2);
        assertThat(more.flow[0]).isCloseTo(0.2, within(1e-16));
        Workspace first = at(network, off, false);
        first.correction = 1e-12; // of a last one in full nothing is known
        assertThat(Newton.arrived(network, first, USUAL, 1)).isTrue();
        assertThat(first.iterations).isEqualTo(1);
    }

    @Test
    void whatPassesAShutDeviceIsTakenAway() {
        NetworkBuilder b = Network.builder();
        int low = b.fixedPoint(0);
        int high = b.fixedPoint(1e5);
        b.device(low, high, -1, OneWay.check(Prescribed.pressurePower(1e6, 2), 1e5));
        b.branch(high, low, Prescribed.pressurePower(1e6, 2));
        Network network = b.build();
        Workspace w = Workspace.of(network);
        w.bind(network);
        w.pressure[high] = 1e5;
        w.flow[0] = 1e-16;
        w.flow[1] = Math.sqrt(0.1);
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        w.correction = 1e-18;
        w.lastCorrection = 1e-10;
        assertThat(Newton.arrived(network, w, USUAL, 1)).isTrue();
        assertThat(w.flow[0]).isZero();
    }

    @Test
    void aStraightLawTakesTwoSteps() {
        Network network = straight();
        for (int budget = 1; budget <= 3; budget++) {
            Workspace w = at(network, 0, false);
            Outcome outcome = Newton.run(network, w, new Options(budget, 1e-9, 1e-9));
            // the first lands, the second finds nothing left
            assertThat(outcome).isEqualTo(budget == 1 ? Outcome.BUDGET_SPENT : Outcome.CONVERGED);
            assertThat(w.flow[0]).isCloseTo(0.1, within(1e-15));
        }
    }

    @Test
    void fromTheAnswerOneStepTellsThatItIs() {
        Network network = square();
        Workspace w = at(network, 0.2, false);
        assertThat(Newton.run(network, w, USUAL)).isEqualTo(Outcome.CONVERGED);
        assertThat(w.iterations).isLessThanOrEqualTo(2);
        assertThat(w.flow[0]).isEqualTo(0.2);
        // history: the start, a step, and the one more
        assertThat(w.historyCount).isEqualTo(w.iterations + 1);
    }

    @Test
    void convergenceIsOfSecondOrder() {
        Network network = square();
        Workspace w = at(network, 0.4, false);
        assertThat(Newton.run(network, w, USUAL)).isEqualTo(Outcome.CONVERGED);
        // 0.4, 0.25, 0.205, 0.20006, 0.2 + 9e-9, 0.2
        assertThat(w.iterations).isBetween(5, 7);
        double[] known = {0.4, 0.25, 0.205};
        for (int i = 0; i < known.length; i++) {
            // 40 kPa less 1e6 Q^2 over the larger of the scales at the start, 160 kPa
            assertThat(w.history[i]).isCloseTo(Math.abs(4e4 - 1e6 * known[i] * known[i]) / 1.6e5, within(1e-9));
        }
    }

    @Test
    void aLawThatFallsFailsWithoutAStepToLetGo() {
        NetworkBuilder b = Network.builder();
        Law impossible = (flow, out) -> {
            out[0] = 1e5 + 1e5 / (1 + flow * flow);
            out[1] = 1;
        };
        b.branch(b.fixedPoint(1e4), b.fixedPoint(0), impossible);
        Network network = b.build();
        Workspace w = at(network, 0, false);
        assertThat(Newton.run(network, w, USUAL)).isEqualTo(Outcome.STALLED);
        assertThat(w.release).as("no device, nothing to watch").isEqualTo(-1);
    }

    private static double along(Network network, Workspace w, double step) {
        w.flowStep[0] = step;
        return Advance.along(network, w, USUAL);
    }

    @Test
    void asMuchOfAStepIsTakenAsLowersTheNorm() {
        Network network = straight();
        // off by 10 kPa at rest; a step of 0.1 lands, one of 0.2 is as far off on the other side
        double[] steps = {0.1, 0.15, 0.19, 0.25, 0.7, 10};
        double[] parts = {1, 1, 1, 0.5, 0.25, 1 / 64.0};
        for (int i = 0; i < steps.length; i++) {
            Workspace w = at(network, 0, false);
            assertThat(along(network, w, steps[i])).as("step %s", steps[i]).isEqualTo(parts[i]);
            assertThat(w.flow[0]).isCloseTo(parts[i] * steps[i], within(1e-15));
            assertThat(w.norm).isCloseTo(Math.abs(1 - 10 * w.flow[0]), within(1e-12));
        }
        for (double wrong : new double[] {-0.1, 0, Double.NaN}) {
            Workspace w = at(network, 0, false);
            assertThat(along(network, w, wrong)).as("step %s", wrong).isZero();
            assertThat(w.flow[0]).as("nothing helps, nothing is moved").isZero();
            assertThat(w.norm).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void insideTheTolerancesAStepNeedNotHelp() {
        Network network = straight();
        Workspace w = at(network, 0.1, false);
        assertThat(along(network, w, 1e-12)).isEqualTo(1);
        Workspace out = at(network, 0.1, false);
        assertThat(along(network, out, 1e-3)).as("it would leave them").isZero();
        assertThat(out.flow[0]).isEqualTo(0.1);
    }

    @Test
    void onTheSecondAttemptShortStepsGoToWhereTheNormStopsFalling() {
        Network network = straight();
        Workspace w = at(network, 0, true);
        double part = along(network, w, 10);
        // 0.1 of 10 kg/s, or by rounding further
        assertThat(part).isCloseTo(0.01, within(1e-12)).isGreaterThanOrEqualTo(0.01);
        assertThat(w.flow[0]).isCloseTo(0.1, within(1e-10));
        assertThat(w.norm).isCloseTo(0, within(1e-10));
        Workspace longer = at(network, 0, true);
        assertThat(along(network, longer, 0.25)).as("half is no short step").isEqualTo(0.5);
    }

    @Test
    void onTheSecondAttemptStepsAreHalvedTwiceAsOften() {
        Network network = straight();
        // 2^-30 of it is still too far, 2^-40 is not
        double far = 0.1 * Math.pow(2, 40);
        assertThat(along(network, at(network, 0, false), far)).isZero();
        Workspace w = at(network, 0, true);
        assertThat(along(network, w, far)).isPositive();
        assertThat(w.flow[0]).isCloseTo(0.1, within(1e-6));
    }
}
