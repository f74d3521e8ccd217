package org.linedrop.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Figure;
import org.linedrop.result.LimitRow;
import org.linedrop.result.RatingRow;
import org.linedrop.study.Advice;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.LargestDraw;
import org.linedrop.units.Display;

/**
 * Tables for a spreadsheet. Numbers are plain, in the units of the heading, with as many digits as read back to the
 * same double. A text that a spreadsheet would take for a formula ({@code -6 to -5}) has an apostrophe before it. The
 * last lines carry the safety words in their first cell; their other cells are empty.
 */
public final class CsvReport {
    /** What a formula starts with, in the wide letters of East Asian keyboards too, which some spreadsheets also read. */
    private static final String FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20";

    private CsvReport() {}

    /**
     * The rows of every run.
     *
     * @param check   the cases; those that were not solved have no rows
     * @param display units of the numbers
     * @return a table, ending with a line end
     */
    public static String rows(FeedCheck check, Display display) {
        List<List<String>> records = new ArrayList<>();
        for (CaseCheck each : check.cases()) {
            if (Standing.solved(each)) {
                each.result().usual().rows().forEach(row -> records.add(caseCells(each, Columns.PARTS, row, display)));
            }
        }
        return table(check, caseHead(Columns.PARTS, display), records);
    }

    /**
     * The limits of every case, judged, with the largest draws that hold, each hose's ratings over all cases, and the
     * rules of thumb.
     *
     * @param check   the cases
     * @param display units of the numbers
     * @return a table, ending with a line end
     */
    public static String limits(FeedCheck check, Display display) {
        List<List<String>> records = new ArrayList<>();
        int unit = 0;
        while (!Columns.LIMITS.get(unit).key().equals("unit")) {
            unit++;
        }
        for (CaseCheck each : check.cases()) {
            for (LimitRow row : Standing.limits(each.result())) {
                List<String> cells = caseCells(each, Columns.LIMITS, row, display);
                cells.set(1 + unit, Columns.scale(row).unit(display).symbol());
                records.add(cells);
            }
            DrawColumns.of(each).forEach(draw -> records.add(draw(each.caseName(), draw, display)));
        }
        Standing.ratings(check.cases()).forEach(row -> records.add(rating(row, display)));
        if (Standing.judged(check.cases().get(0).result().circuit())) {
            Advice.of(check.cases()).forEach(advice -> records.add(advice(advice, display)));
        }
        return table(check, caseHead(Columns.LIMITS, display), records);
    }

    /** A largest draw as a line of the limits: the draw now as value, the largest as bound. */
    private static List<String> draw(String caseName, DrawColumns.Row row, Display display) {
        Scale scale = DrawColumns.scale(row);
        LargestDraw draw = row.draw();
        return line(caseName, key -> switch (key) {
            case "id" -> guarded("largest draw " + row.of() + ": " + draw.knob().path());
            case "value" -> scale.exact(draw.knob().si(), display);
            case "limit" -> scale.exact(draw.usualSi(), display);
            case "unit" -> scale.unit(display).symbol();
            case "margin" -> scale.exact(draw.usualSi() - draw.knob().si(), display);
            case "marginLow" -> scale.exact(draw.leastSi() - draw.knob().si(), display);
            case "reason" -> guarded("beyond it: " + draw.ends());
            default -> "";
        });
    }

    /** A rule of thumb as a line of the limits: its verdict is none of theirs. */
    private static List<String> advice(Advice advice, Display display) {
        Scale scale = Scale.usual(advice.dimension());
        return line(advice.caseName(), key -> switch (key) {
            case "id" ->
                guarded("advice: " + advice.words() + (advice.element().isEmpty() ? "" : ", " + advice.element()));
            case "verdict" -> AdviceColumns.verdict(advice);
            case "value" -> scale.exact(advice.value(), display);
            case "limit" -> scale.exact(advice.bound(), display);
            case "unit" -> scale.unit(display).symbol();
            case "reason" -> guarded("rule of thumb: " + Columns.source(advice.source()));
            default -> "";
        });
    }

    /** A rating as a line of the limits. */
    private static List<String> rating(RatingRow row, Display display) {
        Scale scale = RatingTable.scale(row);
        Figure rating = row.rating().rating();
        return line(row.caseName(), key -> switch (key) {
            case "id" -> guarded(row.hose().name() + " " + row.rating().quantity());
            case "verdict" -> row.rating().verdict().word();
            case "value" -> scale.exact(row.rating().value(), display);
            case "limit" -> rating == null ? "" : scale.exact(rating.value(), display);
            case "unit" -> scale.unit(display).symbol();
            case "reason" -> guarded(RatingTable.verdict(row, display));
            default -> "";
        });
    }

    /** A line among the limits of what is none: its cells by the key of the column. */
    private static List<String> line(String caseName, Function<String, String> cell) {
        List<String> cells = new ArrayList<>(List.of(guarded(caseName)));
        Columns.data(Columns.LIMITS).forEach(column -> cells.add(cell.apply(column.key())));
        return cells;
    }

    private static <R> List<String> caseHead(List<Column<R>> columns, Display display) {
        List<String> head = new ArrayList<>(List.of("case"));
        head.addAll(head(columns, display));
        return head;
    }

    private static <R> List<String> caseCells(CaseCheck check, List<Column<R>> columns, R row, Display display) {
        List<String> cells = new ArrayList<>(List.of(guarded(check.caseName())));
        cells.addAll(cells(columns, row, display));
        return cells;
    }

    static <R> List<String> head(List<Column<R>> columns, Display display) {
        List<String> head = new ArrayList<>();
        for (Column<R> column : Columns.data(columns)) {
            String unit = column.fixedScale() == null
                    ? ""
                    : column.fixedScale().unit(display).symbol();
            head.add(unit.isEmpty() ? column.name() : column.name() + " " + unit);
        }
        return head;
    }

    static <R> List<String> cells(List<Column<R>> columns, R row, Display display) {
        List<String> cells = new ArrayList<>();
        for (Column<R> column : Columns.data(columns)) {
            cells.add(
                    column.scale() == null
                            ? guarded(column.text().apply(row))
                            : column.scale().apply(row).exact(column.number().applyAsDouble(row), display));
        }
        return cells;
    }

    /** A spreadsheet runs a cell that starts so as a formula. */
    static String guarded(@Nullable String text) {
        if (text == null) {
            return "";
        }
        String clean = Plain.clean(text);
        String first = clean.stripLeading();
        return !first.isEmpty() && FORMULA.indexOf(first.charAt(0)) >= 0 ? "'" + clean : clean;
    }

    private static String table(FeedCheck check, List<String> head, List<List<String>> records) {
        Circuit circuit = check.cases().get(0).result().circuit();
        List<String> words = new ArrayList<>(Safety.cautions(circuit.service()));
        words.addAll(Safety.lines());
        return written(head, records, words);
    }

    /** A table whose last lines carry words in their first cell. */
    static String written(List<String> head, List<List<String>> records, List<String> words) {
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(out)) {
            csv.writeRecord(head);
            records.forEach(csv::writeRecord);
            for (String line : words) {
                List<String> cells = new ArrayList<>(List.of(line));
                while (cells.size() < head.size()) {
                    cells.add("");
                }
                csv.writeRecord(cells);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string takes everything
        }
        return out.toString();
    }
}
