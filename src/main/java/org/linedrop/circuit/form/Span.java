package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * From one figure to a higher one.
 *
 * @param low  the lower, in SI
 * @param high the higher, in SI
 */
public record Span(double low, double high) implements Serializable {
    private static final Pattern SHAPE = Pattern.compile("(\\S+)\\s+to\\s+(\\S+)(.*)");

    /**
     * Reads a span.
     *
     * @param text    for example {@code 80 to 92 C}
     * @param allowed dimensions it may have
     * @return the span
     * @throws UnitException when it is none, or does not rise
     */
    public static Span read(String text, Dimension... allowed) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new UnitException("\"" + text + "\" is no span", "Write two figures with \"to\" between them");
        }
        double low = Units.read(shape.group(1) + shape.group(3), allowed).si();
        double high = Units.read(shape.group(2) + shape.group(3), allowed).si();
        if (!(low < high)) {
            throw new UnitException("\"" + text + "\" does not rise", "Write the lower figure first");
        }
        return new Span(low, high);
    }
}
