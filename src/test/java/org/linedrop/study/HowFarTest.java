package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.CaseResult;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

class HowFarTest {
    private static final Circuit MENDED = Examples.circuit("fuel-feed-38.yaml");
    private static final Circuit BROKEN = Examples.circuit("fuel-feed-516.yaml");

    private static HowFar ask(Circuit circuit, String key, String target, String... cases) {
        List<String> names = cases.length == 0 ? circuit.caseNames() : List.of(cases);
        return HowFar.of(circuit, new HowFar.Question(key, names, target));
    }

    @Test
    void theHighestPowerHoldsEveryLimitAndABitMoreDoesNot() {
        HowFar answer = ask(MENDED, "engine.power", "");
        assertThat(answer.holdsNow()).isTrue();
        HowFar.Edge edge = answer.stretch().orElseThrow().high();
        assertThat(edge).isNotNull();
        assertThat(edge.kind()).isEqualTo(HowFar.Kind.ROOT);
        assertThat(holds(answer.knob().in(MENDED, edge.inside()), edge.decides().caseName()))
                .isTrue();
        assertThat(holds(
                        answer.knob().in(MENDED, edge.outside()), edge.decides().caseName()))
                .isFalse();
        assertThat(edge.outside() - edge.inside()).isCloseTo(0, within(1e-8 * edge.inside()));
        assertThat(edge.atLeastSi()).isLessThan(edge.inside());
        Circuit least = answer.knob().in(MENDED, edge.atLeastSi());
        for (String name : MENDED.caseNames()) {
            assertThat(CaseResult.of(least.in(name)).holds()).as(name).isTrue();
        }
    }

    private static boolean holds(Circuit circuit, String caseName) {
        Result result = Result.of(circuit.in(caseName));
        return result.circuit().limits().stream().allMatch(limit -> !(result.margin(limit) < 0));
    }

    @Test
    void aRunTooLongSaysHowLongItMayBe() {
        HowFar answer = ask(BROKEN, "feed 4.length", "", "full load");
        assertThat(answer.holdsNow()).isFalse();
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("Not as it is: old hard line.length must be at most ")
                .contains("More breaks rail pressure at full load.");
        double most = answer.stretch().orElseThrow().to();
        assertThat(most).isBetween(1.0, 3.0);
        double rail = Result.of(answer.knob().in(BROKEN, most))
                .point("rail")
                .orElseThrow()
                .staticPressurePa();
        assertThat(rail).isCloseTo(375_000, within(1e-3));
    }

    @Test
    void theLeastPumpIsAFactorOnItsTable() {
        HowFar.Stretch stretch = ask(MENDED, "pump.table", "").stretch().orElseThrow();
        assertThat(stretch.low()).isNotNull();
        assertThat(stretch.low().decides().decides()).isEqualTo("pump spare flow");
        assertThat(stretch.from()).isBetween(0.5, 1.0);
    }

    @Test
    void whereAnAnswerIsNotTheOnlyOneItIsSaid() {
        HowFar answer = ask(MENDED, "temperature", "", "full load");
        assertThat(answer.stretches())
                .as("cold fuel: laminar, then rough, then warm")
                .hasSizeGreaterThan(1);
        assertThat(answer.sentence(Display.METRIC)).contains("It is not the only stretch: ");
        for (int i = 1; i < answer.stretches().size(); i++) {
            double between = (answer.stretches().get(i - 1).to()
                            + answer.stretches().get(i).from())
                    / 2;
            assertThat(holds(answer.knob().in(MENDED, between), "full load")).isFalse();
        }
    }

    @Test
    void aRefusalEndsAStretchAndSaysWhy() {
        HowFar answer = ask(MENDED, "temperature", "", "full load");
        HowFar.Edge hot = answer.stretch().orElseThrow().high();
        assertThat(hot).isNotNull();
        assertThat(hot.kind()).isEqualTo(HowFar.Kind.REFUSED);
        assertThat(hot.decides().trouble()).isNotEmpty();
    }

    @Test
    void aBoreIsFoundForAPressure() {
        HowFar answer = ask(BROKEN, "feed 4.bore", "rail pressure 375 kPa", "full load");
        double bore = answer.nearest().orElseThrow().inside();
        double rail = Result.of(answer.knob().in(BROKEN, bore))
                .point("rail")
                .orElseThrow()
                .staticPressurePa();
        assertThat(rail).isCloseTo(375_000, within(1e-2));
    }

    @Test
    void anEqualSplitIsFound() {
        Circuit rails = Examples.circuit("twin-rails.yaml");
        HowFar answer = ask(rails, "left leg 1.length", "left rail pressure equal to right rail pressure", "full load");
        Result result =
                Result.of(answer.knob().in(rails, answer.nearest().orElseThrow().inside()));
        assertThat(result.point("left rail").orElseThrow().staticPressurePa())
                .isCloseTo(result.point("right rail").orElseThrow().staticPressurePa(), within(1e-2));
    }

    @Test
    void aRestrictorIsFoundForAFlow() {
        Circuit jet = CircuitFile.read("""
                linedrop: 1
                fluid: engine oil 15W-50
                temperature: 100 C
                points:
                  gallery: {kind: held, pressure: 400 kPa}
                  turbo:   {kind: held, pressure: 0 kPa}
                runs:
                  turbo feed:
                    from: gallery
                    to: turbo
                    parts:
                      - {hose: race PTFE -4, length: 0.60 m, ends: straight to 90}
                      - {restrictor: 1.5 mm, length: 2 mm}
                """, "");
        HowFar answer = ask(jet, "turbo feed 2.restrictor", "turbo feed flow 60 L/h");
        double hole = answer.nearest().orElseThrow().inside();
        Result result = Result.of(answer.knob().in(jet, hole));
        assertThat(result.rows("turbo feed").get(0).flowM3PerS()).isCloseTo(60 / 3.6e6, within(1e-6 * 60 / 3.6e6));
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("turbo feed 2.restrictor ")
                .contains(" gives turbo feed flow 60 L/h");
    }

    @Test
    void whatIsNotFoundIsSaid() {
        HowFar answer = ask(BROKEN, "feed 1.length", "rail pressure 500 kPa", "full load");
        assertThat(answer.nearest()).isEmpty();
        assertThat(answer.sentence(Display.METRIC)).startsWith("NOT FOUND: no feed 1.length between ");
        HowFar none = ask(BROKEN, "supply 2.length", "", "full load");
        assertThat(none.stretch()).isEmpty();
        assertThat(none.sentence(Display.METRIC))
                .startsWith("NOT FOUND: no supply 2.length between ")
                .contains("rail pressure at full load is still 3.3 % off");
    }

    @Test
    void aCaseWithItsOwnValueIsNamed() {
        assertThat(ask(MENDED, "pump.runs at", "").notes())
                .singleElement()
                .asString()
                .startsWith("Not moved in low volts: the case gives pump.runs at a value of its own.");
    }

    @Test
    void badQuestionsGetTheNearestName() {
        assertThatThrownBy(() -> ask(BROKEN, "feed 4.length", "rial pressure 375 kPa", "full load"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("Did you mean rail?");
        assertThatThrownBy(() -> ask(BROKEN, "feed 4.length", "rail pressure", "full load"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("which value?");
        assertThatThrownBy(() -> ask(BROKEN, "feed 4.length", "rail pressure 375 L/h", "full load"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("375 L/h");
        assertThatThrownBy(() -> ask(Examples.circuit("first-feed.yaml"), "feed 1.colour", ""))
                .isInstanceOf(ProblemsException.class);
    }
}
