package org.linedrop.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The committed tables are those of this code; when they differ, look at the numbers and run {@link Claims}. */
class ClaimsTest {
    @Test
    void committedTableIsCurrent() throws IOException {
        assertThat(read("README.md")).isEqualTo(Claims.readme());
    }

    @Test
    void committedResultsAreCurrent() throws IOException {
        assertThat(read("results.csv")).isEqualTo(Claims.results());
    }

    private static String read(String name) throws IOException {
        return Files.readString(Path.of("validation", name), StandardCharsets.UTF_8)
                .replace("\r\n", "\n");
    }
}
