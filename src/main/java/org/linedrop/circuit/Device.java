package org.linedrop.circuit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/** Something with two ports that stands in a run and is more than plumbing. */
public sealed interface Device extends Serializable permits Pump, Filter, OtherDevice {

    /**
     * Its name in the circuit.
     *
     * @return a name that no other element has
     */
    String id();

    /**
     * The word of its kind.
     *
     * @return for example {@code pump}
     */
    String kind();

    /**
     * Where it is.
     *
     * @return the place, or null where only the ends of its run are known
     */
    @Nullable Position position();

    /**
     * Calls the visitor's method for this kind.
     *
     * @param <R>     what the visitor makes of it
     * @param visitor the visitor
     * @return what the visitor returned
     */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method per kind of device.
     *
     * @param <R> what is made of a device
     */
    interface Visitor<R> {
        /**
         * A pump.
         *
         * @param device the device
         * @return what is made of it
         */
        R pump(Pump device);

        /**
         * A filter.
         *
         * @param device the device
         * @return what is made of it
         */
        R filter(Filter device);

        /**
         * A device without a law.
         *
         * @param device the device
         * @return what is made of it
         */
        R other(OtherDevice device);
    }
}
