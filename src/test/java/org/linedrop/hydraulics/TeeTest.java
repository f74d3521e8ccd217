package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TeeTest {
    private static final double BORE = 0.008;
    private static final double DENSITY = 750;
    private static final double THIN = 1e-12; // viscosity so low that only the coefficients count
    private static final double OIL = 0.05;
    private static final double FLOW = 1e-4;
    private static final double HEAD = Reynolds.velocityHeadPa(FLOW, BORE, DENSITY);
    private static final Tee EQUAL = Tee.of(BORE, BORE, Math.PI / 2, 0);

    private final double[] out = new double[6];

    /** Losses of the legs over the head of the common flow. */
    private double[] coefficients(Tee tee, double secondOut, double branchOut) {
        tee.legLosses(secondOut, branchOut, DENSITY, THIN, out);
        return new double[] {out[0] / HEAD, out[1] / HEAD, out[2] / HEAD};
    }

    @Test
    void equalTeeHasThePublishedEnds() {
        // run common: all through the run, then all through the branch
        assertThat(coefficients(EQUAL, FLOW, 0)).containsExactly(new double[] {0, 0.03, 0.95}, within(1e-9));
        assertThat(coefficients(EQUAL, 0, FLOW)).containsExactly(new double[] {0, 0.35, 1.30}, within(1e-9));
        assertThat(coefficients(EQUAL, -FLOW, -1e-20)).containsExactly(new double[] {0, 0.03, -0.92}, within(1e-9));
        assertThat(coefficients(EQUAL, -1e-20, -FLOW)).containsExactly(new double[] {0, 0.62, 1.20}, within(1e-9));
        // branch common: all out of leg 1, then all into the branch from leg 0
        assertThat(coefficients(EQUAL, FLOW, -FLOW)).containsExactly(new double[] {0.62, 0, 1.20}, within(1e-9));
        double tiny = FLOW * (1 + 1e-14);
        assertThat(coefficients(EQUAL, FLOW, -tiny)).containsExactly(new double[] {0.58, 1.20, 0}, within(1e-9));
        assertThat(coefficients(EQUAL, -FLOW * 1e-14, FLOW))
                .containsExactly(new double[] {1.30, 0.95, 0}, within(1e-9));
    }

    @Test
    void branchCommonLegsFollowTheAssumedSquare() {
        assertThat(coefficients(EQUAL, 0.4 * FLOW, -FLOW))
                .containsExactly(new double[] {0.58 + 0.62 * 0.36, 0.58 + 0.62 * 0.16, 0}, within(1e-9));
        assertThat(coefficients(EQUAL, -0.4 * FLOW, FLOW))
                .containsExactly(new double[] {0.95 + 0.35 * 0.36, 0.95 + 0.35 * 0.16, 0}, within(1e-9));
    }

    @Test
    void runLegsAreInterchangeableInAPlainTee() {
        Random random = new Random(7);
        double[] mirrored = new double[6];
        for (int i = 0; i < 1000; i++) {
            double second = (random.nextDouble() - 0.5) * FLOW;
            double branch = (random.nextDouble() - 0.5) * FLOW;
            EQUAL.evaluate(second, branch, DENSITY, OIL, out);
            EQUAL.evaluate(-(second + branch), branch, DENSITY, OIL, mirrored);
            double size = HEAD + Math.abs(out[0]) + Math.abs(out[1]);
            assertThat(mirrored[0]).isCloseTo(-out[0], within(1e-12 * size));
            assertThat(mirrored[1]).isCloseTo(out[1] - out[0], within(1e-12 * size));
        }
    }

    @Test
    void nothingJumpsWhereALegComesToRest() {
        double[] angles = {30, 45, 90, 120, 150};
        for (double degrees : angles) {
            for (double branchBore : new double[] {0.3 * BORE, 0.7 * BORE, BORE, 1.2 * BORE}) {
                Tee tee = Tee.of(BORE, branchBore, Math.toRadians(degrees), 0);
                for (double viscosity : new double[] {THIN, OIL}) {
                    driveThroughZero(tee, viscosity, 1, 0, 0); // leg 1 at rest, branch fed from leg 0 and back
                    driveThroughZero(tee, viscosity, 0, 1, 0); // branch at rest
                    driveThroughZero(tee, viscosity, 1, -1, 1); // leg 0 at rest
                }
            }
        }
    }

    /** Moves one flow through rest in steps of 1e-9 of the through flow while the others carry it, both ways. */
    private void driveThroughZero(Tee tee, double viscosity, int moveSecond, int moveBranch, int holdLeg0) {
        for (double through : new double[] {FLOW, -FLOW}) {
            double before0 = Double.NaN;
            double before1 = Double.NaN;
            for (int step = -50; step <= 50; step++) {
                double moved = step * 1e-9 * FLOW;
                double second = moveSecond == 0 || holdLeg0 == 1 ? through : moved;
                double branch = holdLeg0 == 1 ? -through + moved : moveBranch == 0 ? through : moved;
                tee.evaluate(second, branch, DENSITY, viscosity, out);
                double slopes = Math.abs(out[2]) + Math.abs(out[3]) + Math.abs(out[4]) + Math.abs(out[5]);
                // the slope may change at rest, by a factor well under 40; a jump of 1e-6 heads would be seen
                double bound = 1e-9 * FLOW * 40 * (slopes + HEAD / FLOW);
                if (step > -50) {
                    assertThat(Math.abs(out[0] - before0)).isLessThan(bound);
                    assertThat(Math.abs(out[1] - before1)).isLessThan(bound);
                }
                before0 = out[0];
                before1 = out[1];
            }
        }
    }

    @Test
    void derivativesAreTrueInEveryPattern() {
        Tee tee = Tee.of(BORE, 0.7 * BORE, Math.toRadians(60), 0.0002);
        Random random = new Random(11);
        int[] seen = new int[6];
        double[] above = new double[6];
        double[] below = new double[6];
        for (int i = 0; i < 2000; i++) {
            double second = (random.nextDouble() - 0.5) * FLOW;
            double branch = (random.nextDouble() - 0.5) * FLOW;
            double step = 1e-6 * FLOW;
            if (Math.min(Math.abs(second + branch), Math.min(Math.abs(second), Math.abs(branch))) < 3 * step) {
                continue;
            }
            Tee.Pattern pattern = Tee.pattern(second, branch);
            seen[pattern.commonPort() + (pattern.divides() ? 0 : 3)]++;
            tee.evaluate(second, branch, DENSITY, OIL, out);
            for (int flow = 0; flow < 2; flow++) {
                double dSecond = flow == 0 ? step : 0;
                double dBranch = flow == 1 ? step : 0;
                tee.evaluate(second + dSecond, branch + dBranch, DENSITY, OIL, above);
                tee.evaluate(second - dSecond, branch - dBranch, DENSITY, OIL, below);
                for (int difference = 0; difference < 2; difference++) {
                    double quotient = (above[difference] - below[difference]) / (2 * step);
                    assertThat(out[2 + 2 * difference + flow])
                            .isCloseTo(quotient, within(1e-7 * (Math.abs(quotient) + HEAD / FLOW)));
                }
            }
        }
        for (int count : seen) {
            assertThat(count).isGreaterThan(100);
        }
    }

    @Test
    void legLossesAreAgainstTheCommonLegAlongTheFlow() {
        for (double second : new double[] {-1, 0.6, 1}) {
            for (double branch : new double[] {-0.7, 0.5, 2}) {
                EQUAL.evaluate(second * FLOW, branch * FLOW, DENSITY, OIL, out);
                double[] total = {0, -out[0], -out[1]};
                Tee.Pattern pattern = Tee.pattern(second, branch);
                EQUAL.legLosses(second * FLOW, branch * FLOW, DENSITY, OIL, out);
                for (int leg = 0; leg < 3; leg++) {
                    double fall = total[pattern.commonPort()] - total[leg];
                    assertThat(out[leg]).isCloseTo(pattern.divides() ? fall : -fall, within(1e-9 * HEAD));
                }
            }
        }
    }

    @Test
    void atRestOnlyTheViscousStarSpeaks() {
        EQUAL.evaluate(0, 0, DENSITY, OIL, out);
        assertThat(out[0]).isZero();
        assertThat(out[1]).isZero();
        double perK1 = OIL / (2 * BORE * Reynolds.areaM2(BORE));
        assertThat(out[2]).isCloseTo(150 * perK1, within(1e-6 * out[2])); // run to run
        assertThat(out[5]).isCloseTo(800 * perK1, within(1e-6 * out[5])); // run to branch
    }

    /** Only ratios of the bores and the edge count: the same tee twice as large has the same coefficients. */
    @Test
    void coefficientsKnowNoSize() {
        Tee small = Tee.of(BORE, 0.8 * BORE, Math.toRadians(60), 0.1 * BORE);
        Tee large = Tee.of(2 * BORE, 1.6 * BORE, Math.toRadians(60), 0.2 * BORE);
        for (double[] flows : new double[][] {{0.6, 0.4}, {-0.6, -0.4}, {-0.3, 1}, {1, -0.3}, {0.4, -1}, {-1, 0.3}}) {
            small.legLosses(flows[0] * FLOW, flows[1] * FLOW, DENSITY, THIN, out);
            double[] losses = out.clone();
            large.legLosses(4 * flows[0] * FLOW, 4 * flows[1] * FLOW, DENSITY, THIN, out);
            for (int leg = 0; leg < 3; leg++) {
                assertThat(out[leg]).isCloseTo(losses[leg], within(1e-9 * HEAD));
            }
        }
        // and a rounded edge costs less than a sharp one where the branch joins
        Tee sharp = Tee.of(BORE, 0.8 * BORE, Math.toRadians(60), 0);
        assertThat(coefficients(small, -0.5 * FLOW, -0.5 * FLOW)[2])
                .isLessThan(coefficients(sharp, -0.5 * FLOW, -0.5 * FLOW)[2]);
    }

    @Test
    void endsOfTheShapesAreTaken() {
        assertThat(Tee.of(0.008, 0.01, Math.PI / 2, 0)).isNotNull();
        // edge radius to a fifth of branch^2/run: 1.28 mm
        assertThat(Tee.of(0.01, 0.008, Math.PI / 2, 0.00127)).isNotNull();
        assertThatThrownBy(() -> Tee.of(0.01, 0.008, Math.PI / 2, 0.00129))
                .hasMessageContaining("tee edge radius in m 0.00129");
        assertThatThrownBy(() -> Tee.of(0, 0.01, Math.PI / 2, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Tee.of(0.008, 0, Math.PI / 2, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void badShapesAreRefused() {
        assertThatThrownBy(() -> Tee.of(0.008, 0.0101, Math.PI / 2, 0)).hasMessageContaining("1.25 times the run");
        assertThatThrownBy(() -> Tee.of(0.008, 0.008, 0.1, 0)).hasMessageContaining("tee angle in rad 0.1");
        assertThatThrownBy(() -> Tee.of(0.008, 0.008, 1, Double.NaN)).hasMessageContaining("edge radius");
        assertThatThrownBy(() -> Tee.of(Double.NaN, 0.008, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
