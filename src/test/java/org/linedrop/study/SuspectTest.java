package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Pump;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.study.Suspect.Kind;
import org.linedrop.units.Dimension;

/** Suspects, gauges and readings of one small invented line, with what each fault does to it by hand. */
class SuspectTest {
    private static final String TEXT = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
              sump: {kind: held, pressure: 0 kPa, height: 0 m}
              end: {kind: held, pressure: 0 kPa, height: 0 m}
            devices:
              filter: {kind: filter, drop: 4 kPa at 360 L/h, exponent: 2}
              pump: {kind: pump, curves: [{at: 12 V, pressure: 0 100 kPa, flow: 360 180 L/h}], runs at: 12 V}
            runs:
              line:
                from: main
                to: tap
                parts:
                  - {tube: steel 3/8 in x 0.035 in, length: 2 m, name: first}
                  - {through: filter}
                  - {tube: steel 3/8 in x 0.035 in, length: 1 m}
                  - {valve: ball -6}
              other: {from: sump, to: end, parts: [{through: pump}, {law: K, K: 10 x, bore: 8 mm}]}
            """;
    private static final Circuit CIRCUIT = CircuitFile.read(TEXT, "suspects.yaml");
    private static final double BORE_M = (0.375 - 2 * 0.035) * 0.0254;
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * BORE_M * BORE_M), 2);

    private static Suspect usual(Kind kind, String subject) {
        return Suspect.usual(CIRCUIT).stream()
                .filter(each -> each.kind() == kind && each.subject().equals(subject))
                .findFirst()
                .orElseThrow();
    }

    private static double tap(Circuit circuit) {
        return Result.of(circuit).orThrow().point("tap").orElseThrow().staticPressurePa();
    }

    @Test
    void everythingThatCommonlyGoesWrongIsSuspected() {
        assertThat(Suspect.usual(CIRCUIT))
                .containsExactly(
                        new Suspect(Kind.SETTING, "main.pressure", 150e3, 300e3, 450e3),
                        new Suspect(Kind.CLOG, "filter.clog", 1, 1, 100),
                        new Suspect(Kind.PUMP, "pump", 0.2, 1, 1.3),
                        new Suspect(Kind.BLOCKAGE, "first", 0, 0, 1e5),
                        new Suspect(Kind.BLOCKAGE, "line 3", 0, 0, 1e5),
                        new Suspect(Kind.BLOCKAGE, "line 4", 0, 0, 1e5));
    }

    @Test
    void aNamedKeyIsLookedAtFromAFifthToFiveTimes() {
        assertThat(Suspect.key(CIRCUIT, "first.length")).isEqualTo(new Suspect(Kind.KEY, "first.length", 0.4, 2, 10));
        assertThat(Suspect.key(CIRCUIT, "main.height")).isEqualTo(new Suspect(Kind.KEY, "main.height", -1, 0, 1));
        assertThat(Suspect.key(CIRCUIT, "filter.clog")).isEqualTo(new Suspect(Kind.CLOG, "filter.clog", 1, 1, 100));
        Circuit up = CircuitFile.read(TEXT.replaceFirst("height: 0 m", "height: -2 m"), "down.yaml");
        assertThat(Suspect.key(up, "main.height")).isEqualTo(new Suspect(Kind.KEY, "main.height", -10, -2, 6));
        Suspect within = Suspect.key(CIRCUIT, "temperature");
        assertThat(within.most()).isEqualTo(Knob.of(CIRCUIT, "temperature").most());
        assertThatThrownBy(() -> Suspect.key(CIRCUIT, "first.colour")).isInstanceOf(ProblemsException.class);
    }

    @Test
    void shareAndValueAreInverse() {
        for (Suspect suspect : List.of(
                usual(Kind.CLOG, "filter.clog"),
                usual(Kind.PUMP, "pump"),
                usual(Kind.BLOCKAGE, "first"),
                Suspect.key(CIRCUIT, "main.height"),
                Suspect.key(CIRCUIT, "first.length"))) {
            for (double share : new double[] {0.01, 0.25, 0.5, 0.9}) {
                assertThat(suspect.share(suspect.value(share)))
                        .as(suspect.subject())
                        .isCloseTo(share, within(1e-12));
            }
            assertThat(suspect.value(0)).isEqualTo(suspect.least());
            assertThat(suspect.value(-0.1)).isEqualTo(suspect.least());
            assertThat(suspect.value(1)).isEqualTo(suspect.most());
            assertThat(suspect.value(1.1)).isEqualTo(suspect.most());
            assertThat(suspect.share(suspect.most())).isCloseTo(1, within(1e-12));
        }
        // by ratio where there is one, else by distance
        assertThat(usual(Kind.CLOG, "filter.clog").value(0.5)).isCloseTo(10, within(1e-12));
        assertThat(Suspect.key(CIRCUIT, "first.length").value(0.5)).isCloseTo(2, within(1e-12));
        assertThat(Suspect.key(CIRCUIT, "main.height").value(0.75)).isCloseTo(0.5, within(1e-12));
        assertThat(usual(Kind.PUMP, "pump").value(0.5)).isCloseTo(0.75, within(1e-12));
        // half a head is half way up the bend of a blockage
        double bend = usual(Kind.BLOCKAGE, "first").share(0.5);
        assertThat(bend).isCloseTo(Math.log(2) / Math.log(200_001), within(1e-12));
    }

    @Test
    void aBlockageIsSoManyHeadsMore() {
        Suspect first = usual(Kind.BLOCKAGE, "first");
        assertThat(tap(CIRCUIT) - tap(first.in(CIRCUIT, 7))).isCloseTo(7 * HEAD_PA, within(1e-3));
        assertThat(first.in(CIRCUIT, 0)).isSameAs(CIRCUIT);
        Suspect third = usual(Kind.BLOCKAGE, "line 3");
        Circuit blocked = third.in(CIRCUIT, 3);
        assertThat(tap(CIRCUIT) - tap(blocked)).isCloseTo(3 * HEAD_PA, within(1e-3));
        // it sits before the part, which keeps its name and so does what stands behind it
        assertThat(blocked.runs().get(0).parts())
                .extracting(part -> part.id())
                .containsExactly("first", "line 2", "blockage in line 3", "line 3", "line 4");
        Gauge behind = new Gauge("line 3", Gauge.BEHIND);
        assertThat(behind.of(Result.of(CIRCUIT)) - behind.of(Result.of(blocked)))
                .isCloseTo(3 * HEAD_PA, within(1e-3));
        // a valve is taken as a bore of 10 mm; its changes of bore are a few per cent of five heads
        double wide = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.01 * 0.01), 2);
        assertThat(tap(CIRCUIT) - tap(usual(Kind.BLOCKAGE, "line 4").in(CIRCUIT, 5)))
                .isCloseTo(5 * wide, within(0.05 * 5 * wide));
        assertThatThrownBy(() -> new Suspect(Kind.BLOCKAGE, "nowhere", 0, 0, 1).in(CIRCUIT, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no part \"nowhere\"");
    }

    @Test
    void aClogIsTimesItsDropAndAWeakPumpAShareOfItsFlows() {
        Suspect clog = usual(Kind.CLOG, "filter.clog");
        assertThat(tap(CIRCUIT) - tap(clog.in(CIRCUIT, 6))).isCloseTo(5 * 4000, within(1e-3));
        Circuit weak = usual(Kind.PUMP, "pump").in(CIRCUIT, 0.5);
        Pump pump = (Pump) weak.device("pump").orElseThrow();
        assertThat(pump.table().flowM3PerS().get(0)).isCloseTo(0.5e-4, within(1e-15));
        assertThat(pump.table().flowM3PerS().get(1)).isCloseTo(0.25e-4, within(1e-15));
        assertThat(pump.table().risePa()).containsExactly(0.0, 100e3);
        assertThat(tap(usual(Kind.SETTING, "main.pressure").in(CIRCUIT, 310e3)) - tap(CIRCUIT))
                .isCloseTo(10e3, within(1e-3));
    }

    @Test
    void eachIsSaidInItsOwnWords() {
        assertThat(usual(Kind.CLOG, "filter.clog").words(CIRCUIT, 12.34))
                .isEqualTo("filter clogged: 12.3 times its clean drop");
        assertThat(usual(Kind.BLOCKAGE, "line 3").words(CIRCUIT, 9.96))
                .isEqualTo("line 3 pinched or blocked: K 10.0 on its bore more than it should");
        assertThat(usual(Kind.BLOCKAGE, "line 3").words(CIRCUIT, 10))
                .isEqualTo("line 3 pinched or blocked: K 10 on its bore more than it should");
        assertThat(usual(Kind.BLOCKAGE, "line 3").words(CIRCUIT, 123.4))
                .isEqualTo("line 3 pinched or blocked: K 123 on its bore more than it should");
        assertThat(usual(Kind.PUMP, "pump").words(CIRCUIT, 0.756))
                .isEqualTo("pump gives 76 % of the flow of its table");
        assertThat(usual(Kind.SETTING, "main.pressure").words(CIRCUIT, 312_345.6))
                .isEqualTo("main.pressure is 312.3 kPa instead of 300 kPa");
        assertThat(Suspect.key(CIRCUIT, "first.length").words(CIRCUIT, 3))
                .isEqualTo("first.length is 3 m instead of 2 m");
        assertThat(Kind.values()).extracting(Kind::word).doesNotHaveDuplicates().doesNotContain("");
    }

    @Test
    void gaugesReadWhatTheirWordsSay() {
        Result result = Result.of(CIRCUIT).orThrow();
        assertThat(new Gauge("main", Gauge.PRESSURE).of(result)).isCloseTo(300e3, within(1e-6));
        assertThat(new Gauge("tap", Gauge.FLOW).of(result)).isCloseTo(1e-4, within(1e-12));
        assertThat(new Gauge("line", Gauge.FLOW).of(result)).isCloseTo(1e-4, within(1e-12));
        assertThat(new Gauge("filter", Gauge.FLOW).of(result)).isCloseTo(1e-4, within(1e-12));
        double inlet = new Gauge("filter", "inlet").of(result);
        double outlet = new Gauge("filter", "outlet").of(result);
        assertThat(inlet - outlet).isCloseTo(4000, within(1e-3));
        assertThat(new Gauge("filter", "drop").of(result)).isCloseTo(4000, within(1e-3));
        assertThat(inlet).isLessThan(300e3);
        assertThat(new Gauge("line 4", Gauge.BEHIND).of(result)).isLessThan(outlet);
        assertThat(new Gauge("nowhere", Gauge.BEHIND).of(result)).isNaN();
        assertThat(new Gauge("nowhere", Gauge.FLOW).of(result)).isNaN();
    }

    @Test
    void gaugesHaveUsualErrors() {
        Gauge pressure = new Gauge("tap", Gauge.PRESSURE);
        assertThat(pressure.usualError(50e3)).isEqualTo(2000);
        assertThat(pressure.usualError(-300e3)).isCloseTo(6000, within(1e-9));
        Gauge flow = new Gauge("line", Gauge.FLOW);
        assertThat(flow.usualError(1e-4)).isCloseTo(5e-6, within(1e-18));
        assertThat(flow.usualError(-1e-4)).isCloseTo(5e-6, within(1e-18));
        assertThat(flow.usualError(0)).isCloseTo(1 / 3.6e6, within(1e-12));
        assertThat(pressure.dimension()).isEqualTo(Dimension.GAUGE_PRESSURE);
        assertThat(flow.dimension()).isEqualTo(Dimension.VOLUME_FLOW);
        assertThat(new Gauge("filter", "drop").dimension()).isEqualTo(Dimension.PRESSURE_DIFFERENCE);
    }

    @Test
    void gaugesCanBeFittedWhereThereIsAPlaceForThem() {
        assertThat(Gauge.all(CIRCUIT))
                .extracting(Gauge::words)
                .containsExactly(
                        "main",
                        "tap",
                        "sump",
                        "end",
                        "filter inlet",
                        "filter outlet",
                        "pump inlet",
                        "pump outlet",
                        "line flow",
                        "behind line 3",
                        "other flow");
        assertThat(Gauge.named(CIRCUIT))
                .extracting(Gauge::words)
                .contains("filter drop", "filter flow", "tap flow", "behind first", "behind line 4", "tap");
        assertThat(Gauge.named(CIRCUIT))
                .extracting(gauge -> -gauge.words().length())
                .as("longer names are tried first")
                .isSorted();
    }

    @Test
    void readingsAreReadWithTheirErrors() {
        assertThat(Reading.read(CIRCUIT, "tap 250 kPa"))
                .isEqualTo(new Reading(new Gauge("tap", "pressure"), 250e3, 5000));
        assertThat(Reading.read(CIRCUIT, " Tap  pressure 250 kPa "))
                .isEqualTo(new Reading(new Gauge("tap", "pressure"), 250e3, 5000));
        assertThat(Reading.read(CIRCUIT, "tap 360 L/h").gauge()).isEqualTo(new Gauge("tap", "flow"));
        assertThat(Reading.read(CIRCUIT, "line 360 L/h").gauge()).isEqualTo(new Gauge("line", "flow"));
        Reading within = Reading.read(CIRCUIT, "filter outlet 250 kPa +- 3 kPa");
        assertThat(within.gauge()).isEqualTo(new Gauge("filter", "outlet"));
        assertThat(within.error()).isCloseTo(3000, within(1e-9));
        assertThat(Reading.read(CIRCUIT, "tap -50 kPa +/- 4 %").error()).isCloseTo(2000, within(1e-9));
        assertThat(Reading.read(CIRCUIT, "behind line 3 250 kPa").gauge()).isEqualTo(new Gauge("line 3", "behind"));
        assertThat(Reading.read(CIRCUIT, "filter drop 4 kPa").gauge()).isEqualTo(new Gauge("filter", "drop"));
        Reading flow = Reading.read(CIRCUIT, "tap flow 360 L/h ± 36 L/h");
        assertThat(flow.value()).isCloseTo(1e-4, within(1e-15));
        assertThat(flow.error()).isCloseTo(1e-5, within(1e-15));
    }

    @Test
    void readingsThatSayNothingAreRefused() {
        assertThatThrownBy(() -> Reading.read(CIRCUIT, "tap 250 kPa +- 0 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("reading \"tap 250 kPa +- 0 kPa\": the error of a reading is above zero")
                .hasMessageContaining("Leave it out for a usual gauge");
        assertThatThrownBy(() -> Reading.read(CIRCUIT, "tap 250 kPa +- 3 L/h"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("its error: ");
        assertThatThrownBy(() -> Reading.read(CIRCUIT, "filtre inlet 250 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("no place \"filtre inlet\" with such a value")
                .hasMessageContaining("Did you mean filter inlet?");
        assertThatThrownBy(() -> Reading.read(CIRCUIT, "qwertzuiop 250 kPa")).hasMessageContaining("Write for example");
        assertThatThrownBy(() -> Reading.read(CIRCUIT, "filter inlet 250 L/h"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("250 L/h");
        Gauge tap = new Gauge("tap", "pressure");
        for (double[] wrong :
                new double[][] {{1, 0}, {1, -1}, {1, Double.NaN}, {Double.NaN, 1}, {1, 1 / 0.0}, {1 / 0.0, 1}}) {
            assertThatThrownBy(() -> new Reading(tap, wrong[0], wrong[1]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith("a reading needs a value and an error above zero, but tap has ");
        }
    }
}
