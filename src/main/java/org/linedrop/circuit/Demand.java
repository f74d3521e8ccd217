package org.linedrop.circuit;

import java.io.Serializable;
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
}
