package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the packaged runner opens, as the virtual machine records it: the files it is given, and no network. */
class OpenedFilesIT {
    private static final Path CIRCUIT = Path.of("src/examples/own-hose.yaml");

    @TempDir
    private Path dir;

    @Test
    void onlyWhatItIsGiven() throws Exception {
        Path page = dir.resolve("out/page.html");
        Files.createDirectory(page.getParent());
        List<RecordedEvent> events = record("report", CIRCUIT.toString(), "--out", page.toString());
        assertThat(page).isNotEmptyFile();
        assertThat(events).noneMatch(event -> event.getEventType().getName().startsWith("jdk.Socket"));
        List<Path> read = paths(events, "jdk.FileRead");
        assertThat(read).contains(CIRCUIT.toAbsolutePath());
        assertThat(read)
                .allSatisfy(file -> assertThat(file)
                        .satisfiesAnyOf(
                                own -> assertThat(own)
                                        .isEqualTo(Path.of(System.getProperty("runner.jar"))
                                                .toAbsolutePath()),
                                java -> assertThat(java)
                                        .startsWith(Path.of(System.getProperty("java.home"))
                                                .toRealPath()),
                                given -> assertThat(given).isEqualTo(CIRCUIT.toAbsolutePath())));
        List<Path> written = paths(events, "jdk.FileWrite");
        assertThat(written).extracting(Path::getParent).containsOnly(page.getParent());
        try (var left = Files.list(page.getParent())) {
            assertThat(left).containsExactly(page);
        }
    }

    /** Runs the runner with a recording of every file read or written and every socket used. */
    private List<RecordedEvent> record(String... arguments) throws Exception {
        Path settings = dir.resolve("settings.jfc");
        StringBuilder text = new StringBuilder("<configuration version=\"2.0\">");
        for (String event : List.of("FileRead", "FileWrite", "SocketRead", "SocketWrite")) {
            text.append("<event name=\"jdk.")
                    .append(event)
                    .append("\"><setting name=\"enabled\">true</setting>")
                    .append("<setting name=\"threshold\">0 ns</setting></event>");
        }
        Files.writeString(settings, text.append("</configuration>"));
        Path recording = dir.resolve("run.jfr");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:jfr*=off",
                "-XX:StartFlightRecording:filename=" + recording + ",settings=" + settings,
                "-jar",
                System.getProperty("runner.jar")));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(dir.resolve("said").toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        return RecordingFile.readAllEvents(recording);
    }

    private static List<Path> paths(List<RecordedEvent> events, String type) {
        return events.stream()
                .filter(event -> event.getEventType().getName().equals(type))
                .map(event -> event.getString("path"))
                .filter(path -> path != null) // the streams of the process itself have no path
                .map(path -> Path.of(path).toAbsolutePath())
                .distinct()
                .toList();
    }
}
