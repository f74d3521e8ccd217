package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.fact.Figure;
import org.linedrop.study.LinerComparison;
import org.linedrop.study.LinerComparison.Row;
import org.linedrop.units.Display;

/** The answer to "rubber or PTFE at this dash size" as a list. */
public final class CompareReport {
    private static final Scale DROP = Scale.DROP;

    private CompareReport() {}

    /**
     * The comparison with its sentence on top.
     *
     * @param answer  the comparison
     * @param display units of the sentence
     * @return the list
     */
    public static Listing<Row> of(LinerComparison answer, Display display) {
        var question = answer.question();
        List<String> notes = new ArrayList<>();
        if (!answer.missing().isEmpty()) {
            notes.add("Not made, or not known here: " + String.join(", ", answer.missing()) + ".");
        }
        notes.add("? from memory. In brackets: what the largest and the smallest bores sold make of it.");
        notes.add(
                "to first: loss over that of the first family. flow: what passes at the loss of the first family. Asked"
                        + " for: " + question.flow() + ", "
                        + question.length() + " with ends " + question.ends() + ", " + question.fluid() + " at "
                        + question.temperature() + ".");
        notes.add("liner: no = not recommended, limited = short life, yes = suits. A PTFE liner for fuel must be the"
                + " conductive kind. Ask the hose maker before buying.");
        return Listing.of("compare", answer.sentence(display), COLUMNS, answer.rows(), notes);
    }

    private static final List<Column<Row>> COLUMNS = Cells.all(
            List.of(
                    Cells.words("size", "size", "size", row -> row.size().sizeText()),
                    Cells.words("family", "family", "hose", row -> row.size().family()),
                    band("bore low/usual/high", Scale.BORE),
                    Column.<Row>number("velocityMPerS", "speed", Scale.SPEED, Row::velocityMPerS)
                            .as("speed", Scale.SPEED),
                    Column.<Row>number("reynolds", "Re", Scale.PURE, Row::reynolds)
                            .as("Re", null, (row, look) -> Long.toString(Math.round(row.reynolds() / 10) * 10)),
                    Column.<Row>number("hoseDropPa", "hose", DROP, Row::hoseDropPa)
                            .as("in hose", DROP),
                    Column.<Row>number("endsDropPa", "two ends", DROP, Row::endsDropPa)
                            .as("in ends", DROP),
                    Column.<Row>number(
                                    "madeUpPa",
                                    "made up",
                                    DROP,
                                    row -> row.madeUpPa().value())
                            .as("loss made up (low-high)", DROP, (row, look) -> madeUp(row, look.display())),
                    Column.number(
                            "madeUpLowPa",
                            "made up low",
                            DROP,
                            row -> row.madeUpPa().low()),
                    Column.number(
                            "madeUpHighPa",
                            "made up high",
                            DROP,
                            row -> row.madeUpPa().high()),
                    Column.<Row>number("ratioToFirst", "x first", Scale.PURE, Row::ratioToFirst)
                            .as(
                                    "to first",
                                    null,
                                    (row, look) -> Double.isNaN(row.ratioToFirst())
                                            ? "-"
                                            : String.format(Locale.ROOT, "%.2f", row.ratioToFirst())),
                    Column.<Row>number("equalDropM3PerS", "flow at equal drop", Scale.FLOW, Row::equalDropM3PerS)
                            .as("flow", Scale.FLOW),
                    Cells.seen("min bend", Cells.LENGTH, true, row -> row.size().minBendRadiusM()),
                    Cells.words(
                            "grade",
                            "grade",
                            "liner",
                            row -> row.compatibility().grade().brief())),
            Cells.figure("boreM", "bore", Scale.BORE, row -> row.size().boreM()),
            Cells.figure(
                    "minBendRadiusM",
                    "minimum bend radius",
                    Cells.LENGTH,
                    row -> row.size().minBendRadiusM()),
            Cells.figure(
                    "massKgPerM",
                    "mass per metre",
                    Scale.PURE,
                    row -> row.size().massKgPerM()),
            Cells.figure(
                    "workingPressurePa",
                    "working pressure",
                    Cells.RATING,
                    row -> row.size().workingPressurePa()),
            List.of(Column.text(
                    "gradeSource",
                    "grade source",
                    row -> Cells.said(row.compatibility().source()))));

    private static Column<Row> band(String heading, Scale scale) {
        Column.Form<Row> form = new Column.Form<>(heading, scale, true, (row, look) -> {
            Figure bore = row.size().boreM();
            String mark = bore.status().doubtful() ? "?" : " ";
            return scale.number(bore.low(), look.display()) + "/" + scale.number(bore.value(), look.display()) + "/"
                    + scale.number(bore.high(), look.display()) + mark;
        });
        return new Column<>("", heading, null, null, row -> Double.NaN, row -> null, form);
    }

    private static String madeUp(Row row, Display display) {
        Figure made = row.madeUpPa();
        int places = made.value() < 1000 && display.us() ? 3 : DROP.decimals(display);
        return DROP.number(made.value(), display, places) + " (" + DROP.number(made.low(), display, places) + "-"
                + DROP.number(made.high(), display, places) + ")";
    }
}
