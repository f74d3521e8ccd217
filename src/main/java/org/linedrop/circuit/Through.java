package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * The place in a run where an in-line device sits.
 *
 * @param id           run and line number
 * @param device       name of the device
 * @param temperatureK its own temperature, or null
 */
public record Through(String id, String device, @Nullable Figure temperatureK) implements Part {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.through(this);
    }
}
