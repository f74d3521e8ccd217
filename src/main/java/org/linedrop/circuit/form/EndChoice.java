package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * One end of a hose.
 *
 * @param kind     {@value #STRAIGHT}, {@value #SWEPT}, {@value #FORGED}, {@value #BANJO}, {@value #QUICK_CONNECT},
 *                 {@value #MALE}, {@value #BARB} or {@value #NONE}; machined and low-profile ends are forged ones
 * @param angleDeg its angle in degrees, 0 where it has none
 * @param detail   what else the words say: {@code M12} of a banjo, {@code 3/8 in} of a quick-connect; empty otherwise
 */
@Inner
public record EndChoice(String kind, double angleDeg, String detail) implements Serializable {
    private static final Pattern ANGLE = Pattern.compile("(\\d{1,3})(?: ?deg| ?\u00b0)?(?: ([a-z-]+(?: tube)?))?");
    private static final Pattern BOLT = Pattern.compile("[Mm](\\d{1,2}(?:x\\d(?:\\.\\d{1,2})?)?)");
    private static final List<Integer> SWEPT_ANGLES = List.of(30, 45, 60, 90, 120, 150, 180);
    private static final List<Integer> FORGED_ANGLES = List.of(30, 45, 60, 90);
    private static final List<String> WORDS = List.of(
            "straight", "forged", "swept", "machined", "low-profile", "banjo", "quick-connect", "male", "barb", "none");
    private static final String KNOWN =
            "straight, 30 45 60 90 120 150 180, 45 forged, 90 forged, banjo M12, quick-connect 3/8 in, male, barb or none";

    /** Straight through. */
    static final String STRAIGHT = "straight";

    /** Turned by a bent tube. */
    static final String SWEPT = "swept";

    /** Turned inside a forged, machined or low-profile body: a sharp corner. */
    static final String FORGED = "forged";

    /** Ring on a hollow bolt. */
    static final String BANJO = "banjo";

    /** Snap coupling. */
    static final String QUICK_CONNECT = "quick-connect";

    /** Male thread. */
    static final String MALE = "male";

    /** Pushed on a barb. */
    static final String BARB = "barb";

    /** No end: a bare, measured piece. */
    static final String NONE = "none";

    private static final List<String> PLAIN = List.of(STRAIGHT, MALE, BARB, NONE);

    /**
     * An end without angle and detail.
     *
     * @param kind     {@value #STRAIGHT}, {@value #SWEPT}, {@value #FORGED}, {@value #BANJO}, {@value #QUICK_CONNECT},
     *                 {@value #MALE}, {@value #BARB} or {@value #NONE}; machined and low-profile ends are forged ones
     * @return the end
     */
    public static EndChoice of(String kind) {
        return new EndChoice(kind, 0, "");
    }

    /**
     * Reads one end.
     *
     * @param text for example {@code 90 forged}
     * @return the end
     * @throws UnitException when no hose end is called so
     */
    public static EndChoice read(String text) {
        String words = Wording.tidy(text);
        Matcher angle = ANGLE.matcher(words.toLowerCase(Locale.ROOT));
        if (angle.matches()) {
            return angled(text, Integer.parseInt(angle.group(1)), angle.group(2) == null ? "" : angle.group(2));
        }
        int space = words.indexOf(' ');
        String first = (space < 0 ? words : words.substring(0, space)).toLowerCase(Locale.ROOT);
        String rest = space < 0 ? "" : words.substring(space + 1);
        if (first.equals("banjo")) {
            return banjo(text, rest);
        }
        if (first.equals("quick-connect") || words.toLowerCase(Locale.ROOT).startsWith("quick connect")) {
            return quickConnect(text, first.equals("quick-connect") ? rest : rest.replaceFirst("^\\S+ ?", ""));
        }
        for (String plain : PLAIN) {
            if (rest.isEmpty() && first.equals(plain)) {
                return of(plain);
            }
        }
        String near =
                Words.nearest(first, WORDS).map(n -> "Did you mean " + n + "? ").orElse("");
        throw Wording.wrong(text, " is no hose end", near + "Write " + KNOWN);
    }

    private static EndChoice angled(String text, int angle, String word) {
        switch (word) {
            case "", "swept", "bent", "bent tube" -> {
                if (angle == 0) {
                    return of(STRAIGHT);
                }
                if (!SWEPT_ANGLES.contains(angle)) {
                    throw Wording.wrong(
                            text, ": hose ends are made straight and in 30 45 60 90 120 150 180", "Write the nearest");
                }
                return new EndChoice(SWEPT, angle, "");
            }
            case "forged", "machined", "low-profile" -> {
                if (!FORGED_ANGLES.contains(angle)) {
                    throw Wording.wrong(
                            text,
                            ": " + word + " hose ends are made in 45 and 90 (30 and 60 rarely)",
                            "Write " + (SWEPT_ANGLES.contains(angle) ? angle + " (swept)" : "90 " + word));
                }
                return new EndChoice(FORGED, angle, "");
            }
            default -> {
                String near = Words.nearest(word, WORDS)
                        .map(n -> "Did you mean " + n + "? ")
                        .orElse("");
                throw Wording.wrong(text, " is no hose end", near + "Write " + KNOWN);
            }
        }
    }

    private static EndChoice banjo(String text, String bolt) {
        Matcher metric = BOLT.matcher(bolt);
        if (metric.matches()) {
            return new EndChoice(BANJO, 0, "M" + metric.group(1));
        }
        if (bolt.isEmpty()) {
            throw Wording.wrong(text, ": on which bolt?", "Write for example banjo M12");
        }
        return new EndChoice(
                BANJO, 0, Wording.size(Units.read(bolt, Dimension.LENGTH).si()));
    }

    private static EndChoice quickConnect(String text, String size) {
        if (size.isEmpty()) {
            throw Wording.wrong(text, ": of which size?", "Write for example quick-connect 3/8 in");
        }
        return new EndChoice(
                QUICK_CONNECT,
                0,
                Wording.size(Units.read(size, Dimension.LENGTH).si()));
    }

    /**
     * Writes the end.
     *
     * @return text that reads back to an equal end
     */
    public String write() {
        return switch (kind) {
            case SWEPT -> degrees();
            case FORGED -> degrees() + " forged";
            default -> detail.isEmpty() ? kind : kind + " " + detail;
        };
    }

    private String degrees() {
        return Units.number(angleDeg, Units.unit("", Dimension.RATIO));
    }
}
