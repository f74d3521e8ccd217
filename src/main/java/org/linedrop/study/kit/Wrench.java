package org.linedrop.study.kit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A spanner for the 37-degree nuts of a size.
 *
 * @param size   dash size as written
 * @param nutHex across the flats, m, or null where nobody published it
 */
public record Wrench(String size, @Nullable Figure nutHex) implements Serializable {}
