package org.linedrop.study;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.NumberKey;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Surroundings;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/**
 * One number of a circuit that a study moves: a key of an element, with the value that holds now. A bore that the
 * catalogue gives counts as a key of its hose; a default counts as the value of a key that is left out.
 */
public final class Knob implements Serializable {
    private static final long serialVersionUID = 1;

    private static final int SHOWN_DIGITS = 4;
    private static final Source DEFAULT = Source.of("default", Status.GIVEN);

    /** The key. */
    private final NumberKey numberKey;

    /** The value that holds now. */
    private final Figure figure;

    /** The lowest value allowed. */
    private final double least;

    /** The highest value allowed. */
    private final double most;

    private Knob(NumberKey numberKey, Figure figure, double least, double most) {
        this.numberKey = numberKey;
        this.figure = figure;
        this.least = least;
        this.most = most;
    }

    /**
     * Finds a key by its path.
     *
     * @param circuit the circuit, in the case that is meant
     * @param path    element and key with a full stop between, {@code feed 1.length}, {@code pump.runs at},
     *                {@code engine.power}; a key of the file itself alone, {@code temperature}. A part goes by its name
     *                or by run and number.
     * @return the knob
     * @throws ProblemsException when there is no such element or key, or the key holds no single number, with the
     *                           nearest name that there is
     */
    public static Knob of(Circuit circuit, String path) {
        int dot = path.indexOf('.');
        String subject = dot < 0 ? "" : path.substring(0, dot).strip();
        String key = path.substring(dot + 1).strip();
        List<String> subjects = NumberKey.subjects(circuit);
        if (!subjects.contains(subject)) {
            throw problem(
                    circuit,
                    path,
                    "no element \"" + subject + "\"",
                    "Elements: ",
                    subject,
                    subjects.subList(1, subjects.size()));
        }
        if (dot < 0 && subjects.contains(key)) {
            throw problem(
                    circuit,
                    path,
                    "\"" + key + "\" is an element, and it is not said which key of it",
                    "Write " + key + ". and one of: ",
                    "",
                    keys(circuit, key));
        }
        for (NumberKey each : NumberKey.of(circuit)) {
            if (each.isOf(subject) && each.key().equals(key)) {
                return knob(circuit, each)
                        .orElseThrow(() -> problem(
                                circuit,
                                path,
                                "the circuit gives no " + key + named(subject),
                                "Give it a value in the file first. Keys that have one: ",
                                "",
                                keys(circuit, subject)));
            }
        }
        boolean known = NumberKey.keyNames(circuit, subject).contains(key);
        throw problem(
                circuit,
                path,
                known ? key + named(subject) + " holds no single number" : "no key \"" + key + "\"" + named(subject),
                "Keys with one number: ",
                known ? "" : key,
                keys(circuit, subject));
    }

    /**
     * Every key of a circuit that holds one number now.
     *
     * @param circuit the circuit, in the case that is meant
     * @return knobs in the order of the file; never two of one path
     */
    public static List<Knob> all(Circuit circuit) {
        List<Knob> all = new ArrayList<>();
        for (NumberKey each : NumberKey.of(circuit)) {
            knob(circuit, each).ifPresent(all::add);
        }
        return all;
    }

    private static List<String> keys(Circuit circuit, String subject) {
        return NumberKey.of(circuit).stream()
                .filter(each -> each.isOf(subject) && knob(circuit, each).isPresent())
                .map(NumberKey::key)
                .toList();
    }

    private static String named(String subject) {
        return subject.isEmpty() ? " of the file itself" : " of " + subject;
    }

    private static ProblemsException problem(
            Circuit circuit, String path, String message, String list, String word, List<String> known) {
        String hint = Words.nearest(word, known)
                .map(near -> "Did you mean " + near + "?")
                .orElse(known.isEmpty() ? "" : list + String.join(", ", known));
        return new ProblemsException(
                List.of(new Problem(new Place(circuit.words().file(), 0, 0, ""), path, "", message, hint)));
    }

    private static Optional<Knob> knob(Circuit circuit, NumberKey key) {
        Figure now = key.figure().orElseGet(() -> unsaid(circuit, key));
        if (now == null) {
            return Optional.empty();
        }
        Device device = circuit.device(key.subject()).orElse(null);
        if (device instanceof Pump pump && key.key().equals("runs at") && key.dimension() == Dimension.VOLTAGE) {
            // between tables by volts nothing is known beyond them
            double lowest = pump.curves().get(0).at();
            double highest = pump.curves().get(pump.curves().size() - 1).at();
            return Optional.of(new Knob(key, now, lowest, highest));
        }
        return Optional.of(new Knob(key, now, key.least(), key.most()));
    }

