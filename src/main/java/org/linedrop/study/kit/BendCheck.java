package org.linedrop.study.kit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * Whether a hose is bent tighter than it may be.
 *
 * @param verdict what is known
 * @param radiusM radius of its centre line: as the file gives it, or the largest for which its way-points leave room;
 *                NaN when neither is known
 * @param leastM  the least radius, or null when not known
 * @param ofRoute true when the radius is what the way-points leave room for
 */
public record BendCheck(
        Verdict verdict, double radiusM, @Nullable Figure leastM, boolean ofRoute) implements Serializable {

    /** What is known of a hose's bends. */
    public enum Verdict {
        /** Nobody said how it lies. */
        TAKEN_AS_STRAIGHT("taken as straight"),
        /** Its way-points have no corner. */
        STRAIGHT("straight by its way-points"),
        /** It has bends, but their radius is not given. */
        RADIUS_NOT_GIVEN("radius not given"),
        /** No least radius is known. */
        NO_LEAST("no minimum radius known"),
        /** Not under a least radius that somebody published or the user gave. */
        NOT_UNDER("not under the minimum"),
        /** Tighter than that. */
        TOO_TIGHT("TOO TIGHT"),
        /** The least radius is from memory; the bend is not under it. */
        NOT_JUDGED("not judged"),
        /** The least radius is from memory; the bend is under it. */
        NOT_JUDGED_UNDER("not judged, but UNDER it"),
        /** Quantities only. */
        NOT_ASKED("");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * The words printed.
         *
         * @return for example {@code TOO TIGHT}
         */
        public String word() {
            return word;
        }
    }

    static final BendCheck NOT_ASKED = new BendCheck(Verdict.NOT_ASKED, Double.NaN, null, false);

    /**
     * Judges a radius.
     *
     * @param givenM  the radius of the file; NaN when it has bends without one, null when it has none
     * @param roomM   the largest radius that the way-points leave room for; infinite without a corner, NaN without
     *                way-points
     * @param leastM  the least radius, or null
     */
    static BendCheck of(@Nullable Double givenM, double roomM, @Nullable Figure leastM) {
        double givenRadius = givenM == null || Double.isNaN(givenM) ? Double.POSITIVE_INFINITY : givenM;
        boolean ofRoute = roomM < givenRadius;
        double radius = ofRoute ? roomM : givenRadius;
        if (!Double.isFinite(radius)) {
            return new BendCheck(
                    givenM != null
                            ? Verdict.RADIUS_NOT_GIVEN
                            : Double.isNaN(roomM) ? Verdict.TAKEN_AS_STRAIGHT : Verdict.STRAIGHT,
                    Double.NaN,
                    leastM,
                    false);
        }
        if (leastM == null) {
            return new BendCheck(Verdict.NO_LEAST, radius, null, ofRoute);
        }
        boolean under = radius < leastM.value();
        Verdict verdict = leastM.status().doubtful()
                ? under ? Verdict.NOT_JUDGED_UNDER : Verdict.NOT_JUDGED
                : under ? Verdict.TOO_TIGHT : Verdict.NOT_UNDER;
        return new BendCheck(verdict, radius, leastM, ofRoute);
    }
}
