package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.units.Display;

/** How far one key of a small invented line may go, where that is a closed form. */
class HowFarByHandTest {
    /** 800 kg/m3 at 360 L/h through 8 mm: 1.98944 m/s, a velocity head of 1583.14 Pa. */
    private static final double HEAD_PA = 400 * Math.pow(1e-4 / (Math.PI / 4 * 0.008 * 0.008), 2);

    private static final String TEXT = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            points:
              main: {kind: held, pressure: 300 kPa, height: 0 m}
              tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
            runs:
              line: {from: main, to: tap, parts: [{law: K, K: 10 x, bore: 8 mm}]}
            """;

    private static Circuit line(String more) {
        return CircuitFile.read(TEXT + more, "line.yaml");
    }

    private static HowFar ask(Circuit circuit, String key, String target) {
        return HowFar.of(circuit, new HowFar.Question(key, circuit.caseNames(), target));
    }

    @Test
    void theLargestLossUnderALimit() {
        // 300 kPa less K heads leave 250 kPa
        double most = 50e3 / HEAD_PA;
        HowFar answer = ask(line("limits: {tap: {pressure: at least 250 kPa}}\n"), "line 1.K", "");
        HowFar.Stretch stretch = answer.stretch().orElseThrow();
        assertThat(stretch.to()).isCloseTo(most, within(1e-8 * most));
        assertThat(stretch.low()).isNull();
        assertThat(stretch.high().kind()).isEqualTo(HowFar.Kind.ROOT);
        assertThat(stretch.high().holdsBelow()).isTrue();
        assertThat(stretch.high().inside()).isLessThan(stretch.high().outside());
        assertThat(stretch.high().decides().value()).isCloseTo(250e3, within(1e-3));
        assertThat(stretch.high().atLeastSi())
                .as("no bore was sold")
                .isEqualTo(stretch.high().inside());
        assertThat(answer.holdsNow()).isTrue();
        assertThat(answer.from()).isLessThan(10);
        assertThat(answer.to()).isGreaterThan(most);
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo("line 1.K can be at most 31.58 x (10 x now). More breaks tap pressure.");
    }

    @Test
    void theLeastLossUnderALargestPressure() {
        HowFar answer = ask(line("limits: {tap: {pressure: at most 290 kPa}}\n"), "line 1.K", "");
        double least = 10e3 / HEAD_PA;
        HowFar.Stretch stretch = answer.stretch().orElseThrow();
        assertThat(stretch.from()).isCloseTo(least, within(1e-8 * least));
        assertThat(stretch.low().holdsBelow()).isFalse();
        // 300 kPa and the atmosphere are all there is to lose
        assertThat(stretch.high().kind()).isEqualTo(HowFar.Kind.REFUSED);
        assertThat(stretch.to()).isCloseTo(401_325 / HEAD_PA, within(1e-3));
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("line 1.K can be 6.317 x to 253.5 x (10 x now). More is refused: not physical: ")
                .endsWith(" Less breaks tap pressure.");
    }

    @Test
    void betweenTwoBoundsThereAreTwoEdges() {
        Circuit circuit = line("limits: {tap: {pressure: between 250 kPa and 290 kPa}}\n");
        assertThat(ask(circuit, "line 1.K", "").sentence(Display.METRIC))
                .isEqualTo("line 1.K can be 6.317 x to 31.58 x (10 x now). More breaks tap pressure. Less breaks tap"
                        + " pressure.");
        Circuit wide = CircuitFile.read(
                TEXT.replace("K: 10 x", "K: 40 x") + "limits: {tap: {pressure: between 250 kPa and 290 kPa}}\n",
                "wide.yaml");
        assertThat(ask(wide, "line 1.K", "").sentence(Display.METRIC))
                .isEqualTo(
                        "Not as it is: line 1.K must be 6.317 x to 31.58 x (40 x now). More breaks tap pressure. Less"
                                + " breaks tap pressure.");
    }

    @Test
    void whatBreaksNothingIsSaid() {
        HowFar answer = ask(line("limits: {tap: {pressure: at most 400 kPa}}\n"), "main.height", "");
        assertThat(answer.edges()).isEmpty();
        // 0.15 m a step, 24 steps each way
        assertThat(answer.from()).isCloseTo(-3.6, within(1e-9));
        assertThat(answer.to()).isCloseTo(3.6, within(1e-9));
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo("main.height can be anything from -3.6 m to 3.6 m (0 m now). Nothing that was tried breaks a"
                        + " limit.");
        assertThat(answer.sentence(Display.US)).contains("anything from -11.81 ft to 11.81 ft (0 ");
    }

    @Test
    void whatCannotBeMadeToHoldNamesItsNearest() {
        HowFar answer = ask(line("limits: {tap: {pressure: at least 400 kPa}}\n"), "line 1.K", "");
        assertThat(answer.stretch()).isEmpty();
        // with next to no loss the tap has 300 of 400 kPa
        assertThat(answer.best().si()).isEqualTo(answer.from());
        assertThat(answer.best().score()).isCloseTo(-0.25, within(1e-3));
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("NOT FOUND: no line 1.K between ")
                .contains(" holds every limit; nearest is ", ", where tap pressure is still 25.0 % off.");
    }

    @Test
    void aTargetIsMetByTheOnlyValueThatGivesIt() {
        HowFar answer = ask(line(""), "line 1.K", "tap pressure 250 kPa");
        double wanted = 50e3 / HEAD_PA;
        assertThat(answer.nearest().orElseThrow().inside()).isCloseTo(wanted, within(1e-7 * wanted));
        assertThat(answer.stretches()).isEmpty();
        assertThat(answer.holdsNow()).isFalse();
        assertThat(answer.nearest().orElseThrow().atLeastSi()).isNaN();
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo("line 1.K 31.58 x gives tap pressure 250 kPa; it is 10 x now.");
    }

    @Test
    void aTargetThatIsMetAlreadyIsSaid() {
        Circuit circuit = line("");
        double now = (300e3 - 10 * HEAD_PA) / 1000;
        HowFar answer = ask(circuit, "line 1.K", "tap pressure " + now + " kPa");
        assertThat(answer.holdsNow()).isTrue();
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("line 1.K 10 x gives tap pressure ")
                .endsWith(", as it is now.");
    }

    @Test
    void aTargetOutOfReachNamesTheNearest() {
        HowFar answer = ask(line(""), "line 1.K", "tap pressure 301 kPa");
        assertThat(answer.edges()).isEmpty();
        assertThat(answer.best().si()).isEqualTo(answer.from());
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("NOT FOUND: no line 1.K between ")
                .contains(" gives tap pressure 301 kPa; nearest is ");
    }

    @Test
    void aTargetCanCompareTwoFigures() {
        Circuit two = Bench.read("""
                points:
                  main: {kind: held, pressure: 300 kPa}
                  left: {kind: held, pressure: 0 kPa}
                  right: {kind: held, pressure: 0 kPa}
                devices:
                  cooler: {kind: cooler, drop: 1 kPa at 360 L/h, exponent: 2}
                runs:
                  left leg: {from: main, to: left, parts: [{law: K, K: 10 x, bore: 8 mm}]}
                  right leg: {from: main, to: right, parts: [{law: K, K: 20 x, bore: 8 mm}, {through: cooler}]}
                """, "two.yaml");
        HowFar answer = ask(two, "left leg 1.K", "left leg flow equal to right leg flow");
        // the cooler loses 1000 Pa at 1e-4 m3/s like heads of 8 mm: 1000 / head of it
        double wanted = 20 + 1000 / HEAD_PA;
        assertThat(answer.nearest().orElseThrow().inside()).isCloseTo(wanted, within(1e-3 * wanted));
        HowFar flow = ask(two, "left leg 1.K", "left leg flow 3600 L/h");
        // ten times the flow is a hundred times the head
        double most = 300e3 / (100 * HEAD_PA);
        assertThat(flow.nearest().orElseThrow().inside()).isCloseTo(most, within(1e-6 * most));
        assertThatThrownBy(() -> ask(two, "left leg 1.K", "left leg flow equal to main pressure"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("left leg flow and main pressure are no like figures")
                .hasMessageContaining("Compare two pressures or two flows");
        assertThatThrownBy(() -> ask(two, "left leg 1.K", "left leg pressure 3 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("a run has no pressure")
                .hasMessageContaining("Write \"left leg flow\"");
        assertThatThrownBy(() -> ask(two, "left leg 1.K", "nothing near this 3 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("names nothing here")
                .hasMessageContaining("Points, devices and runs here: main, left, right, cooler, left leg, right leg");
        assertThatThrownBy(() -> ask(two, "left leg 1.K", "cooler colour 3 kPa"))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("there is no limit on \"colour\" here. Limits here: ");
        HowFar drop = ask(two, "right leg 1.K", "cooler drop 5 kPa");
        assertThat(drop.nearest()).isPresent();
        // the cooler takes 5 of 300 kPa: the rest is lost before it
        double share = 1000 / HEAD_PA * 295 / 5;
        assertThat(drop.nearest().orElseThrow().inside()).isCloseTo(share, within(2e-3 * share));
    }

    @Test
    void withoutALimitThereIsNothingToAsk() {
        assertThatThrownBy(() -> ask(line(""), "line 1.K", ""))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining("no limit can be judged, so nothing says how far is too far")
                .hasMessageContaining("Give the file a limit, or ask for a target");
    }

    @Test
    void aFlowThatCannotGetThereIsRefusedAndSaidWhy() {
        HowFar answer = ask(line("limits: {tap: {pressure: at least -95 kPa}}\n"), "tap.takes", "");
        HowFar.Edge edge = answer.stretch().orElseThrow().high();
        // 395 kPa of loss: sqrt(395e3 / (10 heads)) times the flow
        double most = 1e-4 * Math.sqrt(395e3 / (10 * HEAD_PA));
        assertThat(edge.kind()).isEqualTo(HowFar.Kind.ROOT);
        assertThat(edge.inside()).isCloseTo(most, within(1e-6 * most));
        HowFar refused = ask(line("limits: {main: {pressure: at least 100 kPa}}\n"), "tap.takes", "");
        HowFar.Edge why = refused.stretch().orElseThrow().high();
        assertThat(why.kind()).isEqualTo(HowFar.Kind.REFUSED);
        // all of 300 kPa and the atmosphere: 401.325 kPa
        double all = 1e-4 * Math.sqrt(401_325 / (10 * HEAD_PA));
        assertThat(why.inside()).isCloseTo(all, within(1e-6 * all));
        assertThat(refused.sentence(Display.METRIC))
                .startsWith("tap.takes can be at most ")
                .contains(" More is refused: not physical: ");
    }

    @Test
    void everyDimensionIsSteppedInItsOwnWay() {
        Circuit circuit = line("limits: {tap: {pressure: at least 1 kPa}}\n");
        HowFar pressure = ask(circuit, "main.pressure", "");
        // 8 % of 300 kPa a step
        assertThat(pressure.to()).isCloseTo(300e3 + 24 * 24e3, within(1e-3));
        assertThat(pressure.stretch().orElseThrow().from()).isCloseTo(1e3 + 10 * HEAD_PA, within(1.0));
        HowFar bore = ask(circuit, "line 1.bore", "");
        double least = 0.008 * Math.pow(10 * HEAD_PA / 299e3, 0.25);
        assertThat(bore.stretch().orElseThrow().from()).isCloseTo(least, within(1e-7 * least));
        assertThat(bore.sentence(Display.METRIC)).startsWith("line 1.bore can be at least 3.838 mm (8 mm now).");
        assertThat(bore.sentence(Display.US)).startsWith("line 1.bore can be at least 0.1511 in (0.315 in now).");
    }

    @Test
    void targetsMayBeNothingOrUnderIt() {
        double nothing = 300e3 / HEAD_PA;
        HowFar zero = ask(line(""), "line 1.K", "tap pressure 0 kPa");
        assertThat(zero.nearest().orElseThrow().inside()).isCloseTo(nothing, within(1e-6 * nothing));
        HowFar under = ask(line(""), "line 1.K", "tap pressure -20 kPa");
        assertThat(under.nearest().orElseThrow().inside()).isCloseTo(320e3 / HEAD_PA, within(1e-6 * nothing));
        assertThat(under.sentence(Display.METRIC)).contains(" gives tap pressure -20 kPa; it is 10 x now.");
        // all there is to lose leaves a vacuum: the nearest is the last that could be solved
        HowFar beyond = ask(line(""), "line 1.K", "tap pressure -150 kPa");
        assertThat(beyond.edges()).isEmpty();
        assertThat(beyond.best().si()).isBetween(401_325 / HEAD_PA / 1.25, 401_325 / HEAD_PA);
        assertThat(beyond.best().score()).as("still over it").isPositive();
    }

    @Test
    void temperatureAndAltitudeHaveStepsOfTheirOwn() {
        Circuit circuit = line("limits: {tap: {pressure: at most 400 kPa}}\n");
        HowFar warm = ask(circuit, "temperature", "");
        double least = Knob.of(circuit, "temperature").least();
        double most = Knob.of(circuit, "temperature").most();
        assertThat(warm.from()).isCloseTo(Math.max(least, 293.15 - 24 * 6), within(1e-9));
        assertThat(warm.to()).isCloseTo(Math.min(most, 293.15 + 24 * 6), within(1e-9));
        HowFar high = ask(circuit, "altitude", "");
        assertThat(high.to()).isCloseTo(24 * 250, within(1e-9));
        assertThat(high.sentence(Display.METRIC)).startsWith("altitude can be ");
    }

    private static final String CASES = """
            this case: usual
            limits: {tap: {pressure: at least 250 kPa}}
            cases:
              more: {tap: {takes: 720 L/h}}
              other: {line 1: {K: 3 x}}
            """;

    @Test
    void everyCaseHasToHold() {
        Circuit circuit = line(CASES);
        // twice the flow has four times the head
        double most = 50e3 / (4 * HEAD_PA);
        HowFar answer = ask(circuit, "line 1.K", "");
        assertThat(answer.stretch().orElseThrow().to()).isCloseTo(most, within(1e-7 * most));
        assertThat(answer.stretch().orElseThrow().high().decides().caseName()).isEqualTo("more");
        assertThat(answer.holdsNow()).isFalse();
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo(
                        "Not as it is: line 1.K must be at most 7.896 x (10 x now). More breaks tap pressure at more. Not"
                                + " moved in other: the case gives line 1.K a value of its own. Ask with --case.");
        HowFar one = HowFar.of(circuit, new HowFar.Question("line 1.K", List.of("usual"), ""));
        assertThat(one.stretch().orElseThrow().to()).isCloseTo(4 * most, within(1e-6 * most));
        assertThat(one.notes()).isEmpty();
        HowFar other = HowFar.of(circuit, new HowFar.Question("line 1.K", List.of("other"), ""));
        assertThat(other.knob().si())
                .as("a case alone is moved from its own value")
                .isEqualTo(3);
    }

    @Test
    void theWorstOfTheBoresSoldIsSaid() {
        Circuit hose = CircuitFile.read(
                TEXT.replace("{law: K, K: 10 x, bore: 8 mm}", "{hose: race PTFE -6, length: 2 m, ends: none to none}")
                        + "limits: {tap: {pressure: at least 290 kPa}}\n",
                "hose.yaml");
        HowFar answer = ask(hose, "line 1.length", "");
        HowFar.Edge edge = answer.stretch().orElseThrow().high();
        // 10 cSt flow laminar: friction goes by the fourth power of the bore
        double usual = hose.catalogue().hose("race PTFE -6").boreM().value();
        double small = hose.catalogue().hose("race PTFE -6").boreM().low();
        double shorter = edge.inside() * Math.pow(small / usual, 4);
        assertThat(edge.atLeastSi()).isCloseTo(shorter, within(1e-3 * shorter));
        assertThat(answer.sentence(Display.METRIC))
                .contains(" More breaks tap pressure. With the worst of the bores sold it is ")
                .endsWith(" m.");
        assertThat(HowFar.Kind.values()).extracting(HowFar.Kind::word).containsExactly("root", "jump", "refused");
    }
}
