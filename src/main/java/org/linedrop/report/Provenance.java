package org.linedrop.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.fact.Figure;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

/** Where the bores of a circuit are from: a line for each kind and size that differs. */
final class Provenance {
    private Provenance() {}

    /** A bore and what has it. */
    private record Known(String kind, String size, Figure boreM) {}

    static Table table(Result result, Display display) {
        Map<Known, Integer> found = new LinkedHashMap<>();
        for (PartRow row : result.rows()) {
            if (row.boreM().value() > 0) {
                found.merge(new Known(row.kind(), row.size(), row.boreM()), 1, Integer::sum);
            }
        }
        String unit = Scale.BORE.unit(display).symbol();
        Table table = new Table()
                .words("bore of", 2)
                .numbers("rows", "")
                .numbers("smallest", unit)
                .numbers("usual", unit)
                .numbers("largest", unit)
                .words("known as", 0)
                .words("source", 0);
        found.forEach((known, rows) -> table.row(List.of(
                (known.kind() + " " + known.size()).strip(),
                rows.toString(),
                Scale.BORE.number(known.boreM().low(), display),
                Scale.BORE.number(known.boreM().value(), display),
                Scale.BORE.number(known.boreM().high(), display),
                known.boreM().status().word(),
                Cells.said(known.boreM().source()))));
        return table;
    }
}
