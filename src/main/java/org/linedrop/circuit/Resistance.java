package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.fact.Figure;

/**
 * A filter, cooler, engine passage or tap: something that resists flow in a way that its maker or a gauge has told.
 *
 * <p>From one point: drop = factor x rated drop x (flow / rated flow)^exponent x (viscosity / rated
 * viscosity)^(2 - exponent), so that a laminar element follows the viscosity and a turbulent housing does not. From two:
 * factor x (a mu Q + b rho Q^2).
 *
 * @param id          its name
 * @param kind        {@code filter}, {@code cooler}, {@code passage} or {@code tap}
 * @param position    where it is, or null
 * @param rated       drop at a flow, clean and open
 * @param second      a second such point of the same liquid, or null
 * @param exponent    of the flow, 1 (laminar) to 2 (velocity head); not used with two points
 * @param clog        how many times its clean drop a filter has now; 1 when clean
 * @param open        how far a tap is open, 0 to 1: its drop goes with one over the square; 1 for all others
 * @param bypassPa    drop at which its bypass opens, or null where it has none
 * @param heatW       heat that the fluid gives off or takes up in it, or null where nobody said
 */
public record Resistance(
        String id,
        String kind,
        @Nullable Position position,
        RatedPoint rated,
        @Nullable RatedPoint second,
        Figure exponent,
        Figure clog,
        Figure open,
        @Nullable Figure bypassPa,
        @Nullable Figure heatW)
        implements Device {

    /** Word of a filter. */
    public static final String FILTER = "filter";
    /** Word of a cooler, radiator or heater core. */
    static final String COOLER = "cooler";
    /** Word of a passage through an engine, gearbox or other component. */
    static final String PASSAGE = "passage";
    /** Word of a tap that may be half open. */
    public static final String TAP = "tap";

    /**
     * Whether nothing can pass.
     *
     * @return true for a tap that is closed
     */
    public boolean shut() {
        return !(open.value() > 0);
    }

    /**
     * What its clean and open drop is multiplied by.
     *
     * @return clogging over the square of the opening
     */
    public double factor() {
        return clog.value() / (open.value() * open.value());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.resistance(this);
    }
}
