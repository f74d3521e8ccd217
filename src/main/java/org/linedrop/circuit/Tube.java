package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.fact.Figure;

/**
 * A hard line with its bends.
 *
 * @param id           its name, or run and line number
 * @param size         material, outside diameter and wall
 * @param lengthM      developed length
 * @param bends        its bends, or null for straight
 * @param temperatureK its own temperature, or null
 */
public record Tube(
        String id,
        TubeSize size,
        Figure lengthM,
        @Nullable Route bends,
        @Nullable Figure temperatureK) implements Part {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.tube(this);
    }
}