    /** What holds where the circuit leaves a key out; null where nothing does. */
    private static @Nullable Figure unsaid(Circuit circuit, NumberKey key) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose && key.isOf(hose.id())) {
                    return switch (key.key()) {
                        case "bore" -> hose.size().boreM();
                        case "end bore" -> endBore(hose);
                        default -> null;
                    };
                }
            }
        }
        return switch (key.key()) {
            case "altitude", "depth", "cap", "bleed cold", "bleed hot" -> Figure.exact(0, DEFAULT);
            case "gravity" -> Figure.exact(Surroundings.STANDARD_GRAVITY_M_PER_S2, DEFAULT);
            case "clog" -> Figure.exact(1, DEFAULT);
            case "exponent" ->
                circuit.device(key.subject()).orElse(null) instanceof Resistance one && one.second() == null
                        ? one.exponent()
                        : null;
            default -> null;
        };
    }

    /** The bore of the ends: both have the same key, so two that differ have no one number. */
    private static @Nullable Figure endBore(Hose hose) {
        Figure bore = null;
        for (EndSize end : new EndSize[] {hose.fromEnd(), hose.toEnd()}) {
            if (end != null && bore != null && end.nippleBoreM().value() != bore.value()) {
                return null;
            }
            bore = end == null ? bore : end.nippleBoreM();
        }
        return bore;
    }

    /**
     * Its name.
     *
     * @return for example {@code feed 1.length}, or {@code temperature}
     */
    public String path() {
        return numberKey.path();
    }

    /**
     * The element it belongs to.
     *
     * @return name of a point, device or part, {@code engine}, or empty for the file itself
     */
    public String subject() {
        return numberKey.subject();
    }

    /**
     * Name of its key.
     *
     * @return as in a file
     */
    public String key() {
        return numberKey.key();
    }

    /**
     * The value that holds now, with band and source.
     *
     * @return in SI
     */
    public Figure figure() {
        return figure;
    }

    /**
     * The value that holds now.
     *
     * @return in SI
     */
    public double si() {
        return figure.value();
    }

    /**
     * Whether the circuit says the value; otherwise the catalogue or a default does.
     *
     * @return true when the file gives the key
     */
    public boolean said() {
        return numberKey.figure().isPresent();
    }

    /**
     * What it measures.
     *
     * @return its dimension
     */
    public Dimension dimension() {
        return numberKey.dimension();
    }

    /**
     * The lowest value that the key takes.
     *
     * @return in SI; may be minus infinity
     */
    public double least() {
        return least;
    }

    /**
     * The highest value that the key takes.
     *
     * @return in SI; may be infinity
     */
    public double most() {
        return most;
    }

    /**
     * A value as the file would write it.
     *
     * @param si a value in SI, finite
     * @return number and metric unit; reads back to the same bits
     */
    public String text(double si) {
        return Units.write(si, Units.metric(si, dimension()));
    }

    /**
     * A value for a reader: to four digits, in the units of a report.
     *
     * @param si      a value in SI
     * @param display the units
     * @return for example {@code 4.65 m}, {@code 387.8 kW (520 hp)}; a dash when it is not finite
     */
    public String shown(double si, Display display) {
        return shown(si, display, SHOWN_DIGITS);
    }

    /**
     * A value for a reader, in the units of a report.
     *
     * @param si      a value in SI
     * @param display the units
     * @param digits  how many digits, at least 1
     * @return for example {@code 4.6503 m}; a dash when it is not finite
     */
    public String shown(double si, Display display, int digits) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        boolean us = display.us();
        String symbol = switch (dimension()) {
            case LENGTH -> us ? Math.abs(si) < 0.1 ? "in" : "ft" : Math.abs(si) < 0.1 && si != 0 ? "mm" : "m";
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> us ? "psi" : "kPa";
            case VOLUME_FLOW -> display.unit(Dimension.VOLUME_FLOW).symbol();
            case MASS_FLOW -> us ? "lb/h" : "kg/h";
            case TEMPERATURE -> us ? "F" : "C";
            case POWER -> us ? "hp" : "kW";
            case RATIO -> key().equals("takes") || key().equals("grade") || key().startsWith("bleed") ? "%" : "x";
            default -> Units.metric(si, dimension()).symbol();
        };
        String text = digits(si, Units.unit(symbol, dimension()), digits) + " " + symbol;
        boolean both = dimension() == Dimension.POWER && !us;
        return both ? text + " (" + digits(si, Units.unit("hp"), digits) + " hp)" : text;
    }

    private static String digits(double si, Unit unit, int digits) {
        BigDecimal exact = new BigDecimal(Units.number(si, unit));
        BigDecimal rounded = exact.round(new MathContext(digits, RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * The change that turns the knob; what else the value says, its band and its status stay.
     *
     * @param si the new value in SI, within {@link #least()} and {@link #most()}
     * @return a change that reads back to the value, bit for bit
     * @throws IllegalArgumentException when the value is outside the range
     */
    public Change to(double si) {
        if (!(si >= least && si <= most) || Double.isInfinite(si)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s must be %s to %s, but is %s", path(), bound(least), bound(most), si));
        }
        return numberKey.with(figure, si);
    }

    private String bound(double si) {
        return Double.isInfinite(si) ? (si < 0 ? "anything" : "anything above") : text(si);
    }

    /**
     * The circuit with the knob turned.
     *
     * @param circuit the circuit it was made from, or one changed elsewhere only
     * @param si      the new value in SI, within {@link #least()} and {@link #most()}
     * @return a new circuit
     * @throws ProblemsException when the changed circuit has problems, for example a fluid outside its range
     */
    public Circuit in(Circuit circuit, double si) {
        return circuit.with(List.of(to(si)));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Knob that && path().equals(that.path()) && figure.equals(that.figure);
    }

    @Override
    public int hashCode() {
        return Objects.hash(path(), figure);
    }

    @Override
    public String toString() {
        return path() + " " + text(si());
    }
}
