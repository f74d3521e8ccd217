package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.hydraulics.Tee;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.solver.Options;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;

/** Tees and Y blocks in circuits. */
class JunctionTest {
    /** A Y block with unequal legs. */
    private static final String Y = """
            linedrop: 1
            fluid: E10
            temperature: 40 C
            points:
              tank: {kind: held, pressure: 300 kPa}
              Y: {kind: Y block, size: -8 to -6}
              a: {kind: draw, takes: 200 L/h}
              b: {kind: held, pressure: 280 kPa}
            runs:
              feed: {from: tank, to: Y.common, parts: [{hose: race PTFE -8, length: 1 m, ends: straight to 90}]}
              one: {from: Y.leg, to: a, parts: [{hose: race PTFE -6, length: 0.4 m, ends: straight to 90}]}
              two: {from: Y.leg, to: b, parts: [{hose: race PTFE -6, length: 1.7 m, ends: 90 to 90}]}
            """;

    /** A tee in which a fast run draws a slow branch along: the branch gains pressure. */
    private static final String TEE = """
            linedrop: 1
            fluid: E10
            temperature: 40 C
            points:
              high: {kind: held, pressure: 300 kPa}
              T: {kind: tee, size: -6}
              low: {kind: held, pressure: 250 kPa}
              a: {kind: draw, takes: 0 L/h}
            runs:
              in: {from: high, to: T.run, parts: [{hose: race PTFE -6, length: 0.5 m, ends: straight to straight}]}
              out: {from: T.run, to: low, parts: [{hose: race PTFE -6, length: 0.5 m, ends: straight to straight}]}
              side: {from: a, to: T.branch, parts: [{hose: race PTFE -6, length: 0.5 m, ends: 90 to straight}]}
            """;

    private static Circuit circuit(String text) {
        return CircuitFile.read(text, "junction.yaml");
    }

    private static PartRow leg(Result result, String run) {
        return result.rows(run).stream()
                .filter(row -> row.kind().equals("tee") || row.kind().equals("Y block"))
                .findFirst()
                .orElseThrow();
    }

    private static double lossPa(Result result, String run) {
        CircuitNetwork network = result.network();
        var row = network.runs().stream()
                .filter(trace -> trace.id().equals(run))
                .flatMap(trace -> trace.rows().stream())
                .filter(r -> r.leg() != null)
                .findFirst()
                .orElseThrow();
        return leg(result, run).localDropPa() - row.localDropPa(leg(result, run).massFlowKgPerS());
    }

    @Test
    void aYBlockLosesWhatItsLawSaysAtTheSolvedFlows() {
        Result result = Result.of(circuit(Y)).orThrow();
        assertThat(result.solution().lawResidual()).isLessThan(1e-9);
        PartRow one = leg(result, "one");
        PartRow two = leg(result, "two");
        PartRow common = leg(result, "feed");
        assertThat(one.name()).isEqualTo("Y block leg");
        assertThat(common.name()).isEqualTo("Y block common");
        double bore =
                result.circuit().catalogue().yBlock("-8 to -6").mainBoreM().value();
        double[] losses = new double[6];
        var state = result.circuit().surroundings().fluid().at(313.15);
        Tee.of(bore, bore, Math.PI / 2, 0)
                .legLosses(
                        two.flowM3PerS(),
                        -common.flowM3PerS(),
                        state.densityKgPerM3(),
                        state.dynamicViscosityPaS(),
                        losses);
        assertThat(lossPa(result, "one")).isCloseTo(losses[0], within(1e-9 * losses[0]));
        assertThat(lossPa(result, "two")).isCloseTo(losses[1], within(1e-9 * losses[1]));
        assertThat(lossPa(result, "feed")).isZero();
    }

