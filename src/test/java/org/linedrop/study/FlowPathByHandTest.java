package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;

/** Ways, losses and system curves of small invented circuits whose losses go by the square of their flow. */
class FlowPathByHandTest {
    /** 800 kg/m3 at 360 L/h through 8 mm. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static final String HEAD = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            """;

    /** A pump feeds a fork; the far leg is written against its flow and has a filter and a check valve. */
    private static final Circuit FORK = CircuitFile.read(HEAD + """
            points:
              sump: {kind: held, pressure: 0 kPa, height: 0 m}
              mid: {kind: joint, height: 1 m}
              near: {kind: draw, takes: 36 L/h, height: 1 m, bore: vessel}
              far: {kind: draw, takes: 144 L/h, height: 1 m, bore: vessel}
            devices:
              pump: {kind: pump, curves: [{at: 12 V, pressure: 0 200 kPa, flow: 360 0 L/h}], runs at: 12 V, height: 0 m}
              filter: {kind: filter, drop: 4 kPa at 144 L/h, exponent: 2, height: 1 m}
            runs:
              feed: {from: sump, to: mid, parts: [{through: pump}, {law: K, K: 10 x, bore: 8 mm, name: cock}]}
              to near: {from: mid, to: near, parts: [{law: K, K: 5 x, bore: 8 mm}]}
              far back: {from: far, to: mid, parts: [{through: filter}, {law: K, K: 20 x, bore: 8 mm}]}
            """, "fork.yaml");

    @Test
    void theLargestFlowIsFollowedFirst() {
        Result result = Result.of(FORK).orThrow();
        List<FlowPath> paths = FlowPath.of(result);
        assertThat(paths)
                .extracting(FlowPath::places)
                .containsExactly(List.of("sump", "mid", "far"), List.of("sump", "mid", "near"));
        assertThat(paths.get(0).rows())
                .extracting(row -> row.row().part())
                .containsExactly("pump", "cock", "far back 2", "filter");
        assertThat(paths.get(0).rows()).extracting(FlowPath.Row::backward).containsExactly(false, false, true, true);
        assertThat(paths.get(0).rows()).extracting(FlowPath.Row::pump).containsExactly(true, false, false, false);
        FlowPath.Row law = paths.get(0).rows().get(2);
        // 0.4 of the flow: 0.16 of twenty heads, lost in the sense of the flow
        assertThat(law.lossPa()).isCloseTo(20 * 0.16 * HEAD_PA, within(1e-3));
        assertThat(law.dropPa()).isCloseTo(law.lossPa(), within(1e-3));
        assertThat(law.pressureInPa()).isGreaterThan(law.pressureOutPa());
        assertThat(paths.get(0).rows().get(3).lossPa()).isCloseTo(4000, within(1e-3));
        FlowPath.Row cock = paths.get(0).rows().get(1);
        assertThat(cock.lossPa()).isCloseTo(10 * 0.25 * HEAD_PA, within(1e-3));
        assertThat(FlowPath.of(result, "to near").places()).containsExactly("sump", "mid", "near");
        assertThat(FlowPath.of(result, "feed").places()).containsExactly("sump", "mid", "far");
        assertThatThrownBy(() -> FlowPath.of(result, "nowhere")).hasMessage("no run \"nowhere\"");
        assertThat(FlowPath.legs(result)).extracting(FlowPath.Leg::from).containsExactly("sump", "mid", "mid");
        assertThat(FlowPath.legs(result)).extracting(FlowPath.Leg::to).containsExactly("mid", "near", "far");
    }

    @Test
    void partsLoseTheirHeadsAndShareTheWhole() {
        List<PartLoss> losses = PartLoss.of(Result.of(FORK).orThrow());
        assertThat(losses)
                .extracting(PartLoss::part)
                .containsExactly("pump", "cock", "to near 1", "filter", "far back 2");
        double cock = 10 * 0.25 * HEAD_PA;
        double near = 5 * 0.01 * HEAD_PA;
        double law = 20 * 0.16 * HEAD_PA;
        double all = cock + near + law + 4000;
        PartLoss first = losses.get(1);
        assertThat(first.lossPa()).isCloseTo(cock, within(1e-3));
        assertThat(first.frictionPa() + first.localPa()).isEqualTo(first.lossPa());
        assertThat(first.share()).isCloseTo(cock / all, within(1e-9));
        assertThat(first.line()).isTrue();
        assertThat(first.boreM()).isEqualTo(0.008);
        assertThat(first.words()).isEqualTo("2 cock");
        PartLoss pump = losses.get(0);
        assertThat(pump.line()).as("a pump loses nothing").isFalse();
        assertThat(pump.share()).isNaN();
        PartLoss back = losses.get(4);
        assertThat(back.lossPa())
                .as("in the sense of the flow, whatever that of the run")
                .isCloseTo(law, within(1e-3));
        assertThat(losses.get(3).share()).isCloseTo(4000 / all, within(1e-9));
        double shares = losses.stream()
                .filter(PartLoss::line)
                .mapToDouble(PartLoss::share)
                .sum();
        assertThat(shares).isCloseTo(1, within(1e-9));
        assertThat(losses.stream().mapToDouble(PartLoss::liftPa).sum()).isCloseTo(800 * 9.80665, within(1e-3));
    }

