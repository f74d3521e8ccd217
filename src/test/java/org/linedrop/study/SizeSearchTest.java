package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.CaseResult;
import org.linedrop.study.SizeQuestion.Objective;
import org.linedrop.study.kit.OwnFigures;
import org.linedrop.units.Display;

/** Sizes of small invented lines: what a set holds, weighs and costs by hand; that it holds and the next less does not. */
class SizeSearchTest {
    private static final String HEAD = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 1 cSt}
            this case: usual
            """;

    private static Circuit one(String hose, double leastKPa) {
        return CircuitFile.read(HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  tap: {kind: draw, takes: 360 L/h, height: 0 m, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{hose: %s -8, length: 2 m, ends: straight to straight}]}
                limits: {tap: {pressure: at least %s kPa}}
                cases:
                  more: {tap: {takes: 500 L/h}}
                """.formatted(hose, leastKPa), "one.yaml");
    }

    private static final String HOSE = "{hose: MIL-H-8794 -6, length: 2 m, ends: straight to straight}";

    private static Circuit fork(double tap, double far, double leastKPa) {
        return CircuitFile.read(HEAD + """
                points:
                  main: {kind: held, pressure: 300 kPa, height: 0 m}
                  mid: {kind: joint, height: 0 m}
                  tap: {kind: draw, takes: %s L/h, height: 0 m, bore: vessel}
                  far: {kind: draw, takes: %s L/h, height: 0 m, bore: vessel}
                runs:
                  feed: {from: main, to: mid, parts: [%s]}
                  left: {from: mid, to: tap, parts: [%s]}
                  right: {from: mid, to: far, parts: [%s]}
                limits: {tap: {pressure: at least %s kPa}, far: {pressure: at least %s kPa}}
                """.formatted(tap, far, HOSE, HOSE, HOSE, leastKPa, leastKPa), "fork.yaml");
    }

    private static OwnFigures.Row price(String item, double amount) {
        return new OwnFigures.Row(item, OwnFigures.Per.NOT_SAID, amount, Double.NaN, Double.NaN);
    }

    private static SizeAnswer ask(
            Circuit circuit, Objective by, List<Integer> dashes, int most, int more, OwnFigures.Row... prices) {
        return SizeSearch.of(
                circuit,
                new SizeQuestion(by, List.of(), List.of(), dashes, new OwnFigures("", List.of(prices)), most, more),
                Progress.NONE);
    }

    private static double fluidM3(Circuit circuit, String hose, double lengthM) {
        double bore = circuit.catalogue().hose(hose).boreM().value();
        return Math.PI / 4 * bore * bore * lengthM;
    }

    private static boolean holds(Circuit circuit, SizeAnswer.SizeSet set) {
        return circuit.caseNames().stream()
                .allMatch(name ->
                        CaseResult.of(circuit.in(name).with(set.changes())).holds());
    }

    @Test
    void theSmallestThatHoldsAndTheOneUnderIt() {
        Circuit circuit = one("MIL-H-8794", 275);
        SizeAnswer answer = ask(circuit, Objective.SMALLEST, List.of(4, 5, 6, 8, 10), 100, 2);
        assertThat(answer.exact()).isTrue();
        assertThat(answer.combinations()).isEqualTo(5);
        assertThat(answer.lookedAt()).isEqualTo(5);
        assertThat(answer.solved()).isEqualTo(5);
        assertThat(answer.sets()).extracting(SizeAnswer.SizeSet::words).containsExactly("line as written", "line -10");
        SizeAnswer.SizeSet first = answer.sets().get(0);
        assertThat(first.amount()).isCloseTo(fluidM3(circuit, "MIL-H-8794 -8", 2), within(1e-15));
        assertThat(first.volumeM3()).isEqualTo(first.amount());
        assertThat(answer.leastPossible()).isEqualTo(first.amount());
        assertThat(first.massKg()).as("nobody says what this hose weighs").isNaN();
        assertThat(first.changes()).isEmpty();
        assertThat(first.adaptersAdded()).isZero();
        SizeAnswer.SizeSet second = answer.sets().get(1);
        assertThat(second.adaptersAdded()).isEqualTo(2);
        assertThat(second.adaptersDropped()).isZero();
        assertThat(second.sealingFacesMore()).isEqualTo(4);
        assertThat(second.runs().get(0).added())
                .extracting(SizeAnswer.Fitting::words)
                .containsExactly("reducer -8 to -10", "reducer -10 to -8");
        assertThat(holds(circuit, first)).isTrue();
        assertThat(holds(circuit, second)).isTrue();
        assertThat(first.decisive().caseName()).isEqualTo("more");
        assertThat(answer.smaller()).hasSize(1);
        assertThat(answer.smaller().get(0).words()).isEqualTo("-6");
        assertThat(answer.sentence(Display.METRIC))
                .isEqualTo("Smallest set that holds every limit in every case: line as written (0.167 L of fluid). The"
                        + " limit that decides is tap pressure in case more, 18.1 kPa to spare. line in -6 breaks tap"
                        + " pressure in case more, 3.6 kPa short.");
        assertThat(answer.sentence(Display.US)).contains(" (0.044 US gal of fluid). ", ", 2.62 psi to spare.");
    }

    @Test
    void aSizeThatFailsOnlyAtWorstSaysSo() {
        Circuit circuit = one("race rubber", 275);
        SizeAnswer answer = ask(circuit, Objective.SMALLEST, List.of(4, 6), 100, 0);
        assertThat(answer.sets()).extracting(SizeAnswer.SizeSet::words).containsExactly("line as written");
        assertThat(answer.smaller().get(0).decisive().limit().margin()).isPositive();
        assertThat(answer.smaller().get(0).decisive().limit().marginLow()).isNegative();
        assertThat(answer.sentence(Display.METRIC))
                .contains("line in -6 breaks tap pressure in case more, ")
                .endsWith(" kPa short with the worst of what is sold.");
    }

    @Test
    void weightIsHoseAndFluid() {
        Circuit circuit = one("race PTFE", 250);
        SizeAnswer answer = ask(circuit, Objective.LIGHTEST, List.of(6, 10), 100, 2);
        HoseSize six = circuit.catalogue().hose("race PTFE -6");
        double mass = six.massKgPerM().value() * 2 + 800 * fluidM3(circuit, "race PTFE -6", 2);
        assertThat(answer.sets())
                .extracting(SizeAnswer.SizeSet::words)
                .containsExactly("line -6", "line as written", "line -10");
        assertThat(answer.sets().get(0).amount()).isCloseTo(mass, within(1e-12));
        assertThat(answer.sets().get(0).massKg()).isCloseTo(mass, within(1e-12));
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("Lightest set that holds every limit in every case: line -6 (")
                .contains(" kg). ", " It takes 2 adapters more and 0 less than as written, +4 sealing faces.");
        assertThat(answer.sentence(Display.US)).contains(" lb). ");
        Circuit tube = CircuitFile.read(
                HEAD
                        + """
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h, bore: vessel}
                runs:
                  steel: {from: main, to: tap, parts: [{tube: steel 1/2 in x 0.035 in, length: 2 m}, {tube: aluminium 1/2 in x 0.035 in, length: 1 m}, {tube: copper-nickel 1/2 in x 0.035 in, length: 1 m}]}
                limits: {tap: {pressure: at least 200 kPa}}
                """.replace("}, {tube: aluminium", "}, {union: -8}, {tube: aluminium")
                                .replace("}, {tube: copper", "}, {union: -8}, {tube: copper"),
                "tube.yaml");
        SizeAnswer.SizeSet metal =
                ask(tube, Objective.LIGHTEST, List.of(8), 10, 0).sets().get(0);
        double outside = 0.5 * 0.0254;
        double bore = (0.5 - 2 * 0.035) * 0.0254;
        double ring = Math.PI / 4 * (outside * outside - bore * bore);
        double fluid = Math.PI / 4 * bore * bore * 4;
        assertThat(metal.volumeM3()).isCloseTo(fluid, within(1e-12));
        assertThat(metal.massKg()).isCloseTo(ring * (2 * 7850 + 1 * 2700 + 1 * 8900) + 800 * fluid, within(1e-9));
    }

    @Test
    void costIsHoseEndsAndAdapters() {
        Circuit circuit = one("MIL-H-8794", 250);
        SizeAnswer answer = ask(
                circuit,
                Objective.CHEAPEST,
                List.of(6, 10),
                100,
                2,
                price("MIL-H-8794 -6", 10),
                price("MIL-H-8794 -8", 14),
                price("MIL-H-8794 -10", 30),
                price("hose end straight, MIL-H-8794 -6", 5),
                price("hose end straight, MIL-H-8794 -8", 5),
                price("hose end straight, MIL-H-8794 -10", 5),
                price("reducer -8 to -6", 1),
                price("reducer -10 to -8", 3));
        assertThat(answer.sets())
                .extracting(SizeAnswer.SizeSet::words)
                .containsExactly("line -6", "line as written", "line -10");
        // two metres, two ends, two reducers, named alike at both ends
        assertThat(answer.sets())
                .extracting(SizeAnswer.SizeSet::price)
                .containsExactly(2 * 10 + 2 * 5.0 + 2 * 1, 2 * 14 + 2 * 5.0, 2 * 30 + 2 * 5.0 + 2 * 3);
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("Cheapest set that holds every limit in every case: line -6 (32.00 by your prices).");
        SizeAnswer none = ask(circuit, Objective.CHEAPEST, List.of(6), 100, 0, price("MIL-H-8794 -6", 10));
        assertThat(none.sets()).isEmpty();
        assertThat(none.combinations()).isZero();
        assertThat(none.leftOut())
                .contains(
                        "hose end straight, MIL-H-8794 -6: no price is given",
                        "reducer -8 to -6: no price is given",
                        "line as written: a price is missing",
                        "line -6: a price is missing");
        SizeAnswer heavy = ask(circuit, Objective.LIGHTEST, List.of(6), 100, 0);
        assertThat(heavy.leftOut())
                .containsExactly(
                        "line as written: its mass per metre is not known", "line -6: its mass per metre is not known");
        assertThat(heavy.sentence(Display.METRIC))
                .isEqualTo("None of the 0 sets of sizes holds every limit in every case.");
    }

    @Test
    void whatCannotHoldSaysWhatStopsTheLargest() {
        SizeAnswer answer = ask(one("MIL-H-8794", 310), Objective.SMALLEST, List.of(6, 8, 10), 100, 0);
        assertThat(answer.exact()).isTrue();
        assertThat(answer.leastPossible()).isNaN();
        assertThat(answer.nearest().caseName()).isIn("usual", "more");
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("None of the 3 sets of sizes holds every limit in every case. With the largest sizes it is"
                        + " stopped by tap pressure in case ")
                .endsWith(" kPa short.");
        SizeAnswer cut = ask(one("MIL-H-8794", 310), Objective.SMALLEST, List.of(6, 8, 10), 1, 0);
        assertThat(cut.exact()).isFalse();
        assertThat(cut.sentence(Display.METRIC))
                .startsWith("No set of sizes was found that holds every limit in every case, after 1 of 3. With the");
    }

    @Test
    void whenTimeIsUpItStepsDownFromTheLargest() {
        Circuit circuit = one("MIL-H-8794", 275);
        SizeAnswer answer = ask(circuit, Objective.SMALLEST, List.of(4, 5, 6, 8, 10), 1, 0);
        assertThat(answer.exact()).isFalse();
        assertThat(answer.sets()).extracting(SizeAnswer.SizeSet::words).containsExactly("line as written");
        // -4 was looked at, -5 is the next
        assertThat(answer.leastPossible()).isCloseTo(fluidM3(circuit, "MIL-H-8794 -5", 2), within(1e-15));
        assertThat(answer.sentence(Display.METRIC))
                .endsWith(
                        " This set was found by stepping down from the largest; after 1 of 5 sets it is known only that"
                                + " nothing under 0.063 L of fluid holds.");
    }

    @Test
    void sizesNearThePresentOneAreTriedWhenNoneAreNamed() {
        SizeAnswer answer = ask(one("race PTFE", 275), Objective.SMALLEST, List.of(), 100, 20);
        // from three sizes up to two down of a -8: -5 is not made, the rest are
        assertThat(answer.leftOut())
                .allSatisfy(left ->
                        assertThat(left).startsWith("line -").endsWith(": not made, or no adapter for it is known"));
        assertThat(answer.sets().get(answer.sets().size() - 1).words()).isEqualTo("line -16");
        SizeAnswer families = SizeSearch.of(
                one("MIL-H-8794", 275),
                new SizeQuestion(
                        Objective.SMALLEST,
                        List.of("line"),
                        List.of("race PTFE", "MIL-H-8794"),
                        List.of(6, 8),
                        OwnFigures.NONE,
                        100,
                        3),
                Progress.NONE);
        assertThat(families.sets())
                .extracting(SizeAnswer.SizeSet::words)
                .containsExactly("line race PTFE -8", "line as written");
        assertThat(families.sentence(Display.METRIC)).contains(" line race PTFE -6 breaks tap pressure");
    }

    @Test
    void ofAForkEachRunGetsItsOwnSize() {
        Circuit circuit = fork(360, 100, 285);
        SizeAnswer answer = ask(circuit, Objective.SMALLEST, List.of(4, 5, 6, 8, 10), 5000, 1);
        assertThat(answer.combinations()).isEqualTo(125);
        SizeAnswer.SizeSet best = answer.sets().get(0);
        assertThat(best.words()).isEqualTo("feed -8, left -8, right -5");
        assertThat(best.volumeM3())
                .isCloseTo(
                        2 * fluidM3(circuit, "MIL-H-8794 -8", 2) + fluidM3(circuit, "MIL-H-8794 -5", 2), within(1e-12));
        assertThat(holds(circuit, best)).isTrue();
        assertThat(best.adaptersAdded()).as("none at the plain joint").isEqualTo(3);
        assertThat(answer.smaller()).extracting(SizeAnswer.Smaller::run).containsExactly("feed", "left", "right");
        // all sets under it were looked at, in rising order, and no more than needed
        SizeAnswer cut = ask(circuit, Objective.SMALLEST, List.of(4, 5, 6, 8, 10), 10, 0);
        assertThat(cut.lookedAt()).isEqualTo(10);
        assertThat(cut.exact()).isFalse();
        assertThat(cut.sets().get(0).words()).isEqualTo("feed -8, left -8, right -5");
        assertThat(cut.leastPossible()).isLessThan(best.amount());
        assertThat(SizeSearch.of(
                                circuit,
                                new SizeQuestion(
                                        Objective.SMALLEST,
                                        List.of("right"),
                                        List.of(),
                                        List.of(4, 8),
                                        OwnFigures.NONE,
                                        10,
                                        0),
                                Progress.NONE)
                        .sets())
                .as("a wider right leg does not widen the feed")
                .isEmpty();
    }

    @Test
    void inATreeMarginsAddUpAndSparesSolving() {
        // -4 passes these flows, so that what each run changes is known
        Circuit circuit = fork(120, 60, 296);
        SizeAnswer answer = ask(circuit, Objective.SMALLEST, List.of(4, 5, 6, 8), 5000, 0);
        assertThat(answer.combinations()).isEqualTo(64);
        assertThat(answer.exact()).isTrue();
        SizeAnswer.SizeSet best = answer.sets().get(0);
        assertThat(holds(circuit, best)).isTrue();
        assertThat(answer.solved()).isLessThan(answer.lookedAt());
        for (SizeAnswer.Smaller less : answer.smaller()) {
            assertThat(less.decisive()).isNotNull();
            assertThat(less.decisive().limit().marginLow()).isNegative();
        }
    }

    @Test
    void whatIsAskedWronglyIsSaid() {
        Circuit circuit = one("MIL-H-8794", 275);
        assertThatThrownBy(() -> SizeSearch.of(
                        circuit,
                        new SizeQuestion(
                                Objective.SMALLEST, List.of("lin"), List.of(), List.of(6), OwnFigures.NONE, 10, 0),
                        Progress.NONE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no run \"lin\" with a hose or a tube; there are line");
        assertThatThrownBy(() ->
                        new SizeQuestion(Objective.SMALLEST, List.of(), List.of(), List.of(), OwnFigures.NONE, 0, 0))
                .hasMessage("sets to look at must be at least 1 and runners-up at least 0, but are 0 and 0");
        assertThatThrownBy(() ->
                        new SizeQuestion(Objective.SMALLEST, List.of(), List.of(), List.of(), OwnFigures.NONE, 1, -1))
                .isInstanceOf(IllegalArgumentException.class);
        Progress stop = new Progress() {
            @Override
            public void at(long done, long all) {
                assertThat(done).isBetween(1L, all);
            }

            @Override
            public boolean cancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> SizeSearch.of(circuit, SizeQuestion.of(Objective.SMALLEST), stop))
                .isInstanceOf(CancellationException.class)
                .hasMessage("told to stop");
        assertThat(Objective.values()).extracting(Objective::word).containsExactly("smallest", "lightest", "cheapest");
    }

    @Test
    void aLiningThatIsNotForTheFluidIsLeftOut() {
        Circuit circuit = CircuitFile.read("""
                linedrop: 1
                fluid: E85 summer
                temperature: 20 C
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h, bore: vessel}
                runs:
                  line: {from: main, to: tap, parts: [{hose: race PTFE -8, length: 2 m, ends: straight to straight}]}
                limits: {tap: {pressure: at least 250 kPa}}
                """, "e85.yaml");
        SizeAnswer answer = SizeSearch.of(
                circuit,
                new SizeQuestion(
                        Objective.SMALLEST,
                        List.of(),
                        List.of("race rubber", "race PTFE"),
                        List.of(6),
                        OwnFigures.NONE,
                        100,
                        5),
                Progress.NONE);
        assertThat(answer.leftOut())
                .containsExactly("line in race rubber: its liner (CPE) is not recommended for E85 summer");
        assertThat(answer.sets())
                .extracting(SizeAnswer.SizeSet::words)
                .containsExactly("line race PTFE -6", "line as written");
    }
}
