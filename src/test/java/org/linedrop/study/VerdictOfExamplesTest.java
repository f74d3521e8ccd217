package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Display;

/** Whole sentences of single cases of the examples, each with what no smaller circuit has. */
class VerdictOfExamplesTest {
    private static CaseCheck check(String example, String caseName, Change... changes) {
        Circuit circuit = Examples.circuit(example);
        return CaseJudge.check(circuit.in(caseName).with(List.of(changes)));
    }

    @Test
    void brakesAreNotJudged() {
        assertThat(check("brakes.yaml", "quick stop").sentence(Display.METRIC))
                .isEqualTo("quick stop: volume, flow and swell only; brakes are not for us to judge.");
    }

    @Test
    void aReturnLineThatIsTooNarrow() {
        CaseCheck check = check("return-style.yaml", "idle -4 line");
        // 309 of the line and 34 of the regulator less 2 of height are 341; 258 was asked for
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo(
                        "RETURN-LIMITED: at idle -4 line the regulator cannot come below 341.4 kPa, 84 over its 257.8"
                                + " kPa setting; 309 of that is its return line, 34 the open regulator, less 2.3 of height."
                                + " Smallest change that holds: the return line (return 3) in 5/16 in x 0.035 in: it comes to"
                                + " 258.9 kPa and in control.");
        assertThat(check.sentence(Display.US))
                .startsWith(
                        "RETURN-LIMITED: at idle -4 line the regulator cannot come below 49.52 psi, 12 over its 37.39"
                                + " psi setting; 45 of that is its return line, 5.0 the open regulator, less 0.3 of height.");
    }

    @Test
    void aPumpThatSpillsIsNotTheTrouble() {
        assertThat(check("fuel-feed-516.yaml", "low volts").sentence(Display.METRIC))
                .isEqualTo(
                        "UNDERSIZED: at low volts the rail gets 362.7 kPa, 12.3 kPa short of 375.0; the old hard line"
                                + " (feed 4) takes 25 of the 37 kPa lost on the way. Smallest change that holds: the old hard"
                                + " line (feed 4) in 3/8 in x 0.028 in, which also drops one adapter and makes the other a plain"
                                + " union: 380.6 kPa, 5.6 kPa to spare (2.6 kPa with the smallest bores sold). The pump is not"
                                + " the trouble: it spills 42 L/h. 4.1 kPa is height; no hose saves that.");
    }

    @Test
    void drawsAreSaidAsBuiltAndMended() {
        Circuit feed = Examples.circuit("first-feed.yaml");
        CaseCheck check = FeedCheck.of(feed, feed.caseNames()).cases().get(0);
        assertThat(check.sentence(Display.METRIC))
                .isEqualTo(
                        "UNDERSIZED: the rail gets 292.4 kPa, 1.6 kPa short of 294.0; feed 1 takes 3.8 of the 7.3 kPa"
                                + " lost on the way. Smallest change that holds: feed 1 in -8: 295.3 kPa, 1.3 kPa to spare (1.0"
                                + " kPa with the smallest bores sold). It then holds up to 490 kW (657 hp), surely to 429 kW (575"
                                + " hp). 3.6 kPa is height; no hose saves that. As built it holds up to 242 kW (325 hp), surely"
                                + " to 211 kW (283 hp); beyond it rail pressure is past its limit.");
        Circuit pot = Examples.circuit("surge-pot.yaml");
        assertThat(FeedCheck.of(pot, List.of("full load")).cases().get(0).sentence(Display.METRIC))
                .startsWith("OVERSIZED: at full load every limit holds; nearest is rail pressure over manifold at 309.7"
                        + " kPa, 24.7 kPa to spare (24.6 kPa with the largest bores sold). It would also hold one size"
                        + " smaller everywhere. It holds up to 562 kW (754 hp); beyond it demand not met: ")
                .endsWith(" A bigger pump or valve on that way, or less drawn.");
    }

