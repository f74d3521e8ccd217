package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A multiple: {@code 5 x} of the usual, at least 1; or of something's speed: {@code 0.8 x engine}.
 *
 * @param figure the multiple, not negative
 * @param of     what it is a multiple of, for example {@code engine}; empty when that is plain
 */
@Inner
public record Factor(Figure figure, String of) implements Serializable {
    private static final Pattern FACTOR = Pattern.compile("([+-]?[\\d.]+(?:[eE][+-]?\\d+)? ?x)(?: ([A-Za-z].*))?");

    /**
     * Reads a factor.
     *
     * @param text for example {@code 5 x measured} or {@code 1.0 x engine}
     * @return the factor
     * @throws UnitException when it is no factor, under 1, or of something and negative
     */
    public static Factor read(String text) {
        Said said = Said.of(text);
        Matcher factor = FACTOR.matcher(said.value());
        if (!factor.matches()) {
            throw Wording.wrong(
                    text,
                    " is no factor",
                    Wording.bare(said.value()) ? "Write " + said.value() + " x" : "Write for example 5 x");
        }
        String spread = said.spread().isEmpty() ? "" : " +/- " + said.spread();
        Figure figure = Forms.as(Forms.figure(factor.group(1) + spread, Dimension.RATIO), said.status());
        String of = factor.group(2) == null ? "" : factor.group(2);
        if (!(figure.value() >= (of.isEmpty() ? 1 : 0))) {
            throw Wording.wrong(text, of.isEmpty() ? " is under 1" : " is negative", "Write for example 5 x");
        }
        return new Factor(figure, of);
    }

    /**
     * Writes the factor.
     *
     * @return text that reads back to an equal factor
     */
    public String write() {
        String plain = Units.write(figure.value(), Units.unit("x")) + (of.isEmpty() ? "" : " " + of);
        return plain + Forms.spreadText(figure, Dimension.RATIO) + Said.suffix(figure.status());
    }
}
