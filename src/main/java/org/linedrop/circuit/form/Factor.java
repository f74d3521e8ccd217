package org.linedrop.circuit.form;

import java.io.Serializable;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/**
 * How many times something is what it is when new.
 *
 * @param figure 1 or more
 */
public record Factor(Figure figure) implements Serializable {

    /**
     * Reads a factor.
     *
     * @param text for example {@code 5 x}
     * @return the factor
     * @throws UnitException when it is no number of 1 or more
     */
    public static Factor read(String text) {
        Figure figure = Forms.figure(text, Dimension.RATIO);
        if (!(figure.value() >= 1)) {
            throw new UnitException("\"" + text + "\" is under 1", "Write for example 5 x");
        }
        return new Factor(figure);
    }
}
