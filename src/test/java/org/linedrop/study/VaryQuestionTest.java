package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Dimension;

/** How variants are numbered and what a row of one small invented line says, by hand. */
class VaryQuestionTest {
    private static final String TEXT = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            this case: usual
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              tap: {kind: draw, takes: 100 L/h, height: 0 m, bore: vessel}
            runs:
              line: {from: main, to: tap, parts: [{law: K, K: 10 x, bore: 8 mm}, {tube: steel 3/8 in x 0.035 in, length: 1 m}]}
            limits:
              tap: {pressure: at least 250 kPa}
            cases:
              more: {tap: {takes: 1000 L/h}}
            """;
    private static final Circuit LINE = CircuitFile.read(TEXT, "line.yaml");

    private static VaryQuestion.Axis axis(String path, Double... values) {
        return new VaryQuestion.Axis(path, Dimension.LENGTH, List.of(values));
    }

    @Test
    void theSecondKeyGoesFastestAndCasesSlowest() {
        VaryQuestion question =
                new VaryQuestion(List.of(axis("a", 1.0, 2.0), axis("b", 10.0, 20.0, 30.0)), List.of("x", "y"));
        assertThat(question.count()).isEqualTo(12);
        assertThat(IntStream.range(0, 7).mapToObj(question::values))
                .containsExactly(
                        List.of(1.0, 10.0),
                        List.of(1.0, 20.0),
                        List.of(1.0, 30.0),
                        List.of(2.0, 10.0),
                        List.of(2.0, 20.0),
                        List.of(2.0, 30.0),
                        List.of(1.0, 10.0));
        assertThat(IntStream.range(0, 12).map(question::caseOf).toArray())
                .containsExactly(0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1);
    }

    @Test
    void bothEndsOfAnAxisAreTried() {
        VaryQuestion.Axis axis = VaryQuestion.Axis.of(LINE, "line 2.length", 1, 2, 3);
        assertThat(axis.values()).containsExactly(1.0, 1.5, 2.0);
        assertThat(axis.path()).isEqualTo("line 2.length");
        assertThat(axis.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(VaryQuestion.Axis.of(LINE, "line 2.length", 0.1, 0.7, 4).values())
                .hasSize(4)
                .last()
                .as("the end itself, not a sum of steps")
                .isEqualTo(0.7);
        assertThat(VaryQuestion.Axis.of(LINE, "line 2.length", 2, 1, 2).values())
                .containsExactly(2.0, 1.0);
        assertThat(VaryQuestion.Axis.of(LINE, "line 2.length", 2, 2, 1).values())
                .containsExactly(2.0);
        assertThatThrownBy(() -> VaryQuestion.Axis.of(LINE, "line 2.length", 2, 2, 0))
                .hasMessage("steps of line 2.length must be at least 2, but is 0: both ends count as one");
        assertThatThrownBy(() -> VaryQuestion.Axis.of(LINE, "line 2.length", 200, 2, 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2.length must be ");
    }

    @Test
    void whatIsTooMuchOrNothingIsRefused() {
        assertThatThrownBy(() -> new VaryQuestion(List.of(), List.of("x")))
                .hasMessage("one or two keys can be varied, not 0");
        assertThatThrownBy(
                        () -> new VaryQuestion(List.of(axis("a", 1.0), axis("b", 1.0), axis("c", 1.0)), List.of("x")))
                .hasMessage("one or two keys can be varied, not 3");
        assertThatThrownBy(() -> new VaryQuestion(List.of(axis("a", 1.0), axis("a", 2.0)), List.of("x")))
                .hasMessage("the two keys are both a. Name another, or leave the second out");
        assertThatThrownBy(() -> new VaryQuestion(List.of(axis("a", 1.0)), List.of()))
                .hasMessage("0 variants are asked for; 1 to 10000000 can be. Take fewer steps");
        Double[] many = IntStream.range(0, 5000).mapToObj(i -> (double) i).toArray(Double[]::new);
        assertThatThrownBy(() -> new VaryQuestion(List.of(axis("a", many), axis("b", many)), List.of("x")))
                .hasMessageStartingWith("25000000 variants are asked for");
        Double[] most = IntStream.range(0, 2000).mapToObj(i -> (double) i).toArray(Double[]::new);
        assertThat(new VaryQuestion(List.of(axis("a", many), axis("b", most)), List.of("x")).count())
                .isEqualTo(10_000_000);
        assertThat(new VaryQuestion(List.of(axis("a", 1.0)), List.of("x")).count())
                .isEqualTo(1);
    }

    private static Vary vary(String path, double from, double to, int steps, String... cases) {
        VaryQuestion question =
                new VaryQuestion(List.of(VaryQuestion.Axis.of(LINE, path, from, to, steps)), List.of(cases));
        return Vary.of(LINE, question, 1, Progress.NONE);
    }

    @Test
    void everyFigureOfARowHasItsOutput() {
        Vary answer = vary("line 1.K", 10, 20, 2, "usual", "more");
        assertThat(answer.outputs())
                .containsExactly(
                        new Vary.Output(Vary.Kind.LIMITED, "tap", "pressure", Dimension.GAUGE_PRESSURE),
                        new Vary.Output(Vary.Kind.MARGIN, "tap", "pressure", Dimension.PRESSURE_DIFFERENCE),
                        new Vary.Output(Vary.Kind.PRESSURE, "main", "pressure", Dimension.GAUGE_PRESSURE),
                        new Vary.Output(Vary.Kind.PRESSURE, "tap", "pressure", Dimension.GAUGE_PRESSURE),
                        new Vary.Output(Vary.Kind.FLOW, "line", "flow", Dimension.VOLUME_FLOW));
        assertThat(answer.rows()).extracting(Vary.Row::number).containsExactly(0, 1, 2, 3);
        assertThat(answer.rows()).extracting(Vary.Row::caseName).containsExactly("usual", "usual", "more", "more");
        assertThat(answer.rows()).extracting(Vary.Row::status).containsOnly("converged");
        assertThat(answer.rows()).extracting(row -> row.at().get(0)).containsExactly(10.0, 20.0, 10.0, 20.0);
        for (Vary.Row row : answer.rows()) {
            double flow = (row.caseName().equals("usual") ? 100 : 1000) / 3.6e6;
            double tap = row.values().get(0);
            assertThat(row.values().get(1)).isCloseTo(tap - 250e3, within(1e-6));
            assertThat(row.values().get(2)).isCloseTo(300e3, within(1e-6));
            assertThat(row.values().get(3)).isEqualTo(tap);
            assertThat(row.values().get(4)).isCloseTo(flow, within(1e-12));
            assertThat(row.verdict()).isEqualTo(tap >= 250e3 ? "holds" : "broken");
        }
        // ten velocity heads more
        double speed = 1000 / 3.6e6 / (Math.PI / 4 * 0.008 * 0.008);
        assertThat(answer.rows().get(2).values().get(0)
                        - answer.rows().get(3).values().get(0))
                .isCloseTo(10 * 800 * speed * speed / 2, within(1e-3));
        assertThat(answer.rows().get(0).verdict()).isEqualTo("holds");
        assertThat(answer.rows().get(3).verdict()).isEqualTo("broken");
    }

    @Test
    void partOfTheRowsCanBeAskedFor() {
        VaryQuestion question =
                new VaryQuestion(List.of(VaryQuestion.Axis.of(LINE, "line 1.K", 10, 20, 3)), List.of("usual", "more"));
        Vary all = Vary.of(LINE, question, 1, Progress.NONE);
        assertThat(Vary.of(LINE, question, 2, 5, 1, Progress.NONE).rows())
                .isEqualTo(all.rows().subList(2, 5));
        assertThat(Vary.of(LINE, question, 6, 6, 1, Progress.NONE).rows()).isEmpty();
        assertThatThrownBy(() -> Vary.of(LINE, question, -1, 5, 1, Progress.NONE))
                .hasMessage("variants -1 to 5 of 6");
        assertThatThrownBy(() -> Vary.of(LINE, question, 5, 4, 1, Progress.NONE))
                .hasMessage("variants 5 to 4 of 6");
        assertThatThrownBy(() -> Vary.of(LINE, question, 0, 7, 1, Progress.NONE))
                .hasMessage("variants 0 to 7 of 6");
    }

    @Test
    void whatCannotBeSolvedHasARowWithoutFigures() {
        Vary answer = vary("tap.takes", 100 / 3.6e6, 4000 / 3.6e6, 2, "usual");
        Vary.Row beyond = answer.rows().get(1);
        assertThat(beyond.status()).isEqualTo("not physical");
        assertThat(beyond.verdict()).isEmpty();
        assertThat(beyond.values())
                .hasSize(5)
                .allSatisfy(value -> assertThat(value).isNaN());
        assertThat(answer.rows().get(0).status()).isEqualTo("converged");
    }

    @Test
    void withoutALimitThereIsNoVerdict() {
        Circuit bare = CircuitFile.read(
                TEXT.replace("limits:\n", "").replace("  tap: {pressure: at least 250 kPa}\n", ""), "bare.yaml");
        VaryQuestion question =
                new VaryQuestion(List.of(VaryQuestion.Axis.of(bare, "line 1.K", 10, 20, 2)), List.of("usual"));
        assertThat(Vary.of(bare, question, 1, Progress.NONE).rows())
                .extracting(Vary.Row::verdict)
                .containsOnly("");
    }
}
