package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.linedrop.study.HoseSwell;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** What brake hoses may swell, and what that costs at the master. */
final class SwellTable {
    private static final Scale LENGTH = Cells.scale(Dimension.LENGTH, "m", 2, "ft", 2);
    private static final Scale VOLUME = Cells.scale(Dimension.VOLUME, "cm3", 2, "in3", 4);
    private static final Scale STROKE = Cells.scale(Dimension.LENGTH, "mm", 1, "in", 2);

    static final List<Column<HoseSwell>> COLUMNS = List.of(
            Cells.words("part", "part", "part", HoseSwell::part),
            Cells.words("hose", "hose", "hose", HoseSwell::hose),
            Column.number("lengthM", "length", LENGTH, HoseSwell::lengthM).as("length", LENGTH),
            Column.number("pressurePa", "highest pressure", Cells.RATING, HoseSwell::pressurePa)
                    .as("pressure", Cells.RATING),
            Column.number("regularM3", "swell of regular hose", VOLUME, HoseSwell::regularM3)
                    .as("regular", VOLUME),
            Column.number("lowExpansionM3", "swell of low-expansion hose", VOLUME, HoseSwell::lowExpansionM3)
                    .as("low expansion", VOLUME),
            Column.text("source", "source", row -> row.source() == null ? null : Columns.source(row.source())));

    private SwellTable() {}

    static Table table(List<HoseSwell> rows, Display display) {
        return Listing.table(COLUMNS, rows, display);
    }

    static String heading(String caseName) {
        return "Hose swell, the most new hose may have, case " + caseName;
    }

    /** What the sums cost, and whose figures they are. */
    static List<String> notes(List<HoseSwell> rows, Display display) {
        List<String> notes = new ArrayList<>();
        double regular = sum(rows, HoseSwell::regularM3);
        double low = sum(rows, HoseSwell::lowExpansionM3);
        if (regular > 0) {
            notes.add("Together " + VOLUME.text(regular, display) + " (low expansion "
                    + VOLUME.text(low, display) + "): " + stroke(regular, 0.75, display) + " of the stroke of a 3/4 in"
                    + " master (" + stroke(low, 0.75, display) + "), " + stroke(regular, 1, display)
                    + " of a 1 in one ("
                    + stroke(low, 1, display) + "); at the pedal that times its ratio. Pads, calipers and air come"
                    + " on top.");
        }
        rows.stream()
                .filter(row -> row.source() != null)
                .findFirst()
                .ifPresent(row -> notes.add(String.format(
                        Locale.ROOT,
                        "swell: a straight line between the rows of %s; under the first row its own figure.",
                        Columns.source(java.util.Objects.requireNonNull(row.source())))));
        List<String> open = rows.stream()
                .filter(row -> Double.isNaN(row.regularM3()))
                .map(HoseSwell::part)
                .toList();
        if (!open.isEmpty()) {
            notes.add("No swell is known for " + String.join(", ", open)
                    + ": no row for this hose, or none for so high a pressure. Ask its maker.");
        }
        return notes;
    }

    private static double sum(List<HoseSwell> rows, ToDoubleFunction<HoseSwell> of) {
        return rows.stream().mapToDouble(of).filter(Double::isFinite).sum();
    }

    private static String stroke(double volumeM3, double boreInch, Display display) {
        double bore = Units.from(boreInch, Units.unit("in", Dimension.LENGTH));
        return STROKE.text(volumeM3 / (Math.PI / 4 * bore * bore), display);
    }
}
