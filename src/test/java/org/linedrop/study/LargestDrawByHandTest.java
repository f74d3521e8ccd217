package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Display;

/** Which key a largest draw is asked of, and how it is said, on a line whose loss goes by the square of its flow. */
class LargestDrawByHandTest {
    /** 800 kg/m3 at 360 L/h through 8 mm. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static Circuit line(String engine, String takes, String limit) {
        return CircuitFile.read("""
                linedrop: 1
                fluid: bench liquid
                temperature: 20 C
                fluids:
                  bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
                %s
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: %s, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{law: K, K: 10 x, bore: 8 mm}]}
                limits: {tap: {pressure: %s}}
                """.formatted(engine, takes, limit), "draw.yaml");
    }

    @Test
    void theKeyIsTheEnginesOrTheDrawsOwn() {
        // 50 kPa are ten heads of sqrt(50 / 15.8) times the flow
        double times = Math.sqrt(50e3 / (10 * HEAD_PA));
        LargestDraw own =
                LargestDraw.of(line("", "360 L/h", "at least 250 kPa")).orElseThrow();
        assertThat(own.knob().path()).isEqualTo("tap.takes");
        assertThat(own.usualSi()).isCloseTo(times * 1e-4, within(1e-5 * 1e-4));
        assertThat(own.ends()).isEqualTo("tap pressure");
        LargestDraw flow = LargestDraw.of(line("engine: {flow: 360 L/h}", "100 % of engine", "at least 250 kPa"))
                .orElseThrow();
        assertThat(flow.knob().path()).isEqualTo("engine.flow");
        assertThat(flow.usualSi()).isCloseTo(times * 1e-4, within(1e-5 * 1e-4));
        LargestDraw mass =
                LargestDraw.of(line("", "288 kg/h", "at least 250 kPa")).orElseThrow();
        assertThat(mass.usualSi()).isCloseTo(times * 0.08, within(1e-5 * 0.08));
    }

    @Test
    void whatDoesNotHoldNowIsLookedForBelow() {
        // 284.2 kPa now: 290 kPa hold up to 0.795 of the flow
        LargestDraw less =
                LargestDraw.of(line("", "360 L/h", "at least 290 kPa")).orElseThrow();
        assertThat(less.usualSi()).isCloseTo(Math.sqrt(10e3 / (10 * HEAD_PA)) * 1e-4, within(1e-9));
        assertThat(less.leastSi()).isEqualTo(less.usualSi());
        // no draw at all holds what the main has not
        assertThat(LargestDraw.of(line("", "360 L/h", "at least 310 kPa"))).isEmpty();
        // under a quarter of it is no news
        assertThat(LargestDraw.of(line("", "360 L/h", "at least 299.9 kPa"))).isEmpty();
        // a limit that a larger draw keeps better has no end above
        assertThat(LargestDraw.of(line("", "360 L/h", "at most 299 kPa")))
                .satisfies(found -> assertThat(found).as("but what cannot flow").isEmpty());
    }

    @Test
    void aSureDrawIsSaidWhereItIsAnother() {
        Optional<LargestDraw> found = LargestDraw.of(line("", "360 L/h", "at least 250 kPa"));
        Knob knob = found.orElseThrow().knob();
        assertThat(new LargestDraw(knob, 1e-4, 1e-4, "x").words(Display.METRIC)).isEqualTo("360 L/h");
        assertThat(new LargestDraw(knob, 1e-4, 0.985e-4, "x").words(Display.METRIC))
                .isEqualTo("360 L/h");
        assertThat(new LargestDraw(knob, 1e-4, 1e-4 * (1 - 0.02), "x").words(Display.METRIC))
                .as("two in a hundred are the same")
                .isEqualTo("360 L/h");
        assertThat(new LargestDraw(knob, 1e-4, 0.97e-4, "x").words(Display.METRIC))
                .isEqualTo("360 L/h, surely to 349 L/h");
        assertThat(new LargestDraw(knob, 1e-4, Double.NaN, "x").words(Display.METRIC))
                .isEqualTo("360 L/h, but not surely");
        assertThat(new LargestDraw(knob, 1e-4, 0.97e-4, "x").words(Display.US))
                .isEqualTo("95.1 US gal/h, surely to 92.2 US gal/h");
    }
}
