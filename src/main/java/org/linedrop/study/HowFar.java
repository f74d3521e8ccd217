package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.units.Display;

/**
 * How far one key can be moved: the longest run, the highest power or temperature, the lowest volts, the least pump that
 * keep every limit; or the bore, the length, the pressure that reaches a wanted figure. The whole range that is worth
 * trying is looked through first, so that an answer that is not the only one is called so.
 *
 * @param question  what was asked
 * @param knob      the key with the value it has now
 * @param from      the lowest value tried, in SI
 * @param to        the highest value tried, in SI
 * @param holdsNow  whether everything asked for holds now; for a target, whether it is reached now
 * @param edges     where holding begins or ends, or the target is met, from low to high values
 * @param stretches where everything holds, from low to high values; empty for a target
 * @param best      the trial that comes nearest to holding; decides where nothing holds
 * @param notes     what a reader must know: cases that have a value of their own ...
 */
public record HowFar(
        Question question,
        Knob knob,
        double from,
        double to,
        boolean holdsNow,
        List<Edge> edges,
        List<Stretch> stretches,
        Trial best,
        List<String> notes) {

    /** Copies the lists. */
    public HowFar {
        edges = List.copyOf(edges);
        stretches = List.copyOf(stretches);
        notes = List.copyOf(notes);
    }

    /**
     * What is asked.
     *
     * @param path      path of the key, as {@link Knob#of} takes it
     * @param caseNames cases whose limits must hold; with one the key is moved in that case, with several in the file
     * @param target    what is to be reached instead of the limits, {@code rail pressure 375 kPa} or
     *                  {@code left leg flow equal to right leg flow}; empty for the limits
     */
    public record Question(String path, List<String> caseNames, String target) implements Serializable {
        /** Copies the names. */
        public Question {
            caseNames = List.copyOf(caseNames);
        }
    }

    /**
     * A value tried.
     *
     * @param si       the value
     * @param score    the least margin of all limits over their bounds, 0 or more where all hold; for a target how far
     *                 over it, over its size; NaN where it could not be said
     * @param caseName the case that decides
     * @param decides  the limit that decides, or the target
     * @param value    what the limit bounds, or the output of the target, in SI; NaN where it could not be said
     * @param trouble  why it could not be said, empty where it could
     */
    public record Trial(double si, double score, String caseName, String decides, double value, String trouble)
            implements Serializable {
        /**
         * Whether everything holds.
         *
         * @return false where it could not be said
         */
        public boolean holds() {
            return score >= 0;
        }
    }

    /**
     * Where holding ends or begins, or a target is met.
     *
     * @param inside      the last value that was solved and holds, in SI; for a target the root
     * @param outside     the first value beside it that was solved and does not hold, in SI
     * @param holdsBelow  whether it holds towards lower values
     * @param kind        how sharp it is
     * @param decides     the trial on the side that does not hold
     * @param atLeastSi   the same edge over all bores that are sold; NaN where nothing on this side holds at all of them,
     *                    and for a target
     */
    public record Edge(double inside, double outside, boolean holdsBelow, Kind kind, Trial decides, double atLeastSi)
            implements Serializable {}

    /** How an edge looks. */
    public enum Kind {
        /** The deciding figure passes its bound. */
        ROOT("root"),
        /** The deciding figure jumps over its bound. */
        JUMP("jump"),
        /** Beyond it nothing can be said: not solved, or refused. */
        REFUSED("refused");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * The word of reports.
         *
         * @return a lower-case word
         */
        public String word() {
            return word;
        }
    }

    /**
     * Values in which everything holds.
     *
     * @param low  edge at the lower end, null where the range tried ends first
     * @param high edge at the upper end, null likewise
     * @param from lowest value of it, in SI
     * @param to   highest value of it, in SI
     */
    public record Stretch(@Nullable Edge low, @Nullable Edge high, double from, double to) implements Serializable {}

    /**
     * Looks for it.
     *
     * @param circuit  the circuit
     * @param question what is asked
     * @return the answer
     * @throws ProblemsException when there is no such key, target or limit
     */
    public static HowFar of(Circuit circuit, Question question) {
        return new HowFarSearch(circuit, question).search();
    }

    /**
     * The stretch that counts: the one the present value lies in, else the nearest.
     *
     * @return empty where nothing holds
     */
    public Optional<Stretch> stretch() {
        Stretch nearest = null;
        for (Stretch each : stretches) {
            if (nearest == null || distance(each) < distance(nearest)) {
                nearest = each;
            }
        }
        return Optional.ofNullable(nearest);
    }

    private double distance(Stretch stretch) {
        double now = knob.si();
        return now < stretch.from() ? stretch.from() - now : now > stretch.to() ? now - stretch.to() : 0;
    }

    /**
     * The edge nearest to the present value: the answer to a target.
     *
     * @return empty where there is none
     */
    public Optional<Edge> nearest() {
        Edge nearest = null;
        for (Edge each : edges) {
            boolean nearer =
                    nearest == null || Math.abs(each.inside() - knob.si()) < Math.abs(nearest.inside() - knob.si());
            nearest = nearer ? each : nearest;
        }
        return Optional.ofNullable(nearest);
    }

    /**
     * The answer in words.
     *
     * @param display the units to write
     * @return one or more sentences
     */
    public String sentence(Display display) {
        return HowFarSentences.of(this, display);
    }
}
