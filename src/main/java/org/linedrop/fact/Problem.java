package org.linedrop.fact;

import java.io.Serializable;

/**
 * Something that must be corrected before a circuit can be solved.
 *
 * @param place   where it stands
 * @param key     the key concerned, empty when none
 * @param value   the value as written, with its unit; empty when none
 * @param message what is wrong: what was read and what it must be
 * @param hint    what to do; empty when the message says it
 */
public record Problem(Place place, String key, String value, String message, String hint) implements Serializable {
    /** A line is at most this long: a value that is too long to read would push the hint off the screen. */
    private static final int LONGEST_LINE = 1500;

    private static final int KEPT_HEAD = 600;
    private static final int KEPT_TAIL = 400;

    /**
     * The problem as one line: {@code feed.yaml:23  feed 1: message. hint}. Names in it may come from a file: see
     * {@link Words#printable}; the middle of a line over 1500 characters is left out.
     *
     * @return the line, without a line end or anything that steers a terminal
     */
    public String line() {
        StringBuilder text = new StringBuilder();
        if (!place.file().isEmpty()) {
            text.append(place.file());
            if (place.line() > 0) {
                text.append(':').append(place.line());
            }
            text.append("  ");
        }
        if (!place.path().isEmpty()) {
            text.append(place.path()).append(": ");
        }
        text.append(message);
        if (!hint.isEmpty()) {
            text.append(message.endsWith(".") || message.endsWith("?") ? " " : ". ")
                    .append(hint);
        }
        String line = Words.printable(text.toString());
        return line.length() <= LONGEST_LINE
                ? line
                : Words.printable(line.substring(0, KEPT_HEAD) + " ... " + line.substring(line.length() - KEPT_TAIL));
    }
}
