package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;

/** Slopes of small invented lines whose figures are closed forms. */
class SensitivitiesByHandTest {
    private static final double FLOW = 1e-4;
    private static final double BORE = 0.008;
    private static final double DENSITY = 800;
    private static final double HEAD_PA = DENSITY / 2 * Math.pow(FLOW / (Math.PI / 4 * BORE * BORE), 2);

    private static final Circuit LINE = CircuitFile.read("""
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              mid: {kind: joint, height: 1 m, bore: vessel}
              tap: {kind: draw, takes: 360 L/h, height: 2 m, bore: vessel}
            runs:
              first: {from: main, to: mid, parts: [{law: K, K: 20 x, bore: 8 mm}]}
              second: {from: mid, to: tap, parts: [{law: K, K: 10 x, bore: 8 mm}]}
            limits:
              tap: {pressure: at least 200 kPa}
            """, "line.yaml");

    private static void slope(Sensitivities all, String output, String path, double wanted) {
        Sensitivities.Slope slope = all.slope(output, path);
        assertThat(slope.isJoint()).as(path).isFalse();
        // what rounding leaves of some 1e5 Pa, or of 1e-4 m3/s
        double rounding = output.endsWith("pressure") ? 1e-6 : 1e-15;
        assertThat(slope.value())
                .as("%s by %s", output, path)
                .isCloseTo(wanted, within(1e-6 * Math.abs(wanted) + rounding));
    }

    @Test
    void everySlopeIsItsFormulas() {
        Sensitivities all = Sensitivities.of(LINE);
        assertThat(all.outputs())
                .extracting(Output::id)
                .as("limits first, then what is neither given nor limited, then flows")
                .containsExactly("tap pressure", "mid pressure", "first flow", "second flow");
        assertThat(all.values().get(0)).isCloseTo(300e3 - 30 * HEAD_PA - 2 * DENSITY * 9.80665, within(1e-3));
        assertThat(all.values().get(2)).isCloseTo(FLOW, within(1e-12));
        slope(all, "tap pressure", "main.pressure", 1);
        slope(all, "tap pressure", "first 1.K", -HEAD_PA);
        slope(all, "tap pressure", "second 1.K", -HEAD_PA);
        slope(all, "mid pressure", "first 1.K", -HEAD_PA);
        slope(all, "mid pressure", "second 1.K", 0);
        slope(all, "tap pressure", "tap.takes", -2 * 30 * HEAD_PA / FLOW);
        slope(all, "mid pressure", "tap.takes", -2 * 20 * HEAD_PA / FLOW);
        slope(all, "tap pressure", "first 1.bore", 4 * 20 * HEAD_PA / BORE);
        slope(all, "tap pressure", "main.height", DENSITY * 9.80665);
        slope(all, "tap pressure", "tap.height", -DENSITY * 9.80665);
        slope(all, "mid pressure", "mid.height", -DENSITY * 9.80665);
        slope(all, "tap pressure", "mid.height", 0);
        slope(all, "tap pressure", "gravity", -2 * DENSITY);
        slope(all, "first flow", "tap.takes", 1);
        slope(all, "second flow", "main.pressure", 0);
        assertThat(all.row("temperature")).as("this liquid does not know it").isEmpty();
        assertThat(all.rows()).allSatisfy(row -> assertThat(row.slopes()).hasSize(4));
        assertThatThrownBy(() -> all.slope("tap colour", "gravity"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "no output \"tap colour\"; outputs are tap pressure, mid pressure, first flow, second flow");
    }

    @Test
    void whatPressureDrivesGivesFlowItsSlope() {
        Circuit driven = CircuitFile.read("""
                linedrop: 1
                fluid: bench liquid
                temperature: 20 C
                fluids:
                  bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
                points:
                  main: {kind: held, pressure: 300 kPa}
                  end: {kind: held, pressure: 0 kPa}
                runs:
                  line: {from: main, to: end, parts: [{law: K, K: 20 x, bore: 8 mm}]}
                """, "driven.yaml");
        Sensitivities all = Sensitivities.of(driven);
        double flow = FLOW * Math.sqrt(300e3 / (20 * HEAD_PA));
        assertThat(all.outputs()).extracting(Output::id).containsExactly("line flow");
        assertThat(all.values().get(0)).isCloseTo(flow, within(1e-9 * flow));
        slope(all, "line flow", "main.pressure", flow / (2 * 300e3));
        slope(all, "line flow", "line 1.K", -flow / (2 * 20));
        slope(all, "line flow", "line 1.bore", 2 * flow / BORE);
        // the end is held at nothing: its slope is found all the same
        slope(all, "line flow", "end.pressure", -flow / (2 * 300e3));
    }

    @Test
    void slopesOfTwoSidesHaveOneValueBetweenThem() {
        assertThat(Sensitivities.Slope.both(3).value()).isEqualTo(3);
        assertThat(Sensitivities.Slope.both(3).isJoint()).isFalse();
        assertThat(new Sensitivities.Slope(1, 5).value()).isEqualTo(3);
        assertThat(new Sensitivities.Slope(1, 5).isJoint()).isTrue();
        assertThat(new Sensitivities.Slope(Double.NaN, 5).value()).isEqualTo(5);
        assertThat(new Sensitivities.Slope(1, Double.NaN).value()).isEqualTo(1);
        assertThat(Sensitivities.Slope.NONE.value()).isNaN();
    }

    @Test
    void outputsReadWhatTheirNamesSay() {
        Result result = Result.of(LINE).orThrow();
        assertThat(Output.pressure("mid").of(result)).isCloseTo(300e3 - 20 * HEAD_PA - DENSITY * 9.80665, within(1e-3));
        assertThat(Output.pressure("nowhere").of(result)).isNaN();
        assertThat(Output.flow("second").of(result)).isCloseTo(FLOW, within(1e-12));
        assertThat(Output.flow("nowhere").of(result)).isNaN();
        Output limit = Output.of(LINE.limits().get(0));
        assertThat(limit.of(result)).isEqualTo(Output.pressure("tap").of(result));
        assertThat(limit.id()).isEqualTo("tap pressure");
        assertThat(limit.dimension()).isEqualTo(Dimension.GAUGE_PRESSURE);
        assertThat(Output.flow("second").dimension()).isEqualTo(Dimension.VOLUME_FLOW);
    }

    @Test
    void aRunWithoutPartsHasItsFlowToo() {
        Circuit bare = CircuitFile.read("""
                linedrop: 1
                fluid: bench liquid
                temperature: 20 C
                fluids:
                  bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
                points:
                  main: {kind: held, pressure: 300 kPa}
                  mid: {kind: joint}
                  tap: {kind: draw, takes: 360 L/h}
                runs:
                  line: {from: main, to: mid, parts: [{law: K, K: 20 x, bore: 8 mm}]}
                  open: {from: mid, to: tap, parts: []}
                """, "bare.yaml");
        Result result = Result.of(bare).orThrow();
        assertThat(Output.flow("open").of(result)).isCloseTo(FLOW, within(1e-9));
    }
}
