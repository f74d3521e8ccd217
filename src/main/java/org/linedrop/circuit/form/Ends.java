package org.linedrop.circuit.form;

import java.io.Serializable;
import org.linedrop.fact.Inner;
import org.linedrop.units.UnitException;

/**
 * The two ends of a hose, in flow order: {@code 90 forged to straight}.
 *
 * @param from the end at the run's {@code from} side
 * @param to   the end at the run's {@code to} side
 */
@Inner
public record Ends(EndChoice from, EndChoice to) implements Serializable {

    /** A bare piece of hose. */
    public static final Ends NONE = new Ends(EndChoice.of(EndChoice.NONE), EndChoice.of(EndChoice.NONE));

    /**
     * Reads two ends.
     *
     * @param text for example {@code 45 to 90}; {@code none} alone is a bare piece
     * @return the ends
     * @throws UnitException when there are not two, or one is unknown
     */
    public static Ends read(String text) {
        String words = Wording.tidy(text);
        if (words.isEmpty()) {
            throw Wording.wrong(
                    text, " is empty: a hose needs its ends", "Write straight to 90, or none for a bare piece");
        }
        if (words.equals("none")) {
            return NONE;
        }
        String[] parts = words.split(" to ", -1);
        if (parts.length == 2) {
            return new Ends(EndChoice.read(parts[0]), EndChoice.read(parts[1]));
        }
        String[] other = words.split(" ?(?:,|/|\\band\\b| - | x |->) ?", -1);
        if (parts.length == 1 && other.length == 2 && !other[0].isEmpty() && !other[1].isEmpty() && known(other)) {
            throw Wording.wrong(text, ": the two ends are joined by \"to\"", "Write " + other[0] + " to " + other[1]);
        }
        if (parts.length == 1) {
            EndChoice one = EndChoice.read(words);
            throw Wording.wrong(text, ": two ends are needed, first the one at \"from\": " + one.write() + " to ?", "");
        }
        throw Wording.wrong(text, " has more than two ends", "Write for example 45 to 90");
    }

    private static boolean known(String[] ends) {
        try {
            for (String end : ends) {
                EndChoice.read(end);
            }
            return true;
        } catch (UnitException e) {
            // Not two ends with another word between them: the message for one end says more.
            return false;
        }
    }

    /**
     * Writes the ends.
     *
     * @return text that reads back to equal ends
     */
    public String write() {
        return equals(NONE) ? "none" : from.write() + " to " + to.write();
    }
}
