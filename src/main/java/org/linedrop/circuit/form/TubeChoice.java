package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A tube: {@code steel 5/16 in x 0.028 in}.
 *
 * @param material      what it is made of, as written
 * @param outsideDiameterM outside diameter in m, above 0
 * @param wallM         wall in m, above 0 and under half the outside diameter
 */
@Inner
public record TubeChoice(String material, double outsideDiameterM, double wallM) implements Serializable {
    private static final Pattern TUBE = Pattern.compile("([A-Za-z][A-Za-z /-]*[A-Za-z]) +(\\S.*?) ?x ?(\\S.*)");
    private static final Pattern NO_WALL = Pattern.compile("([A-Za-z][A-Za-z /-]*[A-Za-z]) +([\\d.].*)");
    private static final Pattern NO_MATERIAL = Pattern.compile("([\\d.].*?) ?x ?([\\d.].*)");
    private static final String EXAMPLE = "steel 5/16 in x 0.028 in";

    /**
     * Reads a tube.
     *
     * @param text material, outside diameter x wall; one unit at the end may stand for both
     * @return the tube
     * @throws UnitException when a part is missing or the wall does not fit
     */
    public static TubeChoice read(String text) {
        String words = Wording.tidy(text);
        Matcher tube = TUBE.matcher(words);
        if (!tube.matches()) {
            if (NO_MATERIAL.matcher(words).matches()) {
                throw Wording.wrong(text, ": of which material?", "Write for example " + EXAMPLE);
            }
            if (NO_WALL.matcher(words).matches()) {
                throw Wording.wrong(text, ": the wall is missing", "Write for example " + EXAMPLE);
            }
            throw Wording.wrong(
                    text, " is no tube: material, outside diameter x wall are needed", "Write for example " + EXAMPLE);
        }
        Quantity wall = Units.read(tube.group(3), Dimension.LENGTH);
        double outside = Wording.first(tube.group(2), wall, Dimension.LENGTH).si();
        if (!(wall.si() > 0 && 2 * wall.si() < outside)) {
            throw Wording.wrong(
                    text,
                    ": a wall of " + wall.text() + " leaves no bore",
                    "The outside diameter stands first: " + EXAMPLE);
        }
        return new TubeChoice(tube.group(1), outside, wall.si());
    }

    /**
     * The bore.
     *
     * @return outside diameter less two walls, in m
     */
    public double boreM() {
        return outsideDiameterM - 2 * wallM;
    }

    /**
     * Writes the tube; inch sizes in inches, as they are sold.
     *
     * @return text that reads back to an equal tube
     */
    public String write() {
        String wall = Wording.sixteenths(outsideDiameterM)
                ? Units.write(wallM, Units.unit("in"))
                : Units.write(wallM, Units.unit("mm"));
        return material + " " + Wording.size(outsideDiameterM) + " x " + wall;
    }

    /**
     * Outside diameter and wall alone, as a table names them.
     *
     * @return {@code 5/16 x 0.028} for inch sizes, {@code 8 x 1 mm} for others
     */
    public String sizeText() {
        String size = write().substring(material.length() + 1);
        return Wording.sixteenths(outsideDiameterM) ? size.replace(" in", "") : size.replaceFirst(" mm", "");
    }
}
