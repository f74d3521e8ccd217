package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.study.Uncertain.Kind;

/** Bands of a small invented line whose margin is straight in one uncertain figure: quantiles of a triangle by hand. */
class ToleranceBandByHandTest {
    private static final int POINTS = 256;
    /** 800 kg/m3 at 360 L/h through 8 mm. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static Circuit line(String limit, String... parts) {
        return Bench.read("""
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [%s]}
                limits:
                  tap: {pressure: %s}
                """.formatted(String.join(", ", parts), limit), "line.yaml");
    }

    private static ToleranceBand band(Circuit circuit, double friction, double local) {
        return ToleranceBand.of(
                circuit, new BandQuestion(circuit.caseNames(), POINTS, friction, local, 0), 1, Progress.NONE);
    }

    /** The value under which a share of a triangle over low, middle, high lies. */
    private static double triangle(double share, double half) {
        return share < 0.5 ? 1 - half + half * Math.sqrt(2 * share) : 1 + half - half * Math.sqrt(2 * (1 - share));
    }

    @Test
    void lawsOfLocalLossesAreAFactorOnThem() {
        ToleranceBand band = band(line("at least 250 kPa", "{law: K, K: 20 x, bore: 8 mm}"), 0, 0.25);
        assertThat(band.uncertain()).hasSize(1);
        assertThat(band.uncertain().get(0).uncertain())
                .extracting(Uncertain::words)
                .containsExactly("laws of ends, fittings and bends");
        ToleranceBand.Row row = band.rows().get(0);
        double loss = 20 * HEAD_PA;
        double usual = 50e3 - loss;
        assertThat(row.usual()).isCloseTo(usual, within(1e-3));
        // points spread evenly miss a quantile by no more than a few of their distances
        double even = 5.0 / POINTS * 0.5 * loss;
        assertThat(row.low()).isCloseTo(50e3 - loss * triangle(0.95, 0.25), within(even));
        assertThat(row.median()).isCloseTo(usual, within(even));
        assertThat(row.high()).isCloseTo(50e3 - loss * triangle(0.05, 0.25), within(even));
        assertThat(row.probability()).isEqualTo(1);
        assertThat(row.unsolved()).isZero();
        assertThat(row.causes()).hasSize(1);
        assertThat(row.causes().get(0).share()).isEqualTo(1);
        assertThat(row.causes().get(0).swing())
                .isCloseTo(-loss * (triangle(0.95, 0.25) - triangle(0.05, 0.25)), within(1e-3));
    }

    @Test
    void lawsOfFrictionAreAFactorOnFriction() {
        // f L / d = 0.02 x 10 / 0.008 = 25 heads
        Circuit circuit = line("at least 250 kPa", "{law: constant f, f: 0.02 x, length: 10 m, bore: 8 mm}");
        ToleranceBand.Row row = band(circuit, 0.1, 0).rows().get(0);
        double loss = 25 * HEAD_PA;
        assertThat(row.usual()).isCloseTo(50e3 - loss, within(1e-3));
        assertThat(row.causes().get(0).uncertain().kind()).isEqualTo(Kind.FRICTION);
        assertThat(row.causes().get(0).swing())
                .isCloseTo(-loss * (triangle(0.95, 0.1) - triangle(0.05, 0.1)), within(1e-3));
        assertThat(band(circuit, 0, 0.25).rows().get(0).causes())
                .as("no local loss")
                .isEmpty();
    }

    @Test
    void theShareThatHoldsIsAnArea() {
        // the limit is met up to 1.1 of the usual loss
        double bound = 300 - 1.1 * 20 * HEAD_PA / 1000;
        Circuit circuit = line("at least " + bound + " kPa", "{law: K, K: 20 x, bore: 8 mm}");
        ToleranceBand.Row row = band(circuit, 0, 0.25).rows().get(0);
        double beyond = 0.15 * 0.15 / (2 * 0.25 * 0.25);
        assertThat(row.probability()).isCloseTo(1 - beyond, within(3.0 / POINTS));
        double none = 300 - 1.3 * 20 * HEAD_PA / 1000;
        assertThat(band(line("at most " + none + " kPa", "{law: K, K: 20 x, bore: 8 mm}"), 0, 0.25)
                        .rows()
                        .get(0)
                        .probability())
                .isZero();
    }

