package org.linedrop.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as it was written, kept exact as numerator over denominator: 1/3 in has no finite decimal.
 *
 * @param numerator   any sign
 * @param denominator above zero
 */
record Ratio(BigDecimal numerator, BigDecimal denominator) {
    /** Digits of the one division: far beyond the 17 of a double, so that the last rounding decides alone. */
    static final MathContext DIGITS = new MathContext(60);

    /** Whole numbers of so many digits are doubles. */
    private static final int EXACT = 15;

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14
    };

    /** A decimal number; possessive, so that no text makes the matching slow. */
    static final String DECIMAL = "[+-]?(?:\\d++(?:\\.\\d*+)?|\\.\\d++)(?:[eE][+-]?\\d++)?";

    /** An inch fraction: 3/8, 1-1/2, 1 1/2. */
    static final String FRACTION = "[+-]?(?:\\d{1,4}[- ])?\\d{1,4}/\\d{1,4}";

    /** More digits or a larger exponent than this are no measurement. */
    private static final int LONGEST = 60;

    private static final int LARGEST_EXPONENT = 330;

    private static final Pattern PARTS = Pattern.compile("([+-]?)(?:(\\d{1,4})[- ])?(\\d{1,4})/(\\d{1,4})");

    /**
     * Reads a number that matches {@link #DECIMAL} or {@link #FRACTION}.
     *
     * @throws UnitException when it is beyond what a number may be, or a fraction over zero
     */
    static Ratio read(String text) {
        Matcher parts = PARTS.matcher(text);
        if (parts.matches()) {
            return fraction(text, parts);
        }
        int e = Math.max(text.indexOf('e'), text.indexOf('E'));
        String exponent = e < 0 ? "0" : text.substring(e + 1);
        if (text.length() > LONGEST
                || exponent.length() > 5
                || Math.abs(Integer.parseInt(exponent)) > LARGEST_EXPONENT) {
            throw new UnitException(
                    "\"" + text + "\" is no number of this world", "At most 60 digits and an exponent up to 330");
        }
        return new Ratio(new BigDecimal(text), BigDecimal.ONE);
    }

    private static Ratio fraction(String text, Matcher parts) {
        BigDecimal below = new BigDecimal(parts.group(4));
        if (below.signum() == 0) {
            throw new UnitException("\"" + text + "\" divides by zero", "Write for example 3/8 in");
        }
        String whole = parts.group(2) == null ? "0" : parts.group(2);
        BigDecimal above = new BigDecimal(whole).multiply(below).add(new BigDecimal(parts.group(3)));
        return new Ratio("-".equals(parts.group(1)) ? above.negate() : above, below);
    }

    /** One number over another, rounded once. Below is not zero. */
    static double quotient(BigDecimal above, BigDecimal below) {
        int shift = above.scale() - below.scale();
        if (above.precision() + Math.max(0, -shift) <= EXACT && below.precision() + Math.max(0, shift) <= EXACT) {
            // both are whole numbers that a double holds, and IEEE 754 rounds their quotient once
            double over = above.unscaledValue().longValue() * POWERS[Math.max(0, -shift)];
            return over / (below.unscaledValue().longValue() * POWERS[Math.max(0, shift)]);
        }
        return above.divide(below, DIGITS).doubleValue();
    }

    /** The SI value of this number in a unit, rounded once. */
    double si(Unit unit) {
        BigDecimal above = numerator.add(unit.offset().multiply(denominator)).multiply(unit.factor());
        BigDecimal below = denominator.multiply(unit.divisor());
        double si = quotient(above, below);
        if (!Double.isFinite(si) || (si == 0 && above.signum() != 0)) {
            throw new UnitException(
                    "\"" + numerator + " " + unit.symbol() + "\" is no number of this world",
                    "A double holds 5e-324 to 1.8e308 in " + unit.dimension().si());
        }
        return si;
    }
}
