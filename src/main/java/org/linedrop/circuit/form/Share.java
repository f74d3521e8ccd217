package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A part of what something takes: {@code 50 % of engine}.
 *
 * @param ratio above 0, at most 1
 * @param of    what it is a part of, for example {@code engine}
 */
public record Share(double ratio, String of) implements Serializable {
    private static final Pattern SHARE = Pattern.compile("(.+?) of (\\S.*)");

    /**
     * Reads a share.
     *
     * @param text for example {@code 50 % of engine}
     * @return the share
     * @throws UnitException when it is no share of something, or none between 0 and 100 %
     */
    public static Share read(String text) {
        Matcher share = SHARE.matcher(Wording.tidy(text));
        if (!share.matches()) {
            throw Wording.wrong(text, " is no share", "Write for example 50 % of engine");
        }
        double ratio = Units.read(share.group(1), Dimension.RATIO).si();
        if (!(ratio > 0 && ratio <= 1)) {
            throw Wording.wrong(text, ": a share is above 0 and at most 100 %", "Write for example 50 % of engine");
        }
        return new Share(ratio, share.group(2));
    }

    /**
     * Writes the share.
     *
     * @return text that reads back to an equal share
     */
    public String write() {
        return Units.write(ratio, Units.unit("%")) + " of " + of;
    }
}
