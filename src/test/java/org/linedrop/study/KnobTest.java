package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Engine;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fact.Status;
import org.linedrop.result.CaseResult;
import org.linedrop.units.Dimension;

class KnobTest {
    private static final Circuit CARBURETTOR = Examples.circuit("carburettor-feed.yaml");
    private static final Circuit FEED = Examples.circuit("fuel-feed-516.yaml");

    @Test
    void valueUnitAndRangeComeFromTheKeyTable() {
        Knob length = Knob.of(FEED, "feed 1.length");
        assertThat(length.si()).isEqualTo(0.5);
        assertThat(length.dimension()).isEqualTo(Dimension.LENGTH);
        assertThat(length.least()).isEqualTo(1e-3);
        assertThat(length.most()).isEqualTo(30);
        assertThat(Knob.of(FEED, "engine.power").dimension()).isEqualTo(Dimension.POWER);
        assertThat(Knob.of(FEED, "temperature").si()).isEqualTo(313.15);
    }

    @Test
    void aBoreOfTheCatalogueIsAKeyOfItsHose() {
        Knob bore = Knob.of(FEED, "feed 1.bore");
        Hose hose = hose(FEED, "feed 1");
        assertThat(bore.figure()).isEqualTo(hose.size().boreM());
        assertThat(bore.said()).isFalse();
        Hose moved = hose(bore.in(FEED, 0.00801234567), "feed 1");
        assertThat(moved.size().boreM().value()).isEqualTo(0.00801234567);
        assertThat(moved.size().boreM().high() - moved.size().boreM().low())
                .as("what is sold varies as before")
                .isCloseTo(
                        hose.size().boreM().high() - hose.size().boreM().low(),
                        org.assertj.core.api.Assertions.within(1e-15));
        assertThat(moved.size().boreM().status()).isEqualTo(Status.GUESSED);
    }

    @Test
    void theBoreOfATubeMovesItsWall() {
        Knob bore = Knob.of(FEED, "old hard line.bore");
        Tube tube = (Tube) part(bore.in(FEED, 0.0066), "old hard line");
        assertThat(tube.size().boreM().value()).isEqualTo(0.0066);
        assertThat(tube.size().outsideDiameterM()).isEqualTo(0.0079375);
        assertThat(Knob.of(FEED, "feed 4.bore").path())
                .as("a part by run and number")
                .isEqualTo("old hard line.bore");
    }

    @Test
    void everyKnobOfEveryExampleReadsBackItsNumberBitForBit() {
        SplittableRandom random = new SplittableRandom(9);
        for (String file : Examples.names()) {
            Circuit circuit = Examples.circuit(file);
            for (Knob knob : Knob.all(circuit)) {
                if (knob.key().equals("table")) {
                    continue; // a factor on the tables as they are written: 1 again when it was turned
                }
                double low = Math.max(knob.least(), knob.si() - 0.05 * Math.abs(knob.si()) - 1e-6);
                double high = Math.min(knob.most(), knob.si() + 0.05 * Math.abs(knob.si()) + 1e-6);
                double wanted = low + (high - low) * random.nextDouble();
                Circuit moved = knob.in(circuit, wanted);
                Knob again = Knob.of(moved, knob.path());
                assertThat(again.si()).as(file + " " + knob.path()).isEqualTo(wanted);
                assertThat(Knob.of(again.in(moved, knob.si()), knob.path()).si())
                        .as("and back: " + knob)
                        .isEqualTo(knob.si());
            }
        }
    }

    @Test
    void turningAKnobToWhereItStandsChangesNoResult() {
        CaseResult was = CaseResult.of(FEED);
        for (Knob knob : Knob.all(FEED)) {
            CaseResult same = CaseResult.of(knob.in(FEED, knob.si()));
            for (int i = 0; i < was.limits().size(); i++) {
                assertThat(same.limits().get(i).margin())
                        .as(knob.path())
                        .isEqualTo(was.limits().get(i).margin());
                assertThat(same.limits().get(i).marginLow())
                        .as(knob.path())
                        .isEqualTo(was.limits().get(i).marginLow());
            }
        }
    }

