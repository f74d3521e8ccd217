package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Status;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;

/** What one would measure first on small invented lines, with what it decides by hand. */
class MeasuresTest {
    /** 800 kg/m3 at 360 L/h through 8 mm. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static List<Bottleneck.Measure> find(String... parts) {
        Circuit circuit = CircuitFile.read("""
                linedrop: 1
                fluid: bench liquid
                temperature: 20 C
                fluids:
                  bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
                  other: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [%s]}
                  aside: {from: main, to: other, parts: [{law: K, K: 3 x +/- 1 x, bore: 8 mm}]}
                """.formatted(String.join(", ", parts)), "measures.yaml");
        Result result = Result.of(circuit).orThrow();
        return new Measures(circuit, Output.pressure("tap"), Way.to(result, "tap")).find();
    }

    @Test
    void aBoreAndAFigureThatIsDoubted() {
        List<Bottleneck.Measure> found =
                find("{law: K, K: 20 x +/- 0.2 x, bore: 8 mm}", "{law: K, K: 5 x +/- 0.5 x, bore: 8 mm, name: cock}");
        assertThat(found)
                .extracting(Bottleneck.Measure::words)
                .as("what decides more first, then what gives more; nothing beside the way")
                .containsExactly("K of cock", "K of line 1", "bore of line 1", "bore of cock");
        Bottleneck.Measure cock = found.get(0);
        assertThat(cock.bandSi()).isCloseTo(1, within(1e-12));
        assertThat(cock.decides()).isCloseTo(HEAD_PA, within(1e-3));
        assertThat(cock.stepSi()).isCloseTo(0.05, within(1e-12));
        assertThat(cock.gives()).isCloseTo(-0.05 * HEAD_PA, within(1e-3));
        assertThat(cock.count()).isEqualTo(1);
        assertThat(cock.status()).isEqualTo(Status.GIVEN);
        Bottleneck.Measure bore = found.get(2);
        assertThat(bore.stepSi()).isEqualTo(1e-4);
        assertThat(bore.gives()).isCloseTo(4 * 20 * HEAD_PA / 0.008 * 1e-4, within(1e-2));
        assertThat(bore.decides()).as("nobody doubts it").isZero();
        assertThat(bore.bandSi()).isZero();
    }

    @Test
    void boresOfOneKindOfHoseAreMeasuredTogether() {
        List<Bottleneck.Measure> found = find(
                "{hose: race PTFE -6, length: 1 m, ends: straight to straight}",
                "{union: -6}",
                "{hose: race PTFE -6, length: 2 m, ends: straight to none}",
                "{tube: steel 3/8 in x 0.035 in, length: 1 m, name: hard line}");
        assertThat(found)
                .extracting(measure -> measure.words() + " " + measure.count())
                .containsExactly("hose-end bore of race PTFE -6 3", "bore of race PTFE -6 2", "bore of hard line 1");
        assertThat(found.get(0).status()).isEqualTo(Status.FROM_MEMORY);
        assertThat(found.get(0).gives()).as("wider is better").isPositive();
        assertThat(found.get(0).decides())
                .as("the band over a tenth of a millimetre, to first order")
                .isCloseTo(found.get(0).gives() / 1e-4 * found.get(0).bandSi(), within(1e-3));
    }

    @Test
    void whatWasMeasuredDecidesNothing() {
        List<Bottleneck.Measure> found =
                find("{hose: race PTFE -6, length: 1 m, ends: straight to straight, bore: 8 mm +/- 0.1 mm measured}");
        assertThat(found.get(0).words()).isEqualTo("hose-end bore of race PTFE -6");
        assertThat(found.get(0).count()).isEqualTo(2);
        Bottleneck.Measure bore = found.get(1);
        assertThat(bore.words()).isEqualTo("bore of race PTFE -6");
        assertThat(bore.status()).isEqualTo(Status.MEASURED);
        assertThat(bore.decides()).isZero();
        assertThat(bore.bandSi()).isZero();
        assertThat(bore.gives()).isPositive();
    }
}
