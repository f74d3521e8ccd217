package org.linedrop.circuit;

import java.io.Serializable;
import org.linedrop.circuit.form.Tree;

/**
 * One thing changed in a circuit, in the words of the circuit file.
 *
 * @param subject a point, device, run, part, or key of the file itself
 * @param value   what it says from now on: keys that replace its own, or a text
 */
public record Change(String subject, Tree value) implements Serializable {

    /**
     * One key changed.
     *
     * @param subject a point, device, run or part
     * @param key     its key
     * @param value   the new value as written
     * @return the change
     */
    public static Change of(String subject, String key, String value) {
        return new Change(subject, Tree.of(key, value));
    }

    /**
     * A key of the file itself changed.
     *
     * @param key   for example {@code temperature} or {@code motion}
     * @param value the new value as written
     * @return the change
     */
    public static Change of(String key, String value) {
        return new Change(key, Tree.text(value));
    }

    /**
     * A limit changed or added.
     *
     * @param subject  a point or device
     * @param quantity what of it
     * @param bound    the bound as written
     * @return the change
     */
    public static Change limit(String subject, String quantity, String bound) {
        return new Change("limits", Tree.of().with(subject, Tree.of(quantity, bound)));
    }

    /**
     * A part taken out.
     *
     * @param part its name or run and number
     * @return the change
     */
    public static Change without(String part) {
        return new Change(part, Tree.text("none"));
    }

    Tree.Entry entry() {
        return new Tree.Entry(subject, 0, 0, value);
    }
}
