package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;
import org.linedrop.result.SolveStatus;

class NewCommandTest {
    @TempDir
    private Path dir;

    private record Run(int code, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Runner.run(arguments, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"feed", "twin", "oil", "coolant"})
    void readsWithoutProblemsInEveryCaseAndSolves(String kind) throws IOException {
        Path file = dir.resolve(kind + ".yaml");
        assertThat(run("new", kind, "--out", file.toString())).isEqualTo(new Run(0, "", ""));
        assertThat(run("new", kind).out()).isEqualTo(Files.readString(file)).contains("All figures are invented");
        Circuit circuit = CircuitFile.read(file); // throws where anything is wrong
        assertThat(circuit.caseNames()).hasSizeGreaterThan(2);
        for (String name : circuit.caseNames()) {
            Result result = Result.of(circuit.in(name));
            assertThat(SolveStatus.of(result).word()).as(kind + " " + name).isEqualTo("converged");
        }
    }

    @Test
    void everyKindIsTested() {
        assertThat(NewCommand.KINDS).containsExactly("feed", "twin", "oil", "coolant");
    }

    @Test
    void startersHoldTheirLimits() throws IOException {
        for (String kind : NewCommand.KINDS) {
            Path file = dir.resolve(kind + ".yaml");
            Files.writeString(file, NewCommand.starter(kind));
            Run run = run("check", file.toString());
            assertThat(run.code()).as(run.out() + run.err()).isZero();
        }
    }

    @Test
    void neverWritesOver() throws IOException {
        Path file = dir.resolve("mine.yaml");
        Files.writeString(file, "mine");
        Run run = run("new", "feed", "--out", file.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("mine.yaml is there already and is not written over. Name another file");
        assertThat(file).hasContent("mine");
        assertThat(dir).isDirectoryContaining(each -> each.endsWith("mine.yaml"));
    }

    @Test
    void unknownKind() {
        assertThat(run("new", "fed").err())
                .startsWith("new \"fed\" is none of feed, twin, oil, coolant. Did you mean feed?");
        assertThat(run("new", "fed").code()).isEqualTo(2);
        assertThat(run("schema", "results").err())
                .startsWith("schema \"results\" is none of circuit, catalogue, result. Did you mean result?");
    }

    @Test
    void schemasArePrinted() {
        for (String what : new String[] {"circuit", "catalogue", "result"}) {
            assertThat(run("schema", what).out())
                    .contains("https://json-schema.org/draft/2020-12/schema")
                    .endsWith("}\n");
        }
    }
}
