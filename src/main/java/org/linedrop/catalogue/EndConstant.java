package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * A figure that holds for all ends of a kind.
 *
 * @param name   {@code swept-bend-ratio}, {@code banjo-loss-coefficient} or {@code quick-connect-loss-coefficient}
 * @param figure pure number
 */
record EndConstant(String name, Figure figure) implements Serializable {}
