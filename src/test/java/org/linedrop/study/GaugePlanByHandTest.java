package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;

/** What gauges of one small invented line read, by hand: static pressure in the bore they sit in. */
class GaugePlanByHandTest {
    private static final double FLOW = 1e-4;

    private static final Circuit LINE = Bench.read("""
            this case: usual
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              mid: {kind: joint, height: 0.5 m}
              tap: {kind: draw, takes: 360 L/h, height: 1 m, bore: vessel}
            devices:
              filter: {kind: filter, drop: 4 kPa at 360 L/h, exponent: 2, height: 0.25 m}
            runs:
              first: {from: main, to: mid, parts: [{law: K, K: 10 x, bore: 8 mm}, {through: filter}, {tube: steel 3/8 in x 0.035 in, length: 1 m}]}
              second: {from: mid, to: tap, parts: [{law: K, K: 10 x, bore: 8 mm}]}
            cases:
              beyond: {tap: {takes: 4000 L/h really}}
            """, "gauges.yaml");

    private static GaugePlan.Place place(GaugePlan plan, String id, String at) {
        return plan.places().stream()
                .filter(each -> each.id().equals(id) && each.at().equals(at))
                .findFirst()
                .orElseThrow();
    }

    private static double headPa(double boreM) {
        return 400 * Math.pow(FLOW / (Math.PI / 4 * boreM * boreM), 2);
    }

    @Test
    void everyPlaceReadsStaticPressureInItsBore() {
        GaugePlan plan = GaugePlan.of(LINE, List.of("usual"));
        assertThat(plan.places())
                .extracting(each -> each.id() + " " + each.at() + " " + each.heightM())
                .containsExactly(
                        "main held 0.0", "mid joint 0.5", "tap draw 1.0", "filter inlet 0.25", "filter outlet 0.25");
        assertThat(place(plan, "main", "held").readings().get(0).usualPa()).isCloseTo(300e3, within(1e-6));
        assertThat(place(plan, "main", "held").boreM()).isInfinite();
        double tube = (0.375 - 2 * 0.035) * 0.0254;
        double mid = place(plan, "mid", "joint").readings().get(0).usualPa();
        assertThat(place(plan, "mid", "joint").boreM())
                .as("the bore that brings the flow")
                .isCloseTo(tube, within(1e-12));
        double tap = place(plan, "tap", "draw").readings().get(0).usualPa();
        // static in the tube at mid, all of its head still to be lost
        assertThat(mid + headPa(tube) - tap)
                .isGreaterThan(10 * headPa(0.008) + 800 * 9.80665 * 0.5 - 1e-3)
                .isLessThan(10 * headPa(0.008) + 800 * 9.80665 * 0.5 + headPa(tube));
        double inlet = place(plan, "filter", "inlet").readings().get(0).usualPa();
        double outlet = place(plan, "filter", "outlet").readings().get(0).usualPa();
        // in 8 mm before it and in the narrower tube behind it
        assertThat(inlet - outlet).isCloseTo(4000 + headPa(tube) - headPa(0.008), within(1e-3));
        assertThat(inlet).isCloseTo(300e3 - 10 * headPa(0.008) - 800 * 9.80665 * 0.25, within(5000.0));
        assertThat(place(plan, "filter", "inlet").kind()).isEqualTo("filter");
        assertThat(place(plan, "mid", "joint").kind()).isEmpty();
    }

    @Test
    void nothingThatIsKnownHasABand() {
        GaugePlan.Reading reading = place(GaugePlan.of(LINE, List.of("usual")), "tap", "draw")
                .readings()
                .get(0);
        assertThat(reading.hasBand()).isFalse();
        assertThat(reading.lowPa()).isEqualTo(reading.usualPa()).isEqualTo(reading.highPa());
        assertThat(new GaugePlan.Reading("x", 100, 150, 200).hasBand()).isTrue();
        assertThat(new GaugePlan.Reading("x", 1e6, 1e6, 1e6 + 0.5).hasBand()).isFalse();
        assertThat(new GaugePlan.Reading("x", 1e6, 1e6, 1e6 + 2).hasBand()).isTrue();
    }

    @Test
    void aCaseSaysInWhatAirItWasSolved() {
        GaugePlan plan = GaugePlan.of(LINE, List.of("usual", "beyond"));
        assertThat(plan.cases()).extracting(GaugePlan.Case::name).containsExactly("usual", "beyond");
        GaugePlan.Case usual = plan.cases().get(0);
        assertThat(usual.solved()).isTrue();
        assertThat(usual.status()).isEqualTo("converged");
        assertThat(usual.ambientPa()).isCloseTo(101_325, within(1e-6));
        assertThat(usual.manifoldPa()).as("no engine").isNaN();
        assertThat(usual.liftPaPerM()).isCloseTo(800 * 9.80665, within(1e-6));
        GaugePlan.Case beyond = plan.cases().get(1);
        assertThat(beyond.solved()).isFalse();
        assertThat(beyond.status()).isEqualTo("not physical");
        assertThat(place(plan, "tap", "draw").readings()).hasSize(2);
        assertThat(place(plan, "tap", "draw").readings().get(1).usualPa()).isNaN();
        assertThat(GaugePlan.of(LINE, List.of("beyond")).places())
                .as("nothing was solved")
                .isEmpty();
    }

    @Test
    void boresThatAreSoldApartMakeABand() {
        Circuit hose = CircuitFile.read("""
                linedrop: 1
                fluid: E10
                temperature: 20 C
                engine: {power: 300 hp, bsfc: 0.50 lb/hp/h, manifold: 50 kPa}
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 360 L/h, bore: vessel}
                  end: {kind: draw, takes: 10 % of engine, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{hose: race PTFE -6, length: 1 m, ends: straight to straight}]}
                  more: {from: main, to: end, parts: [{law: K, K: 3 x, bore: 8 mm}]}
                """, "hose.yaml");
        GaugePlan plan = GaugePlan.of(hose, hose.caseNames());
        GaugePlan.Reading tap = place(plan, "tap", "draw").readings().get(0);
        assertThat(tap.hasBand()).isTrue();
        assertThat(tap.lowPa()).isLessThan(tap.usualPa());
        assertThat(tap.highPa()).isGreaterThan(tap.usualPa());
        assertThat(place(plan, "main", "held").readings().get(0).hasBand()).isFalse();
        assertThat(place(plan, "tap", "draw").heightM()).as("no heights").isNaN();
        assertThat(plan.cases().get(0).manifoldPa()).isCloseTo(50e3, within(1e-6));
    }
}
