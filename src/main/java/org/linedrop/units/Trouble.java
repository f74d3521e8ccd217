package org.linedrop.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.linedrop.fact.Words;

/**
 * The messages for what cannot be read.
 *
 * @param said    the value as it was written
 * @param allowed the dimensions that were wanted
 */
record Trouble(String said, List<Dimension> allowed) {
    private static final Pattern COMMA = Pattern.compile("(.*\\d), ?(\\d++)(.*)");
    private static final Pattern NOT_FINITE = Pattern.compile("[+-]?(?:nan|inf|infinity|\u221e)\\b.*");
    private static final Pattern BARE_US_OR_UK =
            Pattern.compile("(?:gal|gals|gallon|gallons|pint|pints|pt|qt|quart|quarts)(/(?:h|min|s))?|(gph)|(gpm)");

    /** From this number on a bare length is rather millimetres than metres. */
    private static final double METRES_BELOW = 5;

    /** The value as shown. */
    String text() {
        return Spelling.shown(said);
    }

    /** Refuses what no rule below needs to see. */
    void checkText(String tidy, int longest) {
        if (allowed.isEmpty()) {
            throw new IllegalArgumentException("no dimension allowed");
        }
        if (tidy.isEmpty()) {
            throw new UnitException("\"\" is empty: " + wanted() + " is needed", "Write for example " + example());
        }
        if (tidy.length() > longest) {
            throw tooLong(tidy.length() + " characters", "at most " + longest + " are read");
        }
        char first = tidy.charAt(0);
        if (!Character.isDigit(first)
                && NOT_FINITE.matcher(tidy.toLowerCase(Locale.ROOT)).matches()) {
            throw new UnitException("\"" + text() + "\" is not a number", "Write for example " + example());
        }
        if (tidy.indexOf(',') >= 0) {
            Matcher comma = COMMA.matcher(tidy);
            if (comma.matches()) {
                throw comma(tidy, comma);
            }
        }
    }

    private UnitException comma(String tidy, Matcher comma) {
        if (comma.group(1).indexOf(',') >= 0 || tidy.contains(", ")) {
            return new UnitException(
                    "\"" + text() + "\" has commas",
                    "Write numbers without commas; in a list spaces between them and one unit at the end");
        }
        String decimal = comma.group(1) + "." + comma.group(2) + comma.group(3);
        String grouped = comma.group(1) + comma.group(2) + comma.group(3);
        boolean thousands = comma.group(2).length() == 3 && comma.group(1).matches("[+-]?[1-9]\\d{0,2}");
        return new UnitException(
                "\"" + text() + "\": a comma is not a decimal point here",
                "Write " + decimal + (thousands ? ", or " + grouped + " if the comma marks thousands" : ""));
    }

    UnitException tooLong(String found, String limit) {
        return new UnitException("\"" + text() + "\" is too long: " + found, limit);
    }

    UnitException noNumber() {
        return new UnitException("\"" + text() + "\" is not " + wanted(), "Write for example " + example());
    }

    UnitException unitInside() {
        return new UnitException("\"" + text() + "\" has a unit inside the list", "One unit at the end: 0 200 300 kPa");
    }

    UnitException negativeInches() {
        return new UnitException("\"" + text() + "\": feet and inches with a minus", "Write it in inches alone");
    }

    UnitException fraction() {
        return new UnitException("\"" + text() + "\": fractions are read in inches and feet only", "Write a decimal");
    }

    UnitException doubleVacuum(String positive) {
        return new UnitException("\"" + text() + "\": vacuum already means below the air", "Write " + positive);
    }

    /** Nothing is colder than 0 K, no pressure is under a perfect vacuum. */
    Quantity physical(Quantity quantity) {
        boolean absolute =
                quantity.dimension() == Dimension.TEMPERATURE || quantity.dimension() == Dimension.ABSOLUTE_PRESSURE;
        if (absolute && !(quantity.si() >= 0)) {
            throw new UnitException(
                    "\"" + text() + "\" is below absolute zero",
                    quantity.dimension() == Dimension.TEMPERATURE
                            ? "-273.15 C is the lowest temperature there is"
                            : "If you mean a gauge pressure, leave out abs");
        }
        return quantity;
    }

