package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

/** Where the loss of one small invented line sits: what can be counted by hand, and how it is said. */
class BottleneckByHandTest {
    private static final double FLOW = 400 / 3.6e6;
    private static final String HEAD = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            """;
    private static final String LINE = """
            points:
              main: {kind: held, pressure: 300 kPa}
              tap: {kind: draw, takes: 400 L/h}
            devices:
              filter: {kind: filter, drop: 4 kPa at 400 L/h}
              strainer: {kind: cooler, drop: 1 kPa at 400 L/h}
            runs:
              line:
                from: main
                to: tap
                parts:
                  - {hose: race PTFE -6, length: 1 m, ends: straight to straight}
                  - {union: -6}
                  - {tube: steel 3/8 in x 0.035 in, length: 2 m, name: hard line}
                  - {adapter: -6 to -8, name: step}
                  - {adapter: -8 to -6}
                  - {hose: race PTFE -6, length: 0.5 m, ends: straight to none}
                  - {tube: steel 3/8 in x 0.035 in, length: 0.2 m}
                  - {hose: race PTFE -6, length: 0.1 m, ends: none to none}
                  - {through: filter}
                  - {through: strainer}
                  - {law: K, K: 3 x, bore: 8 mm}
            """;

    private static Circuit line(String more) {
        return CircuitFile.read(HEAD + LINE + more, "line.yaml");
    }

    private static Bottleneck.Thing thing(Bottleneck answer, String place) {
        return answer.things().stream()
                .filter(each -> each.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyThingIsNamedAndPlacedAsOneWouldChangeIt() {
        Bottleneck answer = Bottleneck.of(line(""));
        assertThat(answer.subject()).isEqualTo("tap");
        assertThat(answer.things())
                .extracting(thing -> thing.place() + ": " + thing.words())
                .containsExactlyInAnyOrder(
                        "line 1: race PTFE -6, 1.00 m, two ends",
                        "line 2: union -6",
                        "line 3: hard line, 2.00 m",
                        "line 4: step",
                        "line 5: reducer -8 to -6",
                        "line 6: race PTFE -6, 0.50 m, one end",
                        "line 7: steel tube, 0.20 m",
                        "line 8: race PTFE -6, 0.10 m, bare",
                        "line 9: filter",
                        "line 10: strainer (cooler)",
                        "line 11: K law");
        for (int i = 0; i < answer.things().size(); i++) {
            assertThat(answer.things().get(i).rank()).isEqualTo(i + 1);
        }
    }

    @Test
    void lossesAreThoseOfTheirLaws() {
        Bottleneck answer = Bottleneck.of(line(""));
        double speed = FLOW / (Math.PI / 4 * 0.008 * 0.008);
        double entry = 3 * 800 * speed * speed / 2;
        assertThat(thing(answer, "line 11").lossPa()).isCloseTo(entry, within(1e-9 * entry));
        assertThat(thing(answer, "line 9").lossPa()).isCloseTo(4000, within(1e-6));
        assertThat(answer.devicesPa()).isCloseTo(4000 + 1000, within(1e-6));
        assertThat(answer.liftPa()).isZero();
        assertThat(answer.lostPa()).isCloseTo(answer.plumbingPa() + 5000, within(1e-6));
        assertThat(thing(answer, "line 9").share()).isCloseTo(4000 / answer.lostPa(), within(1e-12));
        assertThat(thing(answer, "line 11").boreM()).isEqualTo(0.008);
        assertThat(thing(answer, "line 9").boreM()).as("a filter has none").isNaN();
        assertThat(thing(answer, "line 9").boreFrom()).isNull();
        assertThat(thing(answer, "line 3").boreM()).isCloseTo((0.375 - 2 * 0.035) * 0.0254, within(1e-12));
        assertThat(thing(answer, "line 1").boreM()).as("the hose, not its end").isCloseTo(0.0079375, within(1e-12));
    }

    @Test
    void theAdapterThatFallsAwayGoesWithItsTube() {
        Bottleneck answer = Bottleneck.of(line(""));
        assertThat(thing(answer, "line 4").with()).isEqualTo("hard line");
        assertThat(thing(answer, "line 5").with()).isEmpty();
        assertThat(thing(answer, "line 3").larger()).isEqualTo("1/2 in x 0.035 in, which also drops an adapter");
        assertThat(thing(answer, "line 4").larger()).isEmpty();
        assertThat(thing(answer, "line 4").gives()).isNaN();
        // one size up was solved: by how much the tap then has more
        Circuit larger = line("").with(Sizes.larger(
                        line("").catalogue(),
                        line("").runs().get(0),
                        line("").runs().get(0).parts().get(2),
                        1)
                .orElseThrow()
                .changes());
        double then = Result.of(larger).point("tap").orElseThrow().staticPressurePa();
        double now = Result.of(line("")).point("tap").orElseThrow().staticPressurePa();
        assertThat(thing(answer, "line 3").then()).isCloseTo(then, within(1e-6));
        assertThat(thing(answer, "line 3").gives()).isCloseTo(then - now, within(1e-6));
        assertThat(thing(answer, "line 3").holds()).as("nothing to hold").isFalse();
    }

    @Test
    void withoutALimitNothingIsSaidToHold() {
        String text = Bottleneck.of(line("")).sentence(Display.METRIC);
        Bottleneck answer = Bottleneck.of(line(""));
        assertThat(text)
                .startsWith("49.9 kPa lost on the way to the tap: 44.9 in plumbing, 5.00 in devices. Hard line, 2.00 m"
                        + " (line 3) takes ")
                .contains(" % of what plumbing and devices lose. One size up that gives most: line 3 in 1/2 in x 0.035"
                        + " in, which also drops an adapter: tap pressure ")
                .contains(
                        " kPa. Worth measuring first: hose-end bore of race PTFE -6 (from memory), which decides 9.8 kPa.")
                .doesNotContain("holds", "not enough", "height");
        assertThat(answer.lostPa()).isBetween(49.85e3, 49.95e3);
        assertThat(Bottleneck.of(line("")).sentence(Display.US))
                .startsWith("7.24 psi lost on the way to the tap: ")
                .contains(", 0.73 in devices. ")
                .endsWith("which decides 1.42 psi.");
    }

    @Test
    void whetherTheNextSizeIsEnoughIsSaid() {
        // the tap has 249 kPa as built and 263 kPa behind a hard line one size up
        Bottleneck enough = Bottleneck.of(line("limits: {tap: {pressure: at least 255 kPa}}\n"));
        assertThat(enough.sentence(Display.METRIC)).contains(" kPa, which holds. Worth");
        assertThat(thing(enough, "line 3").holds()).isTrue();
        assertThat(thing(enough, "line 7").holds()).isFalse();
        Bottleneck tooLittle = Bottleneck.of(line("limits: {tap: {pressure: at least 290 kPa}}\n"));
        assertThat(tooLittle.sentence(Display.METRIC)).contains(" kPa, not enough alone. Worth");
        assertThat(thing(tooLittle, "line 3").holds()).isFalse();
        Bottleneck held = Bottleneck.of(line("limits: {tap: {pressure: at least 200 kPa}}\n"));
        assertThat(held.sentence(Display.METRIC)).doesNotContain("holds", "not enough");
        assertThat(thing(held, "line 3").holds()).isTrue();
    }

    @Test
    void moreIsNoGainUnderALargestPressure() {
        Bottleneck answer = Bottleneck.of(line("limits: {tap: {pressure: at most 255 kPa}}\n"));
        assertThat(thing(answer, "line 3").gives()).isNegative();
        assertThat(thing(answer, "line 3").holds()).isFalse();
        assertThat(thing(answer, "line 7").holds()).isTrue();
        assertThat(answer.sentence(Display.METRIC)).contains("No one size up of a hose or tube gives anything.");
    }

    @Test
    void aFlowIsDecidedByWhatLiesBehindToo() {
        Bottleneck flow = Bottleneck.of(line("limits: {filter: {flow: at least 500 L/h}}\n"));
        assertThat(flow.sentence(Display.METRIC))
                .contains(" lost on the way to the filter and on from it: ")
                .as("a draw takes what it takes: no bore decides its flow")
                .doesNotContain("Worth measuring");
        assertThat(flow.things())
                .extracting(Bottleneck.Thing::place)
                .contains("line 8", "line 11")
                .doesNotContain("line 9");
        Bottleneck inlet = Bottleneck.of(line("limits: {filter: {inlet pressure: at least 290 kPa}}\n"));
        assertThat(inlet.sentence(Display.METRIC)).contains(" lost on the way to the filter: ");
        assertThat(inlet.things())
                .extracting(Bottleneck.Thing::place)
                .contains("line 8")
                .doesNotContain("line 9", "line 10", "line 11");
    }

    @Test
    void liftIsNotPlumbing() {
        Bottleneck answer = Bottleneck.of(CircuitFile.read(HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  tap: {kind: draw, takes: 400 L/h, height: 2 m}
                runs:
                  line: {from: main, to: tap, parts: [{law: K, K: 3 x, bore: 8 mm}]}
                """, "up.yaml"));
        assertThat(answer.liftPa()).isCloseTo(800 * 9.80665 * 2, within(1e-6));
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo("21.6 kPa lost on the way to the tap: 5.86 in plumbing, 15.7 to height and acceleration."
                        + " Height and acceleration take most, and no hose gives that back; of the rest K law (line 1)"
                        + " takes 100 %. No one size up of a hose or tube gives anything.");
    }

    private static String held(double endKPa) {
        return HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  end: {kind: held, pressure: %s kPa}
                runs:
                  line: {from: main, to: end, parts: [{hose: race PTFE -6, length: 1 m, ends: straight to straight}]}
                """.formatted(endKPa);
    }

    @Test
    void withoutADrawItIsTheWholeCircuit() {
        assertThat(Bottleneck.of(CircuitFile.read(held(300), "still.yaml")).sentence(Display.METRIC))
                .isEqualTo("Nothing is lost.");
        Bottleneck answer = Bottleneck.of(CircuitFile.read(held(250), "held.yaml"));
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo(
                        "50.0 kPa lost: 50.0 in plumbing. Race PTFE -6, 1.00 m, two ends (line 1) takes 100 % of what"
                                + " plumbing and devices lose.");
        assertThat(answer.output()).isNull();
        assertThat(answer.measures()).isEmpty();
    }

    @Test
    void theDrawWithLeastIsMeant() {
        String form = HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  near: {kind: draw, takes: 100 L/h, bore: vessel}
                  far: {kind: draw, takes: 100 L/h, bore: vessel}
                runs:
                  one: {from: main, to: near, parts: [{law: K, K: %s x, bore: 8 mm}]}
                  two: {from: main, to: far, parts: [{law: K, K: %s x, bore: 8 mm}]}
                """;
        assertThat(Bottleneck.of(CircuitFile.read(form.formatted(3, 9), "a.yaml"))
                        .subject())
                .isEqualTo("far");
        assertThat(Bottleneck.of(CircuitFile.read(form.formatted(9, 3), "b.yaml"))
                        .subject())
                .isEqualTo("near");
    }

    @Test
    void whatIsNotSolvedHasNoThings() {
        Bottleneck answer = Bottleneck.of(line("").with(List.of(Change.of("tap", "takes", "9000 L/h really"))));
        assertThat(answer.things()).isEmpty();
        assertThat(answer.lostPa()).isNaN();
        assertThat(answer.sentence(Display.METRIC)).startsWith("NOT SOLVED: ");
    }
}
