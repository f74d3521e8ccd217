package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Words;

/** Writes out {@code sections:} where {@code uses:} names them: everything in one gets the prefix in its names. */
final class SectionMerge {
    private static final String SECTIONS = "sections";
    private static final String USES = "uses";
    private static final List<String> PARTS = List.of("points", "devices", "runs", "limits");

    private final Problems problems;

    SectionMerge(Problems problems) {
        this.problems = problems;
    }

    /** The file without sections; the file itself where it has none. */
    Tree.Branch writtenOut(Tree.Branch file) {
        Tree sections = file.get(SECTIONS);
        Tree uses = file.get(USES);
        if (sections == null && uses == null) {
            return file;
        }
        Tree.Branch made = file.without(SECTIONS).without(USES);
        if (!(sections instanceof Tree.Branch known)) {
            Tree at = sections == null ? file : sections;
            problem(at, SECTIONS, "", "sections takes named sections", "Write sections: {bank: {runs: ...}}");
            return made;
        }
        if (!(uses instanceof Tree.Items items)) {
            problem(
                    uses == null ? sections : uses,
                    USES,
                    "",
                    "the sections are used nowhere",
                    "Write uses: and below it - {section: bank, as: left}");
            return made;
        }
        Set<String> used = new TreeSet<>();
        for (Tree item : items.items()) {
            if (!(item instanceof Tree.Branch use)
                    || !(use.get("section") instanceof Tree.Text name)
                    || !(use.get("as") instanceof Tree.Text prefix)) {
                problem(item, USES, "", "a use names its section and a prefix", "Write - {section: bank, as: left}");
                continue;
            }
            List<String> names = known.entries().stream().map(Tree.Entry::key).toList();
            if (!(known.get(name.text()) instanceof Tree.Branch section)) {
                String hint = Words.nearest(name.text(), names)
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("Sections here: " + String.join(", ", names));
                problem(name, USES, name.text(), "no section \"" + name.text() + "\"", hint);
                continue;
            }
            used.add(name.text());
            made = joined(made, section, name.text(), prefix.text() + " ");
        }
        for (Tree.Entry entry : known.entries()) {
            if (!used.contains(entry.key())) {
                problem(
                        entry.value(),
                        SECTIONS,
                        entry.key(),
                        "section " + entry.key() + " is used nowhere",
                        "Write uses: [{section: " + entry.key() + ", as: left}], or delete it");
            }
        }
        return made;
    }

    private Tree.Branch joined(Tree.Branch file, Tree.Branch section, String name, String prefix) {
        Set<String> own = names(section);
        Tree.Branch made = file;
        for (Tree.Entry entry : section.entries()) {
            if (!PARTS.contains(entry.key()) || !(entry.value() instanceof Tree.Branch elements)) {
                problems.add(
                        problems.place(entry.line(), entry.column(), "section " + name),
                        entry.key(),
                        "",
                        "a section has no key \"" + entry.key() + "\"",
                        "It takes: " + String.join(", ", PARTS));
                continue;
            }
            Tree before = made.get(entry.key());
            List<Tree.Entry> all = new ArrayList<>();
            if (before instanceof Tree.Branch branch) {
                all.addAll(branch.entries());
            }
            for (Tree.Entry element : elements.entries()) {
                all.add(new Tree.Entry(
                        prefixed(element.key(), own, prefix),
                        element.line(),
                        element.column(),
                        renamed(element.value(), own, prefix)));
            }
            Tree place = before == null ? entry.value() : before;
            made = made.with(entry.key(), new Tree.Branch(all, place.line(), place.column()));
        }
        return made;
    }

    /** Names of what a section holds: points, devices, runs and named parts. */
    private static Set<String> names(Tree.Branch section) {
        Set<String> names = new TreeSet<>();
        for (String kind : List.of("points", "devices", "runs")) {
            if (section.get(kind) instanceof Tree.Branch elements) {
                elements.entries().forEach(entry -> names.add(entry.key()));
            }
        }
        if (section.get("runs") instanceof Tree.Branch runs) {
            for (Tree.Entry run : runs.entries()) {
                if (run.value() instanceof Tree.Branch branch && branch.get("parts") instanceof Tree.Items parts) {
                    for (Tree part : parts.items()) {
                        if (part instanceof Tree.Branch keys && keys.get("name") instanceof Tree.Text text) {
                            names.add(text.text());
                        }
                    }
                }
            }
        }
        return names;
    }

    /** The keys that hold names are renamed, wherever they stand in an element. */
    private static Tree renamed(Tree value, Set<String> own, String prefix) {
        if (value instanceof Tree.Items items) {
            List<Tree> all = items.items().stream()
                    .map(item -> renamed(item, own, prefix))
                    .toList();
            return new Tree.Items(all, items.line(), items.column());
        }
        if (!(value instanceof Tree.Branch branch)) {
            return value;
        }
        List<Tree.Entry> all = new ArrayList<>();
        for (Tree.Entry entry : branch.entries()) {
            boolean names = List.of("from", "to", "through", "name").contains(entry.key());
            Tree made = names && entry.value() instanceof Tree.Text text
                    ? new Tree.Text(prefixed(text.text(), own, prefix), text.line(), text.column())
                    : renamed(entry.value(), own, prefix);
            all.add(new Tree.Entry(entry.key(), entry.line(), entry.column(), made));
        }
        return new Tree.Branch(all, branch.line(), branch.column());
    }

    /** {@code regulator.inlet} of the section itself becomes {@code left regulator.inlet}; names from outside stay. */
    private static String prefixed(String text, Set<String> own, String prefix) {
        int dot = text.indexOf('.');
        String element = dot < 0 ? text : text.substring(0, dot);
        return own.contains(element) ? prefix + text : text;
    }

    private void problem(Tree at, String key, String value, String message, String hint) {
        problems.add(problems.place(at.line(), at.column(), ""), key, value, message, hint);
    }
}
