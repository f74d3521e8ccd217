package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Inner;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/**
 * A size with or without its family: {@code race PTFE -8}, {@code fuel hose 5/16 in}; {@code -6} of a bulkhead.
 *
 * @param family the family's short name as written, empty when only a size is said
 * @param size   the size in the spelling that is written: {@code -8}, {@code 5/16 in}, {@code 32 mm}
 */
@Inner
public record SizeChoice(String family, String size) implements Serializable {
    private static final Pattern BY_DASH =
            Pattern.compile("(?:(\\S.*?) +)?(" + Dash.PATTERN + ")", Pattern.CASE_INSENSITIVE);
    private static final Pattern BY_DIAMETER = Pattern.compile(
            "(?:(\\S.*?) +)?((?:\\d{1,2}[- ])?\\d{1,2}/\\d{1,2} ?(?:in|inch|\")|[\\d.]+ ?(?:mm|in|inch|\"))");
    private static final Pattern SIZE_FIRST = Pattern.compile("(-\\d{1,2})(?: ?AN)? +([A-Za-z].*)");
    private static final Pattern BARE_NUMBER = Pattern.compile("(?:(\\S.*?) +)?(\\d{1,2}|[\\d-]*\\d/\\d{1,2})");
    private static final String NOT_POSITIVE = ": the inside diameter must be above 0";

    /**
     * Reads a size; the family may be missing.
     *
     * @param text for example {@code race PTFE -8} or {@code -8AN}
     * @return the size
     * @throws UnitException when there is no size in it
     */
    public static SizeChoice read(String text) {
        String words = Wording.tidy(text);
        Matcher byDash = BY_DASH.matcher(words);
        if (byDash.matches()) {
            return new SizeChoice(family(byDash), Dash.write(Dash.number(text, byDash.group(2))));
        }
        Matcher byDiameter = BY_DIAMETER.matcher(words);
        if (byDiameter.matches()) {
            double inside = Units.read(byDiameter.group(2), Dimension.LENGTH).si();
            if (!(inside > 0)) {
                throw Wording.wrong(text, NOT_POSITIVE, "Write for example fuel hose 5/16 in");
            }
            return new SizeChoice(family(byDiameter), Wording.size(inside));
        }
        throw noSize(text, words);
    }

    private static String family(Matcher matcher) {
        return matcher.group(1) == null ? "" : matcher.group(1);
    }

    private static UnitException noSize(String text, String words) {
        if (words.endsWith("-") || words.matches(".*- \\d{1,2}")) {
            return Wording.wrong(text, " has no size", "Write -8 without a space");
        }
        Matcher bare = BARE_NUMBER.matcher(words);
        if (bare.matches()) {
            String family = bare.group(1) == null ? "" : bare.group(1) + " ";
            return bare.group(2).indexOf('/') < 0
                    ? Wording.wrong(
                            text, ": is " + bare.group(2) + " the dash size?", "Write " + family + "-" + bare.group(2))
                    : Wording.wrong(text, " has no unit", "Inches? Write " + family + bare.group(2) + " in");
        }
        if (words.isEmpty()) {
            return Wording.wrong(text, " is empty: a size is needed", "Write for example race PTFE -8");
        }
        Matcher sizeFirst = SIZE_FIRST.matcher(words);
        if (sizeFirst.matches()) {
            return Wording.wrong(
                    text,
                    ": the family stands first",
                    "Write for example race " + sizeFirst.group(2) + " " + sizeFirst.group(1)
                            + "; see: linedrop catalogue hoses");
        }
        return Wording.wrong(
                text,
                " has no size",
                "Write for example " + words + " -8. If you wrote #8: YAML drops everything after \" #\"");
    }

    /**
     * Reads a hose: the family may not be missing, for the dash does not fix the bore.
     *
     * @param text        for example {@code race PTFE -8}
     * @param boresOfDash the range of bores of a dash in words, for example {@code 9.9 to 12.7 mm}; empty when unknown
     * @return the hose
     * @throws UnitException when family or size is missing
     */
    static SizeChoice readHose(String text, IntFunction<String> boresOfDash) {
        SizeChoice choice = read(text);
        if (!choice.family.isEmpty()) {
            return choice;
        }
        if (choice.dash().isEmpty()) {
            throw Wording.wrong(text, ": which hose?", "Write for example fuel hose " + choice.size);
        }
        int dash = choice.dash().getAsInt();
        String bores = boresOfDash.apply(dash);
        throw Wording.wrong(
                text,
                ": which hose? The bore of " + choice.size
                        + (bores.isEmpty() ? " differs by family" : " is " + bores + " by family"),
                "For example race PTFE " + choice.size + "; see: linedrop catalogue hoses --dash " + dash);
    }

    /**
     * The dash number.
     *
     * @return for example 8; empty when the size is a diameter
     */
    public OptionalInt dash() {
        return size.startsWith("-") ? OptionalInt.of(Integer.parseInt(size.substring(1))) : OptionalInt.empty();
    }

    /**
     * The nominal inside diameter.
     *
     * @return m; empty when the size is a dash
     */
    OptionalDouble insideM() {
        return size.startsWith("-")
                ? OptionalDouble.empty()
                : OptionalDouble.of(Units.read(size, Dimension.LENGTH).si());
    }

    /**
     * Writes the size; a dash as {@code -8}, sizes of the trade in inches.
     *
     * @return text that reads back to an equal size
     */
    public String write() {
        return family.isEmpty() ? size : family + " " + size;
    }
}
