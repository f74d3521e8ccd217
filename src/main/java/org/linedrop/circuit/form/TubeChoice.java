package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A tube by material, outside diameter and wall.
 *
 * @param material         for example {@code steel}
 * @param outsideDiameterM outside diameter
 * @param wallM            wall thickness
 * @param sizeText         outside diameter and wall as written
 */
public record TubeChoice(String material, double outsideDiameterM, double wallM, String sizeText)
        implements Serializable {
    private static final Pattern SHAPE =
            Pattern.compile("([A-Za-z][A-Za-z0-9 -]*?)\\s+(\\S+(?:\\s\\S+)*?)\\s+x\\s+(.+)");

    /**
     * Reads a tube.
     *
     * @param text for example {@code steel 5/16 in x 0.028 in}
     * @return the tube
     * @throws UnitException when the text is anything else
     */
    public static TubeChoice read(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new UnitException(
                    "\"" + text + "\" is no tube", "Write material, outside diameter x wall: steel 3/8 in x 0.035 in");
        }
        double outside = Units.read(shape.group(2), Dimension.LENGTH).si();
        double wall = Units.read(shape.group(3), Dimension.LENGTH).si();
        if (!(wall > 0 && 2 * wall < outside)) {
            throw new UnitException(
                    "\"" + text + "\" leaves no bore: twice the wall is not under the outside diameter",
                    "Write outside diameter x wall: steel 3/8 in x 0.035 in");
        }
        return new TubeChoice(shape.group(1).strip(), outside, wall, shape.group(2) + " x " + shape.group(3));
    }
}
