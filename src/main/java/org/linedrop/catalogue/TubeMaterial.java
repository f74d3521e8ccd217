package org.linedrop.catalogue;

import java.io.Serializable;

/**
 * A tube material that has a row.
 *
 * @param name        what the circuit file writes, for example {@code aluminium}
 * @param surface     wall surface, a row of the roughness table
 * @param description what it is
 */
record TubeMaterial(String name, String surface, String description) implements Serializable {}
