package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.fact.Problem;

/** Whatever a file holds, it is read or complained of; nothing is thrown and nothing is silent. */
class TreeReaderPropertyTest {
    private static final String[] PIECES = {
        " ", "  ", "\n", "\t", ":", ": ", ",", "-", "- ", "#", " #8", "{", "}", "[", "]", "\"", "'", "*", "&", "!", "%",
        "@", "`", "?", "? ", "|", ">", ">= ", "---", "...", "<<", "\\", "~", "a", "8", "\u00b0", "\u00e9", "\u0000",
        "\r", "\ufeff", "\ud83d", "\u2028"
    };

    private static void check(Reading reading) {
        assertThat(reading.tree().isPresent() || !reading.problems().isEmpty())
                .as("read or complained of")
                .isTrue();
        for (Problem problem : reading.problems()) {
            assertThat(problem.message()).isNotBlank().hasSizeLessThan(250);
            assertThat(problem.line())
                    .doesNotContain("\n")
                    .doesNotContain("org.snakeyaml")
                    .doesNotContain("null");
            assertThat(problem.place().line()).isNotNegative();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"return-style.yaml", "oil-loop.yaml"})
    void mutatedFilesAreReadOrComplainedOf(String name) throws IOException {
        String sample = new String(TreeReaderTest.sample(name), java.nio.charset.StandardCharsets.UTF_8);
        SplittableRandom random = new SplittableRandom(name.length());
        for (int i = 0; i < 4000; i++) {
            StringBuilder text = new StringBuilder(sample);
            for (int edits = random.nextInt(1, 5); edits > 0; edits--) {
                int at = random.nextInt(text.length());
                switch (random.nextInt(4)) {
                    case 0 -> text.deleteCharAt(at);
                    case 1 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                    case 2 -> text.setCharAt(at, text.charAt(random.nextInt(text.length())));
                    default -> text.delete(at, Math.min(text.length(), at + random.nextInt(40)));
                }
            }
            check(TreeReader.read("f.yaml", text.toString(), List.of("parts")));
        }
    }

    @Test
    void randomPiecesToo() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 20000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(1, 25); n > 0; n--) {
                text.append(PIECES[random.nextInt(PIECES.length)]);
            }
            check(TreeReader.read("f.yaml", text.toString(), List.of()));
        }
    }

    @Test
    void randomBytesToo() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 5000; i++) {
            byte[] bytes = new byte[random.nextInt(0, 60)];
            random.nextBytes(bytes);
            check(TreeReader.read("f.yaml", bytes, List.of()));
        }
    }
}
