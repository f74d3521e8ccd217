package org.linedrop.fluid;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Fluids of any concentration, read from text. */
final class Blends {
    private Blends() {}

    /** What is mixed into what. */
    enum Kind {
        /** Ethanol in summer petrol. */
        ETHANOL,
        /** Ethanol in winter petrol. */
        ETHANOL_WINTER,
        /** Ethylene glycol in water. */
        ETHYLENE,
        /** Propylene glycol in water. */
        PROPYLENE
    }

    /**
     * A concentration.
     *
     * @param kind    what in what
     * @param percent by volume
     */
    record Wanted(Kind kind, double percent) {}

    private static final String NUMBER = "(\\d{1,3}(?:\\.\\d+)?)";
    private static final Pattern E_NUMBER = Pattern.compile("e" + NUMBER + "(summer|winter)?");
    private static final Pattern AFTER = Pattern.compile("([a-z]+)" + NUMBER + "(%?)(?:vol|byvolume)?([a-z]*)");
    private static final Pattern BEFORE = Pattern.compile(NUMBER + "(%)(?:vol|byvolume)?(?:of)?([a-z]+)");

    /** Grades of petrol with ethanol that pumps sell under such a name (from memory); E10, E85, E100 are listed fluids. */
    private static final List<Double> SOLD = List.of(5.0, 10.0, 15.0, 20.0, 25.0, 27.0, 30.0);

    /**
     * Why a grade that nobody sells is not taken for a share of ethanol: E58 is a slip for E85.
     *
     * @param text as a user writes it
     * @return the refusal; null where the text is no such grade, or one that is sold or stands for a fluid
     */
    static @Nullable UnknownFluidException refusedGrade(String text) {
        Matcher e = E_NUMBER.matcher(packed(text));
        if (!e.matches()) {
            return null;
        }
        double percent = Double.parseDouble(e.group(1));
        if (SOLD.contains(percent) || percent == 0 || percent == 85 || percent == 100) {
            return null;
        }
        String season = e.group(2) == null ? "summer" : e.group(2);
        boolean low = Math.abs(percent - 10) < Math.abs(percent - 85);
        String near = low ? season.equals("winter") ? "E10 winter" : "E10" : "E85 " + season;
        String own = percent > 0 && percent < 100 ? "ethanol " + Text.number(percent) + " %" : "ethanol 74 %";
        return new UnknownFluidException(
                "fluid \"" + text.strip() + "\" is no grade that is sold. Did you mean \"" + near
                        + "\"? A share of ethanol by volume is written \"" + own + "\"",
                List.of(near, own));
    }

    private static String packed(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_:-]+", "");
    }

    /** Reads a name with a concentration; null when it is none. */
    static @Nullable Wanted parse(String text) {
        String packed = packed(text);
        Matcher e = E_NUMBER.matcher(packed);
        if (e.matches()) {
            boolean winter = "winter".equals(e.group(2));
            double percent = Double.parseDouble(e.group(1));
            return SOLD.contains(percent) ? new Wanted(winter ? Kind.ETHANOL_WINTER : Kind.ETHANOL, percent) : null;
        }
        Matcher after = AFTER.matcher(packed);
        if (after.matches()) {
            Kind kind = kind(after.group(1) + after.group(4));
            return kind == null ? null : new Wanted(kind, Double.parseDouble(after.group(2)));
        }
        Matcher before = BEFORE.matcher(packed);
        if (before.matches()) {
            Kind kind = kind(before.group(3));
            return kind == null ? null : new Wanted(kind, Double.parseDouble(before.group(1)));
        }
        return null;
    }

    private static @Nullable Kind kind(String word) {
        return switch (word) {
            case "ethanol", "ethanolsummer", "ethanolinpetrol", "ethanolinsummerpetrol" -> Kind.ETHANOL;
            case "ethanolwinter", "ethanolinwinterpetrol" -> Kind.ETHANOL_WINTER;
            case "glycol", "ethyleneglycol", "coolant", "antifreeze", "eg", "ethyleneglycolinwater", "waterglycol" ->
                Kind.ETHYLENE;
            case "propyleneglycol", "pg", "propyleneglycolinwater" -> Kind.PROPYLENE;
            default -> null;
        };
    }

    static Fluid fluid(Wanted wanted) {
        double percent = wanted.percent();
        boolean ethanol = wanted.kind() == Kind.ETHANOL || wanted.kind() == Kind.ETHANOL_WINTER;
        if (!ethanol) {
            return percent == 0 ? WaterFluids.water() : WaterFluids.glycol(wanted.kind() == Kind.ETHYLENE, percent);
        }
        if (percent == 100) {
            return AlcoholFluids.ethanol();
        }
        if (!(percent > 0 && percent < 100)) {
            throw new UnknownFluidException(
                    "ethanol is " + Text.number(percent)
                            + " % by volume; allowed are above 0 to 100 %. Write for example"
                            + " \"ethanol 74 %\", or \"petrol summer\" without ethanol",
                    List.of("ethanol 74 %", "petrol summer"));
        }
        return SparkFuels.ethanolBlend(percent, wanted.kind() == Kind.ETHANOL);
    }
}