    @Test
    void theLargestSwingIsNamedFirstAndSharesAreOfSquares() {
        Circuit circuit = line(
                "at least 250 kPa",
                "{law: K, K: 20 x +/- 0.2 x, bore: 8 mm}",
                "{law: K, K: 5 x +/- 0.4 x, bore: 8 mm}",
                "{law: K, K: 1 x +/- 0.1 x, bore: 8 mm}",
                "{law: K, K: 1 x +/- 0.05 x, bore: 8 mm}");
        ToleranceBand band = band(circuit, 0, 0);
        assertThat(band.uncertain().get(0).uncertain())
                .extracting(Uncertain::words)
                .containsExactly("line 1.K", "line 2.K", "line 3.K", "line 4.K");
        ToleranceBand.Row row = band.rows().get(0);
        assertThat(row.causes())
                .as("the three that matter most")
                .extracting(cause -> cause.uncertain().name())
                .containsExactly("line 2.K", "line 1.K", "line 3.K");
        double sum = 0.4 * 0.4 + 0.2 * 0.2 + 0.1 * 0.1 + 0.05 * 0.05;
        assertThat(row.causes().get(0).share()).isCloseTo(0.16 / sum, within(1e-6));
        assertThat(row.causes().get(1).share()).isCloseTo(0.04 / sum, within(1e-6));
        assertThat(row.causes().get(2).share()).isCloseTo(0.01 / sum, within(1e-6));
        assertThat(row.causes().get(0).swing()).isNegative();
    }

