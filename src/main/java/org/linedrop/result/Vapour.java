package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.network.Trace;

/** The lowest static pressure of each row, in its narrowest bore, against the vapour pressure of what flows there. */
final class Vapour {
    /** Margin under which a row is warned of; the trade's figure for pump inlets. */
    private static final double NEAR_PA = 20e3;

    private static final Source SOURCE =
            Source.of("20 kPa of margin over vapour pressure at a pump inlet", Status.COMMON_PRACTICE);

    private Vapour() {}

    /**
     * One row that boils or nearly does.
     *
     * @param row        the row
     * @param absolutePa its lowest static pressure, absolute
     * @param vapourPa   the vapour pressure
     */
    private record Spot(PartRow row, double absolutePa, double vapourPa) {
        boolean boils() {
            return absolutePa < vapourPa;
        }

        Notice notice() {
            String text = boils()
                    ? "the fluid boils here: %.1f kPa absolute is under its vapour pressure of %.1f kPa; the figures are"
                            + " for liquid alone"
                    : "%.1f kPa absolute is less than 20 kPa over the vapour pressure of %.1f kPa: it may boil here";
            return new Notice(
                    boils() ? "boils" : "near-vapour-pressure",
                    row.run() + " " + row.row(),
                    String.format(Locale.ROOT, text, absolutePa / 1000, vapourPa / 1000),
                    absolutePa,
                    vapourPa,
                    "Pa",
                    SOURCE);
        }
    }

    static List<Notice> notices(Result result) {
        List<Notice> notices = new ArrayList<>();
        for (Trace.RunTrace run : result.network().runs()) {
            String told = "";
            for (Spot spot : spots(result, run)) {
                if (!told.equals(spot.row().part())) {
                    told = spot.row().part();
                    notices.add(spot.notice());
                }
            }
        }
        return notices;
    }

    /** The first row up to and including a pump in which the fluid boils. */
    static Optional<Notice> boilingAtPump(Result result) {
        for (Trace.RunTrace run : result.network().runs()) {
            List<PartRow> rows = result.rows(run.id());
            int pump = -1;
            for (int i = 0; i < rows.size(); i++) {
                pump = rows.get(i).kind().endsWith("pump") ? i : pump;
            }
            for (Spot spot : spots(result, run)) {
                if (spot.boils() && rows.indexOf(spot.row()) <= pump) {
                    return Optional.of(spot.notice());
                }
            }
        }
        return Optional.empty();
    }

    private static List<Spot> spots(Result result, Trace.RunTrace run) {
        List<PartRow> rows = result.rows(run.id());
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            PartRow row = rows.get(i);
            Trace.Row trace = run.rows().get(i);
            double still = Math.min(row.staticPressureInPa(), row.staticPressureOutPa());
            if (trace.usedBoreM() > 0) {
                double fast = trace.stream().velocityHeadPa(row.massFlowKgPerS(), trace.usedBoreM());
                still = Math.min(still, Math.min(row.totalPressureInPa(), row.totalPressureOutPa()) - fast);
            }
            double absolute = still + result.circuit().surroundings().ambientPa();
            if (absolute < trace.stream().vapourPressurePa() + NEAR_PA) {
                spots.add(new Spot(row, absolute, trace.stream().vapourPressurePa()));
            }
        }
        return spots;
    }
}
