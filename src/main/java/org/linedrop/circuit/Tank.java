package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A vessel with a free surface.
 *
 * @param id             its name
 * @param position       of the outlet port, or null when heights are left out
 * @param returnPosition of the return port, or null when heights are left out; the outlet's when not given
 * @param depthM         height of the surface over the outlet
 * @param gasPressurePa  gauge pressure over the surface (0 when vented)
 * @param volumeM3      what it holds, where it is a pot whose lasting matters; else null
 */
public record Tank(
        String id,
        @Nullable Position position,
        @Nullable Position returnPosition,
        Figure depthM,
        Figure gasPressurePa,
        @Nullable Figure volumeM3)
        implements Point {

    /** Name of the port that {@code from: tank} means. */
    public static final String OUTLET = "outlet";
    /** Name of the port that {@code to: tank} means. */
    public static final String RETURN = "return";

    @Override
    public Double gaugeBoreM() {
        return Double.POSITIVE_INFINITY;
    }
}
