package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.List;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * What an accelerometer in the vehicle reads beside gravity.
 *
 * @param aheadMPerS2 launch positive, braking negative
 * @param leftMPerS2  a left turn positive
 */
public record Motion(double aheadMPerS2, double leftMPerS2) implements Serializable {
    private static final List<String> MOTIONS = List.of("launch", "braking", "left turn", "right turn");

    /**
     * Reads a motion.
     *
     * @param text for example {@code launch 0.9 g}, {@code braking 1.1 g and left turn 0.5 g}
     * @return the accelerations
     * @throws UnitException when the text is anything else
     */
    public static Motion read(String text) {
        double ahead = 0;
        double left = 0;
        for (String part : text.strip().split("\\s+and\\s+", -1)) {
            String word = MOTIONS.stream()
                    .filter(known -> part.startsWith(known + " "))
                    .findFirst()
                    .orElseThrow(() -> new UnitException(
                            "\"" + text + "\" is no motion",
                            Words.nearest(part.replaceAll("\\s+[\\d.].*", ""), MOTIONS)
                                    .map(near -> "Did you mean " + near + "?")
                                    .orElse("Write for example launch 0.9 g, braking 1.1 g, left turn 1.3 g")));
            double size = Units.read(part.substring(word.length()).strip(), Dimension.ACCELERATION)
                    .si();
            if (!(size >= 0)) {
                throw new UnitException("\"" + text + "\": an acceleration is 0 or more", "Write the other motion");
            }
            switch (word) {
                case "launch" -> ahead += size;
                case "braking" -> ahead -= size;
                case "left turn" -> left += size;
                default -> left -= size;
            }
        }
        return new Motion(ahead, left);
    }
}
