package org.linedrop.circuit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/** A place where lines meet or where something is known. */
public sealed interface Point extends Serializable permits Tank, Held, Draw, Joint, Junction {

    /**
     * Its name in the circuit.
     *
     * @return a name that no other element has
     */
    String id();

    /**
     * Where it is.
     *
     * @return the place, or null when heights were left out of the circuit
     */
    @Nullable Position position();

    /**
     * Bore in which a gauge would sit here.
     *
     * @return the bore in metres, {@link Double#POSITIVE_INFINITY} for a vessel where the fluid stands still, or null
     *     for the bore of the run end
     */
    @Nullable Double gaugeBoreM();
}
