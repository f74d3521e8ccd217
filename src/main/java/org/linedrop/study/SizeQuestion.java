package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import org.linedrop.study.kit.OwnFigures;

/**
 * Which sizes to look for.
 *
 * @param by        what is to be least
 * @param runs      runs whose size may change, by name; empty for all that hold a hose or a tube
 * @param families  hose families to choose from; empty for the family each run has
 * @param dashes    dash sizes to choose from; empty for those from two sizes under to three over what a run has
 * @param own       what things cost, by the names of a kit, for {@link Objective#CHEAPEST} and to be shown otherwise; its
 *                  masses and cut-offs are not asked
 * @param most      how many sets are looked at in full before the answer is no longer the proven least, at least 1
 * @param runnersUp how many further sets are wanted
 */
public record SizeQuestion(
        Objective by,
        List<String> runs,
        List<String> families,
        List<Integer> dashes,
        OwnFigures own,
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
        return new SizeQuestion(by, List.of(), List.of(), List.of(), OwnFigures.NONE, USUAL_MOST, 2);
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
}
