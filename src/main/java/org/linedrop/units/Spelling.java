package org.linedrop.units;

import java.util.regex.Pattern;

/** One spelling for what keyboards and word processors write in several. */
final class Spelling {
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2009\\u202f\\u2007]++");
    private static final Pattern LETTER_FRACTION = Pattern.compile("(\\d)? ?([\\u00bc-\\u00be\\u215b-\\u215e])");
    private static final Pattern HOUR = Pattern.compile("/(?:hr|hour)\\b");
    private static final Pattern MINUTE = Pattern.compile("/(?:minute|mn)\\b");
    private static final Pattern SECOND = Pattern.compile("/sec\\b");
    private static final int LONGEST_SHOWN = 60;

    private Spelling() {}

    /** Single spaces, plain minus and quotation marks, fractions in digits. */
    static String tidy(String text) {
        if (isPlain(text)) {
            return text;
        }
        String plain = SPACES.matcher(text).replaceAll(" ").strip();
        plain = LETTER_FRACTION
                .matcher(plain)
                .replaceAll(m -> (m.group(1) == null ? "" : m.group(1) + "-") + digits(m.group(2)));
        return plain.replace('\u2212', '-')
                .replace('\u2044', '/')
                .replace('\u201c', '"')
                .replace('\u201d', '"')
                .replace('\u2033', '"')
                .replace('\u2032', '\'')
                .replace('\u2019', '\'');
    }

    /** Printable ASCII with single spaces inside: most of what is read, and nothing here changes it. */
    private static boolean isPlain(String text) {
        char before = ' ';
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c > '~' || (c == ' ' && before == ' ')) {
                return false;
            }
            before = c;
        }
        return before != ' ';
    }

    private static String digits(String fraction) {
        return switch (fraction.charAt(0)) {
            case '\u00bc' -> "1/4";
            case '\u00bd' -> "1/2";
            case '\u00be' -> "3/4";
            case '\u215b' -> "1/8";
            case '\u215c' -> "3/8";
            case '\u215d' -> "5/8";
            default -> "7/8";
        };
    }

    /** One spelling for powers, products and times. */
    static String unit(String text) {
        String unit = text.strip()
                .replace("^", "")
                .replace('\u00b2', '2')
                .replace('\u00b3', '3')
                .replace('\u00ba', '\u00b0')
                .replace("Pa.s", "Pa s")
                .replace("Pa*s", "Pa s")
                .replace("Pa\u00b7s", "Pa s");
        if (unit.indexOf('/') < 0) {
            return unit;
        }
        unit = unit.replace(" /", "/").replace("/ ", "/");
        unit = HOUR.matcher(unit).replaceAll("/h");
        unit = MINUTE.matcher(unit).replaceAll("/min");
        return SECOND.matcher(unit).replaceAll("/s");
    }

    /** Inches and feet are divided in halves, metric units are not. */
    static boolean takesFractions(Unit unit) {
        return unit.dimension() == Dimension.LENGTH
                && (unit.symbol().equals("in") || unit.symbol().equals("ft"));
    }

    /** The value as a message shows it: one line, not longer than a line. */
    static String shown(String text) {
        String line = SPACES.matcher(text).replaceAll(" ").strip();
        return line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN) + " ...";
    }
}
