package org.linedrop.io;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/** What a beginner gets wrong, and what he reads: one mistake gives the messages of beginner.txt and no other. */
class BeginnerMistakesTest {
    /** One mistake: what it is, the text it replaces, the text instead, the messages. */
    record Mistake(String what, String good, String bad, List<String> messages) {
        @Override
        public String toString() {
            return what;
        }
    }

    static String resource(String name) {
        try (InputStream stream = Objects.requireNonNull(BeginnerMistakesTest.class.getResourceAsStream(name))) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static Stream<Mistake> mistakes() {
        List<Mistake> all = new ArrayList<>();
        for (String block : resource("beginner.txt").split("\n\n")) {
            List<String> lines = block.lines().toList();
            if (lines.size() > 2 && lines.get(1).startsWith("< ")) {
                all.add(new Mistake(
                        lines.get(0).substring(2),
                        plain(lines.get(1)),
                        plain(lines.get(2)),
                        lines.subList(3, lines.size()).stream()
                                .map(line -> line.substring(2))
                                .toList()));
            }
        }
        return all.stream();
    }

    private static String plain(String line) {
        return line.substring(2).replace("\\n", "\n").replace("\\t", "\t");
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void everyMistakeIsSaidInItsOwnWords(Mistake mistake) {
        String good = resource("beginner.yaml");
        assertThat(good).contains(mistake.good());
        int at = good.indexOf(mistake.good());
        String bad = good.substring(0, at)
                + mistake.bad()
                + good.substring(at + mistake.good().length());
        List<Problem> problems = catchThrowableOfType(ProblemsException.class, () -> CircuitFile.read(bad, "feed.yaml"))
                .problems();
        assertThat(problems).extracting(Problem::line).containsExactlyElementsOf(mistake.messages());
    }

    @Test
    void thereAreMistakesAndTheFileWithoutThemIsGood() {
        assertThat(mistakes())
                .hasSizeGreaterThan(45)
                .allSatisfy(m -> assertThat(m.messages()).isNotEmpty());
        assertThat(CircuitFile.read(resource("beginner.yaml"), "feed.yaml").runs())
                .hasSize(3);
    }
}
