package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.BrakeSwell;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Source;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;

/**
 * The most that a brake hose may swell under its pressure: volume that the master has to move and no caliper gets. New
 * hose, by its standard; nothing here says that a hose is fit for brakes.
 *
 * @param part           the hose, for example {@code left 3}
 * @param hose           family and size
 * @param lengthM        its length
 * @param pressurePa     the highest static pressure in it, Pa gauge
 * @param regularM3      of a regular hose; NaN where no row reaches so far
 * @param lowExpansionM3 of a low-expansion hose; NaN where no row reaches so far
 * @param source         who says so; null without a row
 */
@Inner
public record HoseSwell(
        String part,
        String hose,
        double lengthM,
        double pressurePa,
        double regularM3,
        double lowExpansionM3,
        @Nullable Source source)
        implements Serializable {

    /**
     * The hoses of a solved brake circuit.
     *
     * @param result a result
     * @return hose by hose; empty for other circuits and where nothing was solved
     */
    public static List<HoseSwell> of(Result result) {
        List<HoseSwell> swells = new ArrayList<>();
        if (result.circuit().service() != Service.BRAKE || result.outcome() != Outcome.CONVERGED) {
            return swells;
        }
        List<BrakeSwell> rows = Catalogue.standard().brakeSwell();
        for (Run run : result.circuit().runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose) {
                    swells.add(of(hose, pressurePa(result, hose), rows));
                }
            }
        }
        return swells;
    }

    private static double pressurePa(Result result, Hose hose) {
        double highest = Double.NaN;
        for (PartRow row : result.rows()) {
            if (row.part().equals(hose.id())) {
                double here = Math.max(row.staticPressureInPa(), row.staticPressureOutPa());
                highest = Double.isNaN(highest) ? here : Math.max(highest, here);
            }
        }
        return highest;
    }

    private static HoseSwell of(Hose hose, double pressurePa, List<BrakeSwell> rows) {
        String size = hose.size().sizeText();
        double lengthM = hose.lengthM().value();
        boolean brake = hose.size().family().equals("brake hose");
        List<BrakeSwell> its =
                brake ? rows.stream().filter(row -> row.size().equals(size)).toList() : List.of();
        return new HoseSwell(
                hose.id(),
                hose.size().name(),
                lengthM,
                pressurePa,
                lengthM * perMetre(its, "regular", pressurePa),
                lengthM * perMetre(its, "low expansion", pressurePa),
                its.isEmpty() ? null : its.get(0).volumeM3PerM().source());
    }

    /** A straight line between rows. Under the first row its own figure, which is the safe side; past the last, nothing. */
    private static double perMetre(List<BrakeSwell> rows, String type, double pressurePa) {
        BrakeSwell below = null;
        for (BrakeSwell row : rows) {
            if (!row.type().equals(type)) {
                continue;
            }
            double here = row.volumeM3PerM().value();
            if (pressurePa <= row.pressurePa()) {
                if (below == null) {
                    return pressurePa > 0 ? here : 0;
                }
                double share = (pressurePa - below.pressurePa()) / (row.pressurePa() - below.pressurePa());
                double before = below.volumeM3PerM().value();
                return before + share * (here - before);
            }
            below = row;
        }
        return Double.NaN;
    }
}
