package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Dimension;

/** Rules of thumb on one small invented feed with two filters, by service: figures by hand, the worst of two cases. */
class AdviceByHandTest {
    private static final String FEED = """
            linedrop: 1
            service: %s
            fluid: %s
            temperature: %s C
            this case: usual
            points:
              tank: {kind: tank, height: 0.3 m, depth: 0.2 m}
              rail: {kind: draw, takes: 200 L/h, height: 0.5 m}
            devices:
              pump: {kind: pump, curves: [{at: 12 V, pressure: 0 200 400 kPa, flow: 400 300 200 L/h}], runs at: 12 V, height: 0.1 m}
              before: {kind: filter, drop: 3 kPa at 200 L/h with 1 cSt, exponent: 2, height: 0.1 m}
              after: {kind: filter, drop: 9 kPa at 200 L/h with 1 cSt, exponent: 2, height: 0.1 m}
            runs:
              feed:
                from: tank
                to: rail
                parts:
                  - {tube: steel 1/2 in x 0.035 in, length: 1 m}
                  - {through: before}
                  - {tube: steel 1/2 in x 0.035 in, length: 0.1 m}
                  - {through: pump}
                  - {tube: steel 3/8 in x 0.035 in, length: 2 m}
                  - {through: after}
            limits: {rail: {pressure: at least 50 kPa}}
            cases:
              more: {rail: {takes: 300 L/h}}
            """;

    private static List<Advice> advice(String service, String fluid, String celsius) {
        Circuit circuit = CircuitFile.read(
                FEED.formatted(service, fluid, celsius)
                        .replace("with 1 cSt", fluid.contains("oil") ? "with 14 cSt" : "with 1 cSt")
                        .replace("takes: 200 L/h", fluid.contains("oil") ? "takes: 100 L/h" : "takes: 200 L/h"),
                "feed.yaml");
        return Advice.of(FeedCheck.withoutDraws(circuit, circuit.caseNames()).cases());
    }

    private static Optional<Advice> rule(List<Advice> all, String words) {
        return all.stream().filter(each -> each.words().equals(words)).findFirst();
    }

    private static double speed(double litresPerHour, double outsideIn) {
        double bore = (outsideIn - 2 * 0.035) * 0.0254;
        return litresPerHour / 3.6e6 / (Math.PI / 4 * bore * bore);
    }

    @Test
    void injectedFuel() {
        List<Advice> all = advice("injected fuel", "E10", "20");
        assertThat(all)
                .extracting(Advice::words)
                .containsExactly(
                        "feed loss with height",
                        "share of one part in the loss",
                        "suction: margin of a pump over boiling",
                        "drop of a filter before a pump",
                        "drop of a filter",
                        "speed in a suction line",
                        "speed in a pressure line");
        Advice before = rule(all, "drop of a filter before a pump").orElseThrow();
        assertThat(before.element()).isEqualTo("before");
        assertThat(before.caseName()).isEqualTo("more");
        assertThat(before.value())
                .as("2.25 times the drop at half as much again")
                .isBetween(2.2 * 3000, 2.3 * 3000);
        assertThat(before.bound()).isEqualTo(2000);
        assertThat(before.kept()).isFalse();
        Advice after = rule(all, "drop of a filter").orElseThrow();
        assertThat(after.value() / before.value()).isCloseTo(3, within(1e-9));
        assertThat(after.bound()).isEqualTo(10_000);
        Advice suction = rule(all, "speed in a suction line").orElseThrow();
        assertThat(suction.value()).isCloseTo(speed(300, 0.5), within(1e-9));
        assertThat(suction.bound()).isEqualTo(0.9);
        assertThat(suction.kept()).isTrue();
        assertThat(suction.dimension()).isEqualTo(Dimension.SPEED);
        Advice pressure = rule(all, "speed in a pressure line").orElseThrow();
        assertThat(pressure.value()).isCloseTo(speed(300, 0.375), within(1e-9));
        assertThat(pressure.element()).isEqualTo("feed 5");
        assertThat(pressure.bound()).isEqualTo(4.6);
        Advice loss = rule(all, "feed loss with height").orElseThrow();
        assertThat(loss.bound()).isEqualTo(35_000);
        assertThat(loss.source().status()).isEqualTo(Status.FROM_MEMORY);
        Advice share = rule(all, "share of one part in the loss").orElseThrow();
        assertThat(share.element()).isIn("before", "after");
        assertThat(share.bound()).isEqualTo(0.5);
        assertThat(share.value()).isBetween(0.5, 0.9);
    }

