package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where output cannot go: the packaged runner leaves no half file and says what happened. */
class OutputIT {
    private static final String FEED = "src/examples/fuel-feed-516.yaml";

    @TempDir
    private Path dir;

    private record Run(int code, String out, String err) {}

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** Runs the runner in a shell, so that the shell's redirections are those of a user. */
    private Run shell(String command) throws Exception {
        Path out = dir.resolve("shell.out");
        Path err = dir.resolve("shell.err");
        String runner = "'" + java() + "' -jar '" + System.getProperty("runner.jar") + "'";
        Process process = new ProcessBuilder("sh", "-c", command.replace("linedrop", runner))
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        assertThat(process.waitFor(90, TimeUnit.SECONDS)).isTrue();
        Run run = new Run(process.exitValue(), Files.readString(out), Files.readString(err));
        Files.delete(out);
        Files.delete(err);
        return run;
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(dir)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void fullDisk() throws Exception {
        assumeThat(Path.of("/dev/full")).exists();
        Run shown = shell("linedrop solve " + FEED + " > /dev/full");
        assertThat(shown.code()).isEqualTo(2);
        assertThat(shown.err()).isEqualTo("cannot write the report: No space left on device\n");
        Run written = shell("linedrop solve " + FEED + " --out /dev/full");
        assertThat(written.code()).isEqualTo(2);
        assertThat(written.err()).startsWith("cannot write /dev/full: No space left on device");
        assertThat(left()).isEmpty();
    }

    /** Root may write everywhere, but nobody can write below a file. */
    @Test
    void folderThatTakesNothing() throws Exception {
        Path file = Files.writeString(dir.resolve("file"), "mine");
        for (String command : List.of("solve " + FEED, "new feed", "schema circuit", "catalogue hoses")) {
            Run run = shell("linedrop " + command + " --out '" + file + "/report.txt'");
            assertThat(run.code()).as(command).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err())
                    .contains("cannot write")
                    .contains("there is no directory")
                    .hasLineCount(1);
        }
        assertThat(file).hasContent("mine");
        assertThat(left()).containsExactly("file");
    }

    /** A folder that takes the name of the report but not a file beside it. */
    @Test
    void fileNameTooLong() throws Exception {
        String name = "n".repeat(300);
        Run run = shell("linedrop solve " + FEED + " --out '" + dir.resolve(name) + "'");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("cannot write ").hasLineCount(1).doesNotContain("\tat ");
        assertThat(left()).isEmpty();
    }

    @Test
    void readerThatTakesOneLine() throws Exception {
        Run run = shell("{ linedrop solve " + FEED + " --all; echo $? >&2; } | head -1");
        assertThat(run.out()).hasLineCount(1).startsWith("UNDERSIZED");
        assertThat(run.err()).isEqualTo("1\n");
    }

    @Test
    void reportOverAnOldOneIsWholeAndAlone() throws Exception {
        Path report = Files.writeString(dir.resolve("report.json"), "old");
        Run run = shell("linedrop check " + FEED + " --format json --out '" + report + "'");
        assertThat(run.code()).isEqualTo(1);
        assertThat(Files.readString(report)).startsWith("{").endsWith("}\n");
        assertThat(left()).containsExactly("report.json");
    }

    /** Stopped at several moments: the old report or the new one, whole, and nothing beside it. */
    @Test
    void stoppedByTheKeyboard() throws Exception {
        Path report = dir.resolve("report.json");
        for (int millis : new int[] {150, 400, 700, 1100}) {
            Files.writeString(report, "old");
            Path err = dir.resolve("err");
            List<String> command = new ArrayList<>(List.of(java(), "-jar", System.getProperty("runner.jar")));
            command.addAll(List.of("check", FEED, "--format", "json", "--out", report.toString()));
            Process process =
                    new ProcessBuilder(command).redirectError(err.toFile()).start();
            process.waitFor(millis, TimeUnit.MILLISECONDS);
            new ProcessBuilder("sh", "-c", "kill -INT " + process.pid()).start().waitFor();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            String said = Files.readString(err);
            String whole = Files.readString(report);
            if (process.exitValue() == 130) {
                assertThat(said).isIn("", "stopped before the end" + System.lineSeparator());
            } else {
                assertThat(process.exitValue()).isEqualTo(1);
                assertThat(whole).startsWith("{");
            }
            assertThat(whole.equals("old") || (whole.startsWith("{") && whole.endsWith("}\n")))
                    .isTrue();
            assertThat(left()).containsExactly("err", "report.json");
        }
    }
}
