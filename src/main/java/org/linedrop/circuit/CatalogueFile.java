package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.form.Tree;

/**
 * A file of the user's own hoses that lies beside a circuit file and is named in its {@code catalogue: files:}.
 *
 * @param name  its name, without any folder
 * @param words what it says: {@code hoses:} and its families, or the same below {@code catalogue:}
 */
public record CatalogueFile(String name, Tree.Branch words) {
    private static final String SECTION = "catalogue";

    /**
     * The files that a circuit file names and that may be read: those beside it. A name with a folder in it is a
     * problem that {@link Circuit#of} reports.
     *
     * @param circuit the words of a circuit file
     * @return names in the order of the file, none twice
     */
    public static List<String> named(Tree.Branch circuit) {
        List<String> names = new ArrayList<>();
        if (circuit.get(SECTION) instanceof Tree.Branch section
                && section.get(CatalogueReader.FILES) instanceof Tree.Items files) {
            for (Tree file : files.items()) {
                if (file instanceof Tree.Text text && beside(text.text()) && !names.contains(text.text())) {
                    names.add(text.text());
                }
            }
        }
        return names;
    }

    /**
     * The words of a circuit with the hoses of the files it names written into its own catalogue, so that it stands
     * without them.
     *
     * @param circuit the words of a circuit file
     * @param files   the files it names
     * @return words that name no file; the same words where none was named
     */
    static Tree.Branch writtenInto(Tree.Branch circuit, List<CatalogueFile> files) {
        if (!(circuit.get(SECTION) instanceof Tree.Branch section) || section.get(CatalogueReader.FILES) == null) {
            return circuit;
        }
        Tree.Branch hoses = Tree.of();
        for (String name : named(circuit)) {
            for (CatalogueFile file : files) {
                hoses = file.name().equals(name) ? both(hoses, hoses(file.words())) : hoses;
            }
        }
        hoses = both(hoses, hoses(section));
        Tree.Branch whole = section.without(CatalogueReader.FILES);
        return circuit.with(SECTION, hoses.entries().isEmpty() ? whole : whole.with(CatalogueReader.HOSES, hoses));
    }

    private static Tree.Branch hoses(Tree.Branch words) {
        Tree.Branch inner = words.get(SECTION) instanceof Tree.Branch section ? section : words;
        return inner.get(CatalogueReader.HOSES) instanceof Tree.Branch hoses ? hoses : Tree.of();
    }

    private static Tree.Branch both(Tree.Branch first, Tree.Branch second) {
        Tree.Branch all = first;
        for (Tree.Entry entry : second.entries()) {
            all = all.with(entry.key(), entry.value());
        }
        return all;
    }

    /** Whether a name stays in the folder of the circuit file, on any system. */
    static boolean beside(String name) {
        return name.matches("[\\p{L}\\p{N}_ ()+-][\\p{L}\\p{N}_ ()+.-]*") && !name.isBlank();
    }
}
