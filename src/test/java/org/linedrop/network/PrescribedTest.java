package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every prescribed law: value by hand, true slope, rising, odd where it should be. */
class PrescribedTest {
    private static final double DENSITY = 1000;
    private static final double GRAVITY = 9.81;

    private static double[] at(Law law, double flow) {
        double[] out = new double[2];
        law.evaluate(flow, out);
        return out;
    }

    static Stream<Arguments> laws() {
        return Stream.of(
                Arguments.of("constant f", Prescribed.constantFriction(0.02, 10, 0.05, 1.5, DENSITY), true),
                Arguments.of("loss", Prescribed.loss(2.5, 0.02, 750), true),
                Arguments.of("power 1.852", Prescribed.headPower(1e5, 1.852, DENSITY, GRAVITY), true),
                Arguments.of("power 2", Prescribed.headPower(1e5, 2, DENSITY, GRAVITY), true),
                Arguments.of("linear", Prescribed.headPower(1e5, 1, DENSITY, GRAVITY), true),
                Arguments.of("laminar", Prescribed.laminar(0.1, 2, 0.012, 3, 860), true),
                Arguments.of("colebrook", Prescribed.colebrook(3, 0.008, 1e-5, 2, 740, 5e-4), true),
                Arguments.of("smooth", Prescribed.colebrook(3, 0.008, 0, 0, 998, 1e-3), true),
                Arguments.of("lift", Prescribed.plus(Prescribed.loss(1, 0.01, 998), 5000), false),
                Arguments.of(
                        "polynomial",
                        PrescribedPump.polynomial(new double[] {25, -3, -1.5e5}, DENSITY, GRAVITY),
                        false),
                Arguments.of("straight", table(PrescribedPump.Between.STRAIGHT), false),
                Arguments.of("cubic", table(PrescribedPump.Between.MONOTONE_CUBIC), false),
                Arguments.of("power", PrescribedPump.constantPower(500, DENSITY, 1e-4), false));
    }

