package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.result.CaseResult;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.result.SolveStatus;
import org.linedrop.units.Display;

/** What a gauge at each point reads at usual bores, and at the smallest and largest that are sold. */
final class PointTable {
    private PointTable() {}

    static Table of(CaseResult result, Display display) {
        String unit = Scale.PRESSURE.unit(display).symbol();
        Table table = new Table()
                .words("gauge at", 2)
                .numbers("usual bores", unit)
                .numbers("smallest bores", unit)
                .numbers("largest bores", unit)
                .numbers("total, usual bores", unit);
        for (PointRow point : result.usual().points()) {
            List<String> cells = new ArrayList<>();
            cells.add(point.id());
            cells.add(Scale.PRESSURE.number(point.staticPressurePa(), display));
            cells.add(reading(result.smallest(), point.id(), display));
            cells.add(reading(result.largest(), point.id(), display));
            cells.add(Scale.PRESSURE.number(point.totalPressurePa(), display));
            table.row(cells);
        }
        return table;
    }

    private static String reading(Result result, String point, Display display) {
        if (!SolveStatus.of(result).converged()) {
            return "not solved";
        }
        return result.point(point)
                .map(row -> Scale.PRESSURE.number(row.staticPressurePa(), display))
                .orElse("-");
    }
}
