package org.linedrop.fact;

import java.io.Serializable;
import java.util.Objects;

/**
 * A number in SI with the band it is known to and its source. The component that holds a figure carries the unit in
 * its name ({@code Figure boreM}).
 *
 * @param low    lower end of the band, at most {@code value}
 * @param value  the usual value
 * @param high   upper end of the band, at least {@code value}
 * @param source where it comes from
 */
public record Figure(double low, double value, double high, Source source) implements Serializable {

    /** Checks that the band holds the value and that no number is NaN. */
    public Figure {
        Objects.requireNonNull(source, "source");
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException(
                    "a figure needs low <= value <= high, but is " + low + ", " + value + ", " + high);
        }
    }

    /**
     * A figure without a band.
     *
     * @param value  the value
     * @param source where it comes from
     * @return a figure whose band has no width
     */
    public static Figure exact(double value, Source source) {
        return new Figure(value, value, value, source);
    }

    /**
     * A figure with a band of the same ratio on either side.
     *
     * @param value  the value, any sign
     * @param ratio  half width over the value, not negative (0.03 is 3 per cent)
     * @param source where it comes from
     * @return the figure
     */
    public static Figure within(double value, double ratio, Source source) {
        double half = Math.abs(value) * ratio;
        return new Figure(value - half, value, value + half, source);
    }

    /**
     * A number typed by a caller in code, without a band.
     *
     * @param value the value
     * @return a figure of status {@link Status#GIVEN}
     */
    public static Figure given(double value) {
        return exact(value, Source.of("given in code", Status.GIVEN));
    }

    /**
     * Whether the band has any width.
     *
     * @return true when low and high differ
     */
    public boolean hasBand() {
        return high > low;
    }

    /**
     * How the figure is known.
     *
     * @return the status of its source
     */
    public Status status() {
        return source.status();
    }

    /**
     * The same knowledge about the value times a positive factor.
     *
     * @param factor above zero
     * @return low, value and high times the factor
     */
    public Figure times(double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("factor must be above zero, but is " + factor);
        }
        return new Figure(low * factor, value * factor, high * factor, source);
    }
}
