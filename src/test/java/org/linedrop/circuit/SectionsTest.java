package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;

/** Sections under a prefix, way-points, grades, limits taken off. */
class SectionsTest {
    private static final String TWICE = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            points:
              a: {kind: held, pressure: 10 kPa, height: 0 m}
            sections:
              bank:
                points:
                  rail: {kind: draw, takes: 60 L/h, height: 1 m}
                runs:
                  leg: {from: a, to: rail, parts: [{hose: race PTFE -6, length: 1 m, ends: none, name: line}]}
                limits:
                  rail: {pressure: at least 1 kPa, flow: off because it is given}
            uses:
              - {section: bank, as: left}
              - {section: bank, as: right}
            cases:
              long: {right line: {length: 2 m}}
            """;

    @Test
    void aSectionIsUsedTwice() {
        Circuit circuit = CircuitFile.read(TWICE, "feed.yaml");
        assertThat(circuit.runs()).extracting(Run::id).containsExactly("left leg", "right leg");
        assertThat(circuit.runs()).extracting(run -> run.to().text()).containsExactly("left rail", "right rail");
        assertThat(circuit.limits()).extracting(Limit::id).containsExactly("left rail pressure", "right rail pressure");
        assertThat(circuit.assumptions())
                .extracting(notice -> notice.element() + ": " + notice.text())
                .contains("left rail: flow has no limit here: off because it is given");
        assertThat(((Hose) circuit.in("long").runs().get(1).parts().get(0))
                        .lengthM()
                        .value())
                .isEqualTo(2);
    }

    @Test
    void aSectionThatIsNotThereIsMissed() {
        assertThatThrownBy(() ->
                        CircuitFile.read(TWICE.replace("section: bank, as: right", "section: bnak, as: right"), ""))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("no section \"bnak\"")
                .hasMessageContaining("Did you mean bank?");
    }

    private static final String SLOPE = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            grade: 75 %
            points:
              a: {kind: held, pressure: 100 kPa, height: 0 m}
              b: {kind: draw, takes: 1 L/h, height: 1 m, ahead: 2 m}
            runs:
              r:
                from: a
                to: b
                via: [{height: 3 m}]
                parts:
                  - {hose: race PTFE -6, length: 3 m, ends: none}
                  - {hose: race PTFE -6, length: 2.828427124746190 m, ends: none}
            """;

    @Test
    void aGradeTiltsTheVehicleAndWayPointsShareTheLift() {
        Circuit circuit = CircuitFile.read(SLOPE, "feed.yaml");
        // 3-4-5: the earth pulls 0.6 g along and 0.8 g across the vehicle
        assertThat(circuit.surroundings().aheadMPerS2()).isCloseTo(0.6 * 9.80665, within(1e-12));
        assertThat(circuit.surroundings().upMPerS2()).isCloseTo(0.8 * 9.80665, within(1e-12));
        var rows = Result.of(circuit).orThrow().rows("r");
        double perMetre = 998.2 * 9.80665;
        assertThat(rows.get(0).liftDropPa()).isCloseTo(perMetre * 0.8 * 3, within(5.0));
        assertThat(rows.get(0).liftDropPa() + rows.get(1).liftDropPa())
                .isCloseTo(perMetre * (0.8 * 1 + 0.6 * 2), within(5.0));
    }

    private static org.assertj.core.data.Offset<Double> within(double offset) {
        return org.assertj.core.data.Offset.offset(offset);
    }
}
