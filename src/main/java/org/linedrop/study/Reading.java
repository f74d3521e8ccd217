package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * What somebody measured.
 *
 * @param gauge where
 * @param value the reading, SI
 * @param error two standard deviations of it, SI, above zero
 */
public record Reading(Gauge gauge, double value, double error) implements Serializable {
    private static final String EXAMPLE = "Write for example \"rail 310 kPa\", \"pump outlet 420 kPa +- 5 kPa\","
            + " \"feed 216 L/h\", \"behind feed 4 350 kPa\"";

    /** Checks the figures; NaN fails. */
    public Reading {
        if (!(error > 0) || Double.isInfinite(error) || Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a reading needs a value and an error above zero, but " + gauge.words()
                    + " has " + value + " and " + error);
        }
    }

    /**
     * Reads one reading.
     *
     * @param circuit the circuit whose places it may name
     * @param text    place, value with unit, and if it is not a usual gauge its error (two standard deviations): {@code
     *                rail 310 kPa}, {@code pump outlet 420 kPa +- 5 kPa}, {@code feed 216 L/h}
     * @return the reading
     * @throws ProblemsException when place or value cannot be read
     */
    public static Reading read(Circuit circuit, String text) {
        String[] sides = text.strip().split("\\s*(?:±|\\+-|\\+/-)\\s*", 2);
        String said = sides[0].strip().replaceAll("\\s+", " ");
        for (Gauge gauge : Gauge.named(circuit)) {
            String name = gauge.words();
            for (String prefix : names(gauge)) {
                if (said.toLowerCase(Locale.ROOT).startsWith(prefix.toLowerCase(Locale.ROOT) + " ")) {
                    String value = said.substring(prefix.length() + 1);
                    if (value.matches("[-+.0-9].*") && fits(gauge, value)) {
                        return reading(gauge, value, sides.length > 1 ? sides[1] : "", text);
                    }
                    if (value.matches("[-+.0-9].*") && name.equals(prefix)) {
                        value(gauge, value, text); // says what is wrong
                    }
                }
            }
        }
        List<String> places = new ArrayList<>();
        Gauge.named(circuit).forEach(gauge -> places.add(gauge.words()));
        String word = said.replaceAll("\\s[-+.0-9].*$", "");
        throw problem(
                text,
                "no place \"" + word + "\" with such a value",
                Words.nearest(word, places)
                        .map(near -> "Did you mean " + near + "?")
                        .orElse(EXAMPLE));
    }

    /** What a place may be called: a flow needs no word, its unit says it. */
    private static List<String> names(Gauge gauge) {
        return gauge.quantity().equals(Gauge.FLOW) || gauge.quantity().equals(Gauge.PRESSURE)
                ? List.of(gauge.subject() + " " + gauge.quantity(), gauge.subject())
                : List.of(gauge.words());
    }

    private static boolean fits(Gauge gauge, String value) {
        try {
            Units.read(value, allowed(gauge));
            return true;
        } catch (UnitException other) {
            return false;
        }
    }

    private static Dimension[] allowed(Gauge gauge) {
        return gauge.dimension() == Dimension.VOLUME_FLOW
                ? new Dimension[] {Dimension.VOLUME_FLOW}
                : new Dimension[] {gauge.dimension()};
    }

    private static double value(Gauge gauge, String value, String text) {
        try {
            Quantity read = Units.read(value, allowed(gauge));
            return read.si();
        } catch (UnitException wrong) {
            throw problem(text, wrong.message(), wrong.hint());
        }
    }

    private static Reading reading(Gauge gauge, String value, String error, String text) {
        double si = value(gauge, value, text);
        if (error.isEmpty()) {
            return new Reading(gauge, si, gauge.usualError(si));
        }
        double width;
        try {
            width = error.strip().endsWith("%")
                    ? Units.read(error, Dimension.RATIO).si() * Math.abs(si)
                    : Units.read(
                                    error,
                                    gauge.dimension() == Dimension.VOLUME_FLOW
                                            ? Dimension.VOLUME_FLOW
                                            : Dimension.PRESSURE_DIFFERENCE)
                            .si();
        } catch (UnitException wrong) {
            throw problem(text, "its error: " + wrong.message(), wrong.hint());
        }
        if (!(width > 0)) {
            throw problem(text, "the error of a reading is above zero", "Leave it out for a usual gauge");
        }
        return new Reading(gauge, si, width);
    }

    private static ProblemsException problem(String text, String message, String hint) {
        return new ProblemsException(
                List.of(new Problem(Place.code(""), "", text, "reading \"" + text + "\": " + message, hint)));
    }
}
