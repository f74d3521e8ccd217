package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.UnitException;

/**
 * A size, with a hose family where one is named.
 *
 * @param family name of the hose family, empty for a size alone
 * @param size   {@code -8}, or {@code 5/16 in} for hose sized by inch
 */
public record SizeChoice(String family, String size) implements Serializable {
    private static final Pattern DASH =
            Pattern.compile("(.*?)\\s*(?:-|AN\\s*-?)(\\d{1,2})(?:\\s*AN)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern INCH = Pattern.compile("(.*?)\\s*(\\d+(?:-\\d+)?(?:/\\d+)?)\\s*(?:in|\")");

    /**
     * Reads a size.
     *
     * @param text for example {@code race PTFE -8}, {@code -8AN}, {@code fuel hose 5/16 in}
     * @return the size
     * @throws UnitException when there is none
     */
    public static SizeChoice read(String text) {
        String said = text.strip().replaceAll("\\s+", " ");
        Matcher dash = DASH.matcher(said);
        if (dash.matches()) {
            return new SizeChoice(dash.group(1).strip(), "-" + Integer.parseInt(dash.group(2)));
        }
        Matcher inch = INCH.matcher(said);
        if (inch.matches()) {
            return new SizeChoice(inch.group(1).strip(), inch.group(2) + " in");
        }
        String hint = "Write the dash size, for example " + (said.isEmpty() ? "race PTFE" : said) + " -8";
        if (said.toLowerCase(Locale.ROOT).endsWith("-")) {
            hint = "Write -8 without a space";
        }
        throw new UnitException(
                "\"" + text + "\" has no size", hint + ". If you wrote #8: YAML drops everything after \" #\"");
    }

    /**
     * As the file writes it.
     *
     * @return for example {@code race PTFE -8}
     */
    public String write() {
        return family.isEmpty() ? size : family + " " + size;
    }
}
