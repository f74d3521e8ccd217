package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fact.Status;

/** A user's own hoses: columns in the circuit file or in a file beside it. Hoses here are invented. */
class UserCatalogueTest {
    private static final String FILE = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            catalogue:
              %s
            points:
              a: {kind: held, pressure: 10 kPa}
              b: {kind: draw, takes: 60 L/h}
            runs:
              feed:
                from: a
                to: b
                parts:
                  - {hose: blue race hose -8, length: 1 m, ends: straight to 90, name: line}
            """;

    private static final String HOSES = """
            hoses:
                blue race hose:
                  like: race PTFE                       # liner, roughness, ends, temperatures from there
                  sizes:            -6   -8   -10
                  bore:             7.9 10.2 12.8 mm measured
                  end bore:         6.6  8.9 11.3 mm measured
                  bend radius:      100  120  140 mm from sheet
                  working pressure: 140  140  100 bar from sheet""";

    @TempDir
    private Path folder;

    private static String with(String section) {
        return String.format(FILE, section);
    }

    private static List<String> lines(String text) {
        return catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(text, "feed.yaml"))
                .problems()
                .stream()
                .map(Problem::line)
                .toList();
    }

    private List<String> linesOfFile(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("feed.yaml"), text);
        return catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(file)).problems().stream()
                .map(Problem::line)
                .toList();
    }

    private static Hose hose(Circuit circuit) {
        return (Hose) circuit.runs().get(0).parts().get(0);
    }

    @Test
    void columnsGiveTheirFiguresAndTheRestComesFromTheFamilyItIsLike() {
        Circuit circuit = CircuitFile.read(with(HOSES), "feed.yaml");
        HoseSize size = hose(circuit).size();
        HoseSize like = circuit.catalogue().hose("race PTFE -8");
        assertThat(size.boreM().value()).isEqualTo(0.0102);
        assertThat(size.boreM().status()).isEqualTo(Status.MEASURED);
        assertThat(size.boreM().source().title()).isEqualTo("feed.yaml");
        assertThat(size.boreM().source().locator()).isEqualTo("user's catalogue, line 9");
        assertThat(size.workingPressurePa().value()).isEqualTo(14e6);
        assertThat(size.workingPressurePa().status()).isEqualTo(Status.FROM_SHEET);
        assertThat(size.liner()).isEqualTo("PTFE");
        assertThat(size.roughnessM()).isEqualTo(like.roughnessM());
        assertThat(hose(circuit).fromEnd().nippleBoreM().value()).isEqualTo(0.0089);
        assertThat(hose(circuit).fromEnd().nippleBoreM().status()).isEqualTo(Status.MEASURED);
        assertThat(size.maxTemperatureK().value())
                .isEqualTo(like.maxTemperatureK().value());
        assertThat(size.maxTemperatureK().status()).as("nobody rated this hose").isGreaterThanOrEqualTo(Status.GUESSED);
    }

    @Test
    void theReportSaysWhichFiguresAreTheUsersOwn() {
        assertThat(CircuitFile.read(with(HOSES), "feed.yaml").assumptions().stream()
                        .filter(notice -> notice.id().equals("user-hose"))
                        .map(notice -> notice.element() + ": " + notice.text()))
                .containsExactly("blue race hose -8: bore (measured), end bore (measured), bend radius (from sheet),"
                        + " working pressure (from sheet) from feed.yaml; the rest as race PTFE");
    }

    @Test
    void casesAndStudiesUseTheCircuitsOwnCatalogue() {
        Circuit circuit =
                CircuitFile.read(with(HOSES) + "cases:\n  wide: {line: {hose: blue race hose -10}}\n", "feed.yaml");
        assertThat(hose(circuit.in("wide")).size().boreM().value()).isEqualTo(0.0128);
        Circuit thin = circuit.with(List.of(Change.of("line", "hose", "blue race hose -6")));
        assertThat(hose(thin).size().boreM().value()).isEqualTo(0.0079);
        assertThat(hose(thin.in("wide")).size().boreM().value()).isEqualTo(0.0128);
    }

    @Test
    void aCircuitWithItsCatalogueIsKeptWhole() throws Exception {
        Circuit circuit = CircuitFile.read(with(HOSES), "feed.yaml");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(circuit);
        }
        Object back = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray())).readObject();
        assertThat(back).isEqualTo(circuit).hasSameHashCodeAs(circuit);
        assertThat(hose(((Circuit) back).with(List.of(Change.of("line", "hose", "blue race hose -10"))))
                        .size()
                        .boreM()
                        .value())
                .isEqualTo(0.0128);
        assertThat(bytes.size()).as("the library's rows are not in it").isLessThan(60_000);
        assertThat(CircuitFile.read(with(HOSES), "feed.yaml")).isEqualTo(circuit);
    }

    @Test
    void hoseByInchIsReadToo() {
        String text = with("hoses: {red line: {like: fuel hose, sizes: 5/16 3/8 in, bore: 8.1 9.7 mm measured}}")
                .replace("blue race hose -8", "red line 3/8 in")
                .replace("straight to 90", "barb to barb");
        assertThat(hose(CircuitFile.read(text, "")).size().boreM().value()).isEqualTo(0.0097);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "like: race PTFE,|like: race PTFF,|blue race hose: no hose family is called \"race PTFF\". Did you mean",
                "like: race PTFE,||blue race hose: like is missing. Write for example: like: race PTFE",
                "sizes: -6 -8,|sizes: -6 8,|size \"8\" cannot be read: race PTFE is sized by dash. Write sizes: -6 -8 -10",
                "sizes: -6 -8,|sizes: -8 -8,|size -8 is given twice. Give each size one column",
                "7.9 10.2 mm|7.9 mm|bore: 1 figure stands against 2 sizes. Give one figure for each size",
                "7.9 10.2 mm|7.9 10.2 m|is out of reason",
                "7.9 10.2 mm|7.9 10.2|has no unit",
                "bore:|bores:|a hose family has no key \"bores\". Did you mean bore?",
                "blue race hose|race rubber|the catalogue already has a hose family \"race rubber\". Choose another name"
            })
    void whatIsWrongIsSaidOnceWithItsLine(String good, String bad, String message) {
        String section = "hoses: {blue race hose: {like: race PTFE, sizes: -6 -8, bore: 7.9 10.2 mm measured}}";
        String text = with(section.replace(good, bad == null ? "" : bad));
        assertThat(lines(
                        bad != null && bad.equals("race rubber")
                                ? text.replace("blue race hose -8", "race rubber -8")
                                : text))
                .singleElement()
                .asString()
                .startsWith("feed.yaml:5  ")
                .contains(message);
    }

    @Test
    void aSizeWithoutBoreAnywhereIsAProblem() {
        assertThat(lines(with("hoses: {blue race hose: {like: race PTFE, sizes: -8 -18}}")))
                .containsExactly(
                        "feed.yaml:5  blue race hose: blue race hose -18 has no bore, and race PTFE has no -18."
                                + " Give bore:");
    }

    @Test
    void aFileBesideTheCircuitGivesItsHoses() throws IOException {
        Files.writeString(folder.resolve("club-hoses.yaml"), """
                hoses:
                  blue race hose: {like: race PTFE, sizes: -6 -8, bore: 7.9 10.2 mm measured}
                """);
        Path file = Files.writeString(folder.resolve("feed.yaml"), with("files: [club-hoses.yaml]"));
        HoseSize size = hose(CircuitFile.read(file)).size();
        assertThat(size.boreM().value()).isEqualTo(0.0102);
        assertThat(size.boreM().source().title()).isEqualTo("club-hoses.yaml");
    }

    @Test
    void problemsOfTheOtherFileNameThatFile() throws IOException {
        Files.writeString(folder.resolve("club-hoses.yaml"), """
                hoses:
                  blue race hose:
                    like: race PTFE
                    sizes: -6 -8
                    bore: 7.9 mm measured
                """);
        assertThat(linesOfFile(with("files: [club-hoses.yaml]")))
                .containsExactly("club-hoses.yaml:5  blue race hose: bore: 1 figure stands against 2 sizes. Give one"
                        + " figure for each size, or leave the line out");
        Files.writeString(folder.resolve("club-hoses.yaml"), "hoses:\n\tblue: 1\n");
        assertThat(linesOfFile(with("files: [club-hoses.yaml]")))
                .anyMatch(line -> line.startsWith("club-hoses.yaml:2"));
    }

    @ParameterizedTest
    @CsvSource({"../club-hoses.yaml", "/etc/hostname", "hoses/club.yaml", "'..'", "'hoses\\club.yaml'", ".hidden.yaml"})
    void aPathThatLeavesTheFolderIsRefused(String name) throws IOException {
        Files.writeString(folder.resolveSibling("club-hoses.yaml"), "hoses: {}\n");
        assertThat(linesOfFile(with("files: ['" + name + "']")))
                .anyMatch(line -> line.startsWith("feed.yaml:5  catalogue: catalogue file \"" + name
                        + "\" is no plain file name. Only a file beside this one is read"));
    }

    @Test
    void aLinkThatLeavesTheFolderIsRefused() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.writeString(elsewhere.resolve("hoses.yaml"), "hoses: {}\n");
        Files.createSymbolicLink(folder.resolve("club.yaml"), elsewhere.resolve("hoses.yaml"));
        assertThat(linesOfFile(with("files: [club.yaml]")))
                .anyMatch(line -> line.contains("a link that leaves the folder"));
    }

    @Test
    void aFileThatIsNotThereAndATextWithoutFolderAreProblems() throws IOException {
        String message =
                "feed.yaml:5  catalogue: there is no catalogue file \"club-hoses.yaml\" beside this file. Put it"
                        + " in the same folder, or write its hoses here";
        assertThat(linesOfFile(with("files: [club-hoses.yaml]"))).contains(message);
        assertThat(lines(with("files: [club-hoses.yaml]"))).contains(message);
    }

    @Test
    void noticeOfAFamilyThatGivesNothing() {
        Circuit circuit = CircuitFile.read(with("hoses: {blue race hose: {like: race PTFE, sizes: -8}}"), "");
        assertThat(circuit.assumptions().stream().filter(n -> n.id().equals("user-hose")))
                .extracting(Notice::text)
                .containsExactly("no figure of its own; the rest as race PTFE");
    }

    @Test
    void aFileWrittenElsewhereStandsWithoutItsCatalogueFiles(@TempDir Path elsewhere) throws IOException {
        Files.writeString(folder.resolve("club-hoses.yaml"), HOSES + "\n");
        String own =
                "files: [club-hoses.yaml]\n  hoses: {my hose: {like: blue race hose, sizes: -8, bore: 10.4 mm measured}}";
        Circuit first = CircuitFile.read(Files.writeString(folder.resolve("feed.yaml"), with(own)));
        Path moved = elsewhere.resolve("feed.yaml");
        for (String text : List.of(CircuitWriter.write(first), CircuitWriter.writeJson(first))) {
            Circuit second = CircuitFile.read(Files.writeString(moved, text));
            assertThat(text).doesNotContain("files").contains("my hose");
            assertThat(hose(second).size().boreM().value())
                    .isEqualTo(hose(first).size().boreM().value());
            assertThat(CircuitWriter.write(second)).isEqualTo(CircuitWriter.write(first));
        }
    }
}
