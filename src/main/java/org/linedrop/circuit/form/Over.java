package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/**
 * A pressure over a reference: {@code 300 kPa over manifold}, {@code 400 kPa over air}, {@code 3 bar over left rail}.
 *
 * @param pressurePa the difference in Pa
 * @param reference  {@value #AIR}, {@value #MANIFOLD}, or the name of a point
 */
public record Over(Figure pressurePa, String reference) implements Serializable {
    /** The surrounding air. */
    public static final String AIR = "air";

    /** The inlet manifold, whose pressure the engine gives. */
    public static final String MANIFOLD = "manifold";

    private static final Pattern OVER = Pattern.compile("(.+?) over (\\S.*)");

    /**
     * Reads a pressure over a reference.
     *
     * @param text    for example {@code 300 kPa over manifold from sheet}
     * @param locator where in the file; may be empty
     * @return the pressure with its reference
     * @throws UnitException when the reference or the pressure is missing
     */
    public static Over read(String text, String locator) {
        Said said = Said.of(text);
        String whole = said.spread().isEmpty() ? said.value() : said.value() + " +/- " + said.spread();
        Matcher over = OVER.matcher(whole);
        if (!over.matches()) {
            String pressure = whole.replaceFirst(" over$", "");
            // A text that is no pressure at all says so first.
            Forms.given(pressure, locator, Dimension.PRESSURE_DIFFERENCE);
            throw Wording.wrong(
                    text,
                    ": over air or over manifold?",
                    "Write " + pressure + " over manifold (hose on the regulator's nipple) or over air");
        }
        Figure pressure = Forms.given(over.group(1), locator, Dimension.PRESSURE_DIFFERENCE)
                .figure();
        return new Over(Forms.as(pressure, said.status()), over.group(2));
    }

    /**
     * Reads a pressure over a reference without saying where it stands.
     *
     * @param text for example {@code 300 kPa over manifold}
     * @return the pressure with its reference
     * @throws UnitException when the reference or the pressure is missing
     */
    public static Over read(String text) {
        return read(text, "");
    }

    /**
     * Writes it.
     *
     * @return text that reads back to the same numbers
     */
    public String write() {
        return Forms.band(pressurePa, Dimension.PRESSURE_DIFFERENCE) + " over " + reference
                + Said.suffix(pressurePa.status());
    }
}
