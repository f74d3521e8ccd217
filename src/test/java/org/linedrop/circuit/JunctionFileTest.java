package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.hydraulics.FittingLoss;
import org.linedrop.hydraulics.FlowCoefficient;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/** Tees, Y blocks, restrictors and valves as a file says them. */
class JunctionFileTest {
    private static final String HOSE = ", {hose: race PTFE -8, length: 0.3 m, ends: straight to straight}";

    private static String file(String size, String one, String two, String parts) {
        return """
            linedrop: 1
            fluid: water
            temperature: 20 C
            points:
              a: {kind: held, pressure: 100 kPa}
              Y block: {kind: Y block, size: %s}
              b: {kind: draw, takes: 100 L/h}
              c: {kind: draw, takes: 60 L/h}
            runs:
              feed: {from: a, to: Y block.common, parts: [%s]}
              one: {from: %s, to: b}
              two: {from: %s, to: c}
            """.formatted(size, parts, one, two);
    }

    private static List<String> lines(String text) {
        return catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(text, "y.yaml")).problems().stream()
                .map(Problem::line)
                .toList();
    }

    private static String good(String parts) {
        return file("-8 to -6", "Y block.leg", "Y block.leg", parts);
    }

    private static PartRow row(String part, String kind) {
        return Result.of(CircuitFile.read(good(part + HOSE), "y.yaml")).orThrow().rows("feed").stream()
                .filter(row -> row.kind().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void portsAreChecked() {
        assertThat(lines(file("-8 to -6", "Y block", "Y block.leg", "")))
                .anyMatch(line -> line.contains("Y block has ports common and leg. Write Y block.leg"))
                .anyMatch(line -> line.contains("Y block.leg takes two runs, but only two is there"));
        assertThat(lines(file("-8 to -6", "Y block.lge", "Y block.leg", "")))
                .anyMatch(line -> line.contains("no port \"lge\"")
                        && line.contains("Did you mean Y block.leg? Its ports are common and leg"));
        assertThat(lines(file("-8 to -6", "Y block.common", "Y block.leg", "")))
                .anyMatch(line -> line.contains("Y block.common takes one run, but feed, one are there"));
        assertThat(lines(file("8", "Y block.leg", "Y block.leg", ""))).isNotEmpty();
    }

    @Test
    void neighboursOfAJunctionMustMate() {
        assertThat(lines(good("{hose: race PTFE -6, length: 1 m, ends: straight to straight}")))
                .singleElement()
                .asString()
                .contains("feed 1");
    }

    @Test
    void valvesLoseTheirKOnTheBoreOfTheirSize() {
        PartRow ball = row("{valve: ball -8}", "valve");
        double re = ball.reynolds();
        assertThat(ball.lossCoefficient())
                .isCloseTo(FittingLoss.BALL_VALVE.turbulentK() + FittingLoss.BALL_VALVE.k1() / re, within(1e-9));
        PartRow kv = row("{valve: -8, kv: 4.5}", "valve");
        assertThat(kv.localDropPa())
                .isCloseTo(1e5 * Math.pow(kv.flowM3PerS() * 3600 / 4.5, 2) * density(kv) / 1000, within(1e-6));
        PartRow cv = row("{valve: -8, cv: 5}", "valve");
        assertThat(cv.localDropPa())
                .isCloseTo(
                        6894.757 * Math.pow(cv.flowM3PerS() * 60 / 3.785411784e-3 / 5, 2) * density(cv) / 1000,
                        within(1e-4));
        assertThat(kv.boreM().value()).isEqualTo(ball.boreM().value());
        assertThat(FlowCoefficient.KV_PER_CV).isEqualTo(Valve.KV_PER_CV);
    }

    private static double density(PartRow row) {
        return row.massFlowKgPerS() / row.flowM3PerS();
    }

    @Test
    void valvesAndRestrictorsSayWhatIsMissing() {
        assertThat(lines(good("{valve: bal -8}"))).anyMatch(line -> line.contains("Did you mean ball?"));
        assertThat(lines(good("{valve: -8}"))).anyMatch(line -> line.contains("does not say what it loses"));
        assertThat(lines(good("{valve: -8, kv: 4, cv: 5}"))).anyMatch(line -> line.contains("both kv and cv"));
        assertThat(lines(good("{restrictor: 1 mm}"))).anyMatch(line -> line.contains("length is missing"));
        assertThat(lines(good("{restrictor: 1 m, length: 2 mm}"))).anyMatch(line -> line.contains("more than 50 mm"));
    }

    @Test
    void aRestrictorLosesSomeTwoHeadsOfItsHole() {
        PartRow row = row("{restrictor: 3 mm, length: 3 mm}", "restrictor");
        assertThat(row.lossCoefficient()).isBetween(1.2, 2.2); // thick edge, K 1.4 to 1.9 between wide bores
    }

    @Test
    void closeCoupledFittingsAreNoticedOnce() {
        String shortHose = "{hose: race PTFE -8, length: 60 mm, ends: 90 to 90}";
        Circuit circuit = CircuitFile.read(good(shortHose + ", {union: -8}, " + shortHose), "y.yaml");
        assertThat(Result.of(circuit).orThrow().warnings())
                .filteredOn(notice -> notice.id().equals("close-coupled"))
                .singleElement()
                .extracting(Notice::element)
                .isEqualTo("feed 1, feed 3");
    }
}
