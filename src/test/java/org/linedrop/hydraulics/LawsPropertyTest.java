package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every law over Re 1e-3 to 1e8 and its shape: zero at rest with a finite slope over zero, value and slope continuous,
 * drop strictly rising, slope equal to a difference quotient.
 */
class LawsPropertyTest {
    static final double BORE = 0.008;
    static final double DENSITY = 800;
    static final double VISCOSITY = 2e-3;
    private static final double RADIAN = Math.PI / 180;
    private static final double VESSEL = Double.POSITIVE_INFINITY;
    private static final int STEPS_PER_DECADE = 40;

    interface Drop {
        void at(double flow, double[] out);
    }

    /** A law with the bore its Reynolds number is counted on; smooth false where the source has a corner. */
    record Law(String name, double bore, boolean smooth, boolean odd, Drop drop) {
        @Override
        public String toString() {
            return name;
        }

        double value(double flow) {
            double[] out = new double[2];
            drop.at(flow, out);
            return out[0];
        }

        double slope(double flow) {
            double[] out = new double[2];
            drop.at(flow, out);
            return out[1];
        }

        double flow(double reynolds) {
            return reynolds / Reynolds.of(1, bore, DENSITY, VISCOSITY);
        }
    }

    private static String name(String law, Object... shape) {
        StringBuilder text = new StringBuilder(law);
        for (Object part : shape) {
            text.append(' ').append(part);
        }
        return text.toString();
    }

    static Stream<Law> laws() {
        List<Law> laws = new ArrayList<>();
        friction(laws);
        bends(laws);
        changesOfBore(laws);
        restrictors(laws);
        components(laws);
        return laws.stream();
    }

    private static void friction(List<Law> laws) {
        Transition linear = new Transition(2300, 4000, Transition.Shape.LINEAR_BLEND);
        for (Transition rule : List.of(Transition.DEFAULT, Transition.LATE, Transition.NEAR_JUMP, linear)) {
            for (double rough : new double[] {0, 0.001, 0.05}) {
                boolean smooth = rule.shape() == Transition.Shape.SMOOTHSTEP;
                laws.add(new Law(
                        name("straight", rule, rough),
                        BORE,
                        smooth,
                        true,
                        (q, out) ->
                                BoreFriction.pressureDrop(q, BORE, 1, rough * BORE, rule, DENSITY, VISCOSITY, out)));
            }
        }
        for (double ratio : new double[] {1.5, 5, 6, 8, 11, 15, 21, 40, 200, 860, 861, 1300, 1990, 2500}) {
            for (double rough : new double[] {0, 0.01}) {
                laws.add(new Law(
                        name("curved R/r", ratio, rough),
                        BORE,
                        true,
                        true,
                        (q, out) -> CurvedBore.pressureDrop(
                                q,
                                BORE,
                                1,
                                ratio * BORE / 2,
                                rough * BORE,
                                Transition.DEFAULT,
                                DENSITY,
                                VISCOSITY,
                                out)));
            }
        }
        laws.add(new Law(
                "convoluted",
                BORE,
                true,
                true,
                (q, out) -> ConvolutedBore.pressureDrop(q, BORE, 0.003, 1, DENSITY, VISCOSITY, out)));
        laws.add(new Law(
                "multiplied",
                BORE,
                true,
                true,
                (q, out) ->
                        ConvolutedBore.multipliedDrop(q, BORE, 1, 4.5, Transition.DEFAULT, DENSITY, VISCOSITY, out)));
    }

    private static void bends(List<Law> laws) {
        for (double degrees : new double[] {5, 30, 45, 60, 90, 135, 180}) {
            for (double radius : new double[] {1, 1.5, 2, 4, 10, 30, 50}) {
                SweptBend bend = SweptBend.of(degrees * RADIAN, radius);
                laws.add(new Law(
                        name("swept", degrees, "R/D", radius),
                        BORE,
                        true,
                        true,
                        (q, out) -> bend.pressureDrop(q, BORE, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out)));
            }
            double k = MitreElbow.turbulentK(degrees * RADIAN);
            double k1 = MitreElbow.k1(degrees * RADIAN);
            laws.add(new Law(
                    name("mitre", degrees),
                    BORE,
                    true,
                    true,
                    (q, out) -> LocalLoss.pressureDrop(q, BORE, k, k1, DENSITY, VISCOSITY, out)));
        }
    }

    private static void changesOfBore(List<Law> laws) {
        for (double other : new double[] {0.2 * BORE, 0.9 * BORE, 1.1 * BORE, 4 * BORE, VESSEL}) {
            laws.add(new Law(
                    name("change to", other),
                    Math.min(BORE, other),
                    true,
                    false,
                    (q, out) -> AreaChange.pressureDrop(q, BORE, other, DENSITY, VISCOSITY, out)));
            for (double length : new double[] {0, 0.5, 2.39, 2.4, 4}) {
                Nipple nipple = Nipple.of(other, BORE, length * BORE, 1.3 * BORE);
                laws.add(new Law(
                        name("nipple l/d", length, "from", other),
                        BORE,
                        true,
                        false,
                        (q, out) -> nipple.pressureDrop(q, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out)));
            }
        }
        laws.add(new Law(
                "entrance and exit",
                BORE,
                true,
                false,
                (q, out) -> PipeEnd.pressureDrop(q, BORE, PipeEnd.SHARP_K, PipeEnd.EXIT_K, DENSITY, VISCOSITY, out)));
    }