    @Test
    void theMarginOverBoilingIsThePumpsAndUnsolvedCasesSayNothing() {
        String text = FEED.formatted("injected fuel", "E10", "20");
        Circuit circuit = CircuitFile.read(text, "feed.yaml");
        List<CaseCheck> cases =
                FeedCheck.withoutDraws(circuit, circuit.caseNames()).cases();
        Advice margin =
                rule(Advice.of(cases), "suction: margin of a pump over boiling").orElseThrow();
        double least = cases.stream()
                .mapToDouble(each -> each.result()
                        .usual()
                        .device("pump")
                        .orElseThrow()
                        .figure("inletMarginPa")
                        .orElseThrow())
                .min()
                .orElseThrow();
        assertThat(margin.value()).isCloseTo(least, within(1e-6));
        assertThat(margin.atLeast()).isTrue();
        Circuit more = CircuitFile.read(text + "  beyond: {rail: {takes: 3000 L/h really}}\n", "beyond.yaml");
        assertThat(Advice.of(FeedCheck.withoutDraws(more, more.caseNames()).cases()))
                .isEqualTo(Advice.of(cases));
    }

    @Test
    void carburettorsBearLess() {
        List<Advice> all = advice("carburettor fuel", "E10", "20");
        assertThat(rule(all, "feed loss with height").orElseThrow().bound()).isEqualTo(7_000);
        assertThat(rule(all, "drop of a filter").orElseThrow().bound()).isEqualTo(2_000);
        assertThat(rule(all, "drop of a filter before a pump").orElseThrow().bound())
                .isEqualTo(2_000);
    }

    @Test
    void oilIsJudgedHot() {
        List<Advice> hot = advice("engine oil", "engine oil 5W-30", "100");
        assertThat(rule(hot, "loss outside the engine, hot").orElseThrow().bound())
                .isEqualTo(70_000);
        assertThat(rule(hot, "speed in a suction line").orElseThrow().bound()).isEqualTo(1.5);
        assertThat(rule(hot, "speed in a pressure line").orElseThrow().bound()).isEqualTo(4.6);
        assertThat(hot).extracting(Advice::words).doesNotContain("drop of a filter", "feed loss with height");
        List<Advice> warm = advice("engine oil", "engine oil 5W-30", "60");
        assertThat(warm)
                .extracting(Advice::words)
                .doesNotContain("loss outside the engine, hot")
                .contains("speed in a suction line");
    }

    @Test
    void otherLinesHaveTheirSpeeds() {
        List<Advice> coolant = advice("coolant", "water", "20");
        assertThat(coolant)
                .extracting(Advice::words)
                .containsExactly("speed in a suction line", "speed in a pressure line");
        assertThat(coolant.get(0).bound()).isEqualTo(3);
        List<Advice> gearbox = advice("gearbox oil", "engine oil 5W-30", "100");
        assertThat(rule(gearbox, "speed in a suction line").orElseThrow().bound())
                .isEqualTo(1.5);
        assertThat(rule(gearbox, "speed in a pressure line").orElseThrow().bound())
                .isEqualTo(10);
        assertThat(advice("brake", "brake fluid DOT 4", "20")).isEmpty();
    }

    @Test
    void aLineHomeWithoutAPumpIsAReturn() {
        Circuit circuit = CircuitFile.read("""
                linedrop: 1
                service: injected fuel
                fluid: E10
                temperature: 20 C
                points:
                  rail: {kind: held, pressure: 20 kPa}
                  tank: {kind: tank, depth: 0.2 m}
                runs:
                  back: {from: rail, to: tank, parts: [{tube: steel 3/8 in x 0.035 in, length: 2 m}]}
                limits: {tank: {flow: at least 10 L/h}}
                """, "return.yaml");
        Advice speed = rule(
                        Advice.of(FeedCheck.withoutDraws(circuit, circuit.caseNames())
                                .cases()),
                        "speed in a return line")
                .orElseThrow();
        assertThat(speed.bound()).isEqualTo(1.8);
        assertThat(speed.kept()).isFalse();
    }

    private static Advice of(double value, double bound, boolean atLeast) {
        return new Advice("x", "", "", value, bound, atLeast, Dimension.RATIO, Source.of("x", Status.GIVEN));
    }

    @Test
    void advicesAreKeptUpToTheirBound() {
        assertThat(of(2, 2, true).kept()).isTrue();
        assertThat(of(1.9, 2, true).kept()).isFalse();
        assertThat(of(2, 2, false).kept()).isTrue();
        assertThat(of(2.1, 2, false).kept()).isFalse();
        assertThat(of(3, 2, false).excess()).isEqualTo(0.5);
        assertThat(of(3, 2, true).excess()).isEqualTo(-0.5);
        assertThat(Advice.of(List.of())).isEmpty();
    }
}
