package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.network.Trace;

/** What must hold of every row of every example in every case. */
class ResultPropertyTest {
    static Stream<Circuit> everyCase() {
        List<Circuit> cases = new ArrayList<>();
        for (String name : Examples.names()) {
            Circuit circuit = Examples.circuit(name);
            for (String caseName : circuit.caseNames()) {
                cases.add(circuit.in(caseName));
            }
        }
        return cases.stream();
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void solutionIsInsideItsTolerances(Circuit circuit) {
        Result result = Result.of(circuit).orThrow();
        assertThat(result.solution().flowImbalance()).isLessThan(1e-9);
        assertThat(result.solution().lawResidual()).isLessThan(1e-9);
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void staticAndTotalPressuresClose(Circuit circuit) {
        Result result = Result.of(circuit).orThrow();
        for (PartRow row : result.rows()) {
            double scale = Math.max(1000, Math.abs(row.totalPressureInPa()));
            double lost = row.frictionDropPa() + row.localDropPa() + row.liftDropPa();
            assertThat(row.totalPressureInPa() - row.totalPressureOutPa())
                    .as("total over %s %s", row.run(), row.row())
                    .isCloseTo(lost, within(1e-9 * scale));
            assertThat(row.staticPressureInPa() - row.staticPressureOutPa())
                    .as("static over %s %s", row.run(), row.row())
                    .isCloseTo(lost + row.velocityHeadOutPa() - row.velocityHeadInPa(), within(1e-9 * scale));
        }
    }

    @ParameterizedTest
    @MethodSource("everyCase")
    void rowsJoinFromPointToPoint(Circuit circuit) {
        Result result = Result.of(circuit).orThrow();
        double scale = result.solution().pressureScalePa();
        for (Trace.RunTrace run : result.network().runs()) {
            List<PartRow> rows = result.rows(run.id());
            double pressure = result.totalPressurePa(run.from());
            if (rows.isEmpty()) {
                assertThat(result.totalPressurePa(run.to())).isCloseTo(pressure, within(1e-4 * scale));
                continue;
            }
            // where parts differ in temperature the bore is the same but not the density: head x density does not jump
            double head = rows.get(0).velocityHeadInPa() * density(rows.get(0));
            for (PartRow row : rows) {
                assertThat(row.totalPressureInPa()).isCloseTo(pressure, within(1e-9 * scale));
                assertThat(row.velocityHeadInPa() * density(row))
                        .as("velocity head before %s %s", row.run(), row.row())
                        .isCloseTo(head, within(1e-9 * Math.max(1, head)));
                pressure = row.totalPressureOutPa();
                head = row.velocityHeadOutPa() * density(row);
            }
            assertThat(result.totalPressurePa(run.to())).isCloseTo(pressure, within(1e-8 * scale));
        }
    }

    private static double density(PartRow row) {
        return row.flowM3PerS() == 0 ? 0 : row.massFlowKgPerS() / row.flowM3PerS();
    }

    @Test
    void mirroringTheVehicleMirrorsTheTurn() {
        Circuit twin = Examples.circuit("twin-rails.yaml");
        Circuit left = twin.with(List.of(Change.of("motion", "left turn 1.2 g")));
        Circuit right = twin.with(List.of(
                Change.of("motion", "right turn 1.2 g"),
                Change.of("left rail", "left", "-0.25 m"),
                Change.of("right rail", "left", "0.25 m")));
        for (String rail : List.of("left rail", "right rail")) {
            assertThat(pressure(Result.of(right), rail)).isEqualTo(pressure(Result.of(left), rail));
        }
    }

    @Test
    void totalPressureFallsWithHeightAndUnderLaunch() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml");
        double atRest = pressure(Result.of(feed), "rail");
        Circuit launch = feed.with(List.of(Change.of("motion", "launch 1 g")));
        double density = feed.surroundings()
                .fluid()
                .at(feed.surroundings().temperatureK().value())
                .densityKgPerM3();
        // 2.9 m ahead at 1 g; the flow does not change, so the loss does not either
        assertThat(atRest - pressure(Result.of(launch), "rail"))
                .isCloseTo(density * 9.80665 * 2.9, within(1e-6 * atRest));
    }

    @Test
    void aBoughtHoseIsWorthItsTwoHalves() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml");
        double whole = friction(Result.of(feed), "feed", "5.2");
        Circuit half = feed.with(List.of(Change.of("feed 5", "length", "0.35 m")));
        assertThat(2 * friction(Result.of(half), "feed", "5.2")).isCloseTo(whole, within(1e-9 * whole));
    }

    @Test
    void smallerBoresLoseMore() {
        CaseResult three = CaseResult.of(Examples.circuit("fuel-feed-516.yaml"));
        assertThat(pressure(three.smallest(), "rail")).isLessThan(pressure(three.usual(), "rail"));
        assertThat(pressure(three.largest(), "rail")).isGreaterThan(pressure(three.usual(), "rail"));
    }

    private static double pressure(Result result, String point) {
        return result.orThrow().point(point).orElseThrow().staticPressurePa();
    }

    private static double friction(Result result, String run, String row) {
        return result.orThrow().rows(run).stream()
                .filter(r -> r.row().equals(row))
                .findFirst()
                .orElseThrow()
                .frictionDropPa();
    }
}
