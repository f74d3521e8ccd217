package org.linedrop.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text with a unit to SI and back.
 *
 * <p>Reading is strict, takes no locale and rounds once: 3/8 in, 9.525 mm and 0.009525 m are the same double. Writing
 * gives the shortest decimal text that reads back to the same double, bit for bit (a minus zero is written as 0).
 */
public final class Units {
    /** No value of a circuit file is longer. */
    private static final int LONGEST = 4000;

    /** More numbers in one list are no pump table. */
    private static final int MOST_NUMBERS = 1000;

    /** A double has 17 digits; one next to absolute zero has as many in C or F as its exponent is deep. */
    private static final int MOST_DIGITS = 340;

    private static final Pattern ONE = Pattern.compile("(" + Ratio.FRACTION + "|" + Ratio.DECIMAL + ") ?(.*)");
    private static final Pattern FEET_AND_INCHES = Pattern.compile("(" + Ratio.DECIMAL + ") ?(?:ft|feet|foot|') ?("
            + Ratio.FRACTION + "|" + Ratio.DECIMAL + ") ?(?:in|inch|inches|\")");
    private static final Pattern OF_LIST =
            Pattern.compile("(\\d++-\\d++/\\d++|[+-]?\\d++/\\d++|" + Ratio.DECIMAL + ")(?: |$)");
    private static final Pattern LAST_OF_LIST =
            Pattern.compile("(\\d++-\\d++/\\d++|[+-]?\\d++/\\d++|" + Ratio.DECIMAL + ")([^ ].*)");

    private Units() {}

    /**
     * Reads one number with its unit.
     *
     * @param text    for example {@code 0.60 m}, {@code 1-1/2 in}, {@code 3 ft 6 in}, {@code 2 inHg vacuum}
     * @param allowed the dimensions it may have, the likeliest first; at least one
     * @return the quantity; its dimension is the first of the allowed ones that has the unit
     * @throws UnitException when the text is anything else
     */
    public static Quantity read(String text, Dimension... allowed) {
        String tidy = Spelling.tidy(text);
        List<Dimension> dimensions = List.of(allowed);
        Trouble trouble = new Trouble(text, dimensions);
        trouble.checkText(tidy, LONGEST);
        Matcher feet = FEET_AND_INCHES.matcher(tidy);
        if (dimensions.contains(Dimension.LENGTH) && feet.matches()) {
            return feetAndInches(feet, trouble);
        }
        Matcher one = ONE.matcher(tidy);
        if (!one.matches()) {
            throw trouble.noNumber();
        }
        return trouble.physical(quantity(one.group(1), one.group(2), dimensions, trouble));
    }

    /**
     * Reads numbers with spaces between them and one unit at the end.
     *
     * @param text    for example {@code 0 200 300 kPa}
     * @param allowed the dimensions they may have, the likeliest first; at least one
     * @return the quantities in the order of the text, all in one unit
     * @throws UnitException when the text is anything else
     */
    public static List<Quantity> readList(String text, Dimension... allowed) {
        String tidy = Spelling.tidy(text);
        List<Dimension> dimensions = List.of(allowed);
        Trouble trouble = new Trouble(text, dimensions);
        trouble.checkText(tidy, LONGEST);
        List<String> numbers = new ArrayList<>();
        String rest = tidy;
        Matcher number = OF_LIST.matcher(rest);
        while (number.lookingAt()) {
            numbers.add(number.group(1));
            rest = rest.substring(number.end());
            number = OF_LIST.matcher(rest);
        }
        Matcher last = LAST_OF_LIST.matcher(rest);
        if (last.matches()) {
            numbers.add(last.group(1));
            rest = last.group(2);
        }
        if (numbers.isEmpty()) {
            throw trouble.noNumber();
        }
        if (numbers.size() > MOST_NUMBERS) {
            throw trouble.tooLong(numbers.size() + " numbers", "at most " + MOST_NUMBERS + " are read");
        }
        if (rest.matches(".*\\d++ .*|[^ ]++ [+-]?[\\d.].*")) {
            throw trouble.unitInside();
        }
        List<Quantity> read = new ArrayList<>();
        for (String each : numbers) {
            read.add(trouble.physical(quantity(each, rest, dimensions, trouble)));
        }
        return List.copyOf(read);
    }

