package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;

/** Neighbours of a run that do not go together are said with their line when a file is read. */
class JointsTest {
    private static final String FILE = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            points:
              a: {kind: held, pressure: 10 kPa}
              b: {kind: draw, takes: 60 L/h}
            devices:
              strainer: {kind: filter, drop: 1 kPa at 60 L/h%s}
            runs:
              feed:
                from: a
                to: b
                parts:
            %s""";

    private static final String HOSE_6 = "{hose: race PTFE -6, length: 1 m, ends: straight to 90}";
    private static final String HOSE_8 = "{hose: race PTFE -8, length: 1 m, ends: straight to 90}";
    private static final String TUBE_516 = "{tube: steel 5/16 in x 0.028 in, length: 1 m}";
    private static final String TUBE_38 = "{tube: steel 3/8 in x 0.035 in, length: 1 m}";
    private static final String FUEL_HOSE = "{hose: fuel hose 3/8 in, length: 1 m, ends: barb to barb}";
    private static final String STRAINER = "{through: strainer}";

    private static String file(String ports, String... parts) {
        StringBuilder lines = new StringBuilder();
        for (String part : parts) {
            lines.append("      - ").append(part).append('\n');
        }
        return String.format(FILE, ports.isEmpty() ? "" : ", ports: " + ports, lines);
    }

    private static List<String> lines(String text) {
        ProblemsException wrong =
                catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(text, "feed.yaml"));
        return wrong == null
                ? List.of()
                : wrong.problems().stream().map(Problem::line).toList();
    }

    @Test
    void aTubeThatFlaresToAnotherSizeThanTheBulkhead() {
        assertThat(lines(file("", STRAINER, HOSE_6, "{bulkhead: -6}", TUBE_516)))
                .containsExactly("feed.yaml:17  feed 3/4: 5/16 in tube flares to -5, its neighbour is -6: an adapter"
                        + " \"-6 to -5\" is missing (adds 2 sealing faces)");
        assertThat(lines(file("", STRAINER, HOSE_6, "{bulkhead: -6}", "{adapter: -6 to -5}", TUBE_516)))
                .isEmpty();
    }

    @Test
    void twoHosesInARow() {
        assertThat(lines(file("", HOSE_6, HOSE_6, STRAINER)))
                .containsExactly("feed.yaml:15  feed 1/2: two swivel nuts meet; put a union or bulkhead -6 between"
                        + " (adds 2 sealing faces)");
        assertThat(lines(file("", HOSE_6, "{union: -6}", HOSE_6, STRAINER))).isEmpty();
        assertThat(lines(file("", HOSE_6, "{bulkhead: -6}", HOSE_6, STRAINER))).isEmpty();
        assertThat(lines(file("", FUEL_HOSE, FUEL_HOSE, STRAINER)))
                .singleElement()
                .asString()
                .contains("feed 1/2: two hoses meet", "put a barbed joiner barb 3/8 in between");
    }

    @Test
    void aFlaredTubeAndAHoseAreTwoSwivelNuts() {
        assertThat(lines(file("", TUBE_38, HOSE_6, STRAINER)))
                .singleElement()
                .asString()
                .contains("feed 1/2: two swivel nuts meet");
        assertThat(lines(file("", TUBE_38, "{union: -6}", HOSE_6, STRAINER))).isEmpty();
        assertThat(lines(file("", FUEL_HOSE, TUBE_38, FUEL_HOSE, STRAINER))).isEmpty();
    }

    @Test
    void hosesOfTwoSizesNeedAReducerOrAnEndOfTheOtherSize() {
        assertThat(lines(file("", HOSE_8, "{bulkhead: -6}", HOSE_6, STRAINER)))
                .containsExactly("feed.yaml:15  feed 1/2: race PTFE -8 end is -8, its neighbour is -6: an adapter"
                        + " \"-8 to -6\" is missing (adds 2 sealing faces)");
        assertThat(lines(file("", HOSE_8, "{adapter: -8 to -6}", HOSE_6, STRAINER)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ORB -8 | strainer port ORB -8 and race PTFE -8 end share the 3/4-16 thread and do not seal together:"
                        + " use an ORB -8 to -8 adapter (adds 2 sealing faces)",
                "ORB -6 | strainer port ORB -6 and race PTFE -8 end do not go together (O-ring boss on 37-degree flare):"
                        + " use an adapter ORB -6 to -8 (adds 2 sealing faces)",
                "1/2 NPT | strainer port 1/2 NPT and race PTFE -8 end: a taper thread does not go in a straight one: use"
                        + " an adapter 1/2 NPT to -8 (adds 2 sealing faces)",
                "45-degree -8 | a 45-degree flare on a 37-degree seat cracks and leaks",
                "M18x1.5 | use an adapter M18x1.5 to -8",
                "-6 | strainer port -6 is -6, its neighbour is -8: an adapter \"-6 to -8\" is missing",
                "female -8 | two inside threads meet",
            })
    void aDeviceWithStatedPortsIsAskedForItsAdapter(String ports, String message) {
        assertThat(lines(file(ports, STRAINER, HOSE_8)))
                .singleElement()
                .asString()
                .startsWith("feed.yaml:15  feed 1/2: ")
                .contains(message);
    }

    @Test
    void portsThatFitSayNothing() {
        assertThat(lines(file("-8", STRAINER, HOSE_8))).isEmpty();
        assertThat(lines(file("ORB -8", STRAINER, "{adapter: ORB -8 to -8}", HOSE_8)))
                .isEmpty();
        assertThat(lines(file("ORB -8 to -6", HOSE_8, "{adapter: -8 to ORB -8}", STRAINER, HOSE_6)))
                .isEmpty();
        assertThat(lines(file("1/4 NPT", "{adapter: -6 to 1/4 NPT}", STRAINER))).isEmpty();
        assertThat(lines(file("ORB 8", STRAINER, HOSE_8)))
                .singleElement()
                .asString()
                .contains("feed.yaml:8", "no dash size");
    }

    @Test
    void nothingIsSaidOfPortsThatNobodyStatedNorOfBarePieces() {
        assertThat(lines(file("", STRAINER, HOSE_8))).isEmpty();
        assertThat(lines(file("", STRAINER, "{hose: race PTFE -6, length: 1 m, ends: none}", HOSE_8)))
                .isEmpty();
    }

    @Test
    void allJointsOfAFileAreSaidAtOnceWithItsOtherProblems() {
        assertThat(lines(file("", HOSE_6, HOSE_6, TUBE_516, STRAINER).replace("temperature: 20 C\n", "")))
                .hasSize(3)
                .anyMatch(line -> line.contains("temperature is missing"))
                .anyMatch(line -> line.contains("feed 1/2: two swivel nuts"))
                .anyMatch(line -> line.contains("feed 2/3: 5/16 in tube flares to -5"));
    }

    @Test
    void aCaseMayTryASizeAndIsToldWhatItWouldNeed() {
        String text = file("", HOSE_6, "{bulkhead: -6}", HOSE_6, STRAINER) + "cases:\n  wide: {feed: {hoses: -8}}\n";
        Circuit circuit = CircuitFile.read(text, "feed.yaml");
        assertThat(circuit.assumptions()).extracting(Notice::id).doesNotContain("does-not-mate");
        assertThat(circuit.in("wide").assumptions().stream()
                        .filter(notice -> notice.id().equals("does-not-mate"))
                        .map(notice -> notice.element() + ": " + notice.text()))
                .containsExactly(
                        "feed 1/2: race PTFE -8 end is -8, its neighbour is -6: an adapter \"-8 to -6\" is missing"
                                + " (adds 2 sealing faces); here what is missing costs nothing",
                        "feed 2/3: bulkhead -6 is -6, its neighbour is -8: an adapter \"-6 to -8\" is missing"
                                + " (adds 2 sealing faces); here what is missing costs nothing");
    }

    @Test
    void aStudyMayChangeSizesFreely() {
        Circuit circuit = CircuitFile.read(file("", HOSE_6, "{bulkhead: -6}", HOSE_6, STRAINER), "feed.yaml");
        Circuit wide = circuit.with(List.of(Change.of("feed 1", "hose", "race PTFE -8")));
        assertThat(wide.assumptions()).extracting(Notice::id).doesNotContain("does-not-mate");
        assertThat(((Hose) wide.runs().get(0).parts().get(0)).size().name()).isEqualTo("race PTFE -8");
    }

    static List<String> examples() {
        return Examples.names();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void examplesReadWithoutProblemsInEveryCase(String name) {
        Circuit circuit = Examples.circuit(name);
        for (String each : circuit.caseNames()) {
            assertThat(circuit.in(each).assumptions()).extracting(Notice::id).doesNotContain("does-not-mate");
        }
    }
}
