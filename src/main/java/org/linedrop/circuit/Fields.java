package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Place;
import org.linedrop.fact.Words;

/** The values of one element, read key by key; what is wrong goes to the list of problems. */
final class Fields {
    /** Stands for a value that was complained of already. */
    private static final Tree.Items SPOILT = Tree.items();

    private final Tree.Branch tree;
    private final String path;
    private final Problems problems;
    private final Scope scope;
    private final Map<Key<?>, Object> values = new LinkedHashMap<>();

    /**
     * Reads all keys of a kind.
     *
     * @param tree   the element
     * @param path   its name in messages
     * @param kind   its kind
     * @param others keys that are read elsewhere, such as {@code kind}
     */
    Fields(Tree.Branch tree, String path, Kind kind, List<String> others, Scope scope, Problems problems) {
        this.path = path;
        this.problems = problems;
        this.scope = scope;
        this.tree = withoutSplitNumbers(tree);
        unknownKeys(kind, others);
        for (Key<?> key : kind.keys()) {
            read(key);
        }
    }

    /** In braces {@code length: 0,45 m} is read as two entries; they are put together again and complained of once. */
    private Tree.Branch withoutSplitNumbers(Tree.Branch said) {
        Tree.Branch rest = said;
        for (int i = 1; i < said.entries().size(); i++) {
            Tree.Entry before = said.entries().get(i - 1);
            Tree.Entry entry = said.entries().get(i);
            if (entry.value() instanceof Tree.Text empty
                    && empty.text().isEmpty()
                    && entry.key().matches("\\d.*")
                    && before.value() instanceof Tree.Text whole
                    && whole.text().matches("([+-]|.* )?\\d+")) {
                String written = whole.text() + "," + entry.key();
                boolean thousands =
                        entry.key().matches("\\d{3}(\\D.*)?") && !whole.text().matches("(.*\\D)?0");
                problems.add(
                        place(before.line(), before.column()),
                        before.key(),
                        written,
                        before.key() + " \"" + written + "\": a comma is not "
                                + (thousands ? "read in a number" : "a decimal point here"),
                        "Write "
                                + (thousands
                                        ? whole.text() + entry.key() + ", or " + written.replace(',', '.')
                                                + " if it is a decimal point"
                                        : written.replace(',', '.')));
                rest = rest.without(entry.key()).with(before.key(), SPOILT);
            }
        }
        return rest;
    }

    private void unknownKeys(Kind kind, List<String> others) {
        List<String> known = new ArrayList<>(kind.keyNames());
        known.addAll(others);
        for (Tree.Entry entry : tree.entries()) {
            if (!known.contains(entry.key())) {
                String hint = Words.nearest(entry.key(), known)
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("It takes: " + String.join(", ", known));
                problems.add(
                        place(entry.line(), entry.column()),
                        entry.key(),
                        "",
                        (kind.word().startsWith("e") ? "an " : "a ") + kind.word() + " has no key \"" + entry.key()
                                + "\"",
                        hint);
            }
        }
    }

    private void read(Key<?> key) {
        Tree said = tree.get(key.name());
        if (said == null) {
            if (key.required()) {
                problems.add(
                        place(tree.line(), tree.column()),
                        key.name(),
                        "",
                        key.name() + (key.name().endsWith("s") ? " are missing" : " is missing"),
                        key.hintWhenMissing());
            }
            return;
        }
        if (!(said instanceof Tree.Text text)) {
            if (said != SPOILT && !Keys.LISTS.contains(key.name())) {
                problems.add(
                        place(said.line(), said.column()),
                        key.name(),
                        "",
                        key.name() + " takes one value, not a list or more keys",
                        "Write for example " + key.name() + ": " + key.example());
            }
            return;
        }
        try {
            Object value = key.form().read(text.text(), scope);
            RatedLiquid.check(value, text.text(), scope);
            values.put(key, value);
        } catch (Key.FormException wrong) {
            boolean quoted = wrong.message().startsWith("\"");
            problems.add(
                    place(text.line(), text.column()),
                    key.name(),
                    text.text(),
                    quoted ? key.name() + " " + wrong.message() : wrong.message(),
                    wrong.hint());
        }
    }

    /** The value of a key, null when it was not given or could not be read. */
    @SuppressWarnings("unchecked")
    <V> @Nullable V get(Key<V> key) {
        return (V) values.get(key);
    }

    /** The value of a key, or another where it was not given. */
    <V> V get(Key<V> key, V other) {
        V value = get(key);
        return value == null ? other : value;
    }

    /** Whether the file gives the key, readable or not. */
    boolean has(Key<?> key) {
        return tree.get(key.name()) != null;
    }

    /** The text of a key as the file writes it; empty when it is none. */
    String text(Key<?> key) {
        return tree.get(key.name()) instanceof Tree.Text text ? text.text() : "";
    }

    /** A value that was read, as Linedrop writes it. */
    String canonical(Key<?> key) {
        try {
            return key.form().canonical(text(key));
        } catch (Key.FormException wrong) {
            return text(key);
        }
    }

    /** Whether all required keys were read. */
    boolean complete(Kind kind) {
        return kind.keys().stream().allMatch(key -> !key.required() || values.containsKey(key));
    }

    Scope scope() {
        return scope;
    }

    Tree.Branch tree() {
        return tree;
    }

    Place place(Key<?> key) {
        Tree said = tree.get(key.name());
        return said == null ? place(tree.line(), tree.column()) : place(said.line(), said.column());
    }

    private Place place(int line, int column) {
        return problems.place(line, column, path);
    }

    void problem(Key<?> key, String message, String hint) {
        Tree said = tree.get(key.name());
        problems.add(place(key), key.name(), said instanceof Tree.Text text ? text.text() : "", message, hint);
    }
}
