package org.linedrop.report;

import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.linedrop.units.Display;

/**
 * One column of a row type, for every renderer: JSON and CSV take those with a key, text tables those with a form.
 *
 * @param <R>     type of the row
 * @param key     name in JSON, which says the SI unit; empty where the column is made of others for the eye
 * @param name    name in CSV, without its unit
 * @param scale   units of a number; null for a text
 * @param fixedScale the one scale of all rows; null for a text and where each row has its own
 * @param number  value in SI of a number; NaN or infinite when not known
 * @param text    value of a text; null when not known
 * @param form    how a text table shows it; null when it does not
 */
record Column<R>(
        String key,
        String name,
        @Nullable Function<R, Scale> scale,
        @Nullable Scale fixedScale,
        ToDoubleFunction<R> number,
        Function<R, @Nullable String> text,
        @Nullable Form<R> form) {

    /**
     * How a column looks in a text table.
     *
     * @param <R>     type of the row
     * @param heading first line of its heading
     * @param scale   whose unit stands in the second line; null for none
     * @param right   whether its cells end in line rather than start in line
     * @param cell    the cell of a row
     */
    record Form<R>(String heading, @Nullable Scale scale, boolean right, BiFunction<R, Look, String> cell) {
        String unit(Display display) {
            return scale == null ? "" : scale.unit(display).symbol();
        }
    }

    /**
     * What a table's cells have in common.
     *
     * @param display    units
     * @param dropPlaces decimals of pressure drops, so that the largest shows two digits
     */
    record Look(Display display, int dropPlaces) {}

    static <R> Column<R> text(String key, String name, Function<R, @Nullable String> text) {
        return new Column<>(key, name, null, null, row -> Double.NaN, text, null);
    }

    static <R> Column<R> number(String key, String name, Scale scale, ToDoubleFunction<R> number) {
        return new Column<>(key, name, row -> scale, scale, number, row -> null, null);
    }

    /** A number whose unit is another in each row; another column says it. */
    static <R> Column<R> varying(String key, String name, Function<R, Scale> scale, ToDoubleFunction<R> number) {
        return new Column<>(key, name, scale, null, number, row -> null, null);
    }

    /** A column for the eye only. */
    static <R> Column<R> seen(String heading, boolean right, Function<R, String> cell) {
        Form<R> form = new Form<>(heading, null, right, (row, look) -> cell.apply(row));
        return new Column<>("", heading, null, null, row -> Double.NaN, row -> null, form);
    }

    /** This column, shown in text tables by its usual figure. */
    Column<R> as(String heading, Scale unit) {
        return as(heading, unit, (row, look) -> unit.number(number.applyAsDouble(row), look.display()));
    }

    /** This column, shown in text tables. */
    Column<R> as(String heading, @Nullable Scale unit, BiFunction<R, Look, String> cell) {
        return new Column<>(key, name, scale, fixedScale, number, text, new Form<>(heading, unit, true, cell));
    }

    /** This column, shown in text tables as words. */
    Column<R> leftAs(String heading, BiFunction<R, Look, String> cell) {
        return new Column<>(key, name, scale, fixedScale, number, text, new Form<>(heading, null, false, cell));
    }

    boolean isNumber() {
        return scale != null;
    }

    boolean isData() {
        return !key.isEmpty();
    }
}
