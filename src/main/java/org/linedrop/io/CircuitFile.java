package org.linedrop.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.CatalogueFile;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/** Reads circuit files: YAML or JSON, one tree either way. */
public final class CircuitFile {
    /** The parts of the run {@code feed} are called {@code feed 1}, {@code feed 2}. */
    private static final List<String> SILENT = List.of("parts");

    private CircuitFile() {}

    /**
     * Reads a circuit file, and the catalogue files beside it that it names.
     *
     * @param file the file
     * @return the circuit in the case as written
     * @throws ProblemsException     with everything that is wrong with the file
     * @throws IOException           when the file cannot be read
     * @throws IllegalStateException when snakeyaml-engine is not on the class path
     */
    public static Circuit read(Path file) throws IOException {
        String name = file.getFileName() == null
                ? file.toString()
                : file.getFileName().toString();
        try (InputStream stream = Files.newInputStream(file)) {
            return built(TreeReader.read(name, stream, SILENT), name, file);
        } catch (NoClassDefFoundError missing) {
            throw noReader(missing);
        }
    }

    /**
     * Reads a circuit from text. It has no folder, so it cannot name catalogue files.
     *
     * @param text the words of a circuit file
     * @param name name for messages
     * @return the circuit in the case as written
     * @throws ProblemsException     with everything that is wrong
     * @throws IllegalStateException when snakeyaml-engine is not on the class path
     */
    public static Circuit read(String text, String name) {
        try {
            return built(TreeReader.read(name, text, SILENT), name, null);
        } catch (NoClassDefFoundError missing) {
            throw noReader(missing);
        }
    }

    /** The reader of YAML is optional, so whoever embeds the library may have left it out. */
    private static RuntimeException noReader(NoClassDefFoundError missing) {
        String name = String.valueOf(missing.getMessage());
        if (!name.contains("snakeyaml")) {
            throw missing;
        }
        return new IllegalStateException(
                "reading circuit files needs org.snakeyaml:snakeyaml-engine beside the library: add it to your project's"
                        + " dependencies",
                missing);
    }

    private static Circuit built(Reading reading, String name, @Nullable Path file) {
        if (reading.tree().isEmpty()) {
            throw new ProblemsException(reading.problems());
        }
        List<Problem> problems = new ArrayList<>(reading.problems());
        Circuit circuit = null;
        try {
            Tree.Branch tree = reading.tree().get();
            List<CatalogueFile> beside = file == null ? List.of() : CatalogueFiles.beside(tree, file, problems);
            circuit = Circuit.of(tree, name, beside);
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
