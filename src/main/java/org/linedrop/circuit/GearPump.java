package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.fact.Figure;

/**
 * A pump that moves a volume per turn and lets some slip back through its clearances: flow = volume x speed - leak, the leak
 * in proportion to the pressure rise and to one over the viscosity.
 *
 * @param id           its name
 * @param position     where it is, or null
 * @param movesM3      volume per turn of the pump
 * @param leaks        what slips back at a pressure, with the liquid it was measured with
 * @param speedRevPerS its speed
 */
public record GearPump(String id, @Nullable Position position, Figure movesM3, RatedPoint leaks, double speedRevPerS)
        implements Device {

    /** Its word. */
    static final String KIND = "gear pump";

    /**
     * What it would move without a leak.
     *
     * @return m3/s
     */
    public double sweptM3PerS() {
        return movesM3.value() * speedRevPerS;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.gearPump(this);
    }
}