    private static Law table(PrescribedPump.Between between) {
        return PrescribedPump.table(
                new double[] {0, 0.001, 0.002, 0.0025, 0.004},
                new double[] {30, 29, 25, 12, 0},
                between,
                DENSITY,
                GRAVITY);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("laws")
    void risesWithTrueSlope(String name, Law law, boolean odd) {
        double before = Double.NEGATIVE_INFINITY;
        for (int i = -400; i <= 400; i++) {
            // 1e-8 to 1e2 kg/s on both sides of zero
            double flow = i == 0 ? 0 : Math.signum(i) * Math.pow(10, -8 + Math.abs(i) / 40.0);
            double[] here = at(law, flow);
            assertThat(here[0]).describedAs("at %s kg/s", flow).isGreaterThanOrEqualTo(before);
            before = here[0];
            assertThat(here[1]).isGreaterThanOrEqualTo(0);
            double h = Math.max(1e-6 * Math.abs(flow), 1e-12);
            double secant = (at(law, flow + h)[0] - at(law, flow - h)[0]) / (2 * h);
            double rounding = 4e-16 * Math.abs(here[0]) / h;
            // at a corner of a table, or over the closed jump at Re 2300, both sides count
            double low = Math.min(here[1], Math.min(at(law, flow - 2 * h)[1], at(law, flow + 2 * h)[1]));
            double high = Math.max(here[1], Math.max(at(law, flow - 2 * h)[1], at(law, flow + 2 * h)[1]));
            assertThat(secant)
                    .describedAs("slope at %s kg/s", flow)
                    .isBetween(low * (1 - 1e-4) - rounding - 1e-9, high * (1 + 1e-4) + rounding + 1e-9);
            if (odd) {
                assertThat(at(law, -flow)[0]).isEqualTo(-here[0]);
            }
        }
    }

    @Test
    void valuesByHand() {
        double v = 0.002 / (Math.PI / 4 * 0.05 * 0.05);
        assertThat(at(Prescribed.constantFriction(0.02, 10, 0.05, 1.5, DENSITY), 2)[0])
                .isCloseTo((0.02 * 10 / 0.05 + 1.5) * DENSITY * v * v / 2, within(1e-9));
        assertThat(at(Prescribed.headPower(1e5, 1.852, DENSITY, GRAVITY), -2)[0])
                .isCloseTo(-DENSITY * GRAVITY * 1e5 * Math.pow(0.002, 1.852), within(1e-9));
        double oil = 0.5 / 860 / (Math.PI / 4 * 0.012 * 0.012);
        assertThat(at(Prescribed.laminar(0.1, 2, 0.012, 3, 860), 0.5)[0])
                .isCloseTo(32 * 0.1 * 2 * oil / (0.012 * 0.012) + 3 * 860 * oil * oil / 2, within(1e-6));
        assertThat(at(Prescribed.plus(Prescribed.constant(200), 5000), 3)[0]).isEqualTo(5200);
    }

    @Test
    void pumpsByHand() {
        Law pump = PrescribedPump.polynomial(new double[] {25, 0, -1.5e5}, DENSITY, GRAVITY);
        assertThat(at(pump, 5)[0]).isCloseTo(-DENSITY * GRAVITY * (25 - 1.5e5 * 25e-6), within(1e-6));
        // back-flow: rise(-Q) = 2 c0 - rise(Q)
        assertThat(at(pump, -5)[0]).isCloseTo(-DENSITY * GRAVITY * (25 + 1.5e5 * 25e-6), within(1e-6));
        Law straight = table(PrescribedPump.Between.STRAIGHT);
        assertThat(at(straight, 1.5)[0]).isCloseTo(-DENSITY * GRAVITY * 27, within(1e-6));
        assertThat(at(straight, 5.5)[0]).isCloseTo(DENSITY * GRAVITY * 12, within(1e-6));
        assertThat(at(straight, -1)[0]).isCloseTo(-DENSITY * GRAVITY * 31, within(1e-6));
        Law cubic = table(PrescribedPump.Between.MONOTONE_CUBIC);
        for (double[] row : new double[][] {{0, 30}, {1, 29}, {2, 25}, {2.5, 12}, {4, 0}}) {
            assertThat(at(cubic, row[0])[0]).isCloseTo(-DENSITY * GRAVITY * row[1], within(1e-6));
        }
        assertThat(at(PrescribedPump.constantPower(500, DENSITY, 1e-4), 2)[0]).isCloseTo(-250_000, within(1e-6));
    }

    private static double rise(double[] rises, double flow) {
        double[] flows = new double[rises.length];
        for (int i = 0; i < flows.length; i++) {
            flows[i] = i;
        }
        return -at(PrescribedPump.pressureTable(flows, rises, PrescribedPump.Between.MONOTONE_CUBIC), flow)[0];
    }

    /**
     * Hermite's cubic with the mean of the secants as slopes, cut by F. N. Fritsch and R. E. Carlson, SIAM J. Numer. Anal.
     * 17 (1980) 238-246, to a length of 3; half way it is the mean of the rows and an eighth of the slopes' difference.
     */
    @Test
    void monotoneCubicByHand() {
        assertThat(rise(new double[] {4, 2, 0}, 0.5)).isCloseTo(3, within(1e-12));
        double[] bent = {4, 3, 0}; // slopes -1, -2, -3
        assertThat(rise(bent, 0.5)).isCloseTo(3.5 + 1 / 8.0, within(1e-12));
        assertThat(rise(bent, 1.5)).isCloseTo(1.5 + 1 / 8.0, within(1e-12));
        assertThat(rise(bent, 3)).isCloseTo(-3, within(1e-12)); // straight on
        assertThat(rise(bent, -1)).isCloseTo(5, within(1e-12));
        double[] knee = {10, 9.9, 0}; // slopes -0.1 and -5 over a secant of -0.1: cut to 3/sqrt(2501)
        double cut = 3 / Math.sqrt(2501);
        assertThat(rise(knee, 0.5)).isCloseTo(9.95 + (-0.1 + 5) * cut / 8, within(1e-12));
        assertThat(rise(knee, 1.5)).isCloseTo(4.95 + (-5 * cut + 9.9) / 8, within(1e-12));
        double[] humped = {5, 6, 3}; // flat at the hump
        assertThat(rise(humped, 0.5)).isCloseTo(5.5 + 1 / 8.0, within(1e-12));
        assertThat(rise(humped, 1.5)).isCloseTo(4.5 + 3 / 8.0, within(1e-12));
        double[] shelf = {5, 5, 3};
        assertThat(rise(shelf, 0.5)).isEqualTo(5);
        assertThat(rise(shelf, 1.5)).isCloseTo(4 + 2 / 8.0, within(1e-12));
    }

    @Test
    void endsOfTheRangesAreTaken() {
        assertThat(at(Prescribed.pressurePower(3, 1), 2)[0]).isEqualTo(6);
        assertThat(at(Prescribed.colebrook(1, 0.01, 0.01, 0, DENSITY, 1e-3), 0.1)[0])
                .isPositive();
        assertThat(at(Prescribed.constantFriction(0.02, 0, 0.05, 0, DENSITY), 2)[0])
                .isZero();
        assertThatThrownBy(() -> Prescribed.pressurePower(3, Double.POSITIVE_INFINITY))
                .hasMessageContaining("exponent n must be at least 1");
        assertThatThrownBy(() -> Prescribed.loss(1, 0, 750)).hasMessageContaining("must be above 0, but is 0.0");
        assertThatThrownBy(() -> Prescribed.loss(1, Double.POSITIVE_INFINITY, 750))
                .hasMessageContaining("Infinity");
        assertThatThrownBy(() -> Prescribed.loss(-1, 0.01, 750)).hasMessageContaining("but is -1.0");
        assertThatThrownBy(() -> Prescribed.loss(Double.POSITIVE_INFINITY, 0.01, 750))
                .hasMessageContaining("Infinity");
    }

    @Test
    void wrongNumbersAreNamed() {
        assertThatThrownBy(() -> Prescribed.headPower(1e5, 0.5, DENSITY, GRAVITY))
                .hasMessage("exponent n must be at least 1, but is 0.5");
        assertThatThrownBy(() -> Prescribed.colebrook(1, 0.01, 0.02, 0, DENSITY, 1e-3))
                .hasMessageContaining("roughness must be at most the bore");
        assertThatThrownBy(() -> Prescribed.laminar(Double.NaN, 1, 1, 0, 1))
                .hasMessage("dynamic viscosity in Pa s must be above 0, but is NaN");
        assertThatThrownBy(() -> PrescribedPump.pressureTable(
                        new double[] {0, 1, 2}, new double[] {5, 4, 4}, PrescribedPump.Between.STRAIGHT))
                .hasMessageContaining("pump table row 3: rise must fall from the second row on");
        assertThatThrownBy(() -> PrescribedPump.pressureTable(
                        new double[] {0, 0}, new double[] {5, 4}, PrescribedPump.Between.STRAIGHT))
                .hasMessageContaining("pump table row 2: flow must rise from row to row");
        assertThatThrownBy(() -> PrescribedPump.polynomial(new double[0], DENSITY, GRAVITY))
                .hasMessageContaining("shut-off head");
    }
}
