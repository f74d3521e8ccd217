package org.linedrop.catalogue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** The table of sources and the units of the CSV columns; makes figures of cells. */
final class Sources {
    /** Titles and locators by key, in the order of the file. */
    private final Map<String, String[]> byKey = new LinkedHashMap<>();

    /** Units of the columns, found once, with the numbers converted so far: low, usual and high are often one. */
    private final Map<String, Column> columns = new LinkedHashMap<>();

    /** Exact conversion takes its time, and every start of a program waits for it. */
    private record Column(Unit unit, Map<Double, Double> known) {
        double si(double value) {
            return known.computeIfAbsent(value, number -> Units.from(number, unit));
        }
    }

    Sources() {
        for (CsvTable.Row row : CsvTable.rows("sources")) {
            byKey.put(row.text("key"), new String[] {row.text("title"), row.text("locator")});
        }
    }

    /** The source of a row with columns source, status and note. */
    Source of(CsvTable.Row row) {
        return of(row, "source", "status", row.text("note"));
    }

    Source of(CsvTable.Row row, String keyColumn, String statusColumn, String note) {
        String[] entry = byKey.get(row.text(keyColumn));
        if (entry == null) {
            throw row.fault("no source is called \"" + row.text(keyColumn) + "\"", null);
        }
        String locator = entry[1].isEmpty() || note.isEmpty() ? entry[1] + note : entry[1] + "; " + note;
        return new Source(entry[0], locator, status(row, row.text(statusColumn)));
    }

    /** The figure of a row with columns low, usual, high, unit, source, status and note. */
    Figure figure(CsvTable.Row row) {
        String unit = row.text("unit");
        return new Figure(
                toSi(row, row.number("low"), unit),
                toSi(row, row.number("usual"), unit),
                toSi(row, row.number("high"), unit),
                of(row));
    }

    /** One number without a band. */
    Figure exact(CsvTable.Row row, String column, String unit) {
        return Figure.exact(toSi(row, row.number(column), unit), of(row));
    }

    static Status status(CsvTable.Row row, String word) {
        for (Status status : Status.values()) {
            if (status.word().equals(word)) {
                return status;
            }
        }
        throw row.fault("no status is called \"" + word + "\"", null);
    }

    /** A number of a row in SI, converted once by the unit table. */
    double toSi(CsvTable.Row row, double value, String unit) {
        return switch (unit) {
            case "in", "mm" -> column(unit, Dimension.LENGTH).si(value);
            case "psi", "inHg" -> column(unit, Dimension.PRESSURE_DIFFERENCE).si(value);
            case "C" -> column(unit, Dimension.TEMPERATURE).si(value);
            case "kg/m", "m", "" -> value;
            case "cm3/ft" -> value * 1e-6 / column("ft", Dimension.LENGTH).si(1);
            default -> throw row.fault("no unit is called \"" + unit + "\"", null);
        };
    }

    private Column column(String unit, Dimension dimension) {
        return columns.computeIfAbsent(
                unit, symbol -> new Column(Units.unit(symbol, dimension), new LinkedHashMap<>()));
    }
}
