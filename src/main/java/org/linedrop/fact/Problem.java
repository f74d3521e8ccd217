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

    /**
     * The problem as one line: {@code feed.yaml:23  feed 1: message. hint}.
     *
     * @return the line, without a line end
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
        return text.toString();
    }
}
