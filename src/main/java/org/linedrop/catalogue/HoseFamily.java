package org.linedrop.catalogue;

import java.io.Serializable;
import java.util.List;
import org.linedrop.fact.Source;

/**
 * A name of the trade that stands for one product's sizes.
 *
 * @param name        what the circuit file writes before the size, for example {@code race PTFE}
 * @param liner       lining in words, for example {@code NBR or FKM}
 * @param liners      the linings it may have, as the compatibility table names them
 * @param sizedByDash true when sizes are dash numbers, false when they are nominal inches
 * @param sizing      how the bore follows from the size, in words
 * @param convoluted  true when the bore is wound or convoluted
 * @param surface     wall surface, a row of the roughness table
 * @param endBuild    how its usual hose ends are made: two-piece, three-piece, push-on, barb or crimped
 * @param description what it is
 * @param like        the family it was made from by a user; empty for catalogue families
 * @param source      who says that the name means this
 */
public record HoseFamily(
        String name,
        String liner,
        List<String> liners,
        boolean sizedByDash,
        String sizing,
        boolean convoluted,
        String surface,
        String endBuild,
        String description,
        String like,
        Source source)
        implements Serializable {

    /** Copies the list. */
    public HoseFamily {
        liners = List.copyOf(liners);
    }

    /**
     * Whether the bore is meant to stay below dash/16 inch.
     *
     * @return true for families sized by the tube they go with, or between that and true size
     */
    boolean boreBelowDash() {
        return sizedByDash && !sizing.startsWith("true size");
    }
}
