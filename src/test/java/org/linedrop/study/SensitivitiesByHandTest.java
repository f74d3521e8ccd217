package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;

/** Slopes of small invented lines whose figures are closed forms. */
class SensitivitiesByHandTest {
    private static final double FLOW = 1e-4;
    private static final double BORE = 0.008;
    private static final double DENSITY = 800;
    private static final double HEAD_PA = DENSITY / 2 * Math.pow(FLOW / (Math.PI / 4 * BORE * BORE), 2);

    private static final Circuit LINE = Bench.read("""
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
        Circuit driven = Bench.read("""
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
        Circuit bare = Bench.read("""
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

    /** A bench whose filter cannot be cleaner than clean, and whose line cannot be longer than a key may say. */
    private static Circuit atTheEnds() {
        return Bench.read("""
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 360 L/h, bore: vessel}
                devices:
                  filter: {kind: filter, drop: 4 kPa at 360 L/h, exponent: 2}
                runs:
                  line: {from: main, to: tap, parts: [{law: K, K: 1 x, bore: 8 mm}, {through: filter}]}
                """, "ends.yaml");
    }

    @Test
    void atTheLowerEndOfItsRangeAKeyHasARightSlope() {
        Sensitivities all = Sensitivities.of(atTheEnds());
        Sensitivities.Slope clog = all.slope("tap pressure", "filter.clog");
        assertThat(clog.left()).as("no filter is cleaner than clean").isNaN();
        assertThat(clog.right()).isCloseTo(-4000, within(1e-2));
        assertThat(clog.value()).isEqualTo(clog.right());
        assertThat(clog.isJoint()).isTrue();
    }

    @Test
    void atTheUpperEndOfItsRangeAKeyHasALeftSlope() {
        Circuit circuit = Bench.read("""
                points:
                  sump: {kind: held, pressure: 0 kPa}
                  tap: {kind: draw, takes: 180 L/h, bore: vessel}
                devices:
                  pump:
                    kind: pump
                    curves:
                      - {at: 12 V, pressure: 0 100 kPa, flow: 360 0 L/h}
                      - {at: 14 V, pressure: 0 140 kPa, flow: 400 0 L/h}
                    runs at: 14 V
                runs:
                  line: {from: sump, to: tap, parts: [{through: pump}, {law: K, K: 1 x, bore: 8 mm}]}
                """, "volts.yaml");
        Sensitivities.Slope slope = Sensitivities.of(circuit).slope("tap pressure", "pump.runs at");
        assertThat(slope.right()).as("nothing is known beyond its tables").isNaN();
        Output tap = Output.pressure("tap");
        double less = tap.of(Result.of(circuit.with(List.of(Change.of("pump", "runs at", "13.999 V")))));
        double wanted = (tap.of(Result.of(circuit)) - less) / 1e-3;
        assertThat(slope.left()).isCloseTo(wanted, within(1e-3 * wanted));
        assertThat(wanted).isPositive();
    }

    @Test
    void whereTwoLawsMeetEachSideHasItsSlope() {
        // a return port under the surface feels the column over it, one above lifts the fluid: 0.5 m is where they meet
        Circuit circuit = Bench.read("""
                points:
                  pipe: {kind: held, pressure: 20 kPa, height: 0 m}
                  tank: {kind: tank, height: 0 m, depth: 0.5 m, return height: 0.5 m}
                runs:
                  return: {from: pipe, to: tank, parts: [{law: K, K: 20 x, bore: 8 mm}]}
                """, "joint.yaml");
        Sensitivities.Slope slope = Sensitivities.of(circuit).slope("return flow", "tank.return height");
        double driving = 20e3 - DENSITY * 9.80665 * 0.5;
        double flow = FLOW * Math.sqrt(driving / (20 * HEAD_PA));
        double above = -flow * DENSITY * 9.80665 / (2 * driving);
        assertThat(slope.isJoint()).isTrue();
        assertThat(slope.left()).isCloseTo(0, within(1e-6 * Math.abs(above)));
        assertThat(slope.right()).isCloseTo(above, within(1e-3 * Math.abs(above)));
        assertThat(slope.value()).isCloseTo(above / 2, within(1e-3 * Math.abs(above)));
    }

    @Test
    void whatMovesNothingHasNoRow() {
        Sensitivities altitude = Sensitivities.of(LINE, List.of(Knob.of(LINE, "altitude")));
        assertThat(altitude.rows()).as("gauge pressures do not know it").isEmpty();
    }
}
