package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.CaseResult;
import org.linedrop.result.Verdict;
import org.linedrop.units.Display;

class FeedCheckTest {
    private static CaseCheck first(Circuit circuit) {
        return FeedCheck.of(circuit, List.of(circuit.caseNames().get(0)))
                .cases()
                .get(0);
    }

    @Test
    void anOldNarrowLineIsUndersizedAndNamed() {
        CaseCheck check = first(Examples.circuit("fuel-feed-516.yaml"));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.UNDERSIZED);
        assertThat(check.culprit()).isNotNull();
        assertThat(check.culprit().part()).isEqualTo("old hard line");
        assertThat(check.sentence(Display.METRIC))
                .startsWith("UNDERSIZED: at full load the rail gets ")
                .contains("kPa short of 375.0", "old hard line (feed 4)", "Smallest change that holds", "3/8 in")
                .contains("The pump is not the trouble");
        assertThat(check.sentence(Display.US)).contains(" psi short of ").doesNotContain("kPa");
    }

    @Test
    void whatHoldsInEveryCaseIsSaidOnceAndTheTightestCaseNamed() {
        FeedCheck check = FeedCheck.of(Examples.circuit("fuel-feed-38.yaml"));
        List<FeedCheck.Said> said = check.said(Display.METRIC);
        assertThat(said).hasSize(1);
        assertThat(said.get(0).cases()).isEqualTo(check.cases());
        assertThat(said.get(0).sentence())
                .startsWith("ADEQUATE: in every case every limit holds; nearest is rail pressure at ")
                .contains(", in case full load.")
                .contains("tightest in case low volts");
        double least = check.cases().stream()
                .filter(each -> each.draw() != null)
                .mapToDouble(each -> each.draw().usualSi())
                .min()
                .orElseThrow();
        assertThat(said.get(0).sentence()).contains(String.format(java.util.Locale.ROOT, "%.0f kW", least / 1000));
    }

    @Test
    void aSecondCaseThatFallsShortLikewiseSaysOnlyWhatDiffers() {
        FeedCheck check = FeedCheck.of(Examples.circuit("fuel-feed-516.yaml"));
        List<FeedCheck.Said> said = check.said(Display.METRIC);
        assertThat(said).hasSize(3);
        assertThat(said.get(0).sentence()).isEqualTo(check.cases().get(0).sentence(Display.METRIC));
        assertThat(said.get(1).sentence())
                .startsWith("UNDERSIZED at low volts too: the rail gets ")
                .contains("The same change brings it to ")
                .doesNotContain("old hard line");
        assertThat(said.get(1).sentence().length())
                .isLessThan(check.cases().get(1).sentence(Display.METRIC).length() * 2 / 3);
        assertThat(said.get(2).sentence()).startsWith("ADEQUATE: at hot idle");
    }

    private static String deadHead(String pump) {
        Circuit circuit = CircuitFile.read("""
                linedrop: 1
                fluid: E10
                temperature: 30 C
                points:
                  tank: {kind: tank}
                  rail: {kind: draw, takes: 80 L/h}
                devices:
                  pump: {kind: pump, runs at: 13.5 V, %s}
                  filter: {kind: filter, drop: 20 kPa at 200 L/h}
                  regulator: {kind: dead-head regulator, holds: 300 kPa over air}
                runs:
                  feed:
                    from: tank
                    to: rail
                    parts:
                      - {through: pump}
                      - {through: filter}
                      - {hose: race PTFE -6, length: 3 m, ends: straight to straight}
                      - {through: regulator}
                limits:
                  rail: {pressure: at least 293 kPa}
                """.formatted(pump), "feed.yaml");
        return first(circuit).sentence(Display.METRIC);
    }

    @Test
    void aPumpKnownByOnePointIsAskedBeforeALineIsChanged() {
        assertThat(deadHead("gives: 255 L/h at 300 kPa"))
                .startsWith("UNSURE: ")
                .contains("the pump is known by one point", "Give the pump its curves")
                .doesNotContain("Smallest change", "Measure");
    }

    @Test
    void aPumpOutsideItsTableIsSaidWithTheAnswer() {
        assertThat(deadHead("curves: [{at: 13.5 V, pressure: 0 300 400 kPa, flow: 300 255 240 L/h}]"))
                .contains("The pump is outside its table there (over its highest pressure)");
        assertThat(deadHead("curves: [{at: 13.5 V, pressure: 0 300 800 kPa, flow: 300 255 40 L/h}]"))
                .doesNotContain("outside its table");
    }

    @Test
    void theChangeNamedWasSolvedAndHolds() {
        Circuit circuit = Examples.circuit("fuel-feed-516.yaml");
        CaseCheck.Mend mend = first(circuit).mend();
        assertThat(mend).isNotNull();
        CaseResult again = CaseResult.of(circuit.with(mend.changes()));
        assertThat(again.limits()).allSatisfy(row -> assertThat(row.margin()).isPositive());
        assertThat(again.circuit().runs().get(1).parts())
                .as("one adapter falls away, the other becomes a union between two nuts")
                .hasSize(5);
    }

    @Test
    void theSameFeedInThreeEighthsIsAdequateInEveryDutyCase() {
        FeedCheck check = FeedCheck.of(Examples.circuit("fuel-feed-38.yaml"));
        assertThat(check.cases())
                .extracting(CaseCheck::verdict)
                .containsOnly(CaseVerdict.ADEQUATE); // one size smaller breaks the usual limit at the pump's inlet
        assertThat(check.cases()).allSatisfy(c -> assertThat(c.result().holds()).isTrue());
        assertThat(check.cases().get(0).verdict()).isEqualTo(CaseVerdict.ADEQUATE);
    }

    @Test
    void aLimitBetweenTheBoresSoldIsUnsure() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml");
        CaseResult three = CaseResult.of(feed);
        double usual = three.usual().point("rail").orElseThrow().staticPressurePa();
        double small = three.smallest().point("rail").orElseThrow().staticPressurePa();
        String between = "at least " + (usual + small) / 2000 + " kPa";
        CaseCheck check = first(feed.with(List.of(Change.limit("rail", "pressure", between))));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.UNSURE);
        assertThat(check.sentence(Display.METRIC))
                .contains("with the smallest bores sold", "Measure the ", " first and write \"");
        assertThat(check.result().limits().get(0).verdict()).isEqualTo(Verdict.UNSURE);
    }

    @Test
    void aPumpThatIsTooSmallIsNotBlamedOnTheLine() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml");
        CaseCheck check = first(feed.with(List.of(Change.limit("pump", "spare flow", "at least 80 %"))));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.PUMP_SHORT);
        assertThat(check.mend()).isNull();
        assertThat(check.sentence(Display.METRIC)).startsWith("PUMP SHORT: not the line: ");
    }

    @Test
    void accelerationIsNotBlamedOnTheLine() {
        Circuit feed = Examples.circuit("carburettor-feed.yaml");
        CaseCheck check = first(feed.with(List.of(Change.of("motion", "launch 1.2 g"))));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.STARVED);
        assertThat(check.sentence(Display.METRIC)).contains("height and acceleration", "no hose saves that");
    }

    @Test
    void fuelThatBoilsBeforeThePumpIsNotCalledAdequate() {
        Circuit feed = Examples.circuit("fuel-feed-38.yaml");
        CaseCheck check = first(feed.with(List.of(Change.of("temperature", "60 C"))));
        assertThat(check.verdict()).isEqualTo(CaseVerdict.SHORT_AT_THE_INLET);
        assertThat(check.result().holds()).isFalse();
        assertThat(check.sentence(Display.METRIC)).contains("boils", "on the way into the pump");
    }

    @Test
    void aFluidThatDecidesIsNotBlamedOnTheBores() {
        Circuit oil = Examples.circuit("own-hose.yaml").in("warm");
        CaseCheck check = FeedCheck.of(oil, List.of("warm")).cases().get(0);
        assertThat(check.verdict()).isEqualTo(CaseVerdict.UNSURE);
        assertThat(check.sentence(Display.METRIC))
                .contains("with the worst of what is sold as engine oil 10W-40", "The fluid decides")
                .doesNotContain("bores sold");
    }

    @Test
    void withoutALimitThereIsNoVerdict() {
        Circuit bare = Circuit.of(
                Tree.of("linedrop", "1", "fluid", "water", "temperature", "20 C")
                        .with(
                                "points",
                                Tree.of()
                                        .with("a", Tree.of("kind", "held", "pressure", "10 kPa"))
                                        .with("b", Tree.of("kind", "draw", "takes", "60 L/h")))
                        .with(
                                "runs",
                                Tree.of()
                                        .with(
                                                "r",
                                                Tree.of("from", "a", "to", "b")
                                                        .with(
                                                                "parts",
                                                                Tree.items(Tree.of(
                                                                        "hose",
                                                                        "race PTFE -6",
                                                                        "length",
                                                                        "1 m",
                                                                        "ends",
                                                                        "none"))))),
                "");
        assertThat(first(bare).verdict()).isNull();
        assertThat(first(bare).sentence(Display.METRIC)).startsWith("NO VERDICT");
    }
}