    @Test
    void aRegulatorThatLosesControlEndsWhatCanBeDrawn() {
        Circuit circuit = Examples.circuit("return-style.yaml");
        CaseCheck check = FeedCheck.of(circuit, List.of("boost")).cases().get(0);
        assertThat(check.sentence(Display.METRIC))
                .endsWith(" It holds up to 371 L/h; beyond it the regulator is not in control.");
    }

    @Test
    void theFluidDecides() {
        assertThat(check("own-hose.yaml", "warm").sentence(Display.METRIC))
                .isEqualTo(
                        "UNSURE: at warm the back gets 283.6 kPa, 3.6 kPa inside the limit at usual bores but 10.6 kPa"
                                + " outside it with the worst of what is sold as engine oil 10W-40. The fluid decides: name its"
                                + " grade or class more closely, or measure.");
        assertThat(check("power-steering.yaml", "cold start").sentence(Display.METRIC))
                .isEqualTo(
                        "UNSURE: at cold start the cooler's inlet pressure is 245.7 kPa, 45.7 kPa over 200.0 at usual"
                                + " bores but 46.6 kPa inside the limit with the best of what is sold as power steering fluid"
                                + " ATF type. The fluid decides: name its grade or class more closely, or measure. No change of"
                                + " size up to two sizes, of one line or of all on the way, holds.");
    }

    @Test
    void flowsHaveTheirOwnUnitsAndBores() {
        assertThat(check("breather.yaml", "one -12").sentence(Display.METRIC))
                .isEqualTo(
                        "UNSURE: at one -12 the catch can's flow is 209.8 L/min, 16.2 L/min short of 226.0 at usual bores"
                                + " but 4.3 L/min inside the limit with the largest bores sold. Measure the hose-end bore of race"
                                + " rubber -12 first and write \"end bore: ... measured\". Smallest change that holds: breather 1"
                                + " in -16: 418.0 L/min, 192.0 L/min to spare (149.9 L/min with the smallest bores sold).");
        assertThat(check("front-radiator.yaml", "-4 feed").sentence(Display.METRIC))
                .endsWith(
                        " outside it with the smallest bores sold. Measure the bore of coolant hose 1-1/4 in first and"
                                + " write \"bore: ... measured\".");
        assertThat(check("front-radiator.yaml", "1 in tube").sentence(Display.METRIC))
                .contains(": 131.0 L/min, 11.0 L/min to spare (10.5 L/min with the largest bores sold).");
    }

    @Test
    void whatBoilsBeforeThePumpIsShortThere() {
        CaseCheck check = check("fuel-feed-38.yaml", "full load", Change.of("temperature", "60 C"));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.SHORT_AT_THE_INLET);
        assertThat(check.sentence(Display.METRIC))
                .startsWith("SHORT AT THE INLET: at full load ")
                .contains(" on the way into the pump: ", "boils")
                .endsWith(". A wider or shorter line, a higher or cooler tank, or a pump in the tank would help.");
    }

    @Test
    void heightAndSpareFlowAreNamed() {
        assertThat(check("two-carburettors.yaml", "launch and dirt").sentence(Display.METRIC))
                .isEqualTo("STARVED: at launch and dirt the left bowl gets -2.3 kPa, 2.3 kPa short of 0.0. 20.5 kPa is"
                        + " height and acceleration; no hose saves that. With no line loss at all it would still be 1.5"
                        + " kPa off.");
        assertThat(check("fuel-feed-38.yaml", "full load", Change.limit("pump", "spare flow", "at least 80 %"))
                        .sentence(Display.METRIC))
                .startsWith("PUMP SHORT: not the line: at full load the pump has ")
                .contains(" % of flow to spare, ", " % short of 80");
        assertThat(check("carburettor-feed.yaml", "launch").sentence(Display.METRIC))
                .isEqualTo(
                        "ADEQUATE: at launch every limit holds; nearest is front carb pressure at 14.8 kPa, 0.8 kPa to"
                                + " spare (0.7 kPa with the smallest bores sold).");
    }
}
