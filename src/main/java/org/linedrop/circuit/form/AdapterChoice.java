package org.linedrop.circuit.form;

import java.io.Serializable;
import org.linedrop.units.UnitException;

/**
 * An adapter by its two connections in flow order.
 *
 * @param from the one at the run's start, for example {@code -6} or {@code M22x1.5}
 * @param to   the other
 */
public record AdapterChoice(String from, String to) implements Serializable {

    /**
     * Reads an adapter.
     *
     * @param text for example {@code -6 to -5}
     * @return the adapter
     * @throws UnitException when two connections are not named
     */
    public static AdapterChoice read(String text) {
        String[] sides = text.strip().split("\\s+to\\s+", -1);
        if (sides.length != 2) {
            throw new UnitException("\"" + text + "\" does not name two connections", "Write for example -6 to -5");
        }
        return new AdapterChoice(sides[0].strip(), sides[1].strip());
    }

    /**
     * As the file writes it.
     *
     * @return for example {@code -6 to -5}
     */
    public String write() {
        return from + " to " + to;
    }
}
