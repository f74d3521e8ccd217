package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * What a limit asks: {@code at least 375 kPa}, {@code at most 10 bar from sheet}, {@code between 80 and 110 C},
 * {@code at least 10 psi per 1000 rpm}, {@code in control}, {@code off because ...}.
 *
 * @param kind       which of these
 * @param low        least value in SI, minus infinity when there is none
 * @param high       most value in SI, infinity when there is none
 * @param dimension  what it bounds; a ratio for a state and for a limit taken off
 * @param perRevPerS the speed in rev/s that the bound is meant for, in proportion to which it rises; 0 when it does not
 * @param words      the state, or the reason for taking a limit off; empty otherwise
 * @param status     what was said about the bound
 */
public record LimitText(
        Kind kind, double low, double high, Dimension dimension, double perRevPerS, String words, Status status)
        implements Serializable {
    private static final Pattern SIDED = Pattern.compile("at (least|most) (.+?)(?: per (.+))?");
    private static final Pattern BETWEEN = Pattern.compile("between (.+?) and (.+)");
    private static final Pattern OFF = Pattern.compile("off(?: because (.+))?");
    private static final Pattern LEAST =
            Pattern.compile("(?:>=?|\u2265|min\\.?|minimum|over|above|not under) ?(\\S.*)");
    private static final Pattern MOST =
            Pattern.compile("(?:<=?|\u2264|max\\.?|maximum|under|below|up to|not over) ?(\\S.*)");

    /** What a limit can ask. */
    public enum Kind {
        /** Not under a value. */
        AT_LEAST,
        /** Not over a value. */
        AT_MOST,
        /** Not outside two values. */
        BETWEEN,
        /** A device in a state. */
        STATE,
        /** A usual limit is taken off, with a reason that is printed. */
        OFF
    }

    /**
     * Reads a limit on a quantity.
     *
     * @param text    for example {@code at least 375 kPa}
     * @param allowed the dimensions the quantity may have, the likeliest first
     * @return the limit
     * @throws UnitException when the text is anything else
     */
    public static LimitText read(String text, Dimension... allowed) {
        Matcher off = OFF.matcher(Wording.tidy(text));
        if (off.matches()) {
            return off(text, off.group(1));
        }
        Said said = Said.of(text);
        if (!said.spread().isEmpty()) {
            throw Wording.wrong(text, ": a limit has no spread", "Write between a and b, or one bound");
        }
        Matcher sided = SIDED.matcher(said.value());
        if (sided.matches()) {
            return sided(text, sided, said.status(), allowed);
        }
        Matcher between = BETWEEN.matcher(said.value());
        if (!between.matches()) {
            throw unclear(text, said.value(), allowed);
        }
        Quantity high = Units.read(between.group(2), allowed);
        Quantity low = Wording.first(between.group(1), high, allowed);
        if (low.dimension() != high.dimension() || !(low.si() < high.si())) {
            throw Wording.wrong(text, " does not rise", "Write the lower value first");
        }
        return new LimitText(Kind.BETWEEN, low.si(), high.si(), high.dimension(), 0, "", said.status());
    }

    private static LimitText sided(String text, Matcher sided, Status status, Dimension... allowed) {
        double per = 0;
        if (sided.group(3) != null) {
            per = Units.read(sided.group(3), Dimension.ROTATION).si();
            if (!(per > 0)) {
                throw Wording.wrong(
                        text, ": the speed must be above 0", "Write for example at least 10 psi per 1000 rpm");
            }
        }
        Quantity bound = Units.read(sided.group(2), allowed);
        return sided.group(1).equals("least")
                ? new LimitText(Kind.AT_LEAST, bound.si(), Double.POSITIVE_INFINITY, bound.dimension(), per, "", status)
                : new LimitText(Kind.AT_MOST, Double.NEGATIVE_INFINITY, bound.si(), bound.dimension(), per, "", status);
    }

    private static LimitText off(String text, @Nullable String reason) {
        if (reason == null) {
            throw Wording.wrong(text, ": why?", "Write off because, and the reason; it is printed");
        }
        return wordsOnly(Kind.OFF, reason);
    }

    private static LimitText wordsOnly(Kind kind, String words) {
        return new LimitText(
                kind, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Dimension.RATIO, 0, words, Status.GIVEN);
    }

    private static UnitException unclear(String text, String words, Dimension... allowed) {
        Matcher least = LEAST.matcher(words);
        if (least.matches()) {
            return Wording.wrong(text, " is not read as a limit", "Write \"at least " + least.group(1) + "\"");
        }
        Matcher most = MOST.matcher(words);
        if (most.matches()) {
            return Wording.wrong(text, " is not read as a limit", "Write \"at most " + most.group(1) + "\"");
        }
        try {
            Units.read(words, allowed);
        } catch (UnitException e) {
            return Wording.wrong(
                    text, " is no limit", "Write at least, at most, or between a and b, for example at least 375 kPa");
        }
        return Wording.wrong(text, ": at least or at most?", "Write at least " + words + " or at most " + words);
    }

    /**
     * Reads a limit on a device's state.
     *
     * @param text   for example {@code in control}
     * @param states the states the device can have
     * @return the limit
     * @throws UnitException when the device has no such state
     */
    public static LimitText readState(String text, Collection<String> states) {
        String words = Wording.tidy(text);
        Matcher off = OFF.matcher(words);
        if (off.matches()) {
            return off(text, off.group(1));
        }
        if (!states.contains(words)) {
            String near = Words.nearest(words, states)
                    .map(n -> "Did you mean " + n + "? ")
                    .orElse("");
            throw Wording.wrong(text, " is no state of it", near + "Write " + String.join(" or ", List.copyOf(states)));
        }
        return wordsOnly(Kind.STATE, words);
    }

    /**
     * The limit at a speed: a bound per rpm becomes a plain one.
     *
     * @param revPerS the engine's speed in rev/s, above 0
     * @return this limit when it does not depend on the speed
     */
    public LimitText atSpeed(double revPerS) {
        if (!(perRevPerS > 0)) {
            return this;
        }
        double share = revPerS / perRevPerS;
        return new LimitText(kind, low * share, high * share, dimension, 0, words, status);
    }

    /**
     * How far a value is inside.
     *
     * @param value in SI
     * @return the distance to the nearer bound, negative outside
     */
    public double margin(double value) {
        return Math.min(value - low, high - value);
    }

    /**
     * The bound that decides.
     *
     * @param value in SI
     * @return the nearer bound
     */
    public double nearest(double value) {
        return value - low <= high - value ? low : high;
    }

    /**
     * Writes the limit in metric units.
     *
     * @return text that reads back to an equal limit
     */
    public String write() {
        String per = perRevPerS > 0 ? " per " + Wording.metric(perRevPerS, Dimension.ROTATION) : "";
        return switch (kind) {
            case AT_LEAST -> "at least " + bound(low) + per + Said.suffix(status);
            case AT_MOST -> "at most " + bound(high) + per + Said.suffix(status);
            case BETWEEN -> "between " + bound(low) + " and " + bound(high) + Said.suffix(status);
            case STATE -> words;
            case OFF -> "off because " + words;
        };
    }

    /** Ratios are limited in per cent: spare flow of 15 %. */
    private String bound(double si) {
        return dimension == Dimension.RATIO ? Units.write(si, Units.unit("%")) : Wording.metric(si, dimension);
    }
}