    /** What is wrong with a number that stands before a unit none of the allowed dimensions has. */
    UnitException unit(String number, String symbol) {
        if (symbol.isEmpty()) {
            return noUnit(number);
        }
        Matcher bare = BARE_US_OR_UK.matcher(symbol.toLowerCase(Locale.ROOT));
        if (bare.matches()) {
            return usOrUk(number, symbol, bare);
        }
        for (Dimension dimension : Dimension.values()) {
            Unit unit = UnitTable.find(symbol, dimension);
            if (unit != null) {
                return wrongDimension(number, unit);
            }
        }
        UnitException unknown = unknownUnit(symbol);
        return new UnitException("\"" + text() + "\": " + unknown.message(), unknown.hint());
    }

    private UnitException noUnit(String number) {
        Dimension first = allowed.get(0);
        String name = first.guess();
        String guess = first.guessUnit();
        if (first == Dimension.LENGTH && number.indexOf('/') >= 0) {
            name = "Inches";
            guess = "in";
        } else if (first == Dimension.LENGTH && Math.abs(Double.parseDouble(number)) >= METRES_BELOW) {
            name = "Millimetres";
            guess = "mm";
        }
        return new UnitException(
                "\"" + text() + "\" has no unit",
                name + "? Write " + text() + " " + guess + ". (" + read() + " are read)");
    }

    private UnitException usOrUk(String number, String symbol, Matcher bare) {
        String lower = symbol.toLowerCase(Locale.ROOT);
        String size = "gal";
        if (lower.startsWith("p")) {
            size = "pint";
        } else if (lower.startsWith("q")) {
            size = "qt";
        }
        String per = bare.group(1) == null ? "" : bare.group(1);
        if (bare.group(2) != null) {
            per = "/h";
        } else if (bare.group(3) != null) {
            per = "/min";
        }
        return new UnitException(
                "\"" + text() + "\": " + symbol + " may be US or UK (a UK gallon is 1.2 US gallons)",
                "Write " + number + " US " + size + per + " or " + number + " UK " + size + per);
    }

    private UnitException wrongDimension(String number, Unit unit) {
        Dimension found = unit.dimension();
        String message = "\"" + text() + "\" is " + found.words() + ", but " + wanted() + " is needed";
        if (found == Dimension.ABSOLUTE_PRESSURE && allowed.contains(Dimension.GAUGE_PRESSURE)) {
            return new UnitException(message, "Write the reading over air: 100 kPa abs is near 0 kPa");
        }
        if (found == Dimension.GAUGE_PRESSURE && allowed.contains(Dimension.ABSOLUTE_PRESSURE)) {
            return new UnitException(
                    message,
                    "Write abs behind it, if it is one: " + number + " " + Spelling.shown(unit.symbol()) + " abs");
        }
        if (found == Dimension.GAUGE_PRESSURE && allowed.contains(Dimension.PRESSURE_DIFFERENCE)) {
            return new UnitException(message, "A difference is neither gauge nor vacuum: leave that word out");
        }
        return new UnitException(message, "Write for example " + example() + ". (" + read() + " are read)");
    }

    /** A spelling that means nothing to us. */
    UnitException unknownUnit(String symbol) {
        List<String> known = new ArrayList<>();
        for (Dimension dimension : allowed) {
            known.addAll(UnitTable.of(dimension).keySet());
        }
        known.removeIf(String::isEmpty);
        Optional<String> near = Words.nearest(symbol, known);
        String message = "\"" + Spelling.shown(symbol) + "\" is no unit of " + nouns();
        return new UnitException(
                message, near.map(n -> "Did you mean " + n + "? ").orElse("") + "(" + read() + " are read)");
    }

    private String wanted() {
        return allowed.stream().map(Dimension::words).collect(Collectors.joining(" or "));
    }

    private String nouns() {
        return allowed.size() > 4
                ? "ours"
                : allowed.stream().map(Dimension::noun).collect(Collectors.joining(" or "));
    }

    private String read() {
        return allowed.stream()
                .limit(4)
                .flatMap(dimension -> dimension.suggested().stream())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String example() {
        Dimension first = allowed.get(0);
        String number = switch (first) {
            case LENGTH -> "0.6";
            case TEMPERATURE -> "40";
            case RATIO -> "5";
            case GAUGE_PRESSURE, ABSOLUTE_PRESSURE, VOLUME_FLOW -> "300";
            case VOLTAGE -> "13.5";
            case ROTATION -> "6500";
            case ACCELERATION -> "0.9";
            case FUEL_PER_POWER -> "0.65";
            default -> "12";
        };
        return number + " " + first.guessUnit();
    }
}
