package org.linedrop.circuit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/** How much a draw takes. */
public sealed interface Demand extends Serializable {

    /**
     * A fixed volume flow at the temperature of the draw.
     *
     * @param flowM3PerS the flow
     */
    record ByVolume(Figure flowM3PerS) implements Demand {}

    /**
     * A fixed mass flow.
     *
     * @param flowKgPerS the flow
     */
    record ByMass(Figure flowKgPerS) implements Demand {}

    /**
     * A share of what the engine burns.
     *
     * @param share 0 to 1
     */
    record OfEngine(double share) implements Demand {}

    /**
     * A flow that depends on the pressure there: bearings, a jet or a set of injectors.
     *
     * @param flowM3PerS     the flow at the rated pressure
     * @param pressurePa     the rated pressure, over what lies behind
     * @param viscosityM2PerS viscosity of the liquid it was rated with; null for the circuit's own
     * @param over           what lies behind it: {@code air} or {@code manifold}
     */
    record AtPressure(
            Figure flowM3PerS, Figure pressurePa, @Nullable Figure viscosityM2PerS, String over) implements Demand {}
}