    private static Quantity feetAndInches(Matcher text, Trouble trouble) {
        Ratio feet = Ratio.read(text.group(1));
        Ratio inches = Ratio.read(text.group(2));
        if (feet.numerator().signum() < 0 || inches.numerator().signum() < 0) {
            throw trouble.negativeInches();
        }
        BigDecimal twelve = new BigDecimal(12);
        Ratio all = new Ratio(
                feet.numerator().multiply(twelve).multiply(inches.denominator()).add(inches.numerator()),
                inches.denominator());
        Unit inch = unit("in", Dimension.LENGTH);
        return new Quantity(all.si(inch), Dimension.LENGTH, inch);
    }

    private static Quantity quantity(String number, String spelling, List<Dimension> allowed, Trouble trouble) {
        String symbol = Spelling.unit(spelling);
        for (Dimension dimension : allowed) {
            Unit unit = UnitTable.find(symbol, dimension);
            if (unit == null) {
                continue;
            }
            if (number.indexOf('/') >= 0 && !Spelling.takesFractions(unit)) {
                throw trouble.fraction();
            }
            if (unit.factor().signum() < 0 && number.startsWith("-")) {
                throw trouble.doubleVacuum(number.substring(1) + " " + unit.symbol());
            }
            try {
                return new Quantity(zeroIfMinusZero(Ratio.read(number).si(unit)), dimension, unit);
            } catch (UnitException e) {
                throw new UnitException("\"" + trouble.text() + "\": " + e.message(), e.hint());
            }
        }
        throw trouble.unit(number, symbol);
    }

    /**
     * Writes a number in a unit, as short as reads back to the same double.
     *
     * @param si   the value in SI, finite
     * @param unit the unit to write
     * @return for example {@code 9.525 mm}; a value above the air in a vacuum unit, or below absolute zero, is written
     *     with a minus that {@link #read} refuses
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String write(double si, Unit unit) {
        String number = number(si, unit);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /**
     * Writes several numbers with one unit at the end.
     *
     * @param si   the values in SI, finite, at least one
     * @param unit the unit to write
     * @return for example {@code 0 200 300 kPa}
     * @throws IllegalArgumentException when a value is not finite or there is none
     */
    public static String writeList(double[] si, Unit unit) {
        if (si.length == 0) {
            throw new IllegalArgumentException("a list needs at least one number");
        }
        StringBuilder text = new StringBuilder();
        for (double each : si) {
            text.append(number(each, unit)).append(' ');
        }
        return (text + unit.symbol()).strip();
    }

