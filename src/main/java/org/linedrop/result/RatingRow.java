package org.linedrop.result;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.catalogue.Ratings;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.fact.Figure;
import org.linedrop.solver.Outcome;

/**
 * One rating of one hose size against the most that any case asks of it. There is no verdict that a hose is strong
 * enough: a load is under or over a figure that somebody gave, or not judged.
 *
 * @param hose     the hose
 * @param caseName the case that asks most
 * @param rating   load, figure and verdict
 */
public record RatingRow(HoseSize hose, String caseName, RatingResult rating) implements Serializable {

    /** The most and the least that the cases ask of one hose size, and which case does. */
    private static final class Loads {
        private final HoseSize hose;
        private final Extreme most = new Extreme();
        private final Extreme least = new Extreme();
        private final Extreme hottest = new Extreme();
        private final Extreme coldest = new Extreme();

        Loads(HoseSize hose) {
            this.hose = hose;
        }

        String caseOf(String quantity) {
            return switch (quantity) {
                case "vacuum" -> least.caseName;
                case "highest temperature" -> hottest.caseName;
                case "lowest temperature" -> coldest.caseName;
                default -> most.caseName;
            };
        }
    }

    /** A largest figure so far, of negated figures for a smallest. */
    private static final class Extreme {
        private double value = Double.NEGATIVE_INFINITY;
        private String caseName = "";

        void take(double other, String name) {
            if (other > value) {
                value = other;
                caseName = name;
            }
        }
    }

    /**
     * Judges the hoses of some cases.
     *
     * @param cases results of one circuit; those that were not solved are left out
     * @return rows hose by hose in the order in which the hoses stand: working pressure always, vacuum where there is
     *     any, temperatures only where somebody gave a figure that may be judged
     */
    public static List<RatingRow> of(List<CaseResult> cases) {
        Map<String, Loads> hoses = new LinkedHashMap<>();
        for (CaseResult each : cases) {
            if (each.outcome() == Outcome.CONVERGED) {
                take(each.usual(), hoses);
            }
        }
        List<RatingRow> rows = new ArrayList<>();
        for (Loads loads : hoses.values()) {
            for (RatingResult rating : Ratings.check(
                    loads.hose, loads.most.value, -loads.least.value, -loads.coldest.value, loads.hottest.value)) {
                boolean temperature = rating.quantity().endsWith(" temperature")
                        && !rating.quantity().startsWith("pressure");
                if (!temperature || rating.verdict() != RatingResult.Verdict.NOT_JUDGED) {
                    rows.add(new RatingRow(loads.hose, loads.caseOf(rating.quantity()), rating));
                }
            }
        }
        return rows;
    }

    private static void take(Result result, Map<String, Loads> hoses) {
        String name = result.circuit().caseName();
        for (Run run : result.circuit().runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose) {
                    Loads loads = hoses.computeIfAbsent(hose.size().name(), key -> new Loads(hose.size()));
                    double kelvin = temperature(result, run, hose).value();
                    loads.hottest.take(kelvin, name);
                    loads.coldest.take(-kelvin, name);
                    for (PartRow row : result.rows(run.id())) {
                        if (row.part().equals(hose.id())) {
                            loads.most.take(Math.max(row.staticPressureInPa(), row.staticPressureOutPa()), name);
                            loads.least.take(-Math.min(row.staticPressureInPa(), row.staticPressureOutPa()), name);
                        }
                    }
                }
            }
        }
    }

    /** The nearest of part, run and circuit. */
    private static Figure temperature(Result result, Run run, Hose hose) {
        if (hose.temperatureK() != null) {
            return hose.temperatureK();
        }
        return run.temperatureK() != null
                ? run.temperatureK()
                : result.circuit().surroundings().temperatureK();
    }
}
