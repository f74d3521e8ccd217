package org.linedrop.circuit.form;

import java.io.Serializable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;

/**
 * A figure as a file gives it.
 *
 * @param figure    value, band and source, in the SI unit of the dimension
 * @param dimension what it measures
 * @param really    whether the writer insists on a value that looks like a slip
 */
@Inner
public record Given(Figure figure, Dimension dimension, boolean really) implements Serializable {

    /**
     * The value in SI.
     *
     * @return the usual value
     */
    public double si() {
        return figure.value();
    }

    /**
     * Writes it in metric units.
     *
     * @return text that {@link Forms#given} reads back to the same numbers and status
     */
    public String write() {
        return Forms.write(figure, dimension) + (really ? " really" : "");
    }
}
