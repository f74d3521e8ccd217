package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.fact.Figure;

/**
 * An adapter, reducer, union or bulkhead.
 *
 * @param id           its name, or run and line number
 * @param size         the catalogue row
 * @param temperatureK its own temperature, or null
 */
public record Adapter(String id, AdapterSize size, @Nullable Figure temperatureK) implements Part {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.adapter(this);
    }
}