    @Test
    void aBranchDrawnAlongGainsPressure() {
        Result result = Result.of(circuit(TEE.replace("takes: 0 L/h}", "takes: -20 L/h}")
                        .replace("kind: draw, takes: -20 L/h", "kind: held, pressure: 272 kPa")))
                .orThrow();
        assertThat(result.solution().lawResidual()).isLessThan(1e-9);
        PartRow in = leg(result, "in");
        PartRow side = leg(result, "side");
        assertThat(side.massFlowKgPerS()).isPositive();
        assertThat(side.massFlowKgPerS()).isLessThan(0.4 * in.massFlowKgPerS());
        double bore = result.circuit().catalogue().tee("-6").mainBoreM().value();
        double[] losses = new double[6];
        var state = result.circuit().surroundings().fluid().at(313.15);
        Tee.of(bore, bore, Math.PI / 2, 0)
                .legLosses(
                        leg(result, "out").flowM3PerS(),
                        -side.flowM3PerS(),
                        state.densityKgPerM3(),
                        state.dynamicViscosityPaS(),
                        losses);
        assertThat(losses[2]).isNegative();
        assertThat(lossPa(result, "side")).isCloseTo(losses[2], within(1e-6 * Math.abs(losses[2])));
        assertThat(lossPa(result, "in")).isCloseTo(losses[0], within(1e-6 * Math.abs(losses[0])));
        assertThat(lossPa(result, "out")).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {Y, TEE})
    void twentyStartsLeadToOneSolution(String text) {
        CircuitNetwork network = CircuitNetwork.of(circuit(text), CircuitNetwork.Setting.USUAL);
        Solution cold = Solver.usual().solve(network.network());
        assertThat(cold.outcome()).isEqualTo(Outcome.CONVERGED);
        Random random = new Random(20);
        for (int i = 0; i < 20; i++) {
            // the answer of the same circuit under other pressures is a start anywhere in the six patterns
            String other = text.replaceFirst("pressure: 300 kPa", "pressure: " + (100 + random.nextInt(400)) + " kPa")
                    .replaceFirst("pressure: 2[58]0 kPa", "pressure: " + (100 + random.nextInt(400)) + " kPa")
                    .replaceFirst("takes: \\d+ L/h", "takes: " + random.nextInt(400) + " L/h");
            CircuitNetwork off = CircuitNetwork.of(circuit(other), CircuitNetwork.Setting.USUAL);
            Solution start = Solver.usual().solve(off.network());
            Workspace workspace = Workspace.of(network.network());
            assertThat(Solver.of(Options.usual()).solve(network.network(), start, workspace))
                    .as(other)
                    .isEqualTo(Outcome.CONVERGED);
            Solution found = workspace.snapshot();
            for (int b = 0; b < cold.branchCount(); b++) {
                assertThat(found.massFlowKgPerS(b))
                        .isCloseTo(cold.massFlowKgPerS(b), within(1e-7 * cold.flowScaleKgPerS()));
            }
        }
    }

    private static Result drawing(double litresPerHour) {
        return Result.of(circuit(Y.replace("280 kPa", "299 kPa"))
                        .with(List.of(Change.of("a", "takes", litresPerHour + " L/h"))))
                .orThrow();
    }

    @Test
    void aLegThatTurnsRoundShowsNoJump() {
        double low = 10;
        double high = 1000;
        assertThat(leg(drawing(low), "two").massFlowKgPerS()).isPositive();
        assertThat(leg(drawing(high), "two").massFlowKgPerS()).isNegative();
        while (high - low > 1e-6) {
            double middle = 0.5 * (low + high);
            if (leg(drawing(middle), "two").massFlowKgPerS() > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        boolean turned = false;
        double flowBefore = Double.NaN;
        double pressureBefore = Double.NaN;
        for (int step = -10; step <= 10; step++) {
            Result result = drawing(low + step * 1e-5);
            double flow = leg(result, "two").massFlowKgPerS();
            double pressure = result.point("a").orElseThrow().totalPressurePa();
            if (step > -10) {
                turned |= flowBefore * flow < 0;
                // 1e-5 L/h is 2e-9 kg/s; a loss that jumps by a tenth of a velocity head would show as some 50 Pa
                assertThat(Math.abs(flow - flowBefore)).as("step %d", step).isLessThan(4e-9);
                assertThat(Math.abs(pressure - pressureBefore))
                        .as("step %d", step)
                        .isLessThan(0.02);
            }
            flowBefore = flow;
            pressureBefore = pressure;
        }
        assertThat(turned).isTrue();
    }
}
