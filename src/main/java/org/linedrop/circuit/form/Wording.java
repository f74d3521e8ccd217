package org.linedrop.circuit.form;

import java.util.regex.Pattern;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** What all forms share: one spelling of signs, pairs with one unit, messages. */
final class Wording {
    private static final int LONGEST_SHOWN = 60;
    private static final int LONGEST = 4000;
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2009\\u202f]++");
    private static final Pattern BARE = Pattern.compile("[+-]?[\\d./ -]++(?:[eE][+-]?\\d++)?");
    private static final double METRES_PER_INCH = 0.0254;
    /** Hose and tube come in sixteenths of an inch up to some 4 in. */
    private static final int MOST_SIXTEENTHS = 64;

    private Wording() {}

    /** Single spaces, and one sign for times, minus and plus-minus. */
    static String tidy(String text) {
        if (text.length() > LONGEST) {
            throw wrong(text, " is too long: " + text.length() + " characters", "At most " + LONGEST + " are read");
        }
        return SPACES.matcher(text)
                .replaceAll(" ")
                .strip()
                .replace('\u00d7', 'x')
                .replace('\u2212', '-')
                .replace("\u00b1", "+/-")
                .replace("+-", "+/-");
    }

    /** An exception whose message begins with the text in quotation marks. */
    static UnitException wrong(String text, String what, String hint) {
        String line = SPACES.matcher(text).replaceAll(" ").strip();
        String shown = line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN) + " ...";
        return new UnitException("\"" + shown + "\"" + what, hint);
    }

    /** Whether a text is a number without unit. */
    static boolean bare(String text) {
        return BARE.matcher(text.strip()).matches();
    }

    /** The first of two numbers that share the unit behind the second, unless it has its own. */
    static Quantity first(String first, Quantity second, Dimension... allowed) {
        return bare(first)
                ? Units.read((first.strip() + " " + second.unit().symbol()).strip(), second.dimension())
                : Units.read(first, allowed);
    }

    /** A value in the unit a circuit file is written in. */
    static String metric(double si, Dimension dimension) {
        return Units.write(si, Units.metric(si, dimension));
    }

    /** Whether a length is a size of the trade: sixteenths of an inch, to the last bit. */
    static boolean sixteenths(double lengthM) {
        long count = Math.round(lengthM / METRES_PER_INCH * 16);
        return count >= 1
                && count <= MOST_SIXTEENTHS
                && Units.read(inches(count), Dimension.LENGTH).si() == lengthM;
    }

    /** A length as the trade names it: {@code 5/16 in}, {@code 1-1/2 in}, otherwise in mm. */
    static String size(double lengthM) {
        return sixteenths(lengthM)
                ? inches(Math.round(lengthM / METRES_PER_INCH * 16))
                : Units.write(lengthM, Units.unit("mm"));
    }

    private static String inches(long sixteenths) {
        long whole = sixteenths / 16;
        long above = sixteenths % 16;
        long below = 16;
        while (above > 0 && above % 2 == 0) {
            above /= 2;
            below /= 2;
        }
        if (above == 0) {
            return whole + " in";
        }
        return (whole == 0 ? "" : whole + "-") + above + "/" + below + " in";
    }
}
