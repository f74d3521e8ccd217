package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.study.Diagnosis;
import org.linedrop.study.Diagnosis.Accused;
import org.linedrop.study.Diagnosis.Compared;
import org.linedrop.study.Diagnosis.Finding;
import org.linedrop.study.Diagnosis.Fitted;
import org.linedrop.study.Diagnosis.Hint;
import org.linedrop.units.Display;

/** What readings say of a circuit, as a list. */
public final class DiagnosisReport {
    private DiagnosisReport() {}

    /**
     * The readings with the sentence on top; suspects or fitted keys, and gauges that would tell, below.
     *
     * @param answer  the answer
     * @param display units of the sentence
     * @return the list
     */
    public static Listing<?> of(Diagnosis answer, Display display) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "Errors are two standard deviations. Where none was given a usual gauge is taken: 2 % of a pressure and"
                        + " at least 2 kPa, 5 % of a flow (common practice, from memory).");
        notes.add(String.format(
                Locale.ROOT,
                "misfit: the squares of deviation over standard deviation, added up; %.1f for the file as written, about"
                        + " %d where all is explained.",
                answer.misfit(),
                answer.readings().size()));
        Listing<?> list = Listing.of(
                "diagnose",
                "Case " + answer.caseName() + ". " + answer.sentence(display),
                READINGS,
                answer.readings(),
                notes);
        if (answer.finding() == Finding.FITTED) {
            return list.below("fitted", "Fitted together", FITTED, answer.fitted());
        }
        return list.below("suspects", "Single causes, the best first", SUSPECTS, answer.suspects())
                .below("gauges", "Gauges that would tell", HINTS, answer.gauges());
    }

    private static final List<Column<Compared>> READINGS = List.of(
            Cells.words("place", "place", "place", row -> row.reading().gauge().words()),
            value("reading", "reading", row -> row.reading().value()),
            StudyCells.seen(
                    "+-",
                    true,
                    (row, look) -> StudyCells.difference(row.reading().gauge().dimension())
                            .text(row.reading().error(), look.display())),
            value("asWritten", "file as written", Compared::asWritten),
            value("best", "best explained", Compared::best));

    private static Column<Compared> value(
            String key, String name, java.util.function.ToDoubleFunction<Compared> value) {
        Column<Compared> column = Column.varying(
                key, name, row -> StudyCells.scale(row.reading().gauge().dimension()), value);
        return column.as(
                name,
                null,
                (row, look) -> StudyCells.scale(row.reading().gauge().dimension())
                        .text(value.applyAsDouble(row), look.display()));
    }

    private static final List<Column<Accused>> SUSPECTS = List.of(
            Cells.words("suspect", "suspect", "suspect", Accused::words),
            Column.number("value", "value SI", Scale.PURE, Accused::value),
            Column.number("low", "low SI", Scale.PURE, Accused::low),
            Column.number("high", "high SI", Scale.PURE, Accused::high),
            StudyCells.seen("between (95 %)", true, (row, look) -> between(row.low(), row.high())),
            Column.<Accused>number("misfit", "misfit", Scale.PURE, Accused::misfit)
                    .as("misfit", null, (row, look) -> String.format(Locale.ROOT, "%.1f", row.misfit())),
            Column.<Accused>number("share", "share of likelihood", Scale.PURE, Accused::share)
                    .as("likely", null, (row, look) -> StudyCells.percent(row.share())));

    private static final List<Column<Fitted>> FITTED = List.of(
            Cells.words("fitted", "fitted", "fitted", Fitted::words),
            Column.number("value", "value SI", Scale.PURE, Fitted::value),
            Column.number("low", "low SI", Scale.PURE, Fitted::low),
            Column.number("high", "high SI", Scale.PURE, Fitted::high),
            StudyCells.seen("between (95 %), SI", true, (row, look) -> between(row.low(), row.high())));

    private static final List<Column<Hint>> HINTS = List.of(
            Cells.words("place", "place", "place", row -> row.gauge().words()),
            Column.<Hint>number("spread", "spread over error", Scale.PURE, Hint::spread)
                    .as("apart", null, (row, look) -> String.format(Locale.ROOT, "%.1f errors", row.spread())),
            StudyCells.seen(
                    "would read, suspect by suspect",
                    false,
                    (row, look) -> String.join(
                            ", ",
                            row.values().stream()
                                    .map(value -> StudyCells.scale(row.gauge().dimension())
                                            .text(value, look.display()))
                                    .toList())));

    private static String between(double low, double high) {
        return Double.isNaN(low)
                ? "-"
                : String.format(Locale.ROOT, "%.3g to %.3g", Math.min(low, high), Math.max(low, high));
    }
}