    @Test
    void setsWithoutAnAnswerAreCountedAndDoNotHold() {
        // nothing flows so fast that more than 300 kPa and the atmosphere are lost
        Circuit circuit = line("at least -101 kPa", "{law: K, K: 200 x +/- 100 x, bore: 8 mm}");
        ToleranceBand.Row row = band(circuit, 0, 0).rows().get(0);
        double most = 401_325 / HEAD_PA;
        double beyond = Math.pow(300 - most, 2) / (200 * 100);
        assertThat((double) row.unsolved() / POINTS).isCloseTo(beyond, within(3.0 / POINTS));
        assertThat(row.probability()).isCloseTo(1 - beyond, within(8.0 / POINTS));
        assertThat(row.low()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(row.high()).isFinite();
        // alone at its high end there is no answer either: no share can be said
        assertThat(row.causes().get(0).swing()).isInfinite();
        assertThat(row.causes().get(0).share()).isNaN();
    }

    @Test
    void ofPartsOfOneKindOneFigureIsDrawn() {
        Circuit circuit = line(
                "at least 200 kPa",
                "{hose: race PTFE -6, length: 2 m, ends: straight to 90}",
                "{adapter: -6 to -8}",
                "{tube: steel 1/2 in x 0.035 in, length: 1 m}",
                "{adapter: -8 to -6}",
                "{hose: race PTFE -6, length: 1 m, ends: straight to 90}");
        List<Uncertain> found = band(circuit, 0.1, 0.25).uncertain().get(0).uncertain();
        assertThat(found)
                .extracting(Uncertain::words)
                .doesNotHaveDuplicates()
                .containsExactlyInAnyOrder(
                        "bore of race PTFE -6",
                        "roughness of race PTFE -6",
                        "end bore of race PTFE -6 three-piece",
                        "law of friction",
                        "laws of ends, fittings and bends")
                .noneMatch(words -> words.startsWith("flow of") || words.startsWith("class of"));
        for (Uncertain each : found) {
            assertThat(each.low()).as(each.words()).isLessThanOrEqualTo(each.usual());
            assertThat(each.high()).as(each.words()).isGreaterThan(each.low());
            assertThat(each.source()).isNotEmpty();
            assertThat(each.distribution()).isEqualTo("triangle from lowest over usual to highest");
        }
        // a wider bore of both hoses leaves more at the tap, whatever else
        double[] usual = found.stream().mapToDouble(Uncertain::usual).toArray();
        double[] wide = usual.clone();
        int bore = found.stream().map(Uncertain::words).toList().indexOf("bore of race PTFE -6");
        wide[bore] = found.get(bore).high();
        double then = Uncertainties.solved(circuit, found, wide)
                .point("tap")
                .orElseThrow()
                .staticPressurePa();
        double now = Uncertainties.solved(circuit, found, usual)
                .point("tap")
                .orElseThrow()
                .staticPressurePa();
        Circuit by = Knob.of(circuit, "line 5.bore")
                .in(Knob.of(circuit, "line 1.bore").in(circuit, wide[bore]), wide[bore]);
        assertThat(then).isGreaterThan(now);
        assertThat(then).isCloseTo(Result.of(by).point("tap").orElseThrow().staticPressurePa(), within(0.5));
    }

    @Test
    void aFluidIsAnEndOfItsClassOrUsual() {
        Circuit oil = CircuitFile.read("""
                linedrop: 1
                fluid: engine oil 15W-50
                temperature: 100 C
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 360 L/h, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{tube: steel 3/8 in x 0.035 in, length: 3 m}]}
                limits:
                  tap: {pressure: at least 200 kPa}
                """, "oil.yaml");
        ToleranceBand band = band(oil, 0, 0);
        Uncertain fluid = band.uncertain().get(0).uncertain().stream()
                .filter(each -> each.kind() == Kind.FLUID)
                .findFirst()
                .orElseThrow();
        assertThat(fluid.words()).isEqualTo("class of the fluid");
        assertThat(fluid.distribution()).isEqualTo("three points at 5, 50 and 95 %");
        assertThat(fluid.source()).isEqualTo("ends of the class of engine oil 15W-50 taken as 5 and 95 %");
        ToleranceBand.Cause cause = band.rows().get(0).causes().get(0);
        assertThat(cause.uncertain()).isEqualTo(fluid);
        assertThat(cause.swing()).as("thick oil loses more than thin").isNegative();
    }

    @Test
    void aPumpIsAFactorOnItsFlow() {
        Circuit circuit = Bench.read("""
                points:
                  sump: {kind: held, pressure: 0 kPa}
                  end: {kind: held, pressure: 0 kPa}
                devices:
                  pump: {kind: pump, curves: [{at: 12 V, pressure: 0 100 kPa, flow: 360 0 L/h}], runs at: 12 V}
                runs:
                  line: {from: sump, to: end, parts: [{through: pump}, {law: K, K: 10 x, bore: 8 mm}]}
                limits:
                  pump: {flow: at least 100 L/h}
                """, "pump.yaml");
        ToleranceBand band =
                ToleranceBand.of(circuit, new BandQuestion(circuit.caseNames(), 64, 0, 0, 0.05), 1, Progress.NONE);
        assertThat(band.uncertain().get(0).uncertain())
                .extracting(Uncertain::words)
                .containsExactly("flow of pump");
        // 100 kPa (1 - q / (f Q)) = 10 heads (q / Q)^2, q in shares x of Q
        double gain = 0;
        for (double sign : new double[] {-1, 1}) {
            double factor = sign < 0 ? triangle(0.05, 0.05) : triangle(0.95, 0.05);
            double a = 10 * HEAD_PA;
            double b = 100e3 / factor;
            gain += sign * (-b + Math.sqrt(b * b + 4 * a * 100e3)) / (2 * a);
        }
        assertThat(band.rows().get(0).causes().get(0).swing()).isCloseTo(gain * 1e-4, within(1e-4 * gain * 1e-4));
    }

    @Test
    void withoutLimitsThereAreNoRows() {
        Circuit bare = CircuitFile.read("""
                linedrop: 1
                fluid: water
                temperature: 20 C
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 360 L/h}
                runs:
                  line: {from: main, to: tap, parts: [{tube: steel 3/8 in x 0.035 in, length: 3 m}]}
                """, "bare.yaml");
        assertThat(band(bare, 0.1, 0.1).rows()).isEmpty();
        assertThat(band(bare, 0.1, 0.1).uncertain()).hasSize(1);
    }

    @Test
    void theQuestionKeepsItsRange() {
        List<String> none = List.of();
        assertThat(new BandQuestion(none, 16, 0, 0.9, 0.9).points()).isEqualTo(16);
        assertThat(new BandQuestion(none, 65_536, 0, 0, 0).points()).isEqualTo(65_536);
        assertThatThrownBy(() -> new BandQuestion(none, 15, 0, 0, 0))
                .hasMessage("points must be 16 to 65536, but are 15");
        assertThatThrownBy(() -> new BandQuestion(none, 65_537, 0, 0, 0))
                .hasMessage("points must be 16 to 65536, but are 65537");
        assertThatThrownBy(() -> new BandQuestion(none, 16, -0.01, 0, 0))
                .hasMessageStartingWith("a half width must be 0 to 90 %, but is -1");
        assertThatThrownBy(() -> new BandQuestion(none, 16, 0, 0.91, 0))
                .hasMessageStartingWith("a half width must be 0 to 90 %, but is 91");
        assertThatThrownBy(() -> new BandQuestion(none, 16, 0, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(BandQuestion.of(none).points()).isEqualTo(BandQuestion.USUAL_POINTS);
    }
}
