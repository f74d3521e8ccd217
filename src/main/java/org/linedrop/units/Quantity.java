package org.linedrop.units;

import java.io.Serializable;
import java.util.Objects;

/**
 * A number as it was read.
 *
 * @param si        its value in the SI unit of the dimension ({@link Dimension#si()}), finite
 * @param dimension what it measures
 * @param unit      the unit it was written in
 */
public record Quantity(double si, Dimension dimension, Unit unit) implements Serializable {

    /**
     * Checks that the number is finite and that unit and dimension belong together.
     *
     * @param si        its value in SI, finite
     * @param dimension what it measures
     * @param unit      the unit it was written in
     */
    public Quantity {
        Objects.requireNonNull(dimension, "dimension");
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("a quantity must be finite, but is " + si);
        }
        if (unit.dimension() != dimension) {
            throw new IllegalArgumentException(unit.symbol() + " is no unit of " + dimension.noun());
        }
    }

    /**
     * The quantity in the unit it was read in.
     *
     * @return text that reads back to the same quantity
     */
    public String text() {
        return Units.write(si, unit);
    }
}
