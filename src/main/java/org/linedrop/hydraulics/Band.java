package org.linedrop.hydraulics;

import java.io.Serializable;
import java.util.Objects;
import org.linedrop.fact.Source;

/**
 * How far published laws and measurements disagree about a loss coefficient: it lies between
 * {@code lowRatio K - absolute} and {@code highRatio K + absolute}.
 *
 * @param lowRatio  lower end over the law's value, 0 to 1
 * @param highRatio upper end over the law's value, at least 1
 * @param absolute  further half width on the coefficient itself, not negative
 * @param source    what disagrees
 */
public record Band(double lowRatio, double highRatio, double absolute, Source source) implements Serializable {

    /**
     * Checks that the band holds the value; NaN fails.
     *
     * @param lowRatio  lower end over the law's value, 0 to 1
     * @param highRatio upper end over the law's value, at least 1
     * @param absolute  further half width on the coefficient itself, not negative
     * @param source    what disagrees
     */
    public Band {
        Objects.requireNonNull(source, "source");
        if (!(lowRatio >= 0 && lowRatio <= 1 && highRatio >= 1 && absolute >= 0)) {
            throw new IllegalArgumentException("a band needs 0 <= low ratio <= 1 <= high ratio and a width of at least"
                    + " zero, but is " + lowRatio + ", " + highRatio + ", " + absolute);
        }
    }

    /**
     * A band of ratios only.
     *
     * @param lowRatio  lower end over the law's value
     * @param highRatio upper end over the law's value
     * @param source    what disagrees
     * @return the band
     */
    public static Band ratios(double lowRatio, double highRatio, Source source) {
        return new Band(lowRatio, highRatio, 0, source);
    }

    /**
     * Lower end.
     *
     * @param coefficient the law's value, any sign
     * @return the lowest coefficient that published data support
     */
    public double low(double coefficient) {
        return Math.min(lowRatio * coefficient, highRatio * coefficient) - absolute;
    }

    /**
     * Upper end.
     *
     * @param coefficient the law's value, any sign
     * @return the highest coefficient that published data support
     */
    public double high(double coefficient) {
        return Math.max(lowRatio * coefficient, highRatio * coefficient) + absolute;
    }
}
