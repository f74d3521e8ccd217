package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;

/** What the README shows is what there is. */
class ReadmeOutputTest {
    private static String block(String language) throws IOException {
        String readme = Files.readString(Path.of("README.md"));
        Matcher block =
                Pattern.compile("```" + language + "\n(.*?)```", Pattern.DOTALL).matcher(readme);
        assertThat(block.find()).as("a block of " + language).isTrue();
        return block.group(1);
    }

    @Test
    void fileSampleIsTheExample() throws IOException {
        assertThat(block("yaml")).isEqualTo(Files.readString(Examples.path("first-feed.yaml")));
    }

    @Test
    void printedSampleIsWhatTheRunnerPrints() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int exit = Runner.run(
                new String[] {"solve", Examples.path("first-feed.yaml").toString()}, out, out);
        assertThat(exit).isEqualTo(1);
        assertThat(block("text")).isEqualTo(out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void librarySampleIsUnderTest() throws IOException {
        String source = Files.readString(Path.of("src/test/java/org/linedrop/ReadmeSampleTest.java"));
        String sample = source.substring(
                source.indexOf("// README sample begins\n") + "// README sample begins\n".length(),
                source.indexOf("        // README sample ends"));
        assertThat(block("java")).isEqualTo(sample.indent(-8));
    }
}
