package org.linedrop.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.linedrop.study.Vary;
import org.linedrop.study.Vary.Kind;
import org.linedrop.study.Vary.Output;
import org.linedrop.study.Vary.Row;
import org.linedrop.study.VaryQuestion.Axis;
import org.linedrop.units.Dimension;
import org.linedrop.units.Unit;
import org.linedrop.units.Units;

/** What becomes of a circuit when keys are varied, as a list. */
public final class VaryReport {
    private static final MathContext SHOWN = new MathContext(6);

    /** More columns than these do not fit a page. */
    private static final int MOST_SHOWN = 6;

    private VaryReport() {}

    /**
     * The variants, a row each. The columns depend on what was varied.
     *
     * @param answer the answer
     * @return the list
     */
    public static Listing<Row> of(Vary answer) {
        List<Column<Row>> columns = new ArrayList<>();
        columns.add(StudyCells.count("variant", "variant", "no.", Row::number));
        columns.add(
                answer.question().cases().size() > 1
                        ? Cells.words("case", "case", "case", Row::caseName)
                        : Column.text("case", "case", Row::caseName));
        for (int i = 0; i < answer.question().axes().size(); i++) {
            columns.add(axis(answer.question().axes().get(i), i));
        }
        columns.add(Cells.words("status", "status", "solve", Row::status));
        columns.add(Cells.words("verdict", "verdict", "limits", Row::verdict));
        boolean limits = answer.outputs().stream().anyMatch(output -> output.kind() == Kind.LIMITED);
        int shown = 0;
        for (int i = 0; i < answer.outputs().size(); i++) {
            Output output = answer.outputs().get(i);
            boolean wanted = limits
                    ? output.kind() == Kind.LIMITED || output.kind() == Kind.MARGIN
                    : output.kind() == Kind.PRESSURE;
            columns.add(output(output, i, wanted && shown < MOST_SHOWN));
            shown += wanted ? 1 : 0;
        }
        List<String> notes = new ArrayList<>();
        notes.add("limits: holds means at usual, smallest and largest bores sold; figures are at usual bores.");
        notes.add("CSV and JSON also hold the pressure of every point and the flow of every run.");
        return Listing.of("vary", heading(answer), columns, answer.rows(), notes);
    }

    private static String heading(Vary answer) {
        List<String> axes = answer.question().axes().stream().map(Axis::path).toList();
        long hold = answer.rows().stream()
                .filter(row -> row.verdict().equals("holds"))
                .count();
        return String.join(" and ", axes) + " varied: " + answer.rows().size() + " variants, every limit holds in "
                + hold + " of them.";
    }

    private static Column<Row> axis(Axis axis, int i) {
        Dimension dimension = axis.dimension();
        double widest = Math.max(
                Math.abs(axis.values().get(0)),
                Math.abs(axis.values().get(axis.values().size() - 1)));
        Unit unit = Units.metric(widest, dimension);
        Scale scale = printed(dimension) ? Scale.usual(dimension) : new Scale(unit, 6, unit, 6);
        return Column.<Row>number(
                        "key" + (i + 1), axis.path(), scale, row -> row.at().get(i))
                .as(
                        axis.path(),
                        scale,
                        (row, look) -> new BigDecimal(Units.to(row.at().get(i), scale.unit(look.display())))
                                .round(SHOWN)
                                .stripTrailingZeros()
                                .toPlainString());
    }

    /** Whether reports have a unit of their own for it; a length of hose, for one, may be millimetres or metres. */
    private static boolean printed(Dimension dimension) {
        return switch (dimension) {
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE, TEMPERATURE, VOLUME_FLOW -> true;
            default -> false;
        };
    }

    private static Column<Row> output(Output output, int i, boolean seen) {
        String key = switch (output.kind()) {
            case LIMITED -> "limited";
            case MARGIN -> "margin";
            case PRESSURE -> "pressure";
            case FLOW -> "flow";
        };
        String name = output.subject() + " " + output.quantity() + (output.kind() == Kind.MARGIN ? " margin" : "");
        if (output.kind() == Kind.PRESSURE) {
            name = "at " + output.subject() + ": pressure"; // a limit may be on the same
        } else if (output.kind() == Kind.FLOW) {
            name = "in " + output.subject() + ": flow";
        }
        Scale scale = Scale.usual(output.dimension());
        Column<Row> column = Column.number(
                key + ":" + output.subject() + ":" + output.quantity(),
                name,
                scale,
                row -> row.values().get(i));
        return seen ? column.as(name, scale) : column;
    }
}
