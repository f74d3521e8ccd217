package org.linedrop.result;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.form.Tree;

/** Where a circuit file says something. */
final class FileLines {
    private static final String TEMPERATURE = "temperature";

    private FileLines() {}

    /**
     * The lines that say which fluid flows in a part and how warm it is: the nearest temperature of part, run and file.
     *
     * @param circuit a circuit in one of its cases
     * @param run     name of the run
     * @param part    name of the part or of the device in it
     * @return line numbers, none twice; empty for a circuit made by code
     */
    static List<Integer> ofFluid(Circuit circuit, String run, String part) {
        Tree.Branch file = circuit.words().here();
        Tree.Branch line = branch(branch(file, "runs"), run);
        Set<Integer> lines = new LinkedHashSet<>();
        add(lines, file.get("fluid"));
        Tree own = part(line, run, part);
        Tree nearest = own instanceof Tree.Branch keys ? keys.get(TEMPERATURE) : null;
        if (nearest == null && line != null) {
            nearest = line.get(TEMPERATURE);
        }
        add(lines, nearest == null ? file.get(TEMPERATURE) : nearest);
        return List.copyOf(lines);
    }

    private static void add(Set<Integer> lines, @Nullable Tree said) {
        if (said != null && said.line() > 0) {
            lines.add(said.line());
        }
    }

    private static Tree.@Nullable Branch branch(Tree.@Nullable Branch tree, String key) {
        return tree != null && tree.get(key) instanceof Tree.Branch inner ? inner : null;
    }

    private static @Nullable Tree part(Tree.@Nullable Branch line, String run, String part) {
        if (line == null || !(line.get("parts") instanceof Tree.Items items)) {
            return null;
        }
        for (int i = 0; i < items.items().size(); i++) {
            Tree item = items.items().get(i);
            if (item instanceof Tree.Branch keys
                    && (part.equals(run + " " + (i + 1)) || says(keys, "name", part) || says(keys, "through", part))) {
                return item;
            }
        }
        return null;
    }

    private static boolean says(Tree.Branch keys, String key, String word) {
        return keys.get(key) instanceof Tree.Text text && text.text().equals(word);
    }
}
