package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Columns of catalogue rows: figures with their band, source and status. */
final class Cells {
    static final Scale LENGTH = scale(Dimension.LENGTH, "mm", 1, "in", 2);
    static final Scale BORE = Scale.BORE;
    static final Scale ROUGHNESS = scale(Dimension.LENGTH, "mm", 4, "in", 6);
    static final Scale RATING = scale(Dimension.GAUGE_PRESSURE, "kPa", 0, "psi", 0);
    static final Scale VACUUM = scale(Dimension.PRESSURE_DIFFERENCE, "kPa", 0, "inHg", 0);
    static final Scale TEMPERATURE = scale(Dimension.TEMPERATURE, "C", 0, "F", 0);

    private Cells() {}

    static Scale scale(Dimension dimension, String metric, int decimals, String us, int usDecimals) {
        return new Scale(Units.unit(metric, dimension), decimals, Units.unit(us, dimension), usDecimals);
    }

    /**
     * The columns of a figure for programs: low, usual, high, source, status.
     *
     * @param key  name of the figure with its unit, {@code boreM}
     * @param name the same in words
     */
    static <R> List<Column<R>> figure(String key, String name, Scale scale, Function<R, @Nullable Figure> figure) {
        String bare = key.replaceFirst("(KgPerM|Pa|M|K)$", "");
        String unit = key.substring(bare.length());
        List<Column<R>> columns = new ArrayList<>();
        columns.add(Column.number(key, name, scale, row -> value(figure.apply(row), Figure::value)));
        columns.add(
                Column.number(bare + "Low" + unit, name + " low", scale, row -> value(figure.apply(row), Figure::low)));
        columns.add(Column.number(
                bare + "High" + unit, name + " high", scale, row -> value(figure.apply(row), Figure::high)));
        columns.add(Column.text(bare + "Source", name + " source", row -> source(figure.apply(row))));
        columns.add(Column.text(bare + "Status", name + " status", row -> status(figure.apply(row))));
        return columns;
    }

    private static double value(@Nullable Figure figure, Function<Figure, Double> which) {
        return figure == null ? Double.NaN : which.apply(figure);
    }

    private static @Nullable String source(@Nullable Figure figure) {
        return figure == null ? null : said(figure.source());
    }

    private static @Nullable String status(@Nullable Figure figure) {
        return figure == null ? null : figure.status().word();
    }

    /** Title and locator; the status has a column of its own. */
    static String said(Source source) {
        return source.locator().isEmpty() ? source.title() : source.title() + ": " + source.locator();
    }

    /** A figure for the eye, with the mark of doubt where its column does not say how it is known. */
    static <R> Column<R> seen(String heading, Scale scale, boolean marked, Function<R, @Nullable Figure> figure) {
        return one(heading, scale, marked, figure, Figure::value);
    }

    /** One end of a figure for the eye. */
    static <R> Column<R> one(
            String heading,
            Scale scale,
            boolean marked,
            Function<R, @Nullable Figure> figure,
            Function<Figure, Double> which) {
        Column.Form<R> form = new Column.Form<>(
                heading, scale, true, (row, look) -> cell(figure.apply(row), scale, marked, which, look.display()));
        return new Column<>("", heading, null, null, row -> Double.NaN, row -> null, form);
    }

    private static String cell(
            @Nullable Figure figure, Scale scale, boolean marked, Function<Figure, Double> which, Display display) {
        String mark = !marked ? "" : figure != null && figure.status().doubtful() ? "?" : " ";
        return (figure == null ? "-" : scale.number(which.apply(figure), display)) + mark;
    }

    /** Words for the eye and for programs. */
    static <R> Column<R> words(String key, String name, String heading, Function<R, @Nullable String> text) {
        Column.Form<R> form = new Column.Form<>(heading, null, false, (row, look) -> dash(text.apply(row)));
        return new Column<>(key, name, null, null, row -> Double.NaN, text, form);
    }

    /** Words for programs, and others for the eye. */
    static <R> Column<R> words(
            String key, String name, String heading, Function<R, @Nullable String> text, Function<R, String> cell) {
        Column.Form<R> form = new Column.Form<>(heading, null, false, (row, look) -> cell.apply(row));
        return new Column<>(key, name, null, null, row -> Double.NaN, text, form);
    }

    /** A source: whole for programs, its title for the eye. */
    static <R> Column<R> titled(String key, String name, String heading, Function<R, Source> source) {
        return words(
                key,
                name,
                heading,
                row -> said(source.apply(row)),
                row -> source.apply(row).title());
    }

    /** To four digits, at most three of them behind the point: fluids spread over five decades. */
    static String digits(double si, Scale scale, Display display) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        int places = 3;
        double shown = Math.abs(Units.to(si, scale.unit(display)));
        while (places > 0 && shown * Math.pow(10, places) >= 1e4) {
            places--;
        }
        return scale.number(si, display, places);
    }

    private static String dash(@Nullable String text) {
        return text == null || text.isEmpty() ? "-" : text;
    }

    @SafeVarargs
    static <R> List<Column<R>> all(List<Column<R>>... columns) {
        List<Column<R>> all = new ArrayList<>();
        for (List<Column<R>> some : columns) {
            all.addAll(some);
        }
        return List.copyOf(all);
    }

    static @Nullable String known(String text) {
        return text.isEmpty() ? null : text;
    }
}
