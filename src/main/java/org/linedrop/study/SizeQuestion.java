package org.linedrop.study;

import java.io.Serializable;
import java.util.List;

/**
 * Which sizes to look for.
 *
 * @param by        what is to be least
 * @param runs      runs whose size may change, by name; empty for all that hold a hose or a tube
 * @param families  hose families to choose from; empty for the family each run has
 * @param dashes    dash sizes to choose from; empty for those from two sizes under to three over what a run has
 * @param prices    what things cost, for {@link Objective#CHEAPEST} and to be shown otherwise
 * @param most      how many sets are looked at in full before the answer is no longer the proven least, at least 1
 * @param runnersUp how many further sets are wanted
 */
public record SizeQuestion(
        Objective by,
        List<String> runs,
        List<String> families,
        List<Integer> dashes,
        List<Price> prices,
        int most,
        int runnersUp)
        implements Serializable {

    /** How many sets are looked at unless it is said otherwise. */
    public static final int USUAL_MOST = 5000;

    /** Copies the lists and checks the counts. */
    public SizeQuestion {
        runs = List.copyOf(runs);
        families = List.copyOf(families);
        dashes = List.copyOf(dashes);
        prices = List.copyOf(prices);
        if (!(most >= 1 && runnersUp >= 0)) {
            throw new IllegalArgumentException("sets to look at must be at least 1 and runners-up at least 0, but are "
                    + most + " and " + runnersUp);
        }
    }

    /**
     * The usual question: all runs, their own hose families, two runners-up.
     *
     * @param by what is to be least
     * @return the question
     */
    public static SizeQuestion of(Objective by) {
        return new SizeQuestion(by, List.of(), List.of(), List.of(), List.of(), USUAL_MOST, 2);
    }

    /** What is to be least. */
    public enum Objective {
        /** The fluid that the lines hold. */
        SMALLEST("smallest"),
        /** Hose, tube metal and the fluid in them. */
        LIGHTEST("lightest"),
        /** The prices given. */
        CHEAPEST("cheapest");

        private final String word;

        Objective(String word) {
            this.word = word;
        }

        /**
         * The word of the command.
         *
         * @return a lower-case word
         */
        public String word() {
            return word;
        }
    }

    /**
     * What a thing costs. Hose and tube go by the metre, ends and fittings by the piece.
     *
     * @param item   what it is, the more closely said wins: {@code race PTFE -8}, {@code hose -8}, {@code hose};
     *               {@code end -8}, {@code end}; {@code tube -6}, {@code tube}; {@code adapter -6 to -8}, {@code
     *               adapter}; {@code bulkhead}, {@code union}, {@code valve}
     * @param amount in a currency of the asker's, not negative
     */
    public record Price(String item, double amount) implements Serializable {
        /**
         * Checks the amount; NaN fails.
         *
         * @param item   what it is
         * @param amount in a currency of the asker's, not negative
         */
        public Price {
            if (!(amount >= 0) || Double.isInfinite(amount)) {
                throw new IllegalArgumentException("the price of " + item + " must be 0 or more, but is " + amount);
            }
        }
    }
}
