package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;

/**
 * A point where something takes fluid out of the circuit.
 *
 * @param id         its name
 * @param position   where it is, or null when heights are left out
 * @param takes      how much
 * @param law        how a flow rated at a pressure rises with it: {@code bearings} or {@code jet}; empty otherwise
 * @param gaugeBoreM bore in which a gauge would sit, or null for that of the run end
 */
public record Draw(
        String id,
        @Nullable Position position,
        Demand takes,
        String law,
        @Nullable Double gaugeBoreM) implements Point {}
