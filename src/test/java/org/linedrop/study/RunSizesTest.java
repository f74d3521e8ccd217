package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.Valve;
import org.linedrop.io.CircuitFile;

/** What a run is made of when it is bought in another size, part by part. */
class RunSizesTest {
    private static final String HOSE = "{hose: race PTFE -6, length: 1 m, ends: straight to straight}";

    private static Circuit line(String from, String to, String... parts) {
        return CircuitFile.read("""
                linedrop: 1
                fluid: E10
                temperature: 20 C
                points:
                  main: {kind: held, pressure: 300 kPa}
                  first: {kind: joint}
                  last: {kind: joint}
                  tap: {kind: draw, takes: 100 L/h}
                devices:
                  filter: {kind: filter, drop: 4 kPa at 400 L/h}
                runs:
                  before: {from: main, to: first, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  between: {from: first, to: last, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  behind: {from: last, to: tap, parts: [{through: filter}, {law: K, K: 1 x, bore: 8 mm}]}
                  line: {from: %s, to: %s, parts: [%s]}
                """.formatted(from, to, String.join(", ", parts)), "sizes.yaml");
    }

    private static String words(Part part) {
        if (part instanceof Hose hose) {
            return hose.size().name();
        }
        if (part instanceof Tube tube) {
            return "tube " + Sizes.text(tube.size());
        }
        if (part instanceof Adapter adapter) {
            return adapter.size().kind() + " " + adapter.size().text();
        }
        return part instanceof Valve valve ? "valve " + valve.size().text() : part.id();
    }

    private static List<String> made(Circuit circuit, String family, int dash) {
        Optional<Change> change = RunSizes.change(circuit, "line", family, dash);
        if (change.isEmpty()) {
            return List.of();
        }
        Run run = circuit.with(List.of(change.get())).runs().get(3);
        return run.parts().stream().map(RunSizesTest::words).toList();
    }

    @Test
    void betweenTwoFixedPlacesItTakesAdapters() {
        Circuit circuit = line("main", "tap", HOSE, "{union: -6}", HOSE);
        assertThat(made(circuit, "", 8))
                .containsExactly("reducer -6 to -8", "race PTFE -8", "union -8", "race PTFE -8", "reducer -8 to -6");
        assertThat(made(circuit, "", 6)).containsExactly("race PTFE -6", "union -6", "race PTFE -6");
        assertThat(made(circuit, "AS1946", 6)).containsExactly("AS1946 -6", "union -6", "AS1946 -6");
        assertThat(made(circuit, "AS1946", 8)).contains("AS1946 -8").hasSize(5);
    }

    @Test
    void atAPlainJointItTakesNone() {
        assertThat(made(line("first", "last", HOSE, "{bulkhead: -6}", HOSE), "", 10))
                .containsExactly("race PTFE -10", "bulkhead -10", "race PTFE -10");
        assertThat(made(line("main", "last", HOSE), "", 4)).containsExactly("reducer -6 to -4", "race PTFE -4");
        assertThat(made(line("first", "tap", HOSE), "", 4)).containsExactly("race PTFE -4", "reducer -4 to -6");
    }

    @Test
    void aDeviceKeepsItsSize() {
        Circuit circuit = CircuitFile.read("""
                linedrop: 1
                fluid: E10
                temperature: 20 C
                points:
                  main: {kind: held, pressure: 300 kPa}
                  tap: {kind: draw, takes: 100 L/h}
                  other: {kind: draw, takes: 100 L/h}
                  a: {kind: joint}
                devices:
                  filter: {kind: filter, drop: 4 kPa at 400 L/h}
                runs:
                  zero: {from: main, to: a, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  one: {from: a, to: other, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  two: {from: main, to: other, parts: [{law: K, K: 1 x, bore: 8 mm}]}
                  line: {from: a, to: tap, parts: [%s, {through: filter}, %s, {law: K, K: 1 x, bore: 8 mm}]}
                """.formatted(HOSE, HOSE), "device.yaml");
        assertThat(made(circuit, "", 8))
                .containsExactly(
                        "race PTFE -8", "reducer -8 to -6", "line 3", "reducer -6 to -8", "race PTFE -8", "line 6");
    }

    @Test
    void adaptersInsideChangeWithTheirNeighbours() {
        String tube = "{tube: steel 5/16 in x 0.028 in, length: 1 m}";
        Circuit circuit = line("first", "last", HOSE, "{adapter: -6 to -5}", tube, "{adapter: -5 to -6}", HOSE);
        assertThat(made(circuit, "", 6))
                .as("hose and tube of one size: two nuts with a union between them")
                .hasSize(5)
                .startsWith("race PTFE -6", "union -6")
                .endsWith("union -6", "race PTFE -6");
        assertThat(made(circuit, "", 6).get(2)).startsWith("tube steel 3/8 in");
        // a side that meets no hose keeps its size
        Circuit boss = line("first", "tap", HOSE, "{adapter: -6 to ORB -6}");
        assertThat(made(boss, "", 8)).containsExactly("race PTFE -8", "adapter -8 to ORB -6");
        // an adapter that would join one size to itself falls away
        Circuit step = line("first", "tap", HOSE, "{adapter: -6 to -8}");
        assertThat(made(step, "", 8)).containsExactly("race PTFE -8");
    }

