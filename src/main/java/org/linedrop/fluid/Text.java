package org.linedrop.fluid;

import java.math.BigDecimal;
import java.util.Locale;

/** Numbers in messages. */
final class Text {
    private Text() {}

    /** At most one decimal, none when it is zero. */
    static String number(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        String cut = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
        return cut.equals("-0") ? "0" : cut;
    }

    /** All digits, none to spare: what is written is read back as the same number. */
    static String exact(double value) {
        return new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString();
    }

    /** A temperature with its unit, in C. */
    static String celsius(double temperatureK) {
        return number(temperatureK - PropertyLaw.ZERO_C_K) + " C";
    }
}
