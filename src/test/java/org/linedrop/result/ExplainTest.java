package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Explanation;
import org.linedrop.io.CircuitFile;
import org.linedrop.solver.Outcome;

class ExplainTest {
    static List<Path> circuits() throws IOException {
        try (Stream<Path> examples = Files.list(Path.of("src/examples"));
                Stream<Path> own = Files.list(Path.of("src/test/resources/org/linedrop/report"))) {
            return Stream.concat(examples, own)
                    .filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private static double sum(Explanation explanation) {
        return explanation.groups().stream()
                .mapToDouble(Explanation.Group::dropPa)
                .sum();
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void stepsAddUpToTheDropOfEveryRowInEveryCase(Path file) throws IOException {
        Circuit circuit = CircuitFile.read(file);
        int rows = 0;
        for (String name : circuit.caseNames()) {
            Result result = Result.of(circuit.in(name));
            if (result.outcome() == Outcome.CONVERGED) {
                rows += stepsAddUp(result);
            }
        }
        assertThat(rows).isPositive();
    }

    private static int stepsAddUp(Result result) {
        for (PartRow row : result.rows()) {
            Explanation explanation = result.explain(row.run() + " " + row.row());
            assertThat(explanation.dropPa()).isEqualTo(row.dropPa());
            assertThat(sum(explanation))
                    .as(explanation.element() + " " + row.name())
                    .isCloseTo(row.dropPa(), offset(1e-9 * Math.abs(row.dropPa())));
            for (Explanation.Group group : explanation.groups()) {
                assertThat(group.steps()).isNotEmpty();
                if (Double.isFinite(group.boreM())) {
                    for (Explanation.Step step : group.steps()) {
                        double byCoefficient = step.coefficient() * group.velocityHeadPa();
                        assertThat(Double.isNaN(byCoefficient) ? Math.abs(step.dropPa()) : byCoefficient)
                                .isCloseTo(Math.abs(step.dropPa()), within(1e-9 * Math.abs(step.dropPa()) + 1e-12));
                    }
                }
            }
        }
        return result.rows().size();
    }

    @Test
    void flowAgainstTheRunAddsUpToo() throws IOException {
        String text = Files.readString(Path.of("src/examples/fuel-feed-516.yaml"));
        // the same line written from the rail to the regulator
        String turned = text.replace("    from: regulator\n    to: rail", "    from: rail\n    to: regulator");
        assertThat(turned).isNotEqualTo(text);
        Result result = Result.of(CircuitFile.read(turned, "turned.yaml"));
        assertThat(result.outcome()).isEqualTo(Outcome.CONVERGED);
        assertThat(result.explain("feed 1.3").flow().massFlowKgPerS()).isNegative();
        assertThat(result.explain("feed 1.3").flow().sense()).isEqualTo("from fitting to hose");
        stepsAddUp(result);
    }

    @Test
    void bandOfTheNippleIsThatOfASolveWithThatNipple() throws IOException {
        // the draw of the rail fixes the flow of feed, so that the solve with other bores has the same flow
        Circuit circuit = CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml"));
        Explanation.Spread band = Result.of(circuit).explain("feed 6.3").bands().get(0);
        String text = Files.readString(Path.of("src/examples/fuel-feed-516.yaml"));
        String said = "- {hose: race PTFE -6, length: 0.70 m, ends: straight to 90";
        String thinner = text.replace(said, said + ", end bore: " + band.lowM() * 1000 + " mm");
        assertThat(thinner).isNotEqualTo(text);
        double drop = Result.of(CircuitFile.read(thinner, "thinner.yaml"))
                .explain("feed 6.3")
                .dropPa();
        assertThat(band.highPa()).isCloseTo(drop, within(1e-6 * drop));
        assertThat(band.lowPa()).isLessThan(drop / 2);
    }

    @Test
    void otherElbowIsThatOfACircuitWithIt() throws IOException {
        Path file = Path.of("src/examples/fuel-feed-516.yaml");
        Explanation swept = Result.of(CircuitFile.read(file)).explain("feed 6.3");
        assertThat(swept.alternative()).isNotNull();
        String forged =
                Files.readString(file).replace("0.70 m, ends: straight to 90}", "0.70 m, ends: straight to 90 forged}");
        Explanation other = Result.of(CircuitFile.read(forged, "forged.yaml")).explain("feed 6.3");
        assertThat(other.name()).isEqualTo("end 90 forged");
        assertThat(swept.alternative().dropPa()).isCloseTo(other.dropPa(), within(1e-6 * other.dropPa()));
        assertThat(other.alternative()).isNotNull();
        assertThat(other.alternative().dropPa()).isCloseTo(swept.dropPa(), within(1e-6 * swept.dropPa()));
    }

    @Test
    void filterRatedWithAnotherViscosityAddsUpToo() throws IOException {
        String text = Files.readString(Path.of("src/examples/fuel-feed-516.yaml"));
        String rated = text.replace("6 kPa at 300 L/h", "6 kPa at 300 L/h with 2 cSt");
        assertThat(rated).isNotEqualTo(text);
        Result result = Result.of(CircuitFile.read(rated, "rated.yaml"));
        stepsAddUp(result);
        Explanation filter = result.explain("supply 3");
        Explanation.Step step = filter.groups().get(0).steps().get(0);
        assertThat(step.equation()).isEqualTo("{c} x {dp} x ({Q}/{Qr})^{n} x ({nu}/{nur})^(2 - {n})");
        double byEquation = input(step, "c")
                * input(step, "dp")
                * Math.pow(input(step, "Q") / input(step, "Qr"), input(step, "n"))
                * Math.pow(input(step, "nu") / input(step, "nur"), 2 - input(step, "n"));
        assertThat(byEquation).isCloseTo(step.dropPa(), within(1e-9 * step.dropPa()));
    }

    private static double input(Explanation.Step step, String symbol) {
        return step.inputs().stream()
                .filter(input -> input.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void equivalentLengthLosesAsMuch() throws IOException {
        Result result = Result.of(CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml")));
        Explanation end = result.explain("feed 6.3");
        PartRow hose = result.rows("feed").get(9);
        assertThat(end.equivalent()).isNotNull();
        assertThat(end.equivalent().element()).isEqualTo("feed 6.2");
        assertThat(end.equivalent().lengthM() / 0.70 * hose.frictionDropPa())
                .isCloseTo(end.dropPa(), within(1e-9 * end.dropPa()));
    }

    @Test
    void unknownRowNamesTheNearestAndAll() throws IOException {
        Result result = Result.of(CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml")));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> result.explain("feed 6.33"))
                .withMessageContaining("no row \"feed 6.33\". Did you mean \"feed 6.3\"? Rows: supply entry, supply 1");
    }

    @Test
    void whatWasNotSolvedIsNotExplained() throws IOException {
        Path file = Path.of("src/test/resources/org/linedrop/report/too-much.yaml");
        Result result = Result.of(CircuitFile.read(file).in("too much"));
        assertThatIllegalStateException().isThrownBy(() -> result.explain("feed 1"));
    }

    @Test
    void serialises() throws IOException, ClassNotFoundException {
        Explanation whole = Result.of(CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml")))
                .explain("feed 6.3");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(whole);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            assertThat(in.readObject()).isEqualTo(whole);
        }
    }
}
