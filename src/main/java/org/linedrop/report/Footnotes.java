package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Run;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.result.SolveStatus;

/** What a reader must know to read the tables of runs. */
final class Footnotes {
    private Footnotes() {}

    static List<String> of(Result result) {
        List<PartRow> rows = result.rows();
        List<String> lines = new ArrayList<>(doubtful(rows));
        if (rows.stream().anyMatch(row -> Columns.mark(row).equals("*"))) {
            lines.add("* bore measured");
        }
        Circuit circuit = result.circuit();
        lines.add(String.format(
                Locale.ROOT,
                "type: lam, mix (Re %.0f-%.0f), turb.  f: friction factor (Darcy), K: loss over velocity head.",
                circuit.surroundings().laminarUpToReynolds(),
                circuit.surroundings().turbulentFromReynolds()));
        lines.add("Pressures are total, gauge: one row's out is the next row's in.");
        regulators(circuit, lines);
        hoses(circuit, lines);
        lines.add("Solved in " + SolveStatus.of(result).iterations()
                + " steps: flows balance and laws hold to 1e-9 of their scale or better (figures: --format json).");
        return lines;
    }

    /** What the figures of a regulator mean. */
    private static void regulators(Circuit circuit, List<String> lines) {
        if (circuit.devices().stream().anyMatch(Regulator.class::isInstance)) {
            lines.add(
                    "Regulator: floor or ceiling is the pressure it would be at wide open, open drop what it loses so;"
                            + " control margin is how far it is from being wide open.");
        }
    }

    private static List<String> doubtful(List<PartRow> rows) {
        List<PartRow> marked =
                rows.stream().filter(row -> Columns.mark(row).equals("?")).toList();
        if (marked.isEmpty()) {
            return List.of();
        }
        double all = lost(rows);
        String share = all > 0 ? String.format(Locale.ROOT, ", %.0f %% of the loss", 100 * lost(marked) / all) : "";
        return List.of(
                "? bore from memory or guessed (" + marked.size() + " of " + rows.size() + " rows" + share + ")");
    }

    private static double lost(List<PartRow> rows) {
        return rows.stream()
                .filter(row -> Double.isFinite(row.lossShare()))
                .mapToDouble(row -> Math.abs(row.frictionDropPa() + row.localDropPa()))
                .sum();
    }

    private static void hoses(Circuit circuit, List<String> lines) {
        int straight = 0;
        int all = 0;
        for (Run run : circuit.runs()) {
            for (var part : run.parts()) {
                if (part instanceof Hose hose) {
                    all++;
                    straight += hose.bends() == null ? 1 : 0;
                }
            }
        }
        if (all > 0) {
            String how = straight == 0
                    ? ""
                    : straight == all ? "Hoses taken as straight. " : "Hoses without bends taken as straight. ";
            lines.add(how + "Their length is taken whole, ends included, at hose bore: a few cm on the safe side.");
        }
    }
}