    @Test
    void theSystemCurveIsAParabola() {
        List<SystemCurve> curves = SystemCurve.of(Result.of(FORK).orThrow());
        assertThat(curves).hasSize(1);
        SystemCurve curve = curves.get(0);
        // 180 of 360 L/h: half of 200 kPa
        assertThat(curve.pump()).isEqualTo("pump");
        assertThat(curve.flowM3PerS()).isCloseTo(0.5e-4, within(1e-12));
        assertThat(curve.risePa()).isCloseTo(100e3, within(1e-3));
        assertThat(curve.end()).isEqualTo("far");
        assertThat(curve.table()).containsExactly(new SystemCurve.Place(1e-4, 0), new SystemCurve.Place(0, 200e3));
        assertThat(curve.places()).hasSize(33);
        double loss = 10 * 0.25 * HEAD_PA + 20 * 0.16 * HEAD_PA + 4000;
        for (int i = 0; i <= 32; i++) {
            double share = i / 16.0;
            assertThat(curve.places().get(i).flowM3PerS()).isCloseTo(share * 0.5e-4, within(1e-12));
            assertThat(curve.places().get(i).risePa())
                    .as("at %s of the flow", share)
                    .isCloseTo(100e3 + (share * share - 1) * loss, within(1.0));
        }
    }

    @Test
    void aRegulatorEndsTheCurveOfItsPump() {
        Circuit circuit = CircuitFile.read(HEAD + """
                points:
                  tank: {kind: tank, depth: 0 m, height: 0 m}
                  rail: {kind: draw, takes: 50 L/h, height: 0 m}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 800 kPa, flow: 400 300 L/h}], runs at: 12 V}
                  regulator: {kind: bypass regulator, holds: 300 kPa over air, wide open: 30 kPa at 350 L/h, height: 0 m}
                runs:
                  supply: {from: tank, to: regulator.inlet, parts: [{through: pump}, {law: K, K: 1 x, bore: 8 mm}]}
                  feed: {from: regulator.inlet, to: rail, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  spill: {from: regulator.return, to: tank, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                """, "regulator.yaml");
        Result result = Result.of(circuit).orThrow();
        assertThat(SystemCurve.of(result).get(0).end()).isEqualTo("regulator");
        assertThat(FlowPath.of(result, "supply").places()).containsExactly("tank", "regulator");
        assertThat(FlowPath.of(result, "spill").places()).containsExactly("regulator", "tank");
        // what it holds is asked for however little flows, but for the one head of the line
        double least = SystemCurve.of(result).get(0).places().get(0).risePa();
        assertThat(least).isBetween(299.999e3, 301e3);
    }

    @Test
    void aLoopComesBackToWhereItBegan() {
        Circuit loop = CircuitFile.read(HEAD + """
                points:
                  cap: {kind: held, pressure: 100 kPa}
                  hot: {kind: joint}
                  cold: {kind: joint}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 100 kPa, flow: 360 0 L/h}], runs at: 12 V}
                runs:
                  out: {from: cold, to: hot, parts: [{through: pump}, {law: K, K: 10 x, bore: 8 mm}]}
                  back: {from: hot, to: cold, parts: [{law: K, K: 20 x, bore: 8 mm}]}
                  fill: {from: cap, to: cold, parts: [{law: K, K: 20 x, bore: 8 mm}]}
                """, "loop.yaml");
        Result result = Result.of(loop).orThrow();
        assertThat(FlowPath.of(result, "out").places()).containsExactly("cold", "hot", "cold");
        SystemCurve curve = SystemCurve.of(result).get(0);
        assertThat(curve.places().get(0).risePa())
                .as("nothing flows, nothing is lost")
                .isCloseTo(0, within(1e-3));
        assertThat(curve.places().get(32).risePa()).isCloseTo(30 * HEAD_PA, within(1.0));
    }
}
