package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * How the vehicle moves: {@code launch 0.9 g and left turn 0.5 g}. The acceleration is the vehicle's own, axes as in
 * ISO 8855: x ahead, y left.
 *
 * @param aheadMPerS2 ahead in m/s2: a launch is positive, braking negative
 * @param leftMPerS2 to the left in m/s2: a left turn is positive, a right turn negative
 */
@Inner
public record Motion(double aheadMPerS2, double leftMPerS2) implements Serializable {
    /** No acceleration. */
    public static final Motion NONE = new Motion(0, 0);

    private static final List<String> WORDS = List.of("launch", "braking", "left turn", "right turn");
    private static final Pattern PART = Pattern.compile("(\\D*?) ?([+-]?[\\d.].*)");

    /**
     * Reads a motion.
     *
     * @param text {@code launch}, {@code braking}, {@code left turn}, {@code right turn} with an acceleration, two of
     *             them joined with {@code and}; {@code none} for a vehicle at rest
     * @return the motion
     * @throws UnitException when a word is unknown, a number negative, or a direction is given twice
     */
    public static Motion read(String text) {
        String words = Wording.tidy(text);
        if (words.equals("none")) {
            return NONE;
        }
        double[] a = new double[2];
        boolean[] given = new boolean[2];
        for (String part : words.split(" and ", -1)) {
            Matcher matcher = PART.matcher(part);
            String word = matcher.matches() ? matcher.group(1) : part;
            int which = WORDS.indexOf(word);
            if (which < 0) {
                String near = Words.nearest(word, WORDS)
                        .map(n -> "Did you mean " + n + "? ")
                        .orElse("");
                throw Wording.wrong(
                        part, " is no motion", near + "Write launch, braking, left turn or right turn, then 0.9 g");
            }
            if (!matcher.matches()) {
                throw Wording.wrong(part, ": how much?", "Write for example " + word + " 0.9 g");
            }
            double amount = Units.read(matcher.group(2), Dimension.ACCELERATION).si();
            if (!(amount >= 0)) {
                throw Wording.wrong(part, " is negative", "Write " + WORDS.get(which ^ 1) + " without a minus");
            }
            if (given[which / 2]) {
                throw Wording.wrong(
                        text,
                        which / 2 == 0 ? " launches or brakes twice" : " turns twice",
                        "Write one along and one across: launch 0.9 g and left turn 0.5 g");
            }
            given[which / 2] = true;
            a[which / 2] = which % 2 == 0 ? amount : 0 - amount;
        }
        return new Motion(a[0], a[1]);
    }

    /**
     * Writes the motion.
     *
     * @return text that reads back to an equal motion
     */
    public String write() {
        List<String> parts = new ArrayList<>();
        if (aheadMPerS2 != 0) {
            parts.add((aheadMPerS2 > 0 ? "launch " : "braking ") + amount(aheadMPerS2));
        }
        if (leftMPerS2 != 0) {
            parts.add((leftMPerS2 > 0 ? "left turn " : "right turn ") + amount(leftMPerS2));
        }
        return parts.isEmpty() ? "none" : String.join(" and ", parts);
    }

    private static String amount(double accelerationMPerS2) {
        return Wording.metric(Math.abs(accelerationMPerS2), Dimension.ACCELERATION);
    }
}
