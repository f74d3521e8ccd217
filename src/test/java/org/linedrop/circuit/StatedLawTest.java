package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/** Textbook laws in a circuit file are taken exactly, with the source's gravity and nothing added at tanks. */
class StatedLawTest {
    private static final String FILE = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            gravity: 9.81 m/s2
            points:
              high: {kind: tank, height: 12 m really}
              low:  {kind: tank, height: 2 m}
            runs:
              line: {from: high, to: low, parts: [%s]}
            """;

    private static PartRow row(String part) {
        return Result.of(CircuitFile.read(String.format(FILE, part), ""))
                .orThrow()
                .rows()
                .get(0);
    }

    @Test
    void constantFactor() {
        // 10 = (0.02 x 100/0.1) v^2/(2 g)
        double velocity = Math.sqrt(10 * 2 * 9.81 / (0.02 * 100 / 0.1));
        PartRow row = row("{law: constant f, f: 0.02 x, length: 100 m, bore: 100 mm}");
        assertThat(row.velocityMPerS()).isCloseTo(velocity, within(1e-9 * velocity));
    }

    @Test
    void powerOfTheFlow() {
        double flow = Math.pow(10 / 5000.0, 1 / 1.85); // 10 = 5000 Q^1.85
        assertThat(row("{law: power, r: 5000, n: 1.85}").flowM3PerS()).isCloseTo(flow, within(1e-9 * flow));
    }

    @Test
    void laminar() {
        PartRow row = row("{law: laminar, length: 50 m, bore: 5 mm}");
        double head = row.velocityMPerS() * 64 / row.reynolds() * 50 / 0.005 * row.velocityMPerS() / (2 * 9.81);
        assertThat(head).isCloseTo(10, within(1e-8));
    }

    @Test
    void lossCoefficient() {
        double velocity = Math.sqrt(10 * 2 * 9.81 / 2.5);
        assertThat(row("{law: K, K: 2.5, bore: 50 mm}").velocityMPerS()).isCloseTo(velocity, within(1e-9 * velocity));
    }

    @Test
    void pumpPolynomial() {
        // 10 m down and a pump of 20 - 3e5 Q^2 against f = 0.02 over 200 m of 100 mm: one quadratic
        double area = Math.PI / 4 * 0.01;
        double resistance = 0.02 * 200 / 0.1 / (2 * 9.81 * area * area);
        double flow = Math.sqrt((10 + 20) / (resistance + 3e5));
        PartRow row =
                row("{law: pump polynomial, heads: 20 0 -3e5 x}, {law: constant f, f: 0.02 x, length: 200 m, bore:"
                        + " 100 mm}");
        assertThat(row.flowM3PerS()).isCloseTo(flow, within(1e-9 * flow));
    }

    @Test
    void pumpOfConstantPower() {
        PartRow row = row("{law: pump power, power: 1 kW}, {law: K, K: 50, bore: 50 mm}");
        assertThat(-row.localDropPa() * row.flowM3PerS()).isCloseTo(1000, within(1e-6));
    }

    @Test
    void headsOfHeldPoints() {
        String file = """
                linedrop: 1
                fluid: water
                temperature: 20 C
                gravity: 9.8 m/s2
                points:
                  high: {kind: held, head: 12 m}
                  low:  {kind: held, head: 2 m}
                runs:
                  line: {from: high, to: low, parts: [{law: K, K: 2.5, bore: 50 mm}]}
                """;
        double velocity = Math.sqrt(10 * 2 * 9.8 / 2.5);
        assertThat(Result.of(CircuitFile.read(file, "")).orThrow().rows().get(0).velocityMPerS())
                .isCloseTo(velocity, within(1e-9 * velocity));
    }

    /** A line without any loss has no flow of its own. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {law: K, K: 0, bore: 50 mm}           | K: a K law needs K above 0                | it loses nothing
            {law: power, r: 0, n: 2}              | r: a power law needs r above 0            | it loses nothing
            {law: constant f, f: 0.02, length: 0 m, bore: 50 mm} | length: a constant f law needs length above 0 | it loses nothing
            {law: laminar, length: 0 m, bore: 5 mm} | length: a laminar law needs length above 0 | it loses nothing
            {law: pump power, power: 0 kW}        | power: a pump power law needs power above 0 | it adds nothing
            """)
    void aLawThatDoesNothingIsRefused(String part, String message, String hint) {
        ProblemsException wrong = catchThrowableOfType(
                ProblemsException.class, () -> CircuitFile.read(String.format(FILE, part), "a.yaml"));
        assertThat(wrong.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.key() + ": " + problem.message()).isEqualTo(message);
            assertThat(problem.hint()).endsWith(hint);
        });
    }

    @Test
    void whatALawNeedsIsAsked() {
        ProblemsException wrong = catchThrowableOfType(
                ProblemsException.class,
                () -> CircuitFile.read(String.format(FILE, "{law: constant f, length: 100 m, n: 2}"), "a.yaml"));
        assertThat(wrong.problems())
                .extracting(problem -> problem.key() + ": " + problem.message())
                .containsExactlyInAnyOrder(
                        "f: a constant f law needs f",
                        "bore: a constant f law needs bore",
                        "n: a constant f law has no n");
    }
}
