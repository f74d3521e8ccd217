package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The residual of one-way devices: states, derivatives, direction of every derivative. */
class OneWayTest {
    private static final Law OPEN = Prescribed.pressurePower(1e6, 2);
    private static final double TYPICAL = OneWay.secantSlope(OPEN, 0.05);

    @Test
    void bypassRegulatorReadsItsState() {
        OneWay regulator = OneWay.relief(3e5, 2e5, 0.02, OPEN, TYPICAL);
        double[] out = new double[5];
        // under p_set + p_ref - s Q0 it is shut
        assertThat(regulator.evaluate(0, 3e5 - 4e3 - 1 + 1e4, 0, 1e4, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out[0]).isZero();
        // at Q0 it holds the set pressure over its reference
        assertThat(regulator.evaluate(0.02, 3e5 + 1e4, 0, 1e4, out)).isEqualTo(DeviceLaw.IN_CONTROL);
        assertThat(out[0]).isCloseTo(0, within(1e-9));
        // against a return that stands too high it can only be wide open
        assertThat(regulator.evaluate(0.02, 3.3e5, 3.3e5 - 400, 0, out)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(out[0]).isCloseTo(0, within(1e-6));
    }

    @Test
    void reducingRegulatorShutsOnItsOutlet() {
        OneWay regulator = OneWay.reducing(2e5, 0, 0, OPEN, TYPICAL);
        double[] out = new double[5];
        assertThat(regulator.evaluate(0, 5e5, 2.1e5, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out[0]).isZero();
        assertThat(regulator.evaluate(0.1, 5e5, 2e5, 0, out)).isEqualTo(DeviceLaw.IN_CONTROL);
        assertThat(out[0]).isZero();
        assertThat(regulator.evaluate(0.1, 1.5e5, 1.4e5, 0, out)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(out[0]).isCloseTo(0, within(1e-9));
        assertThat(regulator.evaluate(0, 1e5, 1.5e5, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(regulator.stateWord(DeviceLaw.IN_CONTROL)).isEqualTo("in control");
    }

    /** Flow rises with the inlet and falls with the outlet in every state, and slopes are true. */
    @Test
    void derivativesAreTrueAndOneSided() {
        Random random = new Random(11);
        double[] out = new double[5];
        double[] up = new double[5];
        double[] down = new double[5];
        for (int i = 0; i < 3000; i++) {
            OneWay device = switch (i % 3) {
                case 0 -> OneWay.check(OPEN, TYPICAL);
                case 1 -> OneWay.relief(2e5, 1e5, 0.01, OPEN, TYPICAL);
                default -> OneWay.reducing(2e5, 1e5, 0.01, OPEN, TYPICAL);
            };
            double[] x = {
                0.1 * random.nextDouble() - 0.02,
                4e5 * random.nextDouble(),
                4e5 * random.nextDouble(),
                5e4 * random.nextDouble()
            };
            int state = device.evaluate(x[0], x[1], x[2], x[3], out);
            assertThat(out[1]).isGreaterThan(0);
            assertThat(out[2]).isLessThanOrEqualTo(0);
            assertThat(out[3]).isGreaterThanOrEqualTo(0);
            for (int k = 0; k < 4; k++) {
                double h = k == 0 ? 1e-7 : 0.1;
                x[k] += h;
                int above = device.evaluate(x[0], x[1], x[2], x[3], up);
                x[k] -= 2 * h;
                int below = device.evaluate(x[0], x[1], x[2], x[3], down);
                x[k] += h;
                if (above == state && below == state) {
                    double scale = k == 0 ? TYPICAL : 1;
                    assertThat(out[k + 1])
                            .describedAs("draw %d, derivative %d, state %d", i, k, state)
                            .isCloseTo((up[0] - down[0]) / (2 * h), within(1e-4 * scale));
                }
            }
        }
    }

    /** The smaller of what holds it shut and what drives it: 5e4 x 0.06 kg/s = 3000 Pa against 400 - 3600 Pa. */
    @Test
    void theSmallerPieceOfACheckValveCounts() {
        OneWay valve = OneWay.check(OPEN, 5e4);
        double[] out = new double[5];
        assertThat(valve.evaluate(0.06, 0, 400, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out).containsExactly(new double[] {3000, 5e4, 0, 0, 0}, within(1e-9));
    }

    @Test
    void scalesAreOverWhatTheLawHasAtRest() {
        assertThat(TYPICAL).isCloseTo(5e4, within(1e-6));
        assertThat(OneWay.secantSlope(Prescribed.plus(OPEN, 500), 0.05)).isCloseTo(5e4, within(1e-6));
        assertThat(OneWay.relief(3e5, 0, 0, OPEN, TYPICAL).pressureScalePa()).isEqualTo(3e5);
        assertThat(OneWay.check(Prescribed.plus(OPEN, 5000), TYPICAL).pressureScalePa())
                .isEqualTo(5000);
    }

    @Test
    void fixedFlowIsFixed() {
        FixedFlow pump = new FixedFlow(0.3, 1e5);
        double[] out = new double[5];
        pump.evaluate(0.3, 0, 9e9, 0, out);
        assertThat(out[0]).isZero();
        assertThat(pump.relatesPressures()).isFalse();
        assertThat(pump.leastFlowKgPerS()).isEqualTo(pump.mostFlowKgPerS());
        assertThatThrownBy(() -> new FixedFlow(0.3, 0)).hasMessageContaining("typical slope");
        assertThatThrownBy(() -> OneWay.check(OPEN, -1)).hasMessageContaining("typical slope");
    }

    /** Rounded, the law has one slope everywhere, keeps its directions, and is never further off than twice the rounding. */
    @Test
    void roundedPiecesJoinSmoothly() {
        Random random = new Random(12);
        double rounding = 3e3;
        double[] out = new double[5];
        double[] up = new double[5];
        double[] down = new double[5];
        for (int i = 0; i < 3000; i++) {
            OneWay device = switch (i % 3) {
                case 0 -> OneWay.check(OPEN, TYPICAL);
                case 1 -> OneWay.relief(2e5, 1e5, 0.01, OPEN, TYPICAL);
                default -> OneWay.reducing(2e5, 1e5, 0.01, OPEN, TYPICAL);
            };
            double[] x = {
                0.1 * random.nextDouble() + 1e-3,
                4e5 * random.nextDouble(),
                4e5 * random.nextDouble(),
                1e5 * random.nextDouble()
            };
            int state = device.evaluateRounded(x[0], x[1], x[2], x[3], rounding, out);
            double rounded = out[0];
            double[] slope = out.clone();
            assertThat(device.evaluate(x[0], x[1], x[2], x[3], out)).isEqualTo(state);
            assertThat(Math.abs(rounded - out[0])).isLessThanOrEqualTo(2 * rounding);
            device.evaluateRounded(x[0], x[1], x[2], x[3], 1e-9, up);
            assertThat(up[0]).isCloseTo(out[0], within(1e-8));
            assertThat(slope[1]).isPositive();
            assertThat(slope[2]).isLessThanOrEqualTo(0);
            assertThat(slope[3]).isGreaterThanOrEqualTo(0);
            for (int k = 0; k < 4; k++) {
                double step = k == 0 ? 1e-7 : 1;
                double at = x[k];
                x[k] = at + step;
                device.evaluateRounded(x[0], x[1], x[2], x[3], rounding, up);
                x[k] = at - step;
                device.evaluateRounded(x[0], x[1], x[2], x[3], rounding, down);
                x[k] = at;
                assertThat((up[0] - down[0]) / (2 * step))
                        .as("derivative %s of device %s", k, i)
                        .isCloseTo(slope[k + 1], within(1e-3 * (k == 0 ? 1e5 : 1)));
            }
        }
    }
}
