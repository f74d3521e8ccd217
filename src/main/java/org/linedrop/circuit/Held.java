package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A point whose pressure something outside the circuit keeps; taken as a still vessel, so that static and total
 * pressure are one.
 *
 * @param id         its name
 * @param position   where it is, or null when heights are left out
 * @param pressurePa the gauge pressure kept; null where a head is given
 * @param headM      the same in metres of the fluid under the circuit's gravity; null where a pressure is given
 */
public record Held(
        String id,
        @Nullable Position position,
        @Nullable Figure pressurePa,
        @Nullable Figure headM) implements Point {

    @Override
    public Double gaugeBoreM() {
        return Double.POSITIVE_INFINITY;
    }
}
