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
        assertThat(regulator.evaluate(0, 3e5 - 4e3 - 1 + 1e4, 0, 1e4, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out[0]).isZero();
        // at Q0 it holds the set pressure over its reference
        assertThat(regulator.evaluate(0.02, 3e5 + 1e4, 0, 1e4, 0, out)).isEqualTo(DeviceLaw.IN_CONTROL);
        assertThat(out[0]).isCloseTo(0, within(1e-9));
        // against a return that stands too high it can only be wide open
        assertThat(regulator.evaluate(0.02, 3.3e5, 3.3e5 - 400, 0, 0, out)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(out[0]).isCloseTo(0, within(1e-6));
    }

    @Test
    void reducingRegulatorShutsOnItsOutlet() {
        OneWay regulator = OneWay.reducing(2e5, 0, 0, OPEN, TYPICAL);
        double[] out = new double[5];
        assertThat(regulator.evaluate(0, 5e5, 2.1e5, 0, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out[0]).isZero();
        assertThat(regulator.evaluate(0.1, 5e5, 2e5, 0, 0, out)).isEqualTo(DeviceLaw.IN_CONTROL);
        assertThat(out[0]).isZero();
        assertThat(regulator.evaluate(0.1, 1.5e5, 1.4e5, 0, 0, out)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(out[0]).isCloseTo(0, within(1e-9));
        assertThat(regulator.evaluate(0, 1e5, 1.5e5, 0, 0, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(regulator.stateWord(DeviceLaw.IN_CONTROL)).isEqualTo("in control");
    }

    /** Flow rises with the inlet and falls with the outlet in every state, smooth or not, and slopes are true. */
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
            double softening = i % 2 == 0 ? 0 : 0.3;
            double[] x = {
                0.1 * random.nextDouble() - 0.02,
                4e5 * random.nextDouble(),
                4e5 * random.nextDouble(),
                5e4 * random.nextDouble()
            };
            int state = device.evaluate(x[0], x[1], x[2], x[3], softening, out);
            assertThat(out[1]).isGreaterThan(0);
            assertThat(out[2]).isLessThanOrEqualTo(0);
            assertThat(out[3]).isGreaterThanOrEqualTo(0);
            for (int k = 0; k < 4; k++) {
                double h = k == 0 ? 1e-7 : 0.1;
                x[k] += h;
                int above = device.evaluate(x[0], x[1], x[2], x[3], softening, up);
                x[k] -= 2 * h;
                int below = device.evaluate(x[0], x[1], x[2], x[3], softening, down);
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

    /**
     * Fischer's function of two pieces 3000 and 4000 is 3000 + 4000 - 5000, of 3000 and -4000 it is -6000; its
     * derivatives are 1 - 3/5 and 1 - 4/5.
     */
    @Test
    void smoothlyJoinedPiecesOfACheckValve() {
        OneWay valve = OneWay.check(OPEN, 5e4); // 5e4 x 0.06 kg/s = 3000 Pa; 1e6 x 0.06^2 = 3600 Pa
        double[] out = new double[5];
        assertThat(valve.evaluate(0.06, 0, 400, 0, Double.MIN_NORMAL, out)).isEqualTo(DeviceLaw.SHUT);
        assertThat(out).containsExactly(new double[] {2000, 0.4 * 5e4 + 0.2 * 1.2e5, -0.2, 0.2, 0}, within(1e-9));
        assertThat(valve.evaluate(0.06, 7600, 0, 0, Double.MIN_NORMAL, out)).isEqualTo(DeviceLaw.WIDE_OPEN);
        assertThat(out).containsExactly(new double[] {-6000, 0.4 * 5e4 + 1.8 * 1.2e5, -1.8, 1.8, 0}, within(1e-9));
        // unjoined the smaller piece counts alone
        valve.evaluate(0.06, 0, 400, 0, 0, out);
        assertThat(out).containsExactly(new double[] {3000, 5e4, 0, 0, 0}, within(1e-9));
    }

    /** Held 3000 Pa off and 4000 Pa of drive left: -2000, joined with the 3000 of the flow. */
    @Test
    void smoothlyJoinedPiecesOfRegulators() {
        double size = Math.hypot(3000, 2000);
        double byHeld = 1 + 2000 / size;
        double flow = (1 - 3000 / size) * 5e4 + byHeld * 0.2 * 1.2e5;
        double[] out = new double[5];
        OneWay relief = OneWay.relief(2e5, 0, 0, OPEN, 5e4);
        relief.evaluate(0.06, 203_000, 195_400, 0, Double.MIN_NORMAL, out);
        assertThat(out)
                .containsExactly(
                        new double[] {1000 - size, flow, -0.6 * byHeld, 0.2 * byHeld, 0.4 * byHeld}, within(1e-6));
        OneWay reducing = OneWay.reducing(2e5, 0, 0, OPEN, 5e4);
        reducing.evaluate(0.06, 204_600, 197_000, 0, Double.MIN_NORMAL, out);
        assertThat(out)
                .containsExactly(
                        new double[] {1000 - size, flow, -0.2 * byHeld, 0.6 * byHeld, -0.4 * byHeld}, within(1e-6));
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
        pump.evaluate(0.3, 0, 9e9, 0, 0, out);
        assertThat(out[0]).isZero();
        assertThat(pump.relatesPressures()).isFalse();
        assertThat(pump.leastFlowKgPerS()).isEqualTo(pump.mostFlowKgPerS());
        assertThatThrownBy(() -> new FixedFlow(0.3, 0)).hasMessageContaining("typical slope");
        assertThatThrownBy(() -> OneWay.check(OPEN, -1)).hasMessageContaining("typical slope");
    }
}
