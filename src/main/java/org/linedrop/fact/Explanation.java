package org.linedrop.fact;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How one row of an answer came about, step by step.
 *
 * @param element the row explained, for example {@code feed 6.3}
 * @param steps   its intermediates in the order of the arithmetic
 */
public record Explanation(String element, List<Step> steps) implements Serializable {

    /** Copies the list. */
    public Explanation {
        steps = List.copyOf(steps);
    }

    /**
     * One intermediate.
     *
     * @param symbol  the letter a handbook would use
     * @param meaning what it is, in words
     * @param value   its value
     * @param unit    the unit of the value, empty for pure numbers
     * @param formula the law it comes from, or null for given figures and plain arithmetic
     */
    public record Step(
            String symbol,
            String meaning,
            double value,
            String unit,
            @Nullable Formula formula) implements Serializable {}
}
