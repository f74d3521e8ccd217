package org.linedrop.report;

import java.util.List;
import org.linedrop.study.Advice;

/** Rules of thumb as columns. In JSON value and bound are in the SI unit named beside them. */
final class AdviceColumns {
    static final List<Column<Advice>> ALL = List.of(
            Column.text("words", "advice", Advice::words),
            Column.text("element", "element", advice -> advice.element().isEmpty() ? null : advice.element()),
            Column.text("case", "case", Advice::caseName),
            Column.text("verdict", "verdict", AdviceColumns::verdict),
            Column.varying("value", "value", advice -> Scale.usual(advice.dimension()), Advice::value),
            Column.text("asks", "asks", advice -> advice.atLeast() ? "at least" : "at most"),
            Column.varying("bound", "bound", advice -> Scale.usual(advice.dimension()), Advice::bound),
            Column.text("unit", "unit", advice -> advice.dimension().si()),
            Column.text("source", "source", advice -> Columns.source(advice.source())));

    private AdviceColumns() {}

    /** Fine, or outside the rule; never the words of a limit. */
    static String verdict(Advice advice) {
        return advice.kept() ? "fine" : advice.atLeast() ? "under" : "over";
    }
}
