package org.linedrop.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Jars stay small enough to be embedded and started without thought. */
class JarSizesIT {
    private static final long MEGABYTE = 1_000_000;
    /** Wanted are 1.5 megabytes; 0.12 are line numbers, which stay for whoever reads a trace or steps through the code. */
    private static final long LIBRARY_BYTES = MEGABYTE * 8 / 5;

    private static final long RUNNER_BYTES = MEGABYTE * 8;

    @Test
    void jarsStaySmall() throws IOException {
        Path runner = Path.of(System.getProperty("runner.jar"));
        Path library = runner.resolveSibling(runner.getFileName().toString().replace("-runner", ""));
        assertThat(Files.size(library)).describedAs("library jar").isBetween(100_000L, LIBRARY_BYTES);
        assertThat(Files.size(runner)).describedAs("runner jar").isBetween(Files.size(library), RUNNER_BYTES);
    }
}
