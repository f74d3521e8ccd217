package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.result.Result;
import org.linedrop.solver.Options;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.units.Dimension;

/** Adjoint derivatives against four-point differences of polished solves. */
class SensitivitiesTest {
    private static final Solver POLISHED = Solver.of(new Options(200, 1e-13, 1e-13));

    static List<String> examples() {
        return List.of("carburettor-feed.yaml", "first-feed.yaml", "y-block.yaml");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void matchFourPointDifferencesOfPolishedSolves(String name) {
        Circuit circuit = Examples.circuit(name);
        Sensitivities all = Sensitivities.of(circuit);
        assertThat(all.rows()).isNotEmpty();
        int compared = 0;
        for (Sensitivities.Row row : all.rows()) {
            Knob knob = row.knob();
            double step = 1e-3 * Math.abs(knob.si() == 0 ? 0.1 : knob.si());
            if (knob.si() - 2 * step < knob.least() || knob.si() + 2 * step > knob.most()) {
                continue;
            }
            List<Result> solved = new ArrayList<>();
            for (int k = -2; k <= 2; k++) {
                solved.add(solved(knob.in(circuit, knob.si() + k * step)));
            }
            for (int o = 0; o < all.outputs().size(); o++) {
                Sensitivities.Slope slope = row.slopes().get(o);
                assertThat(slope.isJoint()).as("%s: %s", name, knob).isFalse();
                Output output = all.outputs().get(o);
                double[] y = solved.stream().mapToDouble(output::of).toArray();
                double wanted = (8 * (y[3] - y[1]) - (y[4] - y[0])) / (12 * step);
                // what rounding leaves of a difference of polished solves: 1e-13 of the pressures or flows, over the
                // step
                boolean flow = output.dimension() == Dimension.VOLUME_FLOW;
                double rounding = 1e-13 * (flow ? 10 * Math.abs(y[2]) : Math.max(4e5, Math.abs(y[2]))) / step;
                assertThat(slope.value())
                        .as("%s: d %s / d %s", name, output.id(), knob.path())
                        .isCloseTo(wanted, within(1e-6 * Math.abs(wanted) + rounding));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(10);
    }

    private static Result solved(Circuit circuit) {
        CircuitNetwork network = CircuitNetwork.of(circuit, CircuitNetwork.Setting.USUAL);
        Solution solution = POLISHED.solve(network.network());
        assertThat(solution.outcome()).as(solution.detail()).isEqualTo(Outcome.CONVERGED);
        return Result.of(network, solution);
    }

    /** A return port under the surface feels the column over it, one above it none: at the surface is a joint. */
    private static final String RETURN_AT_THE_SURFACE = """
            linedrop: 1
            fluid: E10
            temperature: 20 C
            points:
              pipe: {kind: held, pressure: 20 kPa, height: 0 m}
              tank: {kind: tank, height: 0 m, depth: 0.5 m, return height: 0.5 m}
            runs:
              return:
                from: pipe
                to: tank
                parts:
                  - {hose: race PTFE -6, length: 1 m, ends: straight to 90}
            """;

    @Test
    void atAJointLeftAndRightAreBothGiven() {
        Circuit circuit = CircuitFile.read(RETURN_AT_THE_SURFACE, "");
        Sensitivities.Slope slope = Sensitivities.of(circuit).slope("return flow", "tank.return height");
        assertThat(slope.isJoint()).isTrue();
        Output flow = Output.flow("return");
        Knob height = Knob.of(circuit, "tank.return height");
        double step = 1e-3;
        double at = flow.of(solved(circuit));
        double left = (at - flow.of(solved(height.in(circuit, 0.5 - step)))) / step;
        double right = (flow.of(solved(height.in(circuit, 0.5 + step))) - at) / step;
        assertThat(slope.left()).isCloseTo(left, within(2e-3 * Math.abs(right)));
        assertThat(slope.right()).isCloseTo(right, within(2e-3 * Math.abs(right)));
        assertThat(Math.abs(right - left)).isGreaterThan(0.1 * Math.abs(right));
    }

    @Test
    void atAnEndOfTheRangeOneSideIsGiven() {
        Circuit circuit = Examples.circuit("carburettor-feed.yaml");
        Sensitivities all = Sensitivities.of(circuit);
        Sensitivities.Slope slope = all.slope("rear carb pressure", "fine filter.clog");
        assertThat(slope.left()).isNaN();
        double step = 1e-4;
        Output rear = all.outputs().stream()
                .filter(output -> output.id().equals("rear carb pressure"))
                .findFirst()
                .orElseThrow();
        double dirty = rear.of(Result.of(circuit.with(List.of(Change.of("fine filter", "clog", "1.0001 x")))));
        double clean = rear.of(Result.of(circuit));
        assertThat(slope.right()).isCloseTo((dirty - clean) / step, within(1e-3 * Math.abs(slope.right())));
        assertThat(slope.right()).isNegative();
    }
}
