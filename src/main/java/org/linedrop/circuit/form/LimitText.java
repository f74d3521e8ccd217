package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A bound on a quantity.
 *
 * @param low       least value in SI, minus infinity when there is none
 * @param high      most value in SI, infinity when there is none
 * @param dimension what it bounds
 * @param text      as written
 */
public record LimitText(double low, double high, Dimension dimension, String text) implements Serializable {
    private static final Pattern BETWEEN = Pattern.compile("between\\s+(.+?)\\s+and\\s+(.+)");

    /**
     * Reads a bound.
     *
     * @param text    {@code at least 375 kPa}, {@code at most 10 kPa} or {@code between 5 kPa and 20 kPa}
     * @param allowed dimensions it may have
     * @return the bound
     * @throws UnitException when the text is anything else
     */
    public static LimitText read(String text, Dimension... allowed) {
        String said = text.strip();
        if (said.startsWith("at least ")) {
            var bound = Units.read(said.substring(9).strip(), allowed);
            return new LimitText(bound.si(), Double.POSITIVE_INFINITY, bound.dimension(), said);
        }
        if (said.startsWith("at most ")) {
            var bound = Units.read(said.substring(8).strip(), allowed);
            return new LimitText(Double.NEGATIVE_INFINITY, bound.si(), bound.dimension(), said);
        }
        Matcher between = BETWEEN.matcher(said);
        if (between.matches()) {
            var low = Units.read(between.group(1), allowed);
            var high = Units.read(between.group(2), allowed);
            if (low.si() < high.si()) {
                return new LimitText(low.si(), high.si(), low.dimension(), said);
            }
        }
        throw new UnitException(
                "\"" + text + "\" is no limit", "Write at least 375 kPa, at most 10 kPa, or between 5 kPa and 20 kPa");
    }

    /**
     * Distance from a value to the nearest bound.
     *
     * @param value in SI
     * @return negative outside the bounds
     */
    public double margin(double value) {
        return Math.min(value - low, high - value);
    }

    /**
     * The bound that a value is nearest to, or furthest beyond.
     *
     * @param value in SI
     * @return low or high
     */
    public double nearest(double value) {
        return value - low <= high - value ? low : high;
    }
}
