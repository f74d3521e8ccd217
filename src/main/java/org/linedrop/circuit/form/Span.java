package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * From one value to a higher one: {@code 80 to 92 C}, {@code 2000 to 3000}.
 *
 * @param low    lower value in the SI unit of the dimension
 * @param high      upper value, above the lower
 * @param dimension what they measure
 * @param status    what was said about it
 */
public record Span(double low, double high, Dimension dimension, Status status) implements Serializable {
    private static final Pattern SPAN = Pattern.compile("(.+?) to (.+)");

    /**
     * Reads a span.
     *
     * @param text    for example {@code 80 to 92 C}
     * @param allowed the dimensions it may have, the likeliest first
     * @return the span
     * @throws UnitException when there are not two values or they do not rise
     */
    public static Span read(String text, Dimension... allowed) {
        Said said = Said.of(text);
        Matcher span = SPAN.matcher(said.value());
        if (!span.matches() || !said.spread().isEmpty()) {
            throw Wording.wrong(text, ": from where to where?", "Write two values, for example 80 to 92 C");
        }
        Quantity to = Units.read(span.group(2), allowed);
        double from = Wording.first(span.group(1), to, allowed).si();
        if (!(from < to.si())) {
            throw Wording.wrong(text, " does not rise", "Write the lower value first");
        }
        return new Span(from, to.si(), to.dimension(), said.status());
    }

    /**
     * Writes the span.
     *
     * @return text that reads back to the same numbers
     */
    public String write() {
        return Wording.metric(low, dimension) + " to " + Wording.metric(high, dimension) + Said.suffix(status);
    }
}
