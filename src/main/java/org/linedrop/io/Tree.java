package org.linedrop.io;

import java.util.List;
import java.util.Optional;

/**
 * What a file says, before anybody knows what it means: mappings, sequences and texts, each with its line and column.
 * YAML and JSON give the same tree. There are no numbers, no true and no null in it: every scalar is the text that
 * stands in the file.
 */
public sealed interface Tree permits Tree.Mapping, Tree.Sequence, Tree.Text {

    /**
     * Where it begins.
     *
     * @return line from 1; 0 when built by code
     */
    int line();

    /**
     * Where it begins.
     *
     * @return column from 1; 0 when built by code
     */
    int column();

    /**
     * Keys with their values, in the order of the file; no key twice.
     *
     * @param line    line from 1
     * @param column  column from 1
     * @param entries the entries in order
     */
    record Mapping(int line, int column, List<Entry> entries) implements Tree {
        /** Copies the list. */
        public Mapping {
            entries = List.copyOf(entries);
        }

        /**
         * The entry of a key.
         *
         * @param key the key as written
         * @return the entry, empty when the mapping has no such key
         */
        public Optional<Entry> entry(String key) {
            return entries.stream().filter(entry -> entry.key().equals(key)).findFirst();
        }

        /**
         * The value of a key.
         *
         * @param key the key as written
         * @return the value, empty when the mapping has no such key
         */
        public Optional<Tree> get(String key) {
            return entry(key).map(Entry::value);
        }
    }

    /**
     * One key with its value.
     *
     * @param key    the key as written, not empty
     * @param line   line of the key, from 1
     * @param column column of the key, from 1
     * @param value  its value; an empty text when nothing stands behind the colon
     */
    record Entry(String key, int line, int column, Tree value) {}

    /**
     * Items in the order of the file.
     *
     * @param line   line from 1
     * @param column column from 1
     * @param items  the items in order
     */
    record Sequence(int line, int column, List<Tree> items) implements Tree {
        /** Copies the list. */
        public Sequence {
            items = List.copyOf(items);
        }
    }

    /**
     * A scalar, whatever it looks like.
     *
     * @param line   line from 1
     * @param column column from 1
     * @param text   the text, without its quotation marks; empty when nothing was written
     * @param quoted whether it stood in quotation marks
     */
    record Text(int line, int column, String text, boolean quoted) implements Tree {}
}
