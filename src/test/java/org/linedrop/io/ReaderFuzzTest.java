package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.Result;

/**
 * Whatever bytes a circuit file holds, it is read or complained of, soon. What was read is written and read again, and
 * solved or given a reason.
 *
 * <p>{@code mvn -Pquick,fuzz test} runs it with half a million files, the large ones in full size; {@code -Dfuzz.files=} and {@code -Dfuzz.seed=} set
 * others. A file that fails is kept in {@code target/fuzz}: put it into {@code src/test/resources/org/linedrop/io/fuzz},
 * whose files every run reads, before mending the reader.
 */
@Timeout(value = 4, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class ReaderFuzzTest {
    private static final int USUAL = 1500;
    private static final int FILES = Integer.getInteger("fuzz.files", USUAL);
    private static final long SEED = Long.getLong("fuzz.seed", 12);
    /** Longest time for one file: a large one takes under a second on a slow machine. */
    private static final double LONGEST_S = 10;

    /** Circuits of more points are read and written only. */
    private static final int MOST_SOLVED = 200;

    private static final String LINE_END = "\n";

    private static final String[] PIECES = {
        " ",
        "  ",
        "\n",
        "\t",
        ":",
        ": ",
        ",",
        "-",
        "- ",
        "#",
        " #8",
        "{",
        "}",
        "[",
        "]",
        "\"",
        "'",
        "*",
        "&",
        "!",
        "%",
        "@",
        "?",
        "|",
        ">",
        ">= ",
        "---",
        "...",
        "<<: ",
        "\\",
        "~",
        "a",
        "8",
        "\u00b0",
        "\u0000",
        "\r",
        "\ufeff",
        "\ud83d",
        "\u2028",
        "\u202e",
        "\u0430",
        "NaN",
        "1e999",
        "-1",
        "0",
        "1e-300",
        "-0",
        "Infinity",
        "null",
        "..",
        "..5",
        "+- 5 %",
        " kPa",
        " bar",
        " L/h",
        " C",
        " F",
        " in",
        " mm",
        "../x",
        "cases:\n",
        "catalogue:\n",
        "hoses:\n"
    };

    @TempDir
    Path folder;

    private final List<byte[]> samples = new ArrayList<>();
    private final List<String> tokens = new ArrayList<>();
    private Path file = Path.of("");

    @BeforeEach
    void samples() throws IOException {
        file = folder.resolve("f.yaml");
        for (Path start : List.of(Path.of("src", "examples"), Path.of("src", "test", "resources"))) {
            try (Stream<Path> files = Files.walk(start)) {
                for (Path each : files.filter(f -> f.toString().endsWith(".yaml"))
                        .sorted()
                        .toList()) {
                    samples.add(Files.readAllBytes(each));
                }
            }
        }
        for (byte[] sample : samples) {
            for (String token : new String(sample, StandardCharsets.UTF_8).split("[\\s{},\\[\\]]+")) {
                if (!tokens.contains(token)) {
                    tokens.add(token);
                }
            }
        }
        assertThat(samples).hasSizeGreaterThan(20);
    }

    @Test
    void goodFileReads() throws IOException {
        Files.writeString(file, HostileFiles.feed());
        assertThat(CircuitFile.read(file).points()).hasSize(2);
    }

    @Test
    void hostileFiles() throws IOException {
        for (Map.Entry<String, byte[]> hostile :
                HostileFiles.all(FILES > USUAL ? 1 : 20).entrySet()) {
            check(hostile.getKey(), hostile.getValue());
        }
    }

    @Test
    void filesThatFailedOnce() throws IOException {
        try (Stream<Path> kept = Files.list(Path.of("src", "test", "resources", "org", "linedrop", "io", "fuzz"))) {
            for (Path each : kept.sorted().toList()) {
                check(each.getFileName().toString(), Files.readAllBytes(each));
            }
        }
    }

    @Test
    void mutatedFiles() throws IOException {
        SplittableRandom random = new SplittableRandom(SEED);
        int read = 0;
        for (int i = 0; i < FILES; i++) {
            byte[] sample = samples.get(random.nextInt(samples.size()));
            byte[] made = switch (random.nextInt(4)) {
                case 0 -> otherBytes(sample, random);
                case 1 -> otherTokens(sample, random);
                default -> otherNumbers(sample, random);
            };
            read += check("file " + i + " of seed " + SEED, made) ? 1 : 0;
        }
        assertThat(read).as("files that can be read all the same").isBetween(FILES / 20, FILES - FILES / 20);
    }

    @Test
    void noFileAtAll() {
        assertThat(thrownBy(folder.resolve("nothing.yaml"))).isInstanceOf(IOException.class);
        assertThat(thrownBy(folder)).isInstanceOf(IOException.class);
    }

    private static Exception thrownBy(Path path) {
        try {
            CircuitFile.read(path);
            return new IllegalStateException("was read");
        } catch (IOException | RuntimeException thrown) {
            return thrown;
        }
    }

    private static byte[] otherBytes(byte[] sample, SplittableRandom random) {
        byte[] made = sample.clone();
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            int at = random.nextInt(made.length);
            switch (random.nextInt(3)) {
                case 0 -> made[at] = (byte) random.nextInt(256);
                case 1 -> made[at] ^= (byte) (1 << random.nextInt(8));
                default -> {
                    int length = random.nextInt(1, 60);
                    int from = random.nextInt(made.length);
                    System.arraycopy(sample, from, made, at, Math.min(length, made.length - Math.max(at, from)));
                }
            }
        }
        return random.nextInt(8) == 0 ? java.util.Arrays.copyOf(made, random.nextInt(made.length)) : made;
    }

    /** Leaves a file that can mostly be read, so that what is behind the reader is tried too. */
    private static byte[] otherNumbers(byte[] sample, SplittableRandom random) {
        StringBuilder text = new StringBuilder(new String(sample, StandardCharsets.UTF_8));
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            int at = random.nextInt(text.length());
            while (at < text.length() && !Character.isDigit(text.charAt(at))) {
                at++;
            }
            int end = at;
            while (end < text.length() && Character.isDigit(text.charAt(end))) {
                end++;
            }
            text.replace(at, end, Integer.toString(random.nextInt(4) == 0 ? 0 : random.nextInt(1, 2000)));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private byte[] otherTokens(byte[] sample, SplittableRandom random) {
        StringBuilder text = new StringBuilder(new String(sample, StandardCharsets.UTF_8));
        for (int n = random.nextInt(1, 4); n > 0; n--) {
            int at = random.nextInt(text.length());
            int start = at;
            while (start > 0 && Character.isLetterOrDigit(text.charAt(start - 1))) {
                start--;
            }
            int end = at;
            while (end < text.length() && Character.isLetterOrDigit(text.charAt(end))) {
                end++;
            }
            switch (random.nextInt(6)) {
                case 0 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                case 1 -> text.replace(start, end, PIECES[random.nextInt(PIECES.length)]);
                case 2 -> text.replace(start, end, tokens.get(random.nextInt(tokens.size())));
                case 3 -> text.replace(start, end, Integer.toString(random.nextInt(-10, 1000)));
                case 4 -> otherLine(text, at, random);
                default -> text.delete(at, Math.min(text.length(), at + random.nextInt(40)));
            }
            if (text.isEmpty()) {
                text.append(' ');
            }
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Moves, repeats or drops a line. */
    private static void otherLine(StringBuilder text, int at, SplittableRandom random) {
        int start = text.lastIndexOf(LINE_END, at) + 1;
        int end = text.indexOf("\n", at);
        String line = text.substring(Math.min(start, at), end < 0 ? text.length() : end + 1);
        int way = random.nextInt(3);
        if (way != 0) {
            text.delete(Math.min(start, at), Math.min(start, at) + line.length());
        }
        if (way != 1) {
            int to = text.indexOf("\n", random.nextInt(text.length() + 1));
            text.insert(to < 0 ? text.length() : to + 1, line);
        }
    }

    /** Whether the file was read. */
    private boolean check(String what, byte[] bytes) throws IOException {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        try {
            Files.write(file, bytes);
            boolean read = run();
            double seconds = (clock.getCurrentThreadCpuTime() - start) / 1e9; // others may use the machine
            assertThat(seconds).as("seconds").isLessThan(LONGEST_S);
            return read;
        } catch (Exception | AssertionError | StackOverflowError | OutOfMemoryError thrown) {
            Path kept = Path.of("target", "fuzz", "failed-" + java.util.Arrays.hashCode(bytes) + ".bytes");
            Files.createDirectories(kept.getParent());
            Files.write(kept, bytes);
            return fail(what + ", kept as " + kept + ": " + thrown, thrown);
        }
    }

    private boolean run() throws IOException {
        Circuit circuit;
        try {
            circuit = CircuitFile.read(file);
        } catch (ProblemsException wrong) {
            assertThat(wrong.problems()).isNotEmpty();
            for (Problem problem :
                    wrong.problems().subList(0, Math.min(300, wrong.problems().size()))) {
                assertThat(problem.message()).isNotBlank();
                assertThat(problem.line())
                        .doesNotContain("\n")
                        .doesNotContain("\u001b")
                        .doesNotContain("org.snakeyaml")
                        .doesNotContain("Exception")
                        .hasSizeLessThan(2000);
            }
            return false;
        }
        Circuit again = CircuitFile.read(CircuitWriter.write(circuit), "f.yaml");
        assertThat(CircuitWriter.write(again)).isEqualTo(CircuitWriter.write(circuit));
        if (circuit.points().size() < MOST_SOLVED) {
            assertThat(Result.of(circuit).solution().detail()).isNotNull();
        }
        return true;
    }
}
