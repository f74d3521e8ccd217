package org.linedrop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;

/** The example files that are shipped. */
public final class Examples {
    private static final Path FOLDER = Path.of("src", "examples");

    private Examples() {}

    /** Path of one example. */
    public static Path path(String name) {
        return FOLDER.resolve(name);
    }

    /** One example, in the case as written. */
    public static Circuit circuit(String name) {
        try {
            return CircuitFile.read(path(name));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Names of all example files, sorted. */
    public static List<String> names() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
