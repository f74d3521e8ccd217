package org.linedrop.circuit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * One line of a run: one thing you make up or buy. A visitor, not a switch, so that a forgotten kind is a compile
 * error on Java 17.
 */
public sealed interface Part extends Serializable permits Hose, Tube, Adapter, Through, StatedLaw, Restriction, Valve {

    /**
     * Its name: what {@code name:} gave it, or run and line number.
     *
     * @return for example {@code feed 4}
     */
    String id();

    /**
     * Its own temperature.
     *
     * @return kelvin, or null for that of the run or circuit
     */
    @Nullable Figure temperatureK();

    /**
     * Calls the visitor's method for this kind.
     *
     * @param <R>     what the visitor makes of it
     * @param visitor the visitor
     * @return what the visitor returned
     */
    <R> R accept(Visitor<R> visitor);

    /**
     * One method per kind of part.
     *
     * @param <R> what is made of a part
     */
    interface Visitor<R> {
        /**
         * A made-up hose.
         *
         * @param part the part
         * @return what is made of it
         */
        R hose(Hose part);

        /**
         * A hard line.
         *
         * @param part the part
         * @return what is made of it
         */
        R tube(Tube part);

        /**
         * An adapter or bulkhead.
         *
         * @param part the part
         * @return what is made of it
         */
        R adapter(Adapter part);

        /**
         * An in-line device.
         *
         * @param part the part
         * @return what is made of it
         */
        R through(Through part);

        /**
         * A part whose law is stated outright.
         *
         * @param part the part
         * @return what is made of it
         */
        R statedLaw(StatedLaw part);

        /**
         * A drilled restrictor.
         *
         * @param part the part
         * @return what is made of it
         */
        R restriction(Restriction part);

        /**
         * An open valve.
         *
         * @param part the part
         * @return what is made of it
         */
        R valve(Valve part);
    }
}
