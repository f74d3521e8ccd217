package org.linedrop.circuit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something more than plumbing: it stands in a run, or has ports of its own that runs come to. */
public sealed interface Device extends Serializable
        permits Pump, GearPump, Resistance, OneWayValve, Regulator, Thermostat, Rail, FloatValve {

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
     * Names of its ports.
     *
     * @return empty where it stands inside a run
     */
    default List<String> ports() {
        return List.of();
    }

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
         * A pump that moves a volume per turn.
         *
         * @param device the device
         * @return what is made of it
         */
        R gearPump(GearPump device);

        /**
         * A filter, cooler, passage or tap.
         *
         * @param device the device
         * @return what is made of it
         */
        R resistance(Resistance device);

        /**
         * A check valve or relief valve.
         *
         * @param device the device
         * @return what is made of it
         */
        R oneWayValve(OneWayValve device);

        /**
         * A regulator.
         *
         * @param device the device
         * @return what is made of it
         */
        R regulator(Regulator device);

        /**
         * A thermostat.
         *
         * @param device the device
         * @return what is made of it
         */
        R thermostat(Thermostat device);

        /**
         * A fuel rail.
         *
         * @param device the device
         * @return what is made of it
         */
        R rail(Rail device);

        /**
         * A needle and seat.
         *
         * @param device the device
         * @return what is made of it
         */
        R floatValve(FloatValve device);
    }
}
