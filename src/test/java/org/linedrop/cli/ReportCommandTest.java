package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportCommandTest {
    private static final String FEED = "src/examples/fuel-feed-516.yaml";

    @TempDir
    private Path dir;

    /** What a run did. */
    private record Run(int code, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Runner.run(arguments, out, err);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private List<String> files() {
        try (Stream<Path> files = Files.list(dir)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void writesTheSamePageThatItShows() throws IOException {
        Path page = dir.resolve("page.html");
        Run written = run("report", FEED, "--out", page.toString());
        assertThat(written.code()).isEqualTo(1); // a limit is broken
        assertThat(written.out()).isEmpty();
        assertThat(written.err()).isEmpty();
        assertThat(files()).containsExactly("page.html");
        assertThat(Files.readString(page)).isEqualTo(run("report", FEED).out()).startsWith("<!DOCTYPE html>");
        assertThat(run("report", FEED, "--case", "hot idle", "--units", "us").code())
                .isZero();
    }

    @Test
    void picturesAlone() throws IOException {
        Run drawn = run("report", FEED, "--svg", dir.toString());
        assertThat(drawn.code()).isEqualTo(1);
        assertThat(drawn.out()).isEmpty();
        assertThat(files())
                .containsExactly(
                        "bands.svg",
                        "circuit.svg",
                        "liners.svg",
                        "losses.svg",
                        "pressure-1.svg",
                        "pressure-2.svg",
                        "pump-1.svg");
        assertThat(Files.readString(dir.resolve("circuit.svg")))
                .startsWith("<?xml version=\"1.0\"")
                .contains("<svg ");
    }

    @Test
    void wholeOrNotAtAll() throws IOException {
        Run nowhere = run("report", FEED, "--out", dir.resolve("none/page.html").toString());
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.err()).contains("there is no directory");
        Path wrong = dir.resolve("wrong.yaml");
        Files.writeString(wrong, Files.readString(Path.of(FEED)).replace("fluid: E85 summer", "fluid: E85 sumer"));
        Path page = dir.resolve("page.html");
        Files.writeString(page, "as it was");
        assertThat(run("report", wrong.toString(), "--out", page.toString()).code())
                .isEqualTo(2);
        assertThat(Files.readString(page)).isEqualTo("as it was");
        assertThat(run("report", FEED, "--svg", dir.resolve("none").toString()).err())
                .contains("is no directory here");
        assertThat(run("report", FEED, "--svg", "").code()).isEqualTo(2);
        Files.createDirectory(dir.resolve("pump-1.svg"));
        assertThat(run("report", FEED, "--svg", dir.toString()).code()).isEqualTo(2);
        assertThat(files()).containsExactly("page.html", "pump-1.svg", "wrong.yaml"); // not one picture
        assertThat(run("report", FEED, "--out", FEED).err()).contains("is the circuit file itself");
    }
}
