package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;

/**
 * An element of a circuit's words with the kind that says its keys.
 *
 * @param subject   its name; empty for the file itself
 * @param otherName run and number of a part that has a name of its own, else empty
 * @param kind      its kind
 * @param words     what the file says of it
 */
record Element(String subject, String otherName, Kind kind, Tree.Branch words) {
    private static final Kind FILE = new Kind("circuit file", "the whole file", Keys.TOP);

    /** All elements in the order of the key table: the file itself, engine, points, devices, runs with their parts. */
    static List<Element> of(Tree.Branch file) {
        List<Element> all = new ArrayList<>();
        all.add(new Element("", "", FILE, file));
        if (file.get("engine") instanceof Tree.Branch engine) {
            all.add(new Element("engine", "", FileKeys.ENGINE_KIND, engine));
        }
        named(file, "points", Keys.POINTS, all);
        named(file, "devices", Keys.DEVICES, all);
        if (file.get("runs") instanceof Tree.Branch runs) {
            for (Tree.Entry entry : runs.entries()) {
                if (entry.value() instanceof Tree.Branch run) {
                    all.add(new Element(entry.key(), "", RunKeys.RUN, run));
                    parts(entry.key(), run, all);
                }
            }
        }
        return all;
    }

    boolean isCalled(String name) {
        return name.equals(subject) || (!otherName.isEmpty() && name.equals(otherName));
    }

    private static void named(Tree.Branch file, String section, List<Kind> kinds, List<Element> all) {
        if (!(file.get(section) instanceof Tree.Branch elements)) {
            return;
        }
        for (Tree.Entry entry : elements.entries()) {
            if (entry.value() instanceof Tree.Branch element && element.get("kind") instanceof Tree.Text word) {
                kinds.stream()
                        .filter(kind -> kind.word().equals(word.text()))
                        .findFirst()
                        .ifPresent(kind -> all.add(new Element(entry.key(), "", kind, element)));
            }
        }
    }

    private static void parts(String run, Tree.Branch words, List<Element> all) {
        if (!(words.get(RunKeys.PARTS_MARK.name()) instanceof Tree.Items parts)) {
            return;
        }
        for (int i = 0; i < parts.items().size(); i++) {
            if (parts.items().get(i) instanceof Tree.Branch part) {
                Kind kind = kind(part);
                String number = run + " " + (i + 1);
                String name = part.get(RunKeys.NAME.name()) instanceof Tree.Text text ? text.text() : number;
                if (kind != null) {
                    all.add(new Element(name, name.equals(number) ? "" : number, kind, part));
                }
            }
        }
    }

    private static @Nullable Kind kind(Tree.Branch part) {
        return Keys.PARTS.stream()
                .filter(kind -> part.get(kind.word()) != null)
                .findFirst()
                .orElse(null);
    }
}
