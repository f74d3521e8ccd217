package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Source;

/**
 * What a dash size is usually used for.
 *
 * @param dash   dash number, positive
 * @param use    uses in words
 * @param source who says so
 */
public record SizeUse(int dash, String use, Source source) implements Serializable {}
