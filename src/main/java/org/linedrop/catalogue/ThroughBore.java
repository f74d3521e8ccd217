package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * The hole through one connection.
 *
 * @param seat  how it seals, in the words of {@link Seat#word()}, or {@code flanged elbow}
 * @param size  size as written
 * @param boreM its bore, m
 */
record ThroughBore(String seat, String size, Figure boreM) implements Serializable {}
