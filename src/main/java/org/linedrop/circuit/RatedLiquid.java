package org.linedrop.circuit;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.fluid.Fluid;

/**
 * Whether a rated point says with which liquid it was measured. Oil and glycol change tenfold with temperature and the
 * drop of a filter or cooler with them, so that there it has no default; fuel and water change little, and the circuit's
 * own is meant.
 */
final class RatedLiquid {
    /** Words of the compatibility table for liquids that are thick when cold. */
    private static final List<String> THICK = List.of("oil", "ATF", "glycol", "brake fluid");

    private static final Pattern WORDS =
            Pattern.compile("(.*?)((?: measured| from sheet| guessed| really)*)", Pattern.DOTALL);

    private RatedLiquid() {}

    /** Whether a circuit with this fluid needs it said; a fluid of no known family is judged by the service. */
    static boolean needed(Fluid fluid, boolean mayBeFuel) {
        String family = fluid.family();
        if (family.isEmpty()) {
            return !mayBeFuel;
        }
        return !fluid.name().equals("water") && THICK.stream().anyMatch(family::contains);
    }

    /** Refuses a rated point without its liquid where one is needed. */
    static void check(Object value, String text, Scope scope) throws Key.FormException {
        boolean bare = value instanceof RatedPoint point
                ? point.viscosity() == null
                : value instanceof Demand.AtPressure draw && draw.viscosityM2PerS() == null;
        if (!bare || !scope.ratedLiquid()) {
            return;
        }
        Matcher words = WORDS.matcher(text.strip());
        String with = words.matches() ? words.group(1) + " with 14 cSt" + words.group(2) : text + " with 14 cSt";
        throw new Key.FormException(
                "\"" + text + "\": with which liquid? Cold oil is ten times thicker than hot, cold coolant three times",
                "Write the viscosity it was rated with, for example " + with
                        + " (hot engine oil; water at 20 C is 1 cSt)");
    }
}
