package org.linedrop.circuit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * What the engine asks of the plumbing. Either power and specific consumption are given, or the flow.
 *
 * @param powerW         brake power
 * @param bsfcKgPerJ     fuel mass per brake work
 * @param flowM3PerS     fuel flow by volume, at the circuit's temperature
 * @param flowKgPerS     fuel flow by mass
 * @param manifoldPa     manifold gauge pressure
 * @param speedRevPerS   crankshaft speed
 */
public record Engine(
        @Nullable Figure powerW,
        @Nullable Figure bsfcKgPerJ,
        @Nullable Figure flowM3PerS,
        @Nullable Figure flowKgPerS,
        @Nullable Figure manifoldPa,
        @Nullable Figure speedRevPerS)
        implements Serializable {

    /**
     * Mass of fuel burnt per second.
     *
     * @param densityKgPerM3 of the fuel at the circuit's temperature
     * @return kg/s, NaN when neither flow nor power and consumption are known
     */
    public double fuelKgPerS(double densityKgPerM3) {
        if (flowKgPerS != null) {
            return flowKgPerS.value();
        }
        if (flowM3PerS != null) {
            return flowM3PerS.value() * densityKgPerM3;
        }
        return powerW != null && bsfcKgPerJ != null ? powerW.value() * bsfcKgPerJ.value() : Double.NaN;
    }
}
