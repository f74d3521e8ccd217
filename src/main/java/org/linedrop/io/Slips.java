package org.linedrop.io;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Slips that can be told from the text alone, and what to write instead. */
final class Slips {
    /** {@code length:0.6 m}: a word, a colon and no space; not {@code 14:1}, not {@code C:/}. */
    private static final Pattern GLUED = Pattern.compile("([A-Za-z][A-Za-z0-9 /-]*?):([^ :/\\\\].*)");

    /** {@code #8} where a dash size was meant. */
    private static final Pattern SIZE_AS_REMARK = Pattern.compile(" *#(\\d{1,2})(?![\\d.]).*");

    private static final Pattern NUMBER = Pattern.compile("(\\d+(?:\\.\\d+)?)(.*)");
    private static final int SMALLEST_DASH = 2;
    private static final int LARGEST_DASH = 32;

    private Slips() {}

    /** Key and value of a text in which they are glued together. */
    static Optional<String[]> glued(String text) {
        Matcher glued = GLUED.matcher(text.strip());
        return glued.matches()
                ? Optional.of(new String[] {glued.group(1), glued.group(2).strip()})
                : Optional.empty();
    }

    static String gluedMessage(String[] parts) {
        return "put a space after the colon: \"" + parts[0] + ": " + SourceLines.shown(parts[1]) + "\"";
    }

    /**
     * The dash size that stands behind a value as a remark.
     *
     * @param value  the value in front of it
     * @param behind what stands behind the value on its line
     */
    static Optional<String> sizeAsRemark(String value, String behind) {
        Matcher size = SIZE_AS_REMARK.matcher(behind);
        if (!size.matches() || !behind.startsWith(" ") || (!value.isEmpty() && endsWithDigit(value))) {
            return Optional.empty();
        }
        int dash = Integer.parseInt(size.group(1));
        return dash >= SMALLEST_DASH && dash <= LARGEST_DASH ? Optional.of(size.group(1)) : Optional.empty();
    }

    private static boolean endsWithDigit(String value) {
        char last = value.charAt(value.length() - 1);
        return last >= '0' && last <= '9';
    }

    static String sizeHint(String dash) {
        return "If you wrote #" + dash + ": YAML drops everything after \" #\". Write -" + dash;
    }

    /** What to write instead of a value that begins with one of YAML's own characters. */
    static String signHint(String value) {
        char sign = value.charAt(0);
        String rest = value.substring(1).strip();
        Matcher number = NUMBER.matcher(rest);
        if (number.matches() && sign == '*') {
            return "Write " + number.group(1) + " x";
        }
        if (number.matches() && sign == '%') {
            return "Write " + number.group(1) + " %" + number.group(2);
        }
        return "If it must, put the value in quotes: \"" + SourceLines.shown(value) + "\"";
    }

    static String signMessage(char sign) {
        StringBuilder others = new StringBuilder();
        for (char other : new char[] {'*', '%', '!', '&', '@'}) {
            if (other != sign) {
                others.append(' ').append(other);
            }
        }
        return "a value may not begin with " + sign + " (or" + others + ")";
    }

    /** The value that begins here: up to a comma or a closing bracket in braces, to a remark or the end outside. */
    static String value(String from, boolean braces) {
        int end = from.length();
        int remark = from.indexOf(" #");
        if (remark >= 0) {
            end = remark;
        }
        if (braces) {
            for (int i = 0; i < end; i++) {
                char c = from.charAt(i);
                if (c == ',' || c == '}' || c == ']') {
                    end = i;
                }
            }
        }
        return from.substring(0, end).strip();
    }

    /** Words for a limit that was written with a sign. */
    static String limitHint(String value) {
        String number = value.replaceFirst("^[>|]=?\\s*", "");
        boolean least = value.startsWith(">") && NUMBER.matcher(number).matches();
        return least
                ? "Write \"at least " + SourceLines.shown(number) + "\""
                : "Write the value on the line of its key, without " + value.charAt(0);
    }

    /** The same length with in for its inch marks: {@code "3/8" x 0.035"} becomes {@code 3/8 in x 0.035 in}. */
    static String inches(String value) {
        String bare = value.startsWith("\"") || value.startsWith("'") ? value.substring(1) : value;
        return bare.replaceAll("(?<=\\d)[\"']", " in")
                .replace("\"", "")
                .replace("  ", " ")
                .strip();
    }
}
