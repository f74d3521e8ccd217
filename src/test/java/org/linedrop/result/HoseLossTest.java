package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Notice;
import org.linedrop.hydraulics.Colebrook;
import org.linedrop.hydraulics.ConvolutedBore;
import org.linedrop.io.CircuitFile;

/** Convoluted hose, measured loss factors and hose on a route. */
class HoseLossTest {
    private static Circuit line(String... parts) {
        return CircuitFile.read(
                """
                linedrop: 1
                fluid: E85 summer
                temperature: 40 C
                points:
                  before: {kind: held, pressure: 400 kPa}
                  behind: {kind: draw, takes: 216 L/h}
                runs:
                  line:
                    from: before
                    to: behind
                    parts:
                """
                        + String.join(
                                "",
                                List.of(parts).stream()
                                        .map(part -> "      - {" + part + "}\n")
                                        .toList()),
                "test.yaml");
    }

    private static PartRow hose(Circuit circuit) {
        return Result.of(circuit).orThrow().rows().stream()
                .filter(row -> row.kind().equals("hose"))
                .findFirst()
                .orElseThrow();
    }

    private static List<Notice> notices(Circuit circuit, String id) {
        return Result.of(circuit).warnings().stream()
                .filter(notice -> notice.id().equals(id))
                .toList();
    }

    @Test
    void convolutedHoseTakesTheConvolutedLawAndSaysSo() {
        Circuit circuit = line("hose: convoluted PTFE -6, length: 1 m, ends: none");
        PartRow row = hose(circuit);
        double bore = row.boreM().value();
        double expected = 64 / row.reynolds() + ConvolutedBore.frictionFactor(bore, 0.2 * bore);
        assertThat(row.frictionFactor()).isCloseTo(expected, Percentage.withPercentage(1e-9));
        assertThat(notices(circuit, "convoluted-bore"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).contains("0.35 to 1.2 times"));
    }

    @Test
    void measuredLossFactorMultipliesTheSmoothBore() {
        Circuit circuit = line("hose: convoluted PTFE -6, length: 1 m, ends: none, loss factor: 4.5 x measured");
        PartRow row = hose(circuit);
        double[] smooth = new double[2];
        Colebrook.evaluate(row.reynolds(), 0, smooth);
        assertThat(row.reynolds()).isGreaterThan(3000);
        assertThat(row.frictionFactor()).isCloseTo(4.5 * smooth[0], Percentage.withPercentage(1e-9));
        assertThat(notices(circuit, "convoluted-bore")).isEmpty();
    }

    @Test
    void lossFactorOfSomethingElseIsRefused() {
        assertThatThrownBy(() -> line("hose: race PTFE -6, length: 1 m, ends: none, loss factor: 2 x engine"))
                .hasMessageContaining("multiple of a smooth straight bore");
        assertThatThrownBy(() -> line("hose: race PTFE -6, length: 1 m, ends: none, loss factor: 4.5"))
                .hasMessageContaining("4.5 x");
    }

    @Test
    void hoseOnARouteLosesMoreAndItsTightestBendIsWatched() {
        double straight =
                hose(line("hose: race PTFE -6, length: 1 m, ends: none")).dropPa();
        Circuit tight = line("hose: race PTFE -6, length: 1 m, ends: none, bends: 4 x 90 at 20 mm");
        assertThat(hose(tight).dropPa()).isBetween(1.02 * straight, 1.5 * straight);
        assertThat(notices(tight, "bend-under-minimum"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.value()).isLessThan(notice.limit()));
        Circuit wide = line("hose: race PTFE -6, length: 1 m, ends: none, bends: 1 x 90 at 300 mm");
        assertThat(hose(wide).dropPa()).isBetween(straight, hose(tight).dropPa());
        assertThat(notices(wide, "bend-under-minimum")).isEmpty();
        assertThat(notices(tight, "bend-tight"))
                .as("a row says more than the rule")
                .isEmpty();
    }

    @Test
    void aBendThatAnyHoseWouldKinkInIsWatchedWhereNoLeastRadiusIsKnown() {
        Circuit tight = line("hose: AS1946 -6, length: 1 m, ends: none, bends: 2 x 90 at 19 mm");
        assertThat(notices(tight, "bend-tight"))
                .singleElement()
                .satisfies(notice -> assertThat(notice.text()).contains("bent to 19 mm, under 2.5 bores (20 mm)"));
        Circuit wide = line("hose: AS1946 -6, length: 1 m, ends: none, bends: 2 x 90 at 21 mm");
        assertThat(notices(wide, "bend-tight")).isEmpty();
    }
}
