package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Words;

/** Applies the words of a case to the words of the file: the result is a file of its own. */
final class CaseMerge {
    private static final String LIKE = "like";
    private static final int MOST_LIKES = 20;
    /** Sections whose elements a case may change. */
    private static final List<String> ELEMENTS = List.of("points", "devices", "runs", FluidReader.SECTION);

    private final Problems problems;

    CaseMerge(Problems problems) {
        this.problems = problems;
    }

    /** The file as it reads in one case; null when the case cannot be made. */
    Tree.@Nullable Branch in(Tree.Branch file, String caseName, Tree.Branch cases) {
        return in(file, caseName, cases, 0);
    }

    private Tree.@Nullable Branch in(Tree.Branch file, String caseName, Tree.Branch cases, int depth) {
        Tree said = cases.get(caseName);
        if (!(said instanceof Tree.Branch changes)) {
            return null;
        }
        Tree.Branch made = file;
        if (changes.get(LIKE) instanceof Tree.Text like && !like.text().equals(thisCase(file))) {
            if (cases.get(like.text()) == null || depth > MOST_LIKES) {
                String hint = Words.nearest(like.text(), names(cases))
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("Cases here: " + String.join(", ", names(cases)));
                problem(
                        like,
                        "case " + caseName,
                        LIKE,
                        like.text(),
                        "no case \"" + like.text() + "\" to start from",
                        hint);
                return null;
            }
            made = in(file, like.text(), cases, depth + 1);
            if (made == null) {
                return null;
            }
        }
        for (Tree.Entry entry : changes.entries()) {
            if (!entry.key().equals(LIKE)) {
                made = apply(made, entry, "case " + caseName);
            }
        }
        return made.with(FileKeys.THIS_CASE.name(), Tree.text(caseName));
    }

    static String thisCase(Tree.Branch file) {
        return file.get(FileKeys.THIS_CASE.name()) instanceof Tree.Text text ? text.text() : Circuit.UNNAMED_CASE;
    }

    private static List<String> names(Tree.Branch branch) {
        return branch.entries().stream().map(Tree.Entry::key).toList();
    }

    /** Applies one entry of a case, or one change made by code. */
    Tree.Branch apply(Tree.Branch file, Tree.Entry change, String path) {
        String subject = change.key();
        if (Keys.TOP.stream().anyMatch(key -> key.name().equals(subject))) {
            return file.with(subject, change.value());
        }
        if (subject.equals("engine") && change.value() instanceof Tree.Branch engine) {
            return file.with(subject, engine(file.get(subject), engine));
        }
        if (subject.equals("limits") && change.value() instanceof Tree.Branch limits) {
            return file.with(subject, limits(file.get(subject), limits));
        }
        for (String section : ELEMENTS) {
            if (file.get(section) instanceof Tree.Branch elements
                    && elements.get(subject) instanceof Tree.Branch element
                    && change.value() instanceof Tree.Branch patch) {
                Tree.Branch changed = section.equals("runs") ? run(element, patch) : merge(element, patch);
                return file.with(section, elements.with(subject, changed));
            }
        }
        Optional<Tree.Branch> part = part(file, subject, change.value());
        if (part.isPresent()) {
            return part.get();
        }
        if (ELEMENTS.stream()
                .anyMatch(section ->
                        file.get(section) instanceof Tree.Branch elements && elements.get(subject) != null)) {
            problems.add(
                    problems.place(change.line(), change.column(), path),
                    subject,
                    "",
                    subject + " is no part: a case gives its keys anew",
                    "Write for example " + subject
                            + ": {height: 0.50 m}; to take out a device put none for the part that"
                            + " holds it, as in feed 2: none");
            return file;
        }
        List<String> known = subjects(file);
        String hint = Words.nearest(subject, known)
                .map(near -> "Did you mean " + near + "?")
                .orElse("A case repeats the file's own words: a point, device, run or named part, or a top-level key");
        problems.add(
                problems.place(change.line(), change.column(), path),
                subject,
                "",
                "no point, device, run or part \"" + subject + "\" to change",
                hint);
        return file;
    }

    /** Keys of the patch replace those of the element. */
    static Tree.Branch merge(Tree.Branch element, Tree.Branch patch) {
        Tree.Branch merged = element;
        for (Tree.Entry entry : patch.entries()) {
            merged = merged.with(entry.key(), entry.value());
        }
        return merged;
    }