    @Test
    void aCompoundValueKeepsWhatElseItSays() {
        Circuit moved = Knob.of(CARBURETTOR, "fine filter.drop").in(CARBURETTOR, 1234.5);
        Resistance was = (Resistance) CARBURETTOR.device("fine filter").orElseThrow();
        Resistance filter = (Resistance) moved.device("fine filter").orElseThrow();
        assertThat(filter.rated().drop().value()).isEqualTo(1234.5);
        assertThat(filter.rated().flow()).isEqualTo(was.rated().flow());
        Resistance dirty = (Resistance) Knob.of(CARBURETTOR, "fine filter.clog")
                .in(CARBURETTOR, 5)
                .device("fine filter")
                .orElseThrow();
        assertThat(dirty.clog().value()).isEqualTo(5);
    }

    @Test
    void theTableOfAPumpIsMovedByAFactorOnItsFlows() {
        Pump was = (Pump) FEED.device("pump").orElseThrow();
        Pump larger =
                (Pump) Knob.of(FEED, "pump.table").in(FEED, 1.25).device("pump").orElseThrow();
        for (int i = 0; i < was.table().flowM3PerS().size(); i++) {
            assertThat(larger.table().flowM3PerS().get(i))
                    .isEqualTo(1.25 * was.table().flowM3PerS().get(i));
        }
        assertThat(larger.table().risePa()).isEqualTo(was.table().risePa());
    }

    @Test
    void aPumpRunsWithinItsTables() {
        Knob volts = Knob.of(CARBURETTOR, "pump.runs at");
        Pump pump = (Pump) CARBURETTOR.device("pump").orElseThrow();
        assertThat(volts.least()).isEqualTo(pump.curves().get(0).at());
        assertThatThrownBy(() -> volts.to(volts.most() * 2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pump.runs at must be");
    }

    @Test
    void theKnobOfACaseIsTheCases() {
        for (String name : CARBURETTOR.caseNames()) {
            Circuit here = CARBURETTOR.in(name);
            Resistance filter = (Resistance) here.device("fine filter").orElseThrow();
            assertThat(Knob.of(here, "fine filter.clog").si())
                    .isEqualTo(filter.clog().value());
        }
    }

    @Test
    void powerReplacesAFlow() {
        Circuit flow = FEED.with(List.of(Change.of("engine", "flow", "200 L/h")));
        Engine engine = Knob.of(flow, "engine.flow").in(flow, 1e-4).engine();
        assertThat(engine).isNotNull();
        assertThat(engine.flowM3PerS()).isNotNull();
        assertThat(engine.flowM3PerS().value()).isEqualTo(1e-4);
    }

    @Test
    void whatIsNotThereIsSaidWithTheNearestName() {
        assertProblem("fed 1.length", "no element \"fed 1\"", "Did you mean feed 1?");
        assertProblem("feed 1.lenght", "no key \"lenght\" of feed 1", "Did you mean length?");
        assertProblem(
                "feed 1.ends", "ends of feed 1 holds no single number", "Keys with one number: length, bore, end bore");
        assertProblem("feed 1", "is an element", "Write feed 1. and one of: length");
        assertProblem("fluid", "fluid of the file itself holds no single number", "temperature");
        assertProblem("feed 1.loss factor", "the circuit gives no loss factor of feed 1", "Give it a value");
    }

    private static void assertProblem(String path, String message, String hint) {
        assertThatThrownBy(() -> Knob.of(FEED, path))
                .isInstanceOf(ProblemsException.class)
                .hasMessageContaining(message)
                .hasMessageContaining(hint);
    }

    private static Hose hose(Circuit circuit, String id) {
        return (Hose) part(circuit, id);
    }

    private static org.linedrop.circuit.Part part(Circuit circuit, String id) {
        return circuit.runs().stream()
                .flatMap(run -> run.parts().stream())
                .filter(part -> part.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
