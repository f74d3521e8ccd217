package org.linedrop.circuit.form;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** Figures with the words on where they come from. */
public final class Forms {
    private static final String TITLE = "circuit file";
    private static final Pattern SPREAD = Pattern.compile("(.+?)\\s*(?:\\+/-|\u00b1)\\s*(.+)");
    private static final List<Provenance> WORDS = List.of(
            new Provenance("measured", Status.MEASURED),
            new Provenance("from sheet", Status.FROM_SHEET),
            new Provenance("guessed", Status.GUESSED));

    private record Provenance(String word, Status status) {}

    private Forms() {}

    /**
     * Reads a quantity with its provenance: {@code 10.2 mm +/- 0.1 mm measured}, {@code 140 bar from sheet}.
     *
     * @param text    as written
     * @param allowed the dimensions it may have, the likeliest first
     * @return the figure; its status is {@link Status#GIVEN} where no word says more
     * @throws UnitException when the text is anything else
     */
    public static Figure figure(String text, Dimension... allowed) {
        String rest = text.strip();
        Status status = Status.GIVEN;
        for (Provenance provenance : WORDS) {
            if (rest.endsWith(" " + provenance.word())) {
                status = provenance.status();
                rest = rest.substring(0, rest.length() - provenance.word().length())
                        .strip();
            }
        }
        Source source = Source.of(TITLE, status);
        Matcher spread = SPREAD.matcher(rest);
        if (!spread.matches()) {
            return Figure.exact(Units.read(rest, allowed).si(), source);
        }
        Quantity middle = Units.read(spread.group(1), allowed);
        double half =
                Units.read(spread.group(2), difference(middle.dimension())).si();
        if (!(half >= 0)) {
            throw new UnitException("\"" + text + "\" has a spread below zero", "Write +/- and a figure of 0 or more");
        }
        return new Figure(middle.si() - half, middle.si(), middle.si() + half, source);
    }

    /** The dimension of a difference of two such quantities. */
    private static Dimension difference(Dimension dimension) {
        return switch (dimension) {
            case GAUGE_PRESSURE, ABSOLUTE_PRESSURE -> Dimension.PRESSURE_DIFFERENCE;
            case TEMPERATURE -> Dimension.TEMPERATURE_DIFFERENCE;
            default -> dimension;
        };
    }
}
