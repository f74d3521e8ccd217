package org.linedrop.study;

import java.io.Serializable;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Change;
import org.linedrop.result.LimitRow;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/**
 * Sets of sizes that hold every limit in every case, the least first.
 *
 * @param question     what was asked
 * @param sets         the answer and its runners-up; empty when none was found
 * @param exact        whether the first is proven to be the least of all
 * @param leastPossible nothing under this holds: m3, kg or money, as asked; the answer's own where it is exact
 * @param combinations how many sets there are
 * @param lookedAt     how many of them were looked at, from the least upwards
 * @param solved       how many of them were solved in full; the others were ruled out by pressures of single changes
 * @param smaller      what one size less of each run of the first set breaks
 * @param nearest      when nothing holds: the limit that stops the set of the largest sizes; null otherwise
 * @param leftOut      choices that were not made, and why
 * @param notes        what was assumed
 */
public record SizeAnswer(
        SizeQuestion question,
        List<SizeSet> sets,
        boolean exact,
        double leastPossible,
        double combinations,
        int lookedAt,
        int solved,
        List<Smaller> smaller,
        @Nullable Decisive nearest,
        List<String> leftOut,
        List<String> notes)
        implements Serializable {

    /** Copies the lists. */
    public SizeAnswer {
        sets = List.copyOf(sets);
        smaller = List.copyOf(smaller);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
    }

    /**
     * One set of sizes.
     *
     * @param runs     what each run becomes
     * @param amount   what is to be least: m3, kg or money
     * @param volumeM3 fluid in the runs that may change
     * @param massKg   their hose, tube and fluid; NaN when a mass is not known
     * @param price    of their parts; NaN when a price is not given
     * @param decisive the limit with the least margin over its bound, and its case; null without limits
     * @param changes  what makes the circuit so, in the case as written
     */
    public record SizeSet(
            List<RunSize> runs,
            double amount,
            double volumeM3,
            double massKg,
            double price,
            @Nullable Decisive decisive,
            List<Change> changes)
            implements Serializable {

        /** Copies the lists. */
        public SizeSet {
            runs = List.copyOf(runs);
            changes = List.copyOf(changes);
        }

        /**
         * Adapters that the change of size adds, over all runs.
         *
         * @return a count
         */
        public int adaptersAdded() {
            return runs.stream().mapToInt(run -> run.added().size()).sum();
        }

        /**
         * Adapters and fittings that fall away, over all runs.
         *
         * @return a count
         */
        public int adaptersDropped() {
            return runs.stream().mapToInt(run -> run.dropped().size()).sum();
        }

        /**
         * How many faces more than as written can leak.
         *
         * @return a difference, negative when there are fewer
         */
        public int sealingFacesMore() {
            int more = 0;
            for (RunSize run : runs) {
                more += run.added().stream().mapToInt(Fitting::sealingFaces).sum();
                more -= run.dropped().stream().mapToInt(Fitting::sealingFaces).sum();
            }
            return more;
        }

        /**
         * The sizes in one line.
         *
         * @return for example {@code feed -8, left leg as written}
         */
        public String words() {
            return String.join(
                    ", ",
                    runs.stream().map(run -> run.run() + " " + run.words()).toList());
        }
    }

    /**
     * One run in one size.
     *
     * @param run     its name
     * @param words   {@code -8}, {@code race PTFE -8} where families are chosen from, or {@code as written}
     * @param added   adapters that the file as written has not
     * @param dropped adapters of the file as written that it has not
     */
    public record RunSize(String run, String words, List<Fitting> added, List<Fitting> dropped)
            implements Serializable {
        /** Copies the lists. */
        public RunSize {
            added = List.copyOf(added);
            dropped = List.copyOf(dropped);
        }
    }

    /**
     * An adapter, union or bulkhead.
     *
     * @param words        for example {@code reducer -6 to -8}
     * @param fromBoreM    bore at its first connection, m
     * @param toBoreM      bore at its second connection, m
     * @param sealingFaces faces of it that can leak
     */
    public record Fitting(String words, double fromBoreM, double toBoreM, int sealingFaces) implements Serializable {}

    /**
     * A limit that decides.
     *
     * @param caseName the case in which it comes nearest
     * @param limit    the limit, judged there
     */
    public record Decisive(String caseName, LimitRow limit) implements Serializable {}

    /**
     * What one size less of a run breaks.
     *
     * @param run      the run
     * @param words    the lesser size
     * @param decisive the limit that breaks; null when something else does
     * @param why      the reason in words where it is no limit
     */
    public record Smaller(
            String run, String words, @Nullable Decisive decisive, String why) implements Serializable {}

    /**
     * The answer in words.
     *
     * @param display the units to write
     * @return some sentences
     */
    public String sentence(Display display) {
        if (sets.isEmpty()) {
            return none(display);
        }
        SizeSet best = sets.get(0);
        StringBuilder text = new StringBuilder();
        text.append(capital(question.by().word())).append(" set that holds every limit in every case: ");
        text.append(best.words())
                .append(" (")
                .append(amount(best.amount(), display))
                .append(").");
        if (best.decisive() != null) {
            text.append(" The limit that decides is ")
                    .append(limit(best.decisive(), display))
                    .append('.');
        }
        int added = best.adaptersAdded();
        if (added + best.adaptersDropped() > 0) {
            text.append(String.format(
                    Locale.ROOT,
                    " It takes %d adapter%s more and %d less than as written, %+d sealing faces.",
                    added,
                    added == 1 ? "" : "s",
                    best.adaptersDropped(),
                    best.sealingFacesMore()));
        }
        for (Smaller each : smaller) {
            text.append(' ').append(each.run());
            text.append(each.words().startsWith("-") ? " in " : " ").append(each.words());
            text.append(
                    each.decisive() == null
                            ? ": " + each.why() + "."
                            : " breaks " + limit(each.decisive(), display) + ".");
        }
        text.append(
                exact
                        ? ""
                        : " This set was found by stepping down from the largest; after " + lookedAt + " of "
                                + String.format(Locale.ROOT, "%.0f", combinations)
                                + " sets it is known only that nothing under " + amount(leastPossible, display)
                                + " holds.");
        return text.toString();
    }

    private String none(Display display) {
        String looked = exact
                ? "None of the " + String.format(Locale.ROOT, "%.0f", combinations)
                        + " sets of sizes holds every limit in every case."
                : "No set of sizes was found that holds every limit in every case, after " + lookedAt + " of "
                        + String.format(Locale.ROOT, "%.0f", combinations) + ".";
        return nearest == null
                ? looked
                : looked + " With the largest sizes it is stopped by " + limit(nearest, display) + ".";
    }

    private static String limit(Decisive decisive, Display display) {
        LimitRow row = decisive.limit();
        Dimension dimension = row.limit().bound().dimension();
        boolean worst = row.margin() >= 0 && row.marginLow() < 0; // holds as usual and not with all that is sold
        double margin = worst ? row.marginLow() : row.margin();
        String amount = display.text(Math.abs(margin), dimension.ofDifference());
        String how = worst ? " short with the worst of what is sold" : margin < 0 ? " short" : " to spare";
        return row.limit().subject() + " " + row.limit().quantity() + " in case " + decisive.caseName() + ", "
                + (Double.isNaN(margin) ? "not judged" : amount + how);
    }

    /** What is to be least, with its unit. */
    private String amount(double amount, Display display) {
        return switch (question.by()) {
            case SMALLEST ->
                display.us()
                        ? fixed(amount, "US gal", Dimension.VOLUME) + " of fluid"
                        : fixed(amount, "L", Dimension.VOLUME) + " of fluid";
            case LIGHTEST -> fixed(amount, display.us() ? "lb" : "kg", Dimension.MASS);
            case CHEAPEST ->
                String.format(
                        Locale.ROOT,
                        "%.2f %s",
                        amount,
                        question.own().currency().isEmpty()
                                ? "by your prices"
                                : question.own().currency());
        };
    }

    private static String fixed(double si, String unit, Dimension dimension) {
        return Units.fixed(si, Units.unit(unit, dimension), 3) + " " + unit;
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
