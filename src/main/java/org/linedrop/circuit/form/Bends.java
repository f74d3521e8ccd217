package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * Equal bends of a hose or tube.
 *
 * @param count    how many
 * @param angleDeg of each, in degrees
 * @param radiusM  centre-line radius, NaN when not given
 */
public record Bends(int count, double angleDeg, double radiusM) implements Serializable {
    private static final Pattern SHAPE =
            Pattern.compile("(\\d{1,3})\\s*x\\s*(\\d{1,3}(?:\\.\\d{1,6})?)(?:\\s+at\\s+(.+))?");

    /**
     * Reads bends.
     *
     * @param text for example {@code 4 x 90} or {@code 2 x 90 at 150 mm}
     * @return the bends
     * @throws UnitException when the text is anything else
     */
    public static Bends read(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new UnitException("\"" + text + "\" are no bends", "Write 4 x 90, or 2 x 90 at 150 mm");
        }
        double angle = Double.parseDouble(shape.group(2));
        double radius = shape.group(3) == null
                ? Double.NaN
                : Units.read(shape.group(3), Dimension.LENGTH).si();
        if (!(angle > 0 && angle <= 360) || radius <= 0) {
            throw new UnitException(
                    "\"" + text + "\": an angle is over 0 and at most 360 degrees, a radius over 0",
                    "Write 4 x 90, or 2 x 90 at 150 mm");
        }
        return new Bends(Integer.parseInt(shape.group(1)), angle, radius);
    }
}
