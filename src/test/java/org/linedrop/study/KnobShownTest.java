package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Status;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Display;

/** How the numbers of a small invented circuit are shown and bounded, converted by hand. */
class KnobShownTest {
    private static final Circuit CIRCUIT = CircuitFile.read("""
            linedrop: 1
            fluid: E10
            temperature: 20 C
            engine: {power: 300 hp, bsfc: 0.50 lb/hp/h}
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              left: {kind: draw, takes: 60 % of engine, height: 0 m}
              right: {kind: draw, takes: 36 L/h, height: 0 m}
            devices:
              filter: {kind: filter, drop: 4 kPa at 400 L/h}
              gauge: {kind: filter, drop: 4 kPa at 400 L/h, exponent: 1.5}
            runs:
              to left:
                from: main
                to: left
                parts:
                  - {hose: race PTFE -6, length: 1 m, ends: straight to 90}
                  - {through: filter}
                  - {through: gauge}
              to right:
                from: main
                to: right
                parts:
                  - {hose: race PTFE -6, length: 1 m, ends: none to none}
                  - {hose: race PTFE -6, length: 1 m, ends: straight to none}
            """, "knobs.yaml");

    private static String shown(String path, double si, Display display) {
        return Knob.of(CIRCUIT, path).shown(si, display);
    }

    @Test
    void metricAndUsUnits() {
        assertThat(shown("to left 1.length", 1.5, Display.METRIC)).isEqualTo("1.5 m");
        assertThat(shown("to left 1.length", 1.5, Display.US)).isEqualTo("4.921 ft");
        assertThat(shown("to left 1.length", 0.1, Display.METRIC)).isEqualTo("0.1 m");
        assertThat(shown("to left 1.length", 0.1, Display.US)).isEqualTo("0.3281 ft");
        assertThat(shown("to left 1.bore", 0.0127, Display.METRIC)).isEqualTo("12.7 mm");
        assertThat(shown("to left 1.bore", 0.0127, Display.US)).isEqualTo("0.5 in");
        assertThat(shown("main.height", -0.05, Display.METRIC)).isEqualTo("-50 mm");
        assertThat(shown("main.height", -0.5, Display.METRIC)).isEqualTo("-0.5 m");
        assertThat(shown("main.height", 0, Display.METRIC)).isEqualTo("0 m");
        // 1 psi is 6894.757 Pa
        assertThat(shown("main.pressure", 300e3, Display.METRIC)).isEqualTo("300 kPa");
        assertThat(shown("main.pressure", 300e3, Display.US)).isEqualTo("43.51 psi");
        // a US gallon is 3.785411784 L
        assertThat(shown("right.takes", 1e-5, Display.METRIC)).isEqualTo("36 L/h");
        assertThat(shown("right.takes", 1e-5, Display.US)).isEqualTo("9.51 US gal/h");
        assertThat(shown("temperature", 293.15, Display.METRIC)).isEqualTo("20 C");
        assertThat(shown("temperature", 293.15, Display.US)).isEqualTo("68 F");
        // a horsepower is 745.69987 W
        assertThat(shown("engine.power", 745_699.87, Display.METRIC)).isEqualTo("745.7 kW (1000 hp)");
        assertThat(shown("engine.power", 745_699.87, Display.US)).isEqualTo("1000 hp");
        assertThat(shown("left.takes", 0.6, Display.METRIC)).isEqualTo("60 %");
        assertThat(shown("filter.clog", 2.5, Display.METRIC)).isEqualTo("2.5 x");
    }

    @Test
    void asManyDigitsAsAskedFor() {
        Knob power = Knob.of(CIRCUIT, "engine.power");
        assertThat(power.shown(123_456, Display.METRIC, 3)).isEqualTo("123 kW (166 hp)");
        assertThat(power.shown(123_456, Display.METRIC, 5)).isEqualTo("123.46 kW (165.56 hp)");
        assertThat(power.shown(Double.NaN, Display.METRIC, 3)).isEqualTo("-");
        assertThat(power.shown(Double.POSITIVE_INFINITY, Display.METRIC)).isEqualTo("-");
        assertThat(power).hasToString("engine.power " + power.text(power.si()));
    }

