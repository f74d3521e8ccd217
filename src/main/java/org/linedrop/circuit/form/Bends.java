package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * Equal bends of a tube or of a hose on its route: {@code 4 x 90}, {@code 2 x 90 at 150 mm}.
 *
 * @param count    how many, 1 to 200
 * @param angleDeg angle of each in degrees, above 0, at most 360
 * @param radiusM  radius of the centre line in m, above 0; NaN when not given
 */
@Inner
public record Bends(int count, double angleDeg, double radiusM) implements Serializable {
    private static final Pattern BENDS =
            Pattern.compile("(\\d{1,3}) ?x ?(\\d{1,3}(?:\\.\\d{1,6})?)(?: ?deg| ?\u00b0)?(?: at (.+))?");
    private static final int MOST = 200;
    private static final double FULL_TURN_DEG = 360;

    /**
     * Reads bends.
     *
     * @param text for example {@code 2 x 90 at 150 mm}
     * @return the bends
     * @throws UnitException when the text is anything else
     */
    public static Bends read(String text) {
        String words = Wording.tidy(text);
        Matcher bends = BENDS.matcher(words);
        if (!bends.matches()) {
            throw Wording.wrong(
                    text,
                    Wording.bare(words) ? ": how many of them?" : " does not say how many bends of which angle",
                    "Write for example 4 x 90, or 2 x 90 at 150 mm");
        }
        int count = Integer.parseInt(bends.group(1));
        double angle = Double.parseDouble(bends.group(2));
        if (!(count >= 1 && count <= MOST)) {
            throw Wording.wrong(
                    text,
                    " has " + count + " bends: 1 to " + MOST + " are read",
                    "Leave bends out for a straight piece");
        }
        if (!(angle > 0 && angle <= FULL_TURN_DEG)) {
            throw Wording.wrong(text, ": a bend turns more than 0 and at most 360 degrees", "Write for example 4 x 90");
        }
        double radius = Double.NaN;
        if (bends.group(3) != null) {
            radius = Units.read(bends.group(3), Dimension.LENGTH).si();
            if (!(radius > 0)) {
                throw Wording.wrong(text, ": the radius must be above 0", "Measure it at the centre line of the bend");
            }
        }
        return new Bends(count, angle, radius);
    }

    /**
     * Writes the bends.
     *
     * @return text that reads back to equal bends
     */
    public String write() {
        return count + " x " + Units.number(angleDeg, Units.unit("", Dimension.RATIO))
                + (Double.isNaN(radiusM) ? "" : " at " + Wording.metric(radiusM, Dimension.LENGTH));
    }
}
