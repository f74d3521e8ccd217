package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.LargestDraw;

/** The largest draws that hold as columns. In JSON the figures are in the SI unit named beside them. */
final class DrawColumns {
    static final List<Column<Row>> ALL = List.of(
            Column.text("of", "of", Row::of),
            Column.text("key", "key", row -> row.draw().knob().path()),
            Column.varying(
                    "now", "now", DrawColumns::scale, row -> row.draw().knob().si()),
            Column.varying(
                    "largest",
                    "largest that holds",
                    DrawColumns::scale,
                    row -> row.draw().usualSi()),
            Column.varying(
                    "surely",
                    "largest that holds over all that is sold",
                    DrawColumns::scale,
                    row -> row.draw().leastSi()),
            Column.text("unit", "unit", row -> row.draw().knob().dimension().si()),
            Column.text("ends", "what breaks beyond it", row -> row.draw().ends()));

    private DrawColumns() {}

    /**
     * One largest draw.
     *
     * @param of   of the circuit as built, or with the smallest change that holds
     * @param draw the draw
     */
    record Row(String of, LargestDraw draw) {}

    static Scale scale(Row row) {
        return StudyCells.scale(row.draw().knob().dimension());
    }

    static List<Row> of(CaseCheck check) {
        List<Row> rows = new ArrayList<>();
        if (check.draw() != null) {
            rows.add(new Row("as built", check.draw()));
        }
        CaseCheck.Mend mend = check.mend();
        if (mend != null && mend.draw() != null) {
            rows.add(new Row("with the smallest change", mend.draw()));
        }
        return rows;
    }
}
