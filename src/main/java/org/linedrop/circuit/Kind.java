package org.linedrop.circuit;

import java.util.List;
import org.linedrop.fact.Inner;

/**
 * A kind of element and the keys it takes.
 *
 * @param word    what the file calls it
 * @param meaning what it is, for documents
 * @param keys    its keys in the order in which they are written
 */
@Inner
public record Kind(String word, String meaning, List<Key<?>> keys) {

    /** Copies the keys. */
    public Kind {
        keys = List.copyOf(keys);
    }

    /**
     * Names of its keys.
     *
     * @return in order
     */
    List<String> keyNames() {
        return keys.stream().<String>map(Key::name).toList();
    }
}
