package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A filter known by one rated point: drop = clog x rated drop x (flow / rated flow)^exponent x
 * (viscosity / rated viscosity)^(2 - exponent), so that a laminar element follows the viscosity and a turbulent housing
 * does not.
 *
 * @param id              its name
 * @param position        where it is, or null
 * @param ratedDropPa     drop at the rated flow, clean
 * @param ratedFlowM3PerS the rated flow
 * @param ratedViscosityM2PerS kinematic viscosity it was rated with, or null for that of the circuit's fluid
 * @param exponent        of the flow, 1 (all element) to 2 (all housing)
 * @param clog            how many times the clean drop it has now, 1 when clean
 */
public record Filter(
        String id,
        @Nullable Position position,
        Figure ratedDropPa,
        Figure ratedFlowM3PerS,
        @Nullable Figure ratedViscosityM2PerS,
        Figure exponent,
        Figure clog)
        implements Device {

    @Override
    public String kind() {
        return "filter";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.filter(this);
    }
}
