package org.linedrop.circuit;

import java.io.Serializable;
import java.util.Map;
import java.util.TreeMap;
import org.linedrop.circuit.form.Tree;

/**
 * One thing changed in a circuit, in the words of the circuit file.
 *
 * @param subject a point, device, run, part or top-level key
 * @param values  key and value as written; empty to take a part out
 */
public record Change(String subject, Map<String, String> values) implements Serializable {

    /** Copies the values in the order of their keys. */
    public Change {
        values = java.util.Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /**
     * One key changed.
     *
     * @param subject a point, device, run or part
     * @param key     its key
     * @param value   the new value as written
     * @return the change
     */
    public static Change of(String subject, String key, String value) {
        return new Change(subject, Map.of(key, value));
    }

    /**
     * A part taken out.
     *
     * @param part its name or run and number
     * @return the change
     */
    public static Change without(String part) {
        return new Change(part, Map.of());
    }

    Tree.Entry entry() {
        if (values.isEmpty()) {
            return new Tree.Entry(subject, 0, 0, Tree.text("none"));
        }
        if (values.containsKey("")) {
            return new Tree.Entry(subject, 0, 0, Tree.text(values.get("")));
        }
        Tree.Branch patch = Tree.of();
        for (Map.Entry<String, String> value : values.entrySet()) {
            patch = patch.with(value.getKey(), Tree.text(value.getValue()));
        }
        return new Tree.Entry(subject, 0, 0, patch);
    }

    /**
     * The change as a sentence would name it.
     *
     * @return for example {@code feed 4 tube: steel 3/8 in x 0.035 in}
     */
    public String text() {
        if (values.isEmpty()) {
            return "without " + subject;
        }
        StringBuilder text = new StringBuilder(subject);
        values.forEach((key, value) ->
                text.append(' ').append(key).append(key.isEmpty() ? "" : ": ").append(value));
        return text.toString();
    }
}
