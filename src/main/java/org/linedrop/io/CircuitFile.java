package org.linedrop.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/** Reads circuit files: YAML or JSON, one tree either way. */
public final class CircuitFile {
    /** The parts of the run {@code feed} are called {@code feed 1}, {@code feed 2}. */
    private static final List<String> SILENT = List.of("parts");

    private CircuitFile() {}

    /**
     * Reads a circuit file.
     *
     * @param file the file
     * @return the circuit in the case as written
     * @throws ProblemsException with everything that is wrong with the file
     * @throws IOException       when the file cannot be read
     */
    public static Circuit read(Path file) throws IOException {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        try (InputStream stream = Files.newInputStream(file)) {
            return built(TreeReader.read(name, stream, SILENT), name);
        }
    }

    /**
     * Reads a circuit from text.
     *
     * @param text the words of a circuit file
     * @param name name for messages
     * @return the circuit in the case as written
     * @throws ProblemsException with everything that is wrong
     */
    public static Circuit read(String text, String name) {
        return built(TreeReader.read(name, text, SILENT), name);
    }

    private static Circuit built(Reading reading, String name) {
        if (reading.tree().isEmpty()) {
            throw new ProblemsException(reading.problems());
        }
        List<Problem> problems = new ArrayList<>(reading.problems());
        Circuit circuit = null;
        try {
            circuit = Circuit.of(reading.tree().get(), name);
        } catch (ProblemsException wrong) {
            problems.addAll(wrong.problems());
        }
        if (circuit == null || !problems.isEmpty()) {
            problems.sort(java.util.Comparator.comparing(Problem::place));
            throw new ProblemsException(problems);
        }
        return circuit;
    }
}
