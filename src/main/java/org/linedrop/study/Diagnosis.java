package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Display;

/**
 * What measured pressures and flows say of a circuit.
 *
 * @param caseName the case that was measured
 * @param finding  what can be said
 * @param readings what was measured, what the file as written gives, and what the best suspect gives
 * @param misfit   of the file as written: the sum of the squares of deviation over standard deviation
 * @param suspects single causes, the best first
 * @param fitted   what was fitted together, where the asker named keys; empty otherwise
 * @param rivals   how many of the first suspects the readings cannot tell apart
 * @param gauges   which gauges would tell, the best first
 */
public record Diagnosis(
        String caseName,
        Finding finding,
        List<Compared> readings,
        double misfit,
        List<Accused> suspects,
        List<Fitted> fitted,
        int rivals,
        List<Hint> gauges)
        implements Serializable {

    /** Copies the lists. */
    public Diagnosis {
        readings = List.copyOf(readings);
        suspects = List.copyOf(suspects);
        fitted = List.copyOf(fitted);
        gauges = List.copyOf(gauges);
    }

    /** What can be said. */
    public enum Finding {
        /** The file as written explains the readings. */
        NOTHING_WRONG("nothing wrong"),
        /** One suspect explains them, and no other does. */
        FOUND("found"),
        /** More than one suspect explains them. */
        CANNOT_TELL("cannot tell"),
        /** No single suspect explains them. */
        NO_SINGLE_CAUSE("no single cause"),
        /** The asker named what to fit. */
        FITTED("fitted");

        private final String word;

        Finding(String word) {
            this.word = word;
        }

        /**
         * The words of JSON.
         *
         * @return lower-case words
         */
        public String word() {
            return word;
        }
    }

    /**
     * A reading beside what is computed.
     *
     * @param reading   what was measured
     * @param asWritten what the file as written gives there, SI; NaN when not solved
     * @param best      what the best suspect, or the fit, gives there, SI; NaN when there is none
     */
    public record Compared(Reading reading, double asWritten, double best) implements Serializable {}

    /**
     * A suspect with how well it explains the readings.
     *
     * @param suspect what
     * @param words   it in words
     * @param value   how much, SI
     * @param low     lower end, two standard deviations
     * @param high    upper end
     * @param misfit  sum of the squares of deviation over standard deviation
     * @param share   its likelihood over that of all suspects together, 0 to 1
     */
    public record Accused(
            Suspect suspect, String words, double value, double low, double high, double misfit, double share)
            implements Serializable {}

    /**
     * One of the keys fitted together.
     *
     * @param suspect what
     * @param words   it in words
     * @param value   the value, SI
     * @param low     lower end, two standard deviations; NaN when the readings say nothing of it
     * @param high    upper end
     */
    public record Fitted(Suspect suspect, String words, double value, double low, double high)
            implements Serializable {}

    /**
     * A gauge that would tell rivals apart.
     *
     * @param gauge  where
     * @param spread how far apart the rivals are there, over two standard deviations of a usual gauge
     * @param values what each rival gives there, SI, in their order
     */
    public record Hint(Gauge gauge, double spread, List<Double> values) implements Serializable {
        /** Copies the values. */
        public Hint {
            values = List.copyOf(values);
        }
    }

    /**
     * Looks for a single cause among the usual suspects.
     *
     * @param circuit  the circuit in the case that was measured
     * @param readings at least one
     * @return the answer
     * @throws IllegalStateException when the file as written cannot be solved
     */
    public static Diagnosis of(Circuit circuit, List<Reading> readings) {
        return Diagnoser.of(circuit, readings.stream().map(Reading::gauge).toList(), Suspect.usual(circuit))
                .diagnose(readings);
    }

    /**
     * Fits one to three unknowns together.
     *
     * @param circuit  the circuit in the case that was measured
     * @param readings at least as many as unknowns
     * @param unknowns what to fit
     * @return the answer
     */
    public static Diagnosis fit(Circuit circuit, List<Reading> readings, List<Suspect> unknowns) {
        return Diagnoser.of(circuit, readings.stream().map(Reading::gauge).toList(), unknowns)
                .fitTogether(readings);
    }

    /**
     * The answer in words.
     *
     * @param display the units to write
     * @return some sentences
     */
    public String sentence(Display display) {
        return switch (finding) {
            case NOTHING_WRONG ->
                "The file as written explains the readings within their errors; nothing points at a fault.";
            case FITTED ->
                "Fitted together: "
                        + String.join("; ", fitted.stream().map(Fitted::words).toList()) + "."
                        + (fitted.stream().anyMatch(each -> Double.isNaN(each.low()))
                                ? " The readings cannot tell these apart: measure at another place, or fit fewer."
                                : "");
            case FOUND ->
                "The readings point at one cause: " + suspects.get(0).words() + ". The next, "
                        + (suspects.size() > 1 ? suspects.get(1).words() + ", explains them worse." : "none, is left.");
            case NO_SINGLE_CAUSE ->
                "No single cause explains the readings; the best, "
                        + suspects.get(0).words()
                        + String.format(
                                Locale.ROOT,
                                ", still leaves a misfit of %.0f over %d readings. Look for two faults, for a wrong"
                                        + " figure in the file, or for a gauge that is off.",
                                suspects.get(0).misfit(),
                                readings.size());
            case CANNOT_TELL -> cannotTell(display);
        };
    }

    private String cannotTell(Display display) {
        List<String> words =
                suspects.subList(0, rivals).stream().map(Accused::words).toList();
        StringBuilder text = new StringBuilder("These readings cannot tell. Each of these would explain them: ");
        text.append(String.join("; ", words)).append('.');
        if (gauges.isEmpty()) {
            return text.append(" No gauge at a place of this file would tell them apart: part the runs between them"
                            + " with joints, or look.")
                    .toString();
        }
        Hint best = gauges.get(0);
        List<String> values = new ArrayList<>();
        for (double value : best.values()) {
            values.add(display.text(value, best.gauge().dimension()));
        }
        return text.append(" A gauge at ")
                .append(best.gauge().words())
                .append(" would: it would read ")
                .append(String.join(", ", values))
                .append(" in this order.")
                .toString();
    }
}
