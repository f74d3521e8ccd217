package org.linedrop.circuit;

import java.io.Serializable;
import org.linedrop.circuit.form.LimitText;

/**
 * A function that must hold in every case.
 *
 * @param subject  the point or device
 * @param quantity what of it, as the file names it, for example {@code pressure}
 * @param bound    what it must be
 * @param from     who asks for it: {@code this file}, or the service whose usual limit it is
 */
public record Limit(String subject, String quantity, LimitText bound, String from) implements Serializable {

    /**
     * Its name in reports.
     *
     * @return for example {@code rail pressure}
     */
    public String id() {
        return subject + " " + quantity;
    }
}