    /** Giving the flow replaces power and consumption, and the other way round. */
    private static Tree.Branch engine(@Nullable Tree before, Tree.Branch patch) {
        Tree.Branch engine = before instanceof Tree.Branch branch ? branch : new Tree.Branch(List.of(), 0, 0);
        if (patch.get(FileKeys.ENGINE_FLOW.name()) != null) {
            engine = engine.without(FileKeys.POWER.name()).without(FileKeys.BSFC.name());
        } else if (patch.get(FileKeys.POWER.name()) != null) {
            engine = engine.without(FileKeys.ENGINE_FLOW.name());
        }
        return merge(engine, patch);
    }

    private static Tree.Branch limits(@Nullable Tree said, Tree.Branch patch) {
        Tree.Branch limits = said instanceof Tree.Branch branch ? branch : new Tree.Branch(List.of(), 0, 0);
        for (Tree.Entry entry : patch.entries()) {
            Tree old = limits.get(entry.key());
            Tree value = old instanceof Tree.Branch before && entry.value() instanceof Tree.Branch more
                    ? merge(before, more)
                    : entry.value();
            limits = limits.with(entry.key(), value);
        }
        return limits;
    }

    /** {@code hoses: -10} changes every hose of the run; other keys are the run's own. */
    private static Tree.Branch run(Tree.Branch run, Tree.Branch patch) {
        Tree.Branch changed = run;
        for (Tree.Entry entry : patch.entries()) {
            if (entry.key().equals(RunKeys.HOSES.name())
                    && entry.value() instanceof Tree.Text size
                    && run.get("parts") instanceof Tree.Items parts) {
                List<Tree> items = new ArrayList<>();
                for (Tree part : parts.items()) {
                    items.add(part instanceof Tree.Branch branch ? resized(branch, size) : part);
                }
                changed = changed.with("parts", new Tree.Items(items, parts.line(), parts.column()));
            } else {
                changed = changed.with(entry.key(), entry.value());
            }
        }
        return changed;
    }

    /** The part with another size, where it is a hose: the family stays unless the new size names one. */
    private static Tree resized(Tree.Branch part, Tree.Text size) {
        if (!(part.get(RunKeys.HOSE.name()) instanceof Tree.Text hose)) {
            return part;
        }
        boolean sizeAlone = !size.text().contains(" ");
        int cut = hose.text().lastIndexOf(' ');
        String text = sizeAlone && cut > 0 ? hose.text().substring(0, cut + 1) + size.text() : size.text();
        return part.with(RunKeys.HOSE.name(), new Tree.Text(text, size.line(), size.column()));
    }

    /** The file with one named or numbered part changed or taken out; empty when there is no such part. */
    private static Optional<Tree.Branch> part(Tree.Branch file, String subject, Tree value) {
        if (!(file.get("runs") instanceof Tree.Branch runs)) {
            return Optional.empty();
        }
        for (Tree.Entry entry : runs.entries()) {
            if (!(entry.value() instanceof Tree.Branch run) || !(run.get("parts") instanceof Tree.Items parts)) {
                continue;
            }
            for (int i = 0; i < parts.items().size(); i++) {
                if (!(parts.items().get(i) instanceof Tree.Branch part) || !isCalled(part, entry.key(), i, subject)) {
                    continue;
                }
                List<Tree> items = new ArrayList<>(parts.items());
                items.set(i, value instanceof Tree.Branch patch ? merge(part, patch) : value);
                Tree.Items changed = new Tree.Items(items, parts.line(), parts.column());
                return Optional.of(file.with("runs", runs.with(entry.key(), run.with("parts", changed))));
            }
        }
        return Optional.empty();
    }

    static boolean isCalled(Tree.Branch part, String run, int index, String subject) {
        return subject.equals(run + " " + (index + 1))
                || (part.get(RunKeys.NAME.name()) instanceof Tree.Text name
                        && name.text().equals(subject));
    }

    private static List<String> subjects(Tree.Branch file) {
        List<String> known = new ArrayList<>();
        for (String section : ELEMENTS) {
            if (file.get(section) instanceof Tree.Branch elements) {
                known.addAll(names(elements));
            }
        }
        if (file.get("runs") instanceof Tree.Branch runs) {
            for (Tree.Entry run : runs.entries()) {
                if (run.value() instanceof Tree.Branch branch && branch.get("parts") instanceof Tree.Items parts) {
                    for (Tree part : parts.items()) {
                        if (part instanceof Tree.Branch keys
                                && keys.get(RunKeys.NAME.name()) instanceof Tree.Text name) {
                            known.add(name.text());
                        }
                    }
                }
            }
        }
        Keys.TOP.forEach(key -> known.add(key.name()));
        return known;
    }

    private void problem(Tree at, String path, String key, String value, String message, String hint) {
        problems.add(problems.place(at.line(), at.column(), path), key, value, message, hint);
    }
}
