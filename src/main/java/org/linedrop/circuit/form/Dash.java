package org.linedrop.circuit.form;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.UnitException;

/** Dash sizes as people write them: {@code -8}, {@code -08}, {@code -8AN}, {@code AN8}, {@code #8}; -8 is written. */
final class Dash {
    /** A dash size inside a longer text. */
    static final String PATTERN = "(?:-0?\\d{1,2}(?: ?AN)?|AN ?-?0?\\d{1,2}|\\d{1,2} ?AN|#\\d{1,2})";

    private static final Pattern ONLY = Pattern.compile(PATTERN, Pattern.CASE_INSENSITIVE);
    private static final Pattern DIGITS = Pattern.compile("\\d+");
    /** Sixteenths of an inch of tube; larger sizes are not made, smaller ones are no hose. */
    private static final int SMALLEST = 2;

    private static final int LARGEST = 48;

    private Dash() {}

    /**
     * Reads a dash size.
     *
     * @param text for example {@code -8}
     * @return the number, for example 8
     * @throws UnitException when the text is no dash size from -2 to -48
     */
    static int read(String text) {
        String words = Wording.tidy(text);
        if (!ONLY.matcher(words).matches()) {
            throw Wording.wrong(
                    text,
                    " is no dash size",
                    DIGITS.matcher(words).matches() ? "Write -" + words : "Write for example -8");
        }
        return number(text, words);
    }

    /** The number in a text that matches {@link #PATTERN}. */
    static int number(String text, String dash) {
        Matcher digits = DIGITS.matcher(dash);
        int number = digits.find() ? Integer.parseInt(digits.group()) : 0;
        if (!(number >= SMALLEST && number <= LARGEST)) {
            throw Wording.wrong(text, ": there is no dash size " + number, "They go from -2 to -48, for example -8");
        }
        return number;
    }

    /**
     * Writes a dash size.
     *
     * @param dash the number
     * @return for example {@code -8}
     */
    static String write(int dash) {
        return "-" + dash;
    }
}
