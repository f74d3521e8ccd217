package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.CsvReport;
import org.linedrop.report.JsonReport;
import org.linedrop.report.TextReport;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

/** What is written reads back to an equal circuit, bit for bit, and is then written the same again. */
class CircuitWriterTest {
    private static final Path OWN = Path.of("src/test/resources/org/linedrop/io");

    static Stream<Path> examples() {
        try (Stream<Path> files = Files.list(Path.of("src/examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Stream<Path> all() {
        return Stream.concat(
                examples(),
                Stream.of("returnless", "twin-rails-return", "front-cooler", "beginner", "every-form")
                        .map(name -> OWN.resolve(name + ".yaml")));
    }

    private static List<String> said(Circuit circuit) {
        List<@Nullable Object> all = new ArrayList<>(List.of(
                circuit.title(), circuit.caseName(), circuit.surroundings(), circuit.points(), circuit.devices()));
        all.addAll(List.of(circuit.runs(), circuit.limits(), circuit.assumptions()));
        all.add(circuit.service());
        all.add(circuit.engine());
        // user hoses say the line they stand on: that is about the text; a double prints with all its digits
        return all.stream()
                .map(each -> String.valueOf(each).replaceAll("catalogue, line \\d+", "catalogue"))
                .toList();
    }

    /** Everything that was read but the words, whose spelling is what changes; lines of the file are words too. */
    private static void same(Circuit made, Circuit from) {
        assertThat(said(made)).containsExactlyElementsOf(said(from));
    }

    @ParameterizedTest
    @MethodSource("all")
    void circuitToTextToCircuitIsEqualInEveryCase(Path file) throws IOException {
        Circuit first = CircuitFile.read(file);
        String name = first.words().file();
        Circuit yaml = CircuitFile.read(CircuitWriter.write(first), name);
        Circuit json = CircuitFile.read(CircuitWriter.writeJson(first), name);
        for (String each : first.caseNames()) {
            same(yaml.in(each), first.in(each));
        }
        same(json, yaml);
        assertThat(json.words().base()).isEqualTo(yaml.words().base());
        assertThat(CircuitFile.read(CircuitWriter.write(yaml), name)).isEqualTo(yaml);
    }

    @ParameterizedTest
    @MethodSource("all")
    void textIsStableFromTheSecondOn(Path file) throws IOException {
        String second = CircuitWriter.write(CircuitFile.read(file));
        Circuit read = CircuitFile.read(second, "second");
        assertThat(CircuitWriter.write(read)).isEqualTo(second);
        assertThat(CircuitWriter.write(CircuitFile.read(CircuitWriter.writeJson(read), "json")))
                .isEqualTo(second);
        assertThat(second.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(160));
    }

    /** Every circuit file of the project that is meant to be read. */
    static Stream<Path> whole() {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources"))) {
            List<Path> others = files.filter(file -> file.toString().endsWith(".yaml"))
                    // these two are kept for what is wrong with them
                    .filter(file -> !file.endsWith("ten-mistakes.yaml") && !file.endsWith("return-style.yaml"))
                    .sorted()
                    .toList();
            return Stream.concat(examples(), others.stream());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("whole")
    void theJsonTwinOfEveryFileGivesTheSameOutputByteForByte(Path file) throws IOException {
        Circuit yaml = CircuitFile.read(file);
        // all cases of the examples; two of each other file, for time's sake
        List<String> names = yaml.caseNames();
        List<String> cases = file.startsWith("src/examples") ? names : names.subList(0, Math.min(2, names.size()));
        FeedCheck one = FeedCheck.of(yaml, cases);
        FeedCheck twin = FeedCheck.of(
                CircuitFile.read(CircuitWriter.writeJson(yaml), yaml.words().file()), cases);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            assertThat(TextReport.check(twin, display)).isEqualTo(TextReport.check(one, display));
            assertThat(TextReport.solve(twin, display)).isEqualTo(TextReport.solve(one, display));
            assertThat(CsvReport.limits(twin, display)).isEqualTo(CsvReport.limits(one, display));
            assertThat(CsvReport.rows(twin, display)).isEqualTo(CsvReport.rows(one, display));
        }
        assertThat(JsonReport.text(twin)).isEqualTo(JsonReport.text(one));
    }

    @Test
    void aCircuitInACaseIsWrittenWithItsFile() throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml"));
        Circuit here = circuit.in("hot idle");
        assertThat(CircuitWriter.write(here)).isEqualTo(CircuitWriter.write(circuit));
    }

    @Test
    void aCircuitChangedInCodeIsWrittenAsItIs() throws IOException {
        Circuit circuit = CircuitFile.read(Path.of("src/examples/first-feed.yaml"));
        Circuit wider = circuit.with(List.of(Change.of("feed 1", "hose", "race PTFE -8")));
        same(CircuitFile.read(CircuitWriter.write(wider), wider.words().file()), wider);
        Circuit hot = CircuitFile.read(Path.of("src/examples/fuel-feed-516.yaml"))
                .in("hot idle")
                .with(List.of(Change.of("temperature", "62 C")));
        same(CircuitFile.read(CircuitWriter.write(hot), hot.words().file()), hot);
    }
}
