package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;

/** What is wrong with a file is said all at once, each with its line and what to do. */
class CircuitProblemsTest {
    private static List<Problem> problems(String text) {
        return catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(text, "feed.yaml"))
                .problems();
    }

    private static List<String> lines(String text) {
        return problems(text).stream().map(Problem::line).toList();
    }

    private static String resource(String name) throws IOException {
        try (InputStream stream = Objects.requireNonNull(CircuitProblemsTest.class.getResourceAsStream(name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void tenMistakesGiveTenMessagesWithTheirLines() throws IOException {
        assertThat(problems(resource("ten-mistakes.yaml")))
                .extracting(problem -> problem.place().line())
                .containsExactly(3, 4, 9, 10, 14, 19, 21, 22, 27, 29);
        assertThat(lines(resource("ten-mistakes.yaml")))
                .containsExactly(resource("ten-mistakes.txt").split("\n"));
    }

    private static final String GOOD = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            this case: as built
            points:
              a: {kind: held, pressure: 10 kPa}
              b: {kind: draw, takes: 60 L/h}
            runs:
              r:
                from: a
                to: b
                parts:
                  - {hose: race PTFE -6, length: 1 m, ends: none, name: line}
            """;

    @Test
    void whatABeginnerCallsByAnotherNameIsSentToTheRightPlace() {
        String file = """
                linedrop: 1
                fluid: E10
                temperature: 30 C
                points:
                  tank: {kind: tank}
                  gauge: {kind: gauge}
                  rail: {kind: draw, takes: 100 %}
                devices:
                  pump: {kind: pump, runs at: 13.5 V}
                  regulator: {kind: regulator}
                runs:
                  feed:
                    from: tank
                    to: rail
                    parts:
                      - pump
                      - {tee: -6}
                      - {hose: -6 PTFE, length: 1 m, ends: none}
                engine: {rpm: 6000 rpm}
                """;
        assertThat(lines(file))
                .anySatisfy(line -> assertThat(line).contains("kind of point \"gauge\". A gauge takes no flow"))
                .anySatisfy(line -> assertThat(line).contains("\"100 %\" of what? Write 100 % of engine"))
                .anySatisfy(line -> assertThat(line).contains("one point only, gives: 255 L/h at 276 kPa"))
                .anySatisfy(line -> assertThat(line).contains("Write bypass regulator where it spills"))
                .anySatisfy(line -> assertThat(line).contains("Write - {through: pump}"))
                .anySatisfy(line -> assertThat(line).contains("A tee or Y block is a point"))
                .anySatisfy(
                        line -> assertThat(line).contains("the family stands first. Write for example race PTFE -6"))
                .anySatisfy(line -> assertThat(line).contains("an engine has no key \"rpm\""));
    }

    @Test
    void aCaseThatNamesNothingIsAnError() {
        assertThat(lines(GOOD + "cases:\n  hot: {lien: {length: 2 m}}\n"))
                .containsExactly("feed.yaml:15  case hot: no point, device, run or part \"lien\" to change."
                        + " Did you mean line?");
    }

    @Test
    void aCaseIsCheckedLikeTheFile() {
        assertThat(lines(GOOD + "cases:\n  hot: {line: {length: 900 m}}\n"))
                .singleElement()
                .asString()
                .startsWith("feed.yaml:15  case hot, r 1: length \"900 m\" is more than 30 m");
        assertThat(lines(GOOD + "cases:\n  hot: {like: cold}\n"))
                .singleElement()
                .asString()
                .contains("no case \"cold\" to start from");
    }

    @Test
    void casesBuildOnEachOther() {
        Circuit circuit = CircuitFile.read(
                GOOD
                        + "cases:\n"
                        + "  long: {line: {length: 3 m}}\n"
                        + "  long and wide: {like: long, r: {hoses: -8}}\n"
                        + "  hot: {temperature: 60 C}\n",
                "feed.yaml");
        assertThat(circuit.caseNames()).containsExactly("as built", "long", "long and wide", "hot");
        Hose hose = (Hose) circuit.in("long and wide").runs().get(0).parts().get(0);
        assertThat(hose.lengthM().value()).isEqualTo(3);
        assertThat(hose.size().name()).isEqualTo("race PTFE -8");
        assertThat(circuit.in("hot").surroundings().temperatureK().value()).isEqualTo(333.15);
        assertThat(circuit.in("hot")
                        .in("as built")
                        .surroundings()
                        .temperatureK()
                        .value())
                .isEqualTo(293.15);
    }

    @Test
    void oneNameForTwoThingsIsAnError() {
        assertThat(lines(GOOD.replace("name: line", "name: a")))
                .singleElement()
                .asString()
                .contains("the name \"a\" is taken in line 6");
    }

    @Test
    void nothingThatFixesAPressureIsAnError() {
        assertThat(lines(GOOD.replace("kind: held, pressure: 10 kPa", "kind: joint")))
                .singleElement()
                .asString()
                .contains("nothing in this circuit fixes a pressure");
    }

    @Test
    void anEngineThatIsNotGivenIsMissed() {
        assertThat(lines(GOOD.replace("takes: 60 L/h", "takes: 50 % of engine")))
                .singleElement()
                .asString()
                .contains("what the engine burns is not given", "engine: {power: 520 hp");
    }

    @Test
    void litresAMinuteOfFuelAreQuestioned() {
        assertThat(lines(GOOD.replace("takes: 60 L/h", "takes: 225 L/min")))
                .singleElement()
                .asString()
                .contains("Did you mean L/h?", "13500 L/h");
        assertThat(CircuitFile.read(GOOD.replace("takes: 60 L/h", "takes: 225 L/min really"), "")
                        .points())
                .hasSize(2);
    }

    @Test
    void litresAMinuteOfCoolantAreNot() {
        String coolant = "service: coolant\n" + GOOD.replace("takes: 60 L/h", "takes: 180 L/min");
        assertThat(CircuitFile.read(coolant, "").points()).hasSize(2);
    }

    @Test
    void moreCasesThanAnybodyWaitsForAreOneProblem() {
        List<Tree.Entry> cases = new ArrayList<>();
        for (int i = 0; i < 10_001; i++) {
            cases.add(new Tree.Entry("c" + i, 9, 1, Tree.of("temperature", "30 C")));
        }
        Tree.Branch file = Tree.of("linedrop", "1", "fluid", "water", "temperature", "20 C")
                .with("points", Tree.of().with("a", Tree.of("kind", "held", "pressure", "1 kPa")))
                .with("cases", new Tree.Branch(cases, 8, 1));
        assertThat(catchThrowableOfType(ProblemsException.class, () -> Circuit.of(file, "much.yaml"))
                        .problems())
                .extracting(Problem::line)
                .filteredOn(line -> line.contains("cases"))
                .containsExactly(
                        "much.yaml:8  cases: 10001 cases of 5 values: at most 10000 cases are read, and together"
                                + " 2000000 values. Split the file, or vary a key instead of writing cases");
    }
}
