package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Status;
import org.linedrop.result.RatingRow;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** What hose is rated for against what the cases ask of it; never a word that it holds. */
final class RatingTable {
    /** Hose is sold by bar or psi. */
    private static final Scale BAR = Cells.scale(Dimension.GAUGE_PRESSURE, "bar", 1, "psi", 0);

    /** From here on nobody rates a hose to tenths. */
    private static final double WHOLE_PA = 1e6;

    /** In JSON value and rating are in the SI unit named beside them. */
    static final List<Column<RatingRow>> COLUMNS = List.of(
            Column.text("hose", "hose", row -> row.hose().name()),
            Column.text("quantity", "quantity", row -> row.rating().quantity()),
            Column.text("verdict", "verdict", row -> row.rating().verdict().word()),
            Column.text("case", "worst case", RatingRow::caseName),
            Column.varying(
                    "value", "value", RatingTable::scale, row -> row.rating().value()),
            Column.varying("rating", "rating", RatingTable::scale, row -> rating(row)),
            Column.text("unit", "unit", row -> temperature(row) ? "K" : "Pa"),
            Column.text("ratingStatus", "rating status", row -> status(row)),
            Column.text("ratingSource", "rating source", row -> source(row)),
            Column.text("text", "text", row -> row.rating().text()));

    private RatingTable() {}

    static List<String> lines(List<RatingRow> rows, Display display) {
        if (rows.isEmpty()) {
            return List.of();
        }
        return new ArrayList<>(table(rows, display).lines());
    }

    static Table table(List<RatingRow> rows, Display display) {
        Table table = new Table()
                .words("hose rating", 2)
                .words("worst case", 2)
                .fixed("value", true)
                .words("verdict", 2);
        for (RatingRow row : rows) {
            table.row(List.of(
                    row.hose().name() + " " + row.rating().quantity(),
                    row.caseName(),
                    scale(row).text(row.rating().value(), display),
                    verdict(row, display)));
        }
        return table;
    }

    static boolean temperature(RatingRow row) {
        return row.rating().quantity().endsWith("temperature")
                && !row.rating().quantity().startsWith("pressure");
    }

    static Scale scale(RatingRow row) {
        return temperature(row)
                ? Cells.TEMPERATURE
                : row.rating().quantity().equals("vacuum") ? Scale.DROP : Scale.PRESSURE;
    }

    private static double rating(RatingRow row) {
        Figure rating = row.rating().rating();
        return rating == null ? Double.NaN : rating.value();
    }

    private static @Nullable String status(RatingRow row) {
        Figure rating = row.rating().rating();
        return rating == null ? null : rating.status().word();
    }

    private static @Nullable String source(RatingRow row) {
        Figure rating = row.rating().rating();
        return rating == null ? null : Cells.said(rating.source());
    }

    /** The verdict in words: under or over a figure somebody gave, or why nobody can say. */
    static String verdict(RatingRow row, Display display) {
        RatingResult result = row.rating();
        Figure rating = result.rating();
        if (row.hose().neverJudged()) {
            return "NOT JUDGED: brake hose belongs to standards, law and licensed practice";
        }
        if (rating == null) {
            return "NOT JUDGED: no " + result.quantity() + " is known here; read it off the hose";
        }
        String figure =
                figure(row, rating.value(), display) + " " + rating.status().word();
        if (result.verdict() == RatingResult.Verdict.NOT_JUDGED) {
            return result.quantity().startsWith("pressure")
                    ? "NOT JUDGED: highest pressure and highest temperature are not rated together"
                    : "NOT JUDGED: no published " + result.quantity() + " here (" + figure + "); read it off the hose";
        }
        boolean above = (result.verdict() == RatingResult.Verdict.OVER)
                != result.quantity().equals("lowest temperature");
        String side = result.verdict() == RatingResult.Verdict.OVER
                ? (above ? "over" : "under").toUpperCase(Locale.ROOT)
                : above ? "over" : "under";
        boolean yours = rating.status() == Status.FROM_SHEET
                || rating.status() == Status.GIVEN
                || rating.status() == Status.MEASURED;
        return side
                + (yours
                        ? " the figure you gave ("
                        : " the figure of " + rating.source().title() + " (") + figure + ")";
    }

    private static String figure(RatingRow row, double value, Display display) {
        if (temperature(row)) {
            return Cells.TEMPERATURE.text(value, display);
        }
        if (row.rating().quantity().equals("vacuum")) {
            return Cells.VACUUM.text(value, display);
        }
        int decimals = value >= WHOLE_PA ? 0 : BAR.decimals(display);
        return BAR.number(value, display, decimals) + " " + BAR.unit(display).symbol();
    }
}
