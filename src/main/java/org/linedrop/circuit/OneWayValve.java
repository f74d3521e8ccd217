package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.fact.Figure;

/**
 * A check valve or a relief valve: passes one way, from a drop on.
 *
 * <p>A check valve loses its opening pressure and, on top of it, a square law through its rated point. A relief valve holds
 * its drop between its opening pressure and what it has wide open, on a straight line over the flow; beyond it is an orifice.
 *
 * @param id       its name
 * @param kind     {@link #CHECK} or {@link #RELIEF}
 * @param position where it is, or null
 * @param opensPa  drop at which it begins to open
 * @param rated    drop at a flow: of a check valve over its opening pressure, of a relief valve in all, wide open
 */
public record OneWayValve(String id, String kind, @Nullable Position position, Figure opensPa, RatedPoint rated)
        implements Device {

    /** Word of a check valve. */
    public static final String CHECK = "check valve";
    /** Word of a relief valve. */
    public static final String RELIEF = "relief valve";

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.oneWayValve(this);
    }
}
