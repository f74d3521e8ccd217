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

    /**
     * The files that a circuit file names and that may be read: those beside it. A name with a folder in it is a
     * problem that {@link Circuit#of} reports.
     *
     * @param circuit the words of a circuit file
     * @return names in the order of the file, none twice
     */
    public static List<String> named(Tree.Branch circuit) {
        List<String> names = new ArrayList<>();
        if (circuit.get("catalogue") instanceof Tree.Branch section
                && section.get(CatalogueReader.FILES) instanceof Tree.Items files) {
            for (Tree file : files.items()) {
                if (file instanceof Tree.Text text && beside(text.text()) && !names.contains(text.text())) {
                    names.add(text.text());
                }
            }
        }
        return names;
    }

    /** Whether a name stays in the folder of the circuit file, on any system. */
    static boolean beside(String name) {
        return name.matches("[\\p{L}\\p{N}_ ()+-][\\p{L}\\p{N}_ ()+.-]*") && !name.isBlank();
    }
}
