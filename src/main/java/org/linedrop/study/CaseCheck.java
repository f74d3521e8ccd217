package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Change;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

/**
 * One case of a feed, judged.
 *
 * @param result    the case solved at usual, smallest and largest bores
 * @param verdict   what is to be said of it; null when it was not solved or is not for us to judge
 * @param decisive  the limit that decides, null when there is none
 * @param culprit   the thing one would change where most of the loss sits, null when nothing is lost
 * @param lossless  the same case with lines that lose nothing, null when that was not solved
 * @param mend      the smallest change that was solved and holds, null when none was found or needed
 * @param measure   the figure whose measuring would decide an unsure case, null elsewhere
 * @param draw      the largest draw that holds as built, null where it was not looked for or there is none to say
 */
public record CaseCheck(
        CaseResult result,
        @Nullable CaseVerdict verdict,
        @Nullable LimitRow decisive,
        @Nullable Culprit culprit,
        @Nullable Result lossless,
        @Nullable Mend mend,
        Bottleneck.@Nullable Measure measure,
        @Nullable LargestDraw draw)
        implements Serializable {

    /**
     * What one would change, and what it loses.
     *
     * @param part       name of the part, as in the file
     * @param words      what it is, for a sentence
     * @param lossPa     friction and local losses of all its rows
     * @param allLossPa  those of all plumbing on the way from the pressure that is kept to the limit
     */
    public record Culprit(String part, String words, double lossPa, double allLossPa) implements Serializable {}

    /**
     * A change that was solved and holds.
     *
     * @param changes what is changed
     * @param words   the same for a sentence
     * @param result  the changed case, solved
     * @param limit   the deciding limit in it
     * @param draw    the largest draw that holds with it, null where it was not looked for or there is none to say
     */
    public record Mend(
            List<Change> changes,
            String words,
            CaseResult result,
            LimitRow limit,
            @Nullable LargestDraw draw) implements Serializable {
        /** Copies the changes. */
        public Mend {
            changes = List.copyOf(changes);
        }
    }

    /** The same with the largest draws looked for. */
    CaseCheck withDraws() {
        if (verdict == null) {
            return this;
        }
        Mend mended = mend == null
                ? null
                : new Mend(
                        mend.changes(),
                        mend.words(),
                        mend.result(),
                        mend.limit(),
                        LargestDraw.of(mend.result().circuit()).orElse(null));
        LargestDraw asBuilt = LargestDraw.of(result.circuit()).orElse(null);
        return new CaseCheck(result, verdict, decisive, culprit, lossless, mended, measure, asBuilt);
    }

    /**
     * Name of the case.
     *
     * @return as in the file
     */
    public String caseName() {
        return result.circuit().caseName();
    }

    /**
     * The answer in words: verdict, case, what the consumer gets, distance to the limit, the part that costs most, the
     * smallest change that was solved and holds, and whether pump or line is to blame.
     *
     * @param display the units to write
     * @return one or more sentences
     */
    public String sentence(Display display) {
        return Sentences.of(this, display);
    }
}
