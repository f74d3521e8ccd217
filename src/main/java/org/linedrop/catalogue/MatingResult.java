package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Source;

/**
 * Whether two neighbours go together.
 *
 * @param kind              what was found
 * @param screwsOn          true when the two can be joined by hand, sealing or not
 * @param seals             true when the joint seals
 * @param message           what is wrong, in the words of the part list; empty when it seals or was not checked
 * @param useInstead        what to put between or to use instead; empty when it seals or was not checked
 * @param sealingFacesAdded faces that can leak which the remedy adds
 * @param source            who says so
 */
@Inner
public record MatingResult(
        Kind kind,
        boolean screwsOn,
        boolean seals,
        String message,
        String useInstead,
        int sealingFacesAdded,
        Source source)
        implements Serializable {

    /** What a pair of neighbours turned out to be. */
    public enum Kind {
        /** Mates and seals. */
        SEALS,
        /** One of the two is not stated. */
        NOT_CHECKED,
        /** Same seat, another size. */
        SIZE_DIFFERS,
        /** Two nuts that turn. */
        TWO_SWIVEL_NUTS,
        /** Two outside threads. */
        TWO_MALES,
        /** Two fixed inside threads. */
        TWO_FEMALES,
        /** O-ring boss on 37-degree flare of the same thread. */
        BOSS_ON_FLARE,
        /** 45-degree flare on 37-degree flare. */
        FLARE_45_ON_37,
        /** Taper thread on straight thread. */
        TAPER_ON_STRAIGHT,
        /** Seats that have nothing in common. */
        OTHER_SEAT
    }

    /**
     * Message and remedy in one line.
     *
     * @return empty when there is nothing to say
     */
    public String text() {
        if (message.isEmpty() || useInstead.isEmpty()) {
            return message;
        }
        return message + (kind == Kind.TWO_SWIVEL_NUTS ? "; " : ": ") + useInstead;
    }
}
