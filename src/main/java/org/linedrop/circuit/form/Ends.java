package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.linedrop.fact.Words;
import org.linedrop.units.UnitException;

/**
 * The two ends of a hose in flow order.
 *
 * @param from the end at the run's start
 * @param to   the end at the run's end
 */
public record Ends(EndChoice from, EndChoice to) implements Serializable {
    private static final List<Integer> SWEPT = List.of(30, 45, 60, 90, 120, 150, 180);
    private static final List<Integer> FORGED = List.of(30, 45, 60, 90);
    private static final List<String> WORDS =
            List.of("straight", "banjo", "quick-connect", "male", "barb", "none", "forged", "machined", "low-profile");

    /**
     * Reads both ends.
     *
     * @param text for example {@code 90 forged to straight}, or {@code none}
     * @return the ends
     * @throws UnitException when the text is anything else
     */
    public static Ends read(String text) {
        String said = text.strip();
        if (said.equals("none")) {
            return new Ends(end("none", text), end("none", text));
        }
        int cut = said.indexOf(" to ");
        if (cut < 0) {
            throw new UnitException(
                    "\"" + text + "\": two ends are needed, first the one at \"from\"", "Write " + said + " to what?");
        }
        return new Ends(
                end(said.substring(0, cut).strip(), text),
                end(said.substring(cut + 4).strip(), text));
    }

    private static EndChoice end(String said, String whole) {
        String[] words = said.toLowerCase(Locale.ROOT).split("\\s+", 2);
        String detail = words.length > 1 ? said.substring(words[0].length()).strip() : "";
        if (words[0].matches("\\d{1,3}")) {
            return angled(Integer.parseInt(words[0]), detail, whole);
        }
        return switch (words[0]) {
            case "straight", "male", "none" -> {
                if (!detail.isEmpty()) {
                    throw new UnitException("\"" + whole + "\": \"" + said + "\" is no end", "Write " + words[0]);
                }
                yield new EndChoice(words[0], 0, "");
            }
            case "banjo", "quick-connect" -> {
                if (detail.isEmpty()) {
                    throw new UnitException(
                            "\"" + whole + "\": a " + words[0] + " needs its size",
                            "Write for example " + (words[0].equals("banjo") ? "banjo M12" : "quick-connect 3/8 in"));
                }
                yield new EndChoice(words[0], 0, detail);
            }
            case "barb" -> new EndChoice("barb", 0, detail);
            default ->
                throw new UnitException(
                        "\"" + whole + "\": there is no end \"" + said + "\"",
                        Words.nearest(words[0], WORDS)
                                .map(near -> "Did you mean " + near + "?")
                                .orElse(
                                        "Ends are straight, 30 45 60 90 120 150 180 (swept), 45 forged, 90 forged, banjo M12,"
                                                + " quick-connect 3/8 in, male, barb, none"));
        };
    }

    private static EndChoice angled(int angle, String detail, String whole) {
        boolean forged = List.of("forged", "machined", "low-profile").contains(detail);
        if (!forged && !detail.isEmpty() && !detail.equals("swept")) {
            throw new UnitException(
                    "\"" + whole + "\": \"" + detail + "\" is no kind of elbow",
                    "Write " + angle + " (swept) or " + angle + " forged");
        }
        if (forged && !FORGED.contains(angle)) {
            throw new UnitException(
                    "\"" + whole + "\": forged hose ends are made in 45 and 90 (30 and 60 rarely)",
                    "Write " + angle + " (swept)");
        }
        if (!SWEPT.contains(angle)) {
            throw new UnitException(
                    "\"" + whole + "\": hose ends are not made in " + angle + " degrees",
                    "Write 30, 45, 60, 90, 120, 150 or 180");
        }
        return new EndChoice(forged ? "forged" : "swept", angle, "");
    }

    /**
     * As the file writes it.
     *
     * @return text that reads back to the same ends
     */
    public String write() {
        return from.kind().equals("none") && to.kind().equals("none") ? "none" : from.write() + " to " + to.write();
    }
}