    @Test
    void whatCannotBeBoughtInTheSizeIsNone() {
        assertThat(made(line("main", "tap", HOSE), "", 7)).isEmpty();
        assertThat(made(line("main", "tap", HOSE), "MIL-H-8794", 2)).isEmpty();
        assertThat(RunSizes.change(line("main", "tap", HOSE), "nowhere", "", 8)).isEmpty();
        // what a valve passes was said of this one
        assertThat(made(line("first", "last", HOSE, "{valve: -6, kv: 3}", HOSE), "", 8))
                .isEmpty();
        assertThat(made(line("first", "last", HOSE, "{valve: ball -6}", HOSE), "", 8))
                .containsExactly("race PTFE -8", "valve -8", "race PTFE -8");
        // a hose sized in inches has no adapter of dashes
        Circuit inches = line("main", "tap", "{hose: fuel hose 5/16 in, length: 1 m, ends: barb to barb}");
        assertThat(made(inches, "", 8)).isEmpty();
    }

    @Test
    void aMeasuredBoreBelongsToTheHoseThatWasMeasured() {
        Circuit circuit = line(
                "first",
                "last",
                "{hose: race PTFE -6, length: 1 m, ends: straight to straight, bore: 8.4 mm measured, end bore: 6 mm"
                        + " measured}");
        Circuit larger =
                circuit.with(List.of(RunSizes.change(circuit, "line", "", 8).orElseThrow()));
        Hose hose = (Hose) larger.runs().get(3).parts().get(0);
        assertThat(hose.size().boreM())
                .isEqualTo(circuit.catalogue().hose("race PTFE -8").boreM());
        Circuit same =
                circuit.with(List.of(RunSizes.change(circuit, "line", "", 6).orElseThrow()));
        assertThat(((Hose) same.runs().get(3).parts().get(0)).size().boreM().value())
                .isEqualTo(0.0084);
    }

    private static Optional<Sizes.Step> larger(Circuit circuit, int part, int up) {
        Run run = circuit.runs().get(3);
        return Sizes.larger(circuit.catalogue(), run, run.parts().get(part), up);
    }

    private static List<String> after(Circuit circuit, Sizes.Step step) {
        return circuit.with(step.changes()).runs().get(3).parts().stream()
                .map(RunSizesTest::words)
                .toList();
    }

    @Test
    void oneSizeUpOfATubeTakesItsAdaptersAlong() {
        String tube = "{tube: steel 5/16 in x 0.028 in, length: 1 m}";
        Circuit both = line("first", "last", "{adapter: -6 to -5}", tube, "{adapter: -5 to -6}");
        Sizes.Step drops = larger(both, 1, 1).orElseThrow();
        assertThat(drops.words()).startsWith("3/8 in x ").endsWith(", which also drops both adapters");
        assertThat(after(both, drops)).hasSize(1);
        Circuit hoses = line("first", "last", HOSE, "{adapter: -6 to -5}", tube, "{adapter: -5 to -6}", HOSE);
        Sizes.Step unions = larger(hoses, 2, 1).orElseThrow();
        assertThat(unions.words()).endsWith(", which makes both adapters plain unions");
        assertThat(after(hoses, unions)).hasSize(5);
        Circuit one = line("first", "last", HOSE, "{adapter: -6 to -5}", tube);
        assertThat(larger(one, 2, 1).orElseThrow().words()).endsWith(", which makes an adapter a plain union");
        Circuit mixed = line("first", "last", HOSE, "{adapter: -6 to -5}", tube, "{adapter: -5 to -6}");
        assertThat(larger(mixed, 2, 1).orElseThrow().words())
                .endsWith(", which also drops one adapter and makes the other a plain union");
        Circuit single = line("first", "last", "{adapter: -6 to -5}", tube);
        assertThat(larger(single, 1, 1).orElseThrow().words()).endsWith(", which also drops an adapter");
        // two sizes up the adapters stay and change their side
        Sizes.Step two = larger(both, 1, 2).orElseThrow();
        assertThat(two.words()).doesNotContain("adapter");
        assertThat(after(both, two)).hasSize(3).startsWith("reducer -6 to -8").endsWith("reducer -8 to -6");
    }

    @Test
    void oneSizeUpOfAHoseIsTheNextOfItsFamily() {
        Circuit circuit = line("first", "last", HOSE);
        assertThat(larger(circuit, 0, 1).orElseThrow().words()).isEqualTo("-8");
        assertThat(larger(circuit, 0, 2).orElseThrow().words()).isEqualTo("-10");
        assertThat(larger(circuit, 0, -1).orElseThrow().words()).isEqualTo("-4");
        assertThat(larger(circuit, 0, 30)).isEmpty();
        assertThat(larger(circuit, 0, -30)).isEmpty();
        assertThat(larger(line("first", "last", "{union: -6}"), 0, 1)).isEmpty();
        assertThat(larger(line("first", "last", "{tube: steel 3/8 in x 0.035 in, length: 1 m}"), 0, 30))
                .isEmpty();
    }

    @Test
    void oneSizeDownEverywhere() {
        Circuit circuit = line(
                "first",
                "last",
                HOSE,
                "{union: -6}",
                "{tube: steel 3/8 in x 0.035 in, length: 1 m}",
                "{adapter: -6 to -8}",
                "{hose: race PTFE -8, length: 1 m, ends: straight to straight}",
                "{adapter: -8 to ORB -8}");
        Circuit smaller = circuit.with(Sizes.smallerEverywhere(circuit));
        List<String> parts =
                smaller.runs().get(3).parts().stream().map(RunSizesTest::words).toList();
        assertThat(parts.get(0)).isEqualTo("race PTFE -4");
        assertThat(parts.get(1)).isEqualTo("union -5");
        assertThat(parts.get(2)).startsWith("tube steel 5/16 in");
        assertThat(parts.get(3)).isEqualTo("reducer -5 to -6");
        assertThat(parts.get(4)).isEqualTo("race PTFE -6");
        assertThat(parts.get(5)).isEqualTo("adapter -6 to ORB -6");
        assertThat(Sizes.smallerEverywhere(line("first", "last", "{law: K, K: 1 x, bore: 8 mm}")))
                .isEmpty();
    }
}