    private static void restrictors(List<Law> laws) {
        for (double beta : new double[] {0, 0.05, 0.1, 0.3, 0.5, 0.6, 0.75, 0.9, 0.98}) {
            for (double hole : new double[] {0.0008, 0.02}) {
                Orifice plate = Orifice.of(hole / beta, hole);
                laws.add(new Law(
                        name("orifice", hole, "beta", beta),
                        hole,
                        true,
                        true,
                        (q, out) -> plate.pressureDrop(q, DENSITY, VISCOSITY, out)));
            }
        }
        double hole = 0.0015;
        for (double length : new double[] {0, 0.3, 1, 2, 2.2, 2.5, 2.9, 3, 6, 10, 11, 14, 15, 40}) {
            for (double upstream : new double[] {1.01 * hole, 2 * hole, VESSEL}) {
                Restrictor law = Restrictor.of(upstream, hole, length * hole, 0.008);
                laws.add(new Law(
                        name("restrictor l/d", length, "from", upstream),
                        hole,
                        true,
                        false,
                        (q, out) -> law.pressureDrop(q, Transition.DEFAULT, DENSITY, VISCOSITY, out)));
            }
        }
    }

    private static void components(List<Law> laws) {
        for (FittingLoss kind : FittingLoss.values()) {
            laws.add(new Law(
                    name("fitting", kind),
                    BORE,
                    true,
                    true,
                    (q, out) ->
                            LocalLoss.pressureDrop(q, BORE, kind.turbulentK(), kind.k1(), DENSITY, VISCOSITY, out)));
        }
        for (ThreeK kind : ThreeK.values()) {
            laws.add(new Law(
                    name("3-K", kind),
                    BORE,
                    true,
                    true,
                    (q, out) -> LocalLoss.pressureDrop(
                            q, BORE, kind.turbulentK(BORE), kind.k1(), DENSITY, VISCOSITY, out)));
        }
        laws.add(new Law(
                "by direction",
                BORE,
                true,
                false,
                (q, out) -> LocalLoss.directed(q, BORE, 3, 300, 1500, DENSITY, VISCOSITY, out)));
        laws.add(new Law(
                "two rated points",
                BORE,
                true,
                true,
                (q, out) -> RatedLoss.pressureDrop(q, 1e11, 3e9, DENSITY, VISCOSITY, out)));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void isZeroAtRestWithASlope(Law law) {
        assertThat(law.value(0)).isZero();
        assertThat(law.slope(0)).isPositive().isFinite();
        double tiny = law.flow(1e-6);
        assertThat(law.slope(tiny) / law.slope(0)).isBetween(1 - 1e-6, 1 + 1e-6);
        assertThat(law.slope(-tiny) / law.slope(0)).isBetween(1 - 1e-6, 1 + 1e-6);
    }

    @ParameterizedTest
    @MethodSource("laws")
    void risesWithTrueSlope(Law law) {
        double previous = 0;
        for (int i = 0; i <= 11 * STEPS_PER_DECADE; i++) {
            double reynolds = Math.pow(10, -3 + (double) i / STEPS_PER_DECADE);
            double flow = law.flow(reynolds);
            double value = law.value(flow);
            assertThat(value).as("at Re %s", reynolds).isGreaterThan(previous).isFinite();
            previous = value;
            double step = 1e-5 * flow;
            double quotient = (law.value(flow + step) - law.value(flow - step)) / (2 * step);
            // 3e-6 of the slope: the quotient's own rounding and, where a law has a corner, its curvature
            assertThat(law.slope(flow) / quotient).as("at Re %s", reynolds).isBetween(1 - 3e-6, 1 + 3e-6);
            if (law.odd()) {
                assertThat(law.value(-flow)).isEqualTo(-value);
                assertThat(law.slope(-flow)).isEqualTo(law.slope(flow));
            } else {
                assertThat(law.value(-flow)).isNegative();
                assertThat(law.slope(-flow)).isPositive();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("laws")
    void neverJumps(Law law) {
        double last = law.flow(1e-3);
        for (int i = 1; i <= 11 * STEPS_PER_DECADE; i++) {
            double next = law.flow(Math.pow(10, -3 + (double) i / STEPS_PER_DECADE));
            assertThat(steepest(law::value, last, next))
                    .as("value between Re %s", next / law.flow(1))
                    .isLessThan(1e-12);
            if (law.smooth()) {
                assertThat(steepest(law::slope, last, next))
                        .as("slope between Re %s", next / law.flow(1))
                        .isLessThan(1e-10);
            }
            last = next;
        }
    }

    /** Relative change of a function over the last few ulps of an interval, closing in on where it changes most. */
    static double steepest(DoubleUnaryOperator function, double from, double to) {
        double low = from;
        double high = to;
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        while (high - low > 4 * Math.ulp(Math.max(Math.abs(low), Math.abs(high)))) {
            double middle = 0.5 * (low + high);
            double atMiddle = function.applyAsDouble(middle);
            if (Math.abs(atMiddle - atLow) > Math.abs(atHigh - atMiddle)) {
                high = middle;
                atHigh = atMiddle;
            } else {
                low = middle;
                atLow = atMiddle;
            }
        }
        return Math.abs(atHigh - atLow) / Math.max(1e-3, Math.max(Math.abs(atLow), Math.abs(atHigh)));
    }
}
