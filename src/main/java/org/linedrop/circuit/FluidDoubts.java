package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Fluids;
import org.linedrop.units.Dimension;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** Questions figures of a fluid that are far from those of the fluid it is said to be like. */
final class FluidDoubts {
    /** Word of a writer who insists. */
    static final String REALLY = " really";

    /** A constant viscosity is held against that of its like here. */
    private static final double USUAL_K = 313.15;
    /** Oils of neighbouring grades differ by less than half of this; petrol and oil by ten times and more. */
    private static final double MOST_TIMES = 4;
    /** Fuels and oils of one family differ by some 10 % in density. */
    private static final double MOST_DENSER = 0.2;

    private final Fields fields;

    FluidDoubts(Fields fields) {
        this.fields = fields;
    }

    /** The fluid that a figure is held against: like, or the first of the library that linings take for the same. */
    private @Nullable Fluid near() {
        Fluid like = fields.get(FluidKeys.LIKE);
        String family = fields.get(FluidKeys.JUDGED_AS, "");
        return like != null || family.isEmpty()
                ? like
                : Fluids.all().stream()
                        .filter(fluid -> fluid.family().equals(family))
                        .findFirst()
                        .orElse(null);
    }

    /** What is doubtful of a viscosity; empty where nothing is. */
    String viscosity(KeyForms.Column said, List<Double> at) {
        Fluid near = near();
        String text = fields.text(FluidKeys.VISCOSITY);
        for (int i = 0; near != null && i < said.figures().size() && !text.endsWith(REALLY); i++) {
            double temperature = at.isEmpty() ? USUAL_K : at.get(i);
            if (near.refusal(temperature) != null) {
                continue;
            }
            var state = near.at(temperature);
            boolean kinematic = said.dimension() == Dimension.KINEMATIC_VISCOSITY;
            double kinematicM2PerS = state.dynamicViscosityPaS() / state.densityKgPerM3();
            double theirs = kinematic ? kinematicM2PerS : state.dynamicViscosityPaS();
            double given = said.figures().get(i).value();
            double times = given / theirs;
            if (!(times <= MOST_TIMES && times >= 1 / MOST_TIMES)) {
                Unit unit = Units.unit(kinematic ? "cSt" : "mPa s");
                return "viscosity \"" + text + "\": " + near.name() + " at " + celsius(temperature) + " is near "
                        + digits(theirs, unit) + "; " + digits(given, unit) + " is "
                        + thickness(times * kinematicM2PerS * 1e6);
            }
        }
        return "";
    }

    /** What is doubtful of a density; empty where nothing is. */
    String density(List<Figure> said, @Nullable Figure where, List<Double> at) {
        Fluid near = near();
        String text = fields.text(FluidKeys.DENSITY);
        for (int i = 0; near != null && i < said.size() && !text.endsWith(REALLY); i++) {
            double temperature = where != null ? where.value() : said.size() == 1 ? USUAL_K : at.get(i);
            if (near.refusal(temperature) != null) {
                continue;
            }
            double theirs = near.at(temperature).densityKgPerM3();
            if (!(Math.abs(said.get(i).value() / theirs - 1) <= MOST_DENSER)) {
                return "density \"" + text + "\": " + near.name() + " at " + celsius(temperature) + " is near "
                        + Units.fixed(theirs, Units.unit("kg/m3"), 0) + " kg/m3";
            }
        }
        return "";
    }

    private static String celsius(double temperatureK) {
        return trimmed(Units.fixed(temperatureK, Units.unit("C"), 1)) + " C";
    }

    private static String digits(double si, Unit unit) {
        double shown = Units.to(si, unit);
        return trimmed(Units.fixed(si, unit, shown < 1 ? 2 : shown < 100 ? 1 : 0)) + " " + unit.symbol();
    }

    private static String trimmed(String number) {
        return number.contains(".") ? number.replaceFirst("\\.?0+$", "") : number;
    }

    /** What is about that thick, for a sentence (from memory). */
    private static String thickness(double centistokes) {
        if (centistokes < 0.25) {
            return "thinner than any fuel";
        }
        if (centistokes < 0.8) {
            return "petrol";
        }
        if (centistokes < 1.6) {
            return "water or alcohol";
        }
        if (centistokes < 4.5) {
            return "diesel";
        }
        if (centistokes < 10) {
            return "thin oil";
        }
        return centistokes < 60 ? "oil" : "cold oil";
    }
}
