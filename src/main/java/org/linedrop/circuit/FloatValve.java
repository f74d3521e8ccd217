package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * The needle and seat of a carburettor, wide open: a hole with a discharge coefficient, dp = rho/2 (Q/(Cd A))^2.
 *
 * @param id       its name
 * @param position where it is, or null
 * @param seatM    bore of its seat
 * @param discharge its discharge coefficient
 */
public record FloatValve(String id, @Nullable Position position, Figure seatM, Figure discharge) implements Device {

    /** Its word. */
    static final String KIND = "float valve";

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.floatValve(this);
    }
}
