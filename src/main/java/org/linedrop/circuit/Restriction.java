package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A drilled hole between two bores: a restrictor or jet in the line.
 *
 * @param id           its name, or run and line number
 * @param holeM        diameter of the hole
 * @param lengthM      length of the hole, 0 for a thin edge
 * @param temperatureK its own temperature, or null
 */
public record Restriction(
        String id, Figure holeM, Figure lengthM, @Nullable Figure temperatureK) implements Part {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.restriction(this);
    }
}