    /**
     * The number alone of {@link #write}.
     *
     * @param si   the value in SI, finite
     * @param unit the unit the number is in
     * @return for example {@code 9.525}
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String number(double si, Unit unit) {
        if (si == 0 && unit.offset().signum() == 0) {
            return "0";
        }
        BigDecimal exact = exact(si, unit);
        // Nothing further off than a step of the double reads back: saves the division for most candidates.
        BigDecimal near = exact(Math.ulp(si), unit).add(unit.offset()).abs();
        int from = exact.scale() - exact.precision();
        for (int scale = from; scale <= from + MOST_DIGITS; scale++) {
            for (RoundingMode mode : List.of(RoundingMode.HALF_EVEN, RoundingMode.FLOOR, RoundingMode.CEILING)) {
                BigDecimal candidate = exact.setScale(scale, mode);
                if (candidate.subtract(exact).abs().compareTo(near) <= 0 && readsBack(candidate, si, unit)) {
                    return plain(candidate);
                }
            }
        }
        throw new IllegalStateException("no text for " + si + " in " + unit.symbol());
    }

    private static boolean readsBack(BigDecimal number, double si, Unit unit) {
        BigDecimal above = number.add(unit.offset()).multiply(unit.factor());
        return Ratio.quotient(above, unit.divisor()) == si;
    }

    private static String plain(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal bare = number.stripTrailingZeros();
        int exponent = bare.precision() - bare.scale() - 1;
        return exponent >= -6 && exponent <= 14
                ? bare.toPlainString()
                : bare.toString().replace("E+", "e").replace("E", "e");
    }

    /**
     * Writes the number alone with a fixed count of decimals, for a table; rounds half up, from the shortest decimal of
     * the double (0.005715 m is 5.72 mm, though its double is a hair less), with a full stop and no grouping whatever the locale.
     *
     * @param si       the value in SI, finite
     * @param unit     the unit the number is in
     * @param decimals digits behind the full stop, 0 to 20
     * @return for example {@code 9.53}; never {@code -0.00}
     * @throws IllegalArgumentException when the value is not finite or the count is out of range
     */
    public static String fixed(double si, Unit unit, int decimals) {
        if (!(decimals >= 0 && decimals <= 20)) {
            throw new IllegalArgumentException("decimals must be 0 to 20, but is " + decimals);
        }
        return converted(shortest(si), unit)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /**
     * Converts to a unit.
     *
     * @param si   the value in SI, finite
     * @param unit the unit wanted
     * @return the number in that unit, rounded once
     * @throws IllegalArgumentException when the value is not finite
     */
    public static double to(double si, Unit unit) {
        return exact(si, unit).doubleValue();
    }

    /**
     * Converts from a unit.
     *
     * @param number the number in the unit, finite; taken as the shortest decimal of the double, as somebody writes it, so
     *               that 0.028 in here and in a file are the same
     * @param unit   its unit
     * @return the value in SI, rounded once
     * @throws IllegalArgumentException when the number is not finite
     */
    public static double from(double number, Unit unit) {
        return new Ratio(shortest(number), BigDecimal.ONE).si(unit);
    }

    private static BigDecimal exact(double si, Unit unit) {
        return converted(finite(si), unit);
    }

    private static BigDecimal converted(BigDecimal si, Unit unit) {
        return si.multiply(unit.divisor()).divide(unit.factor(), Ratio.DIGITS).subtract(unit.offset());
    }

    private static BigDecimal finite(double value) {
        check(value);
        return new BigDecimal(value);
    }

    private static BigDecimal shortest(double value) {
        check(value);
        return BigDecimal.valueOf(value);
    }

    private static void check(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("only a finite number has a unit, but this is " + value);
        }
    }

    private static double zeroIfMinusZero(double value) {
        return value == 0 ? 0 : value;
    }

    /**
     * The unit of a spelling. Pressures without a suffix are gauge and {@code C} is a temperature, for those come
     * first in {@link Dimension}; where that matters name the dimension.
     *
     * @param symbol for example {@code kPa}
     * @return the unit
     * @throws UnitException when nothing is spelt so
     */
    public static Unit unit(String symbol) {
        String spelling = Spelling.unit(Spelling.tidy(symbol));
        for (Dimension dimension : Dimension.values()) {
            Unit unit = UnitTable.find(spelling, dimension);
            if (unit != null) {
                return unit;
            }
        }
        throw new Trouble(symbol, Arrays.asList(Dimension.values())).unknownUnit(spelling);
    }

    /**
     * The unit of a spelling in a dimension.
     *
     * @param symbol    for example {@code kPa}
     * @param dimension what it must measure
     * @return the unit
     * @throws UnitException when the dimension has no unit spelt so
     */
    public static Unit unit(String symbol, Dimension dimension) {
        String spelling = Spelling.unit(Spelling.tidy(symbol));
        Unit unit = UnitTable.find(spelling, dimension);
        if (unit == null) {
            throw new Trouble(symbol, List.of(dimension)).unknownUnit(spelling);
        }
        return unit;
    }

    /**
     * All units of a dimension.
     *
     * @param dimension what they measure
     * @return the units, each once, in the order of the table
     */
    public static List<Unit> units(Dimension dimension) {
        return UnitTable.of(dimension).values().stream().distinct().toList();
    }

    /**
     * The metric unit a value is written in when nobody asked for another: millimetres below 0.1 m, litres per hour,
     * kilopascals, degrees Celsius and so on.
     *
     * @param si        the value, which decides between mm and m and between mL and L
     * @param dimension what it measures
     * @return the unit
     */
    public static Unit metric(double si, Dimension dimension) {
        double size = Math.abs(si);
        String symbol = switch (dimension) {
            case LENGTH -> size > 0 && size < 0.1 ? "mm" : "m";
            case VOLUME -> size > 0 && size < 1e-3 ? "mL" : "L";
            case FUEL_PER_POWER -> "g/kW/h";
            case RATIO -> "";
            default -> dimension.suggested().get(0);
        };
        return unit(symbol, dimension);
    }
}
