package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.units.UnitException;

/**
 * An adapter in flow order: {@code -6 to -5}, {@code M22x1.5 to -12}. Which connections there are is known to the
 * catalogue; here they only get one spelling. A Y block's size is said the same way.
 *
 * @param from the side the flow comes from, for example {@code -6}
 * @param to   the side it leaves by, for example {@code M22x1.5}
 */
@Inner
public record AdapterChoice(String from, String to) implements Serializable {
    private static final Pattern ORB = Pattern.compile("(?:ORB ?(.+)|(.+?) ?ORB)", Pattern.CASE_INSENSITIVE);
    private static final Pattern DASH = Pattern.compile(Dash.PATTERN, Pattern.CASE_INSENSITIVE);
    private static final Pattern METRIC =
            Pattern.compile("M ?(\\d{1,3}) ?x ?(\\d(?:\\.\\d{1,2})?)", Pattern.CASE_INSENSITIVE);
    private static final Pattern TAPER =
            Pattern.compile("(?:NPT ([\\d/ -]+)|([\\d/ -]+?) ?NPT)", Pattern.CASE_INSENSITIVE);
    private static final String EXAMPLE = "Write for example -6 to -5, in flow order";

    /**
     * Reads an adapter.
     *
     * @param text for example {@code -6 to -5}
     * @return the adapter
     * @throws UnitException when there are not two sides
     */
    public static AdapterChoice read(String text) {
        String[] sides = Wording.tidy(text).split(" to ", -1);
        if (sides.length != 2) {
            throw Wording.wrong(
                    text, sides.length < 2 ? ": an adapter has two sides" : " has more than two sides", EXAMPLE);
        }
        return new AdapterChoice(side(text, sides[0]), side(text, sides[1]));
    }

    private static String side(String text, String side) {
        if (side.isBlank()) {
            throw Wording.wrong(text, ": an adapter has two sides", EXAMPLE);
        }
        if (side.matches("\\d{1,2}")) {
            throw Wording.wrong(text, ": is " + side + " a dash size?", "Write -" + side);
        }
        if (DASH.matcher(side).matches()) {
            return Dash.write(Dash.number(text, side));
        }
        Matcher orb = ORB.matcher(side);
        if (orb.matches()) {
            return "ORB " + Dash.write(Dash.read(orb.group(1) == null ? orb.group(2) : orb.group(1)));
        }
        Matcher metric = METRIC.matcher(side);
        if (metric.matches()) {
            return "M" + metric.group(1) + "x" + metric.group(2);
        }
        Matcher taper = TAPER.matcher(side);
        if (taper.matches()) {
            return (taper.group(1) == null ? taper.group(2) : taper.group(1))
                            .strip()
                            .toLowerCase(Locale.ROOT) + " NPT";
        }
        return side;
    }

    /**
     * Writes the adapter.
     *
     * @return text that reads back to an equal adapter
     */
    public String write() {
        return from + " to " + to;
    }
}
