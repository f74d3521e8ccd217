package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Status;

/**
 * A value apart from what was said about it: {@code 10.2 mm +/- 0.1 mm measured}.
 *
 * @param value  the value's own text
 * @param spread the text behind {@code +/-}, for example {@code 0.1 mm} or {@code 3 %}; empty when there is none
 * @param status {@link Status#MEASURED}, {@link Status#FROM_SHEET}, {@link Status#GUESSED}, or {@link Status#GIVEN}
 *               when nothing was said
 * @param really whether the writer insists on a value that looks like a slip
 */
@Inner
public record Said(String value, String spread, Status status, boolean really) implements Serializable {
    private static final Pattern LAST =
            Pattern.compile("(?:(.*?) )?(measured|from sheet|guessed|really)", Pattern.DOTALL);
    private static final Pattern SPREAD = Pattern.compile("(.*?) ?\\+/- ?(.*)");

    /**
     * Splits a value from the words behind it.
     *
     * @param text for example {@code 10.2 mm +/- 0.1 mm measured}
     * @return the parts
     * @throws org.linedrop.units.UnitException when two of the words contradict each other
     */
    public static Said of(String text) {
        String rest = Wording.tidy(text);
        Status status = Status.GIVEN;
        boolean really = false;
        Matcher last = LAST.matcher(rest);
        while (last.matches()) {
            String word = last.group(2);
            if (word.equals("really")) {
                really = true;
            } else if (status == Status.GIVEN) {
                status = status(word);
            } else {
                throw Wording.wrong(
                        text, " is both " + word + " and " + status.word(), "Say one: measured, from sheet or guessed");
            }
            rest = last.group(1) == null ? "" : last.group(1);
            last = LAST.matcher(rest);
        }
        Matcher spread = SPREAD.matcher(rest);
        return spread.matches()
                ? new Said(spread.group(1), spread.group(2).strip(), status, really)
                : new Said(rest, "", status, really);
    }

    private static Status status(String word) {
        return switch (word) {
            case "measured" -> Status.MEASURED;
            case "from sheet" -> Status.FROM_SHEET;
            default -> Status.GUESSED;
        };
    }

    /**
     * The word of a file for a status, never a stronger one than the figure has: what a standard or a publication
     * says is written {@code from sheet}; what is custom, from memory or invented is written {@code guessed}.
     *
     * @param status how a figure is known
     * @return the word with a space before it, empty for {@link Status#GIVEN}
     */
    public static String suffix(Status status) {
        return switch (status) {
            case GIVEN -> "";
            case MEASURED -> " measured";
            case STANDARD, PUBLISHED, COMPUTED, DERIVED, FROM_SHEET -> " from sheet";
            case COMMON_PRACTICE, FROM_MEMORY, GUESSED, INVENTED -> " guessed";
        };
    }
}