    @Test
    void whatIsOutOfRangeIsSaidWithItsUnit() {
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "to left 1.length").to(31))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("to left 1.length must be 1 mm to 30 m, but is 31.0");
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "to left 1.length").to(Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "main.height").to(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        Knob length = Knob.of(CIRCUIT, "to left 1.length");
        assertThat(length.in(CIRCUIT, length.most()).runs().get(0).parts()).hasSize(3);
        assertThat(length.in(CIRCUIT, length.least()).runs().get(0).parts()).hasSize(3);
    }

    @Test
    void whatNobodySaidHasItsUsualValue() {
        assertThat(Knob.of(CIRCUIT, "altitude").si()).isZero();
        assertThat(Knob.of(CIRCUIT, "altitude").said()).isFalse();
        assertThat(Knob.of(CIRCUIT, "gravity").si()).isEqualTo(9.80665);
        assertThat(Knob.of(CIRCUIT, "filter.clog").si()).isEqualTo(1);
        assertThat(Knob.of(CIRCUIT, "gauge.exponent").si()).isEqualTo(1.5);
        assertThat(Knob.of(CIRCUIT, "gauge.exponent").said()).isTrue();
        assertThat(Knob.of(CIRCUIT, "filter.exponent").said()).isFalse();
        assertThat(Knob.of(CIRCUIT, "temperature").said()).isTrue();
    }

    @Test
    void aBoreOfEndsNeedsEndsOfOneBore() {
        assertThat(Knob.of(CIRCUIT, "to left 1.end bore").si()).isBetween(0.005, 0.0079);
        assertThat(Knob.of(CIRCUIT, "to right 2.end bore").si())
                .isEqualTo(Knob.of(CIRCUIT, "to left 1.end bore").si());
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "to right 1.end bore"))
                .as("no ends, no bore of theirs")
                .hasMessageContaining("the circuit gives no end bore of to right 1");
        Circuit moved = Knob.of(CIRCUIT, "to left 1.bore").in(CIRCUIT, 0.009);
        assertThat(Knob.of(moved, "to left 1.bore").si()).isCloseTo(0.009, within(1e-15));
        assertThat(Knob.of(moved, "to left 1.bore").said()).isTrue();
        assertThat(Knob.of(moved, "to left 1.bore").figure().status()).isEqualTo(Status.GUESSED);
    }

    @Test
    void allKnobsHaveAPathThatFindsThem() {
        List<Knob> all = Knob.all(CIRCUIT);
        assertThat(all).extracting(Knob::path).doesNotHaveDuplicates().contains("temperature", "filter.clog");
        for (Knob knob : all) {
            Knob again = Knob.of(CIRCUIT, knob.path());
            assertThat(again).isEqualTo(knob).hasSameHashCodeAs(knob);
            assertThat(knob.path())
                    .isEqualTo(knob.subject().isEmpty() ? knob.key() : knob.subject() + "." + knob.key());
        }
        assertThat(all.get(0)).isNotEqualTo(all.get(1)).isNotEqualTo("text");
        Circuit longer = Knob.of(CIRCUIT, "to left 1.length").in(CIRCUIT, 2);
        assertThat(Knob.of(longer, "to left 1.length")).isNotEqualTo(Knob.of(CIRCUIT, "to left 1.length"));
    }

    @Test
    void anElementAloneIsNoKey() {
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "filter"))
                .hasMessageContaining("\"filter\" is an element, and it is not said which key of it")
                .hasMessageContaining("Write filter. and one of: drop");
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "colour"))
                .hasMessageContaining("no key \"colour\" of the file itself")
                .hasMessageContaining("Keys with one number: temperature");
        assertThatThrownBy(() -> Knob.of(CIRCUIT, "xyzzy.length"))
                .hasMessageContaining("no element \"xyzzy\"")
                .hasMessageContaining("Elements: ");
    }
}
