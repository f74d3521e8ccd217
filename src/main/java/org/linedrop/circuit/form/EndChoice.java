package org.linedrop.circuit.form;

import java.io.Serializable;

/**
 * One end of a hose as chosen.
 *
 * @param kind     straight, swept, forged, banjo, quick-connect, male, barb or none
 * @param angleDeg angle in degrees, 0 where it has none
 * @param detail   size of a banjo bolt or quick-connect, empty otherwise
 */
public record EndChoice(String kind, int angleDeg, String detail) implements Serializable {

    /**
     * As the file writes it.
     *
     * @return for example {@code 90 forged}
     */
    public String write() {
        return switch (kind) {
            case "swept" -> Integer.toString(angleDeg);
            case "forged" -> angleDeg + " forged";
            default -> detail.isEmpty() ? kind : kind + " " + detail;
        };
    }
}
