package org.linedrop.fact;

import java.io.Serializable;

/**
 * A warning or an assumption that travels with an answer and changes no number.
 *
 * @param id      stable name of the kind of notice, for example {@code re-in-blend}
 * @param element what it is about, for example {@code feed 4}; empty when about the whole
 * @param text    the sentence to print
 * @param value   the figure that caused it, NaN when none
 * @param limit   the figure it is compared with, NaN when none
 * @param unit    SI unit of value and limit, empty when none
 * @param source  who says so
 */
public record Notice(String id, String element, String text, double value, double limit, String unit, Source source)
        implements Serializable {

    /**
     * A notice without numbers.
     *
     * @param id      stable name of the kind of notice
     * @param element what it is about
     * @param text    the sentence to print
     * @param source  who says so
     * @return the notice
     */
    public static Notice of(String id, String element, String text, Source source) {
        return new Notice(id, element, text, Double.NaN, Double.NaN, "", source);
    }
}
