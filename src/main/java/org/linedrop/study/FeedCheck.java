package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Display;

/**
 * Is this feed undersized? Every case judged, the worst first in mind.
 *
 * @param cases the cases, the file as written first
 */
public record FeedCheck(List<CaseCheck> cases) implements Serializable {

    /** Copies the cases. */
    public FeedCheck {
        cases = List.copyOf(cases);
    }

    /**
     * Checks a circuit in all its cases.
     *
     * @param circuit the circuit
     * @return the answer
     */
    public static FeedCheck of(Circuit circuit) {
        return of(circuit, circuit.caseNames());
    }

    /**
     * Checks a circuit in some of its cases.
     *
     * @param circuit   the circuit
     * @param caseNames names of cases
     * @return the answer
     */
    public static FeedCheck of(Circuit circuit, List<String> caseNames) {
        return new FeedCheck(caseNames.stream()
                .map(name -> CaseJudge.check(circuit.in(name)).withDraws())
                .toList());
    }

    /**
     * Checks a circuit in some of its cases without looking for the largest draws, which takes most of the time.
     *
     * @param circuit   the circuit
     * @param caseNames names of cases
     * @return the answer, with no {@link CaseCheck#draw()} in it
     */
    public static FeedCheck withoutDraws(Circuit circuit, List<String> caseNames) {
        return new FeedCheck(caseNames.stream()
                .map(name -> CaseJudge.check(circuit.in(name)))
                .toList());
    }

    /**
     * The answer in words, each thing said once: the cases in which every limit holds share a sentence, and of those that
     * fall short in the same way the later ones say only what differs.
     *
     * @param display the units to write
     * @return what is said, cases that do not hold first, each in the order of this check
     */
    public List<Said> said(Display display) {
        return JointSentences.of(cases, display);
    }

    /**
     * A sentence with the cases it is of.
     *
     * @param sentence the words
     * @param cases    at least one
     */
    public record Said(String sentence, List<CaseCheck> cases) implements Serializable {
        /** Copies the cases. */
        public Said {
            cases = List.copyOf(cases);
        }
    }
}
