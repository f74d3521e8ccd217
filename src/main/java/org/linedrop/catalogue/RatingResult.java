package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A load compared with a rating. There is no word for "strong enough": that is the hose maker's to say.
 *
 * @param element  the hose
 * @param quantity working pressure, vacuum, highest temperature, lowest temperature, or pressure with temperature
 * @param verdict  the outcome
 * @param value    the load, SI (Pa gauge, Pa below outside, K)
 * @param rating   the figure it is compared with, null when none is known
 * @param text     the sentence to print
 */
public record RatingResult(
        String element,
        String quantity,
        Verdict verdict,
        double value,
        @Nullable Figure rating,
        String text) implements Serializable {

    /** Outcome of comparing a load with a rating. */
    public enum Verdict {
        /** The load is under the figure. */
        UNDER("under the figure"),
        /** The load is over the figure. */
        OVER("over the figure"),
        /** No figure, or one from memory, guessed or taken from another hose; or brake hose. */
        NOT_JUDGED("not judged");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        /**
         * The words to print.
         *
         * @return for example {@code not judged}
         */
        public String word() {
            return word;
        }
    }
}
