package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a circuit file says, before it is understood: texts, lists and named entries with the place of each. Two trees
 * are equal when they say the same, wherever it stands.
 */
public sealed interface Tree extends Serializable {

    /**
     * Line it starts on.
     *
     * @return from 1; 0 when made by code
     */
    int line();

    /**
     * Column it starts in.
     *
     * @return from 1; 0 when made by code
     */
    int column();

    /**
     * A text.
     *
     * @param text   as written, without quotes
     * @param line   line from 1
     * @param column column from 1
     */
    record Text(String text, int line, int column) implements Tree {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Text that && text.equals(that.text);
        }

        @Override
        public int hashCode() {
            return text.hashCode();
        }
    }

    /**
     * A list.
     *
     * @param items  in order
     * @param line   line from 1
     * @param column column from 1
     */
    record Items(List<Tree> items, int line, int column) implements Tree {
        /**
         * Copies the items.
         *
         * @param items  in order
         * @param line   line from 1
         * @param column column from 1
         */
        public Items {
            items = List.copyOf(items);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Items that && items.equals(that.items);
        }

        @Override
        public int hashCode() {
            return items.hashCode();
        }
    }

    /**
     * Named entries in order.
     *
     * @param entries no name twice
     * @param line    line from 1
     * @param column  column from 1
     */
    record Branch(List<Entry> entries, int line, int column) implements Tree {
        /**
         * Copies the entries.
         *
         * @param entries no name twice
         * @param line    line from 1
         * @param column  column from 1
         */
        public Branch {
            entries = List.copyOf(entries);
        }

        /**
         * The value of an entry.
         *
         * @param key its name
         * @return the value, or null when there is none
         */
        public @Nullable Tree get(String key) {
            for (Entry entry : entries) {
                if (entry.key().equals(key)) {
                    return entry.value();
                }
            }
            return null;
        }

        /**
         * The same with one entry set: replaced where it stands, or added at the end.
         *
         * @param key   its name
         * @param value its new value
         * @return a copy
         */
        public Branch with(String key, Tree value) {
            List<Entry> changed = new ArrayList<>();
            boolean found = false;
            for (Entry entry : entries) {
                boolean same = entry.key().equals(key);
                changed.add(same ? new Entry(key, entry.line(), entry.column(), value) : entry);
                found |= same;
            }
            if (!found) {
                changed.add(new Entry(key, value.line(), value.column(), value));
            }
            return new Branch(changed, line, column);
        }

        /**
         * The same without one entry.
         *
         * @param key its name
         * @return a copy
         */
        public Branch without(String key) {
            return new Branch(
                    entries.stream().filter(entry -> !entry.key().equals(key)).toList(), line, column);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Branch that && entries.equals(that.entries);
        }

        @Override
        public int hashCode() {
            return entries.hashCode();
        }
    }

    /**
     * One named entry.
     *
     * @param key    its name
     * @param line   line of the name
     * @param column column of the name
     * @param value  its value
     */
    record Entry(String key, int line, int column, Tree value) implements Serializable {
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Entry that && key.equals(that.key) && value.equals(that.value);
        }

        @Override
        public int hashCode() {
            return 31 * key.hashCode() + value.hashCode();
        }
    }

    /**
     * A text made by code.
     *
     * @param text the text
     * @return the tree
     */
    static Text text(String text) {
        return new Text(text, 0, 0);
    }

    /**
     * Named texts made by code.
     *
     * @param keysAndTexts name, text, name, text ...
     * @return the tree
     * @throws IllegalArgumentException when a name has no text
     */
    static Branch of(String... keysAndTexts) {
        if (keysAndTexts.length % 2 != 0) {
            throw new IllegalArgumentException("every name needs a text: " + String.join(", ", keysAndTexts));
        }
        Branch branch = new Branch(List.of(), 0, 0);
        for (int i = 0; i < keysAndTexts.length; i += 2) {
            branch = branch.with(keysAndTexts[i], text(keysAndTexts[i + 1]));
        }
        return branch;
    }

    /**
     * A list made by code.
     *
     * @param items its items
     * @return the tree
     */
    static Items items(Tree... items) {
        return new Items(List.of(items), 0, 0);
    }
}
