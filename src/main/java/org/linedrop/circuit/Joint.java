package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;

/**
 * A point where runs meet and nothing is taken.
 *
 * @param id         its name
 * @param position   where it is, or null when heights are left out
 * @param gaugeBoreM bore in which a gauge would sit, or null for that of the run end
 */
public record Joint(
        String id, @Nullable Position position, @Nullable Double gaugeBoreM) implements Point {}
