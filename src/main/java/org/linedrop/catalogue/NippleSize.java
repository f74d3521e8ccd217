package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * The part of a hose end that stands inside the hose.
 *
 * @param family  hose family
 * @param build   two-piece, three-piece, crimped, push-on or barb
 * @param size    size as written
 * @param boreM   bore, m
 * @param lengthM length of that bore, m
 */
public record NippleSize(String family, String build, String size, Figure boreM, Figure lengthM)
        implements Serializable {}
