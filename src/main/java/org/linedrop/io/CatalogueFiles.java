package org.linedrop.io;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.CatalogueFile;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;

/** Reads the catalogue files that a circuit file names, from its own folder and from nowhere else. */
final class CatalogueFiles {
    private static final Tree.Branch NOTHING = new Tree.Branch(List.of(), 0, 0);

    private CatalogueFiles() {}

    /**
     * Reads them.
     *
     * @param circuit  the words of the circuit file
     * @param file     the circuit file
     * @param problems takes what is wrong with them; a file that cannot be read stands in the answer without words
     * @return those that are there
     */
    static List<CatalogueFile> beside(Tree.Branch circuit, Path file, List<Problem> problems) {
        List<CatalogueFile> found = new ArrayList<>();
        for (String name : CatalogueFile.named(circuit)) {
            Path path = file.resolveSibling(name);
            if (Files.isRegularFile(path)) {
                found.add(new CatalogueFile(name, words(name, path, file, problems)));
            }
        }
        return found;
    }

    private static Tree.Branch words(String name, Path path, Path file, List<Problem> problems) {
        try {
            Path folder = path.toRealPath().getParent();
            Path home = file.toAbsolutePath().toRealPath().getParent();
            boolean linked = Files.isSymbolicLink(path) && !same(folder, home);
            if (linked) {
                problems.add(problem(
                        name,
                        "the catalogue file is a link that leaves the folder",
                        "Put the file itself beside the circuit file"));
                return NOTHING;
            }
            try (InputStream stream = Files.newInputStream(path)) {
                Reading reading = TreeReader.read(name, stream, List.of());
                problems.addAll(reading.problems());
                Optional<Tree.Branch> tree = reading.tree();
                return tree.orElse(NOTHING);
            }
        } catch (IOException e) {
            problems.add(problem(name, "the catalogue file cannot be read: " + e.getMessage(), "Check who owns it"));
            return NOTHING;
        }
    }

    private static boolean same(@Nullable Path a, @Nullable Path b) {
        return a != null && a.equals(b);
    }

    private static Problem problem(String name, String message, String hint) {
        return new Problem(new Place(name, 0, 0, ""), "", "", message, hint);
    }
}
