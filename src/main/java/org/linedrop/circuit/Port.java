package org.linedrop.circuit;

import java.io.Serializable;

/**
 * One connection of a point or device.
 *
 * @param element name of the point or device
 * @param name    name of the port; empty where there is only one
 */
public record Port(String element, String name) implements Serializable {

    /**
     * As a circuit file writes it.
     *
     * @return {@code element} or {@code element.name}
     */
    public String text() {
        return name.isEmpty() ? element : element + "." + name;
    }
}
