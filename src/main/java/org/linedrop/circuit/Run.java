package org.linedrop.circuit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A line from point to point.
 *
 * @param id           its name
 * @param from         where it starts
 * @param to           where it ends; flow in this sense counts positive
 * @param via          places it passes on the way, in flow order; empty when lift is shared over the whole length
 * @param parts        its parts in flow order; may be empty
 * @param endHeights   heights that are known at the ends of some of its parts, in flow order
 * @param temperatureK its temperature, or null for the circuit's
 */
public record Run(
        String id,
        Port from,
        Port to,
        List<Position> via,
        List<Part> parts,
        List<EndHeight> endHeights,
        @Nullable Figure temperatureK)
        implements Serializable {

    /**
     * The height at which a part ends.
     *
     * @param part    number of the part, from 1
     * @param heightM height of its end over the datum
     */
    public record EndHeight(int part, Figure heightM) implements Serializable {}

    /** Copies the lists. */
    public Run {
        via = List.copyOf(via);
        parts = List.copyOf(parts);
        endHeights = List.copyOf(endHeights);
    }
}
