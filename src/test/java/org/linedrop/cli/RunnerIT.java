package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged runner, as a user starts it. */
class RunnerIT {
    private static final String FEED = "src/examples/fuel-feed-516.yaml";

    @TempDir
    private Path dir;

    private record Run(int code, String out, String err) {}

    private Process start(Path out, Path err, List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=tr",
                "-Dfile.encoding=ISO-8859-1",
                "-jar",
                System.getProperty("runner.jar")));
        command.addAll(arguments);
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(err.toFile());
        return out == null
                ? builder.start()
                : builder.redirectOutput(out.toFile()).start();
    }

    private Run run(String... arguments) throws Exception {
        Path out = dir.resolve("out");
        Path err = dir.resolve("err");
        Process process = start(out, err, List.of(arguments));
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    @Test
    void mainJobNamesTheOldHardLine() throws Exception {
        Run run = run("check", FEED);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("UNDERSIZED").contains("old hard line");
        assertThat(run.code()).isEqualTo(1);
    }

    @Test
    void everyFormatComesOutOfTheJar() throws Exception {
        assertThat(run("solve", FEED, "--format", "json").out()).startsWith("{").endsWith("}\n");
        assertThat(run("solve", FEED, "--format", "csv").out()).startsWith("case,run,row,");
        assertThat(run("--version").out()).startsWith("linedrop ");
    }

    @Test
    void tenMistakesAreTenLines() throws Exception {
        Run run = run("check", "src/test/resources/org/linedrop/circuit/ten-mistakes.yaml");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("10 things to correct in ")
                .hasLineCount(11)
                .doesNotContain("\tat ");
    }

    @Test
    void missingFile() throws Exception {
        Run run = run("check", "no-such.yaml");
        assertThat(run)
                .isEqualTo(new Run(
                        2, "", "no file no-such.yaml here. Check its name and directory" + System.lineSeparator()));
    }

    @Test
    void readerThatStopsReading() throws Exception {
        Path err = dir.resolve("err");
        Process process = start(null, err, List.of("solve", FEED, "--all"));
        process.getInputStream().close();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(1);
        assertThat(Files.readString(err)).isEmpty();
    }

    @Test
    void outputIsUtf8WhateverTheLocale() throws Exception {
        Path file = dir.resolve("umlaut.yaml");
        Files.writeString(file, Files.readString(Path.of(FEED)).replace("old hard line", "alte Röhre"));
        Process process = start(null, dir.resolve("err"), List.of("check", file.toString()));
        try (BufferedReader reader = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(reader.lines()).anySatisfy(line -> assertThat(line).contains("alte Röhre"));
        }
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    }
}
