package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

class LargestDrawTest {
    private static final Circuit MENDED = Examples.circuit("fuel-feed-38.yaml");
    private static final Circuit BROKEN = Examples.circuit("fuel-feed-516.yaml");

    private static double least(Circuit circuit, LargestDraw draw, double share) {
        Result at = Result.of(draw.knob().in(circuit, share * draw.usualSi()));
        return circuit.limits().stream().mapToDouble(at::margin).min().orElseThrow();
    }

    @Test
    void atItEveryLimitHoldsAndBeyondItOneBreaks() {
        for (String name : List.of("full load", "low volts")) {
            for (Circuit feed : List.of(MENDED.in(name), BROKEN.in(name))) {
                LargestDraw draw = LargestDraw.of(feed).orElseThrow();
                assertThat(draw.knob().path()).isEqualTo("engine.power");
                assertThat(least(feed, draw, 1)).isGreaterThanOrEqualTo(0);
                assertThat(least(feed, draw, 1.0001)).isNegative();
                assertThat(least(feed, draw, 0.9999)).isPositive();
                Result beyond = Result.of(draw.knob().in(feed, 1.0001 * draw.usualSi()));
                assertThat(feed.limits().stream()
                                .filter(limit -> beyond.margin(limit) < 0)
                                .map(Limit::id))
                        .containsExactly(draw.ends());
            }
        }
    }

    @Test
    void surelyMeansOverAllBoresAndClasses() {
        LargestDraw draw = LargestDraw.of(MENDED.in("full load")).orElseThrow();
        assertThat(draw.leastSi()).isLessThan(draw.usualSi());
        CaseResult at = CaseResult.of(draw.knob().in(MENDED.in("full load"), draw.leastSi()));
        assertThat(at.limits()).allSatisfy(row -> assertThat(row.marginLow()).isGreaterThanOrEqualTo(0));
        CaseResult beyond = CaseResult.of(draw.knob().in(MENDED.in("full load"), 1.0001 * draw.leastSi()));
        assertThat(beyond.limits())
                .extracting(LimitRow::marginLow)
                .anySatisfy(margin -> assertThat(margin).isNegative());
    }

    @Test
    void itIsWhatTheSearchOverOneKeyFinds() {
        LargestDraw draw = LargestDraw.of(MENDED.in("full load")).orElseThrow();
        HowFar far = HowFar.of(MENDED, new HowFar.Question("engine.power", List.of("full load"), ""));
        assertThat(draw.usualSi()).isCloseTo(far.stretch().orElseThrow().to(), within(1e-4 * draw.usualSi()));
    }

    @Test
    void theFeedCheckSaysItAsBuiltAndMended() {
        CaseCheck check = FeedCheck.of(BROKEN, List.of("full load")).cases().get(0);
        assertThat(check.draw()).isNotNull();
        assertThat(check.draw().usualSi()).isLessThan(check.draw().knob().si());
        assertThat(check.mend()).isNotNull();
        LargestDraw mended = check.mend().draw();
        assertThat(mended).isNotNull();
        assertThat(least(check.mend().result().circuit(), mended, 1)).isGreaterThanOrEqualTo(0);
        assertThat(check.sentence(Display.METRIC))
                .contains("It then holds up to " + mended.knob().shown(mended.usualSi(), Display.METRIC, 3))
                .contains("As built it holds up to ")
                .contains("beyond it rail pressure is past its limit");
        assertThat(check.sentence(Display.US)).containsPattern("It then holds up to \\d+ hp, surely to \\d+ hp");
        CaseCheck without =
                FeedCheck.withoutDraws(BROKEN, List.of("full load")).cases().get(0);
        assertThat(without.draw()).isNull();
        assertThat(without.sentence(Display.METRIC))
                .doesNotContain("holds up to")
                .startsWith("UNDERSIZED");
    }

    private static Circuit bench(double litresPerHour, double leastKPa) {
        String text = String.format(Locale.ROOT, """
                linedrop: 1
                fluid: bench liquid
                temperature: 20 C
                fluids:
                  bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: %s L/h really, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{law: constant f, f: 0.02 x, length: 10 m, bore: 8 mm}]}
                limits:
                  tap: {pressure: at least %s kPa}
                """, litresPerHour, leastKPa);
        return CircuitFile.read(text, "bench.yaml");
    }

    @Test
    void withAConstantFrictionFactorItIsAClosedForm() {
        double lossPa = 50e3;
        double speed = Math.sqrt(2 * lossPa * 0.008 / (800 * 0.02 * 10));
        double flow = speed * Math.PI / 4 * 0.008 * 0.008; // m3/s
        for (double now : List.of(0.3 * flow, 0.9 * flow, 1.2 * flow, 1.9 * flow)) {
            LargestDraw draw = LargestDraw.of(bench(now * 3.6e6, 250)).orElseThrow();
            assertThat(draw.usualSi()).isCloseTo(flow, within(1e-6 * flow));
            assertThat(draw.leastSi()).as("nothing here has a band").isEqualTo(draw.usualSi());
            assertThat(draw.ends()).isEqualTo("tap pressure");
        }
        assertThat(LargestDraw.of(bench(flow / 4.5 * 3.6e6, 250)))
                .as("more than four times of what is drawn is no news")
                .isEmpty();
        assertThat(LargestDraw.of(bench(flow * 4.5 * 3.6e6, 250))).isEmpty();
    }

    @Test
    void severalGivenFlowsHaveNoOneLargestDraw() {
        Circuit two = CircuitFile.read(
                "linedrop: 1\nfluid: water\ntemperature: 20 C\npoints:\n  main: {kind: held, pressure: 300 kPa}\n"
                        + "  tap: {kind: draw, takes: 100 L/h}\n  other: {kind: draw, takes: 100 L/h}\nruns:\n"
                        + "  line: {from: main, to: tap, parts: [{law: K, K: 3 x, bore: 8 mm}]}\n"
                        + "  more: {from: main, to: other, parts: [{law: K, K: 3 x, bore: 8 mm}]}\n"
                        + "limits: {tap: {pressure: at least 299 kPa}}\n",
                "two.yaml");
        assertThat(LargestDraw.of(two)).isEmpty();
        assertThat(LargestDraw.of(Examples.circuit("oil-cooler.yaml"))).isEmpty();
    }
}
