package org.linedrop.fact;

import java.io.Serializable;
import java.util.Objects;

/**
 * Where a figure comes from.
 *
 * @param title   the book, standard, data set or speaker
 * @param locator page, table, row or file line; empty when there is none
 * @param status  how good that is
 */
public record Source(String title, String locator, Status status) implements Serializable {

    /** Checks that nothing is null. */
    public Source {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(locator, "locator");
        Objects.requireNonNull(status, "status");
    }

    /**
     * A source without a locator.
     *
     * @param title  the book, standard, data set or speaker
     * @param status how good it is
     * @return the source
     */
    public static Source of(String title, Status status) {
        return new Source(title, "", status);
    }
}
