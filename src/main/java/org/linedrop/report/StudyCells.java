package org.linedrop.report;

import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.ToIntFunction;
import org.linedrop.circuit.Limit;
import org.linedrop.units.Dimension;

/** Columns that the reports of studies share. */
final class StudyCells {
    private StudyCells() {}

    /** A column for the eye whose cell depends on the units. */
    static <R> Column<R> seen(String heading, boolean right, BiFunction<R, Column.Look, String> cell) {
        Column.Form<R> form = new Column.Form<>(heading, null, right, cell);
        return new Column<>("", heading, null, null, row -> Double.NaN, row -> null, form);
    }

    static <R> Column<R> count(String key, String name, String heading, ToIntFunction<R> count) {
        return Column.<R>number(key, name, Scale.PURE, count::applyAsInt)
                .as(heading, null, (row, look) -> Integer.toString(count.applyAsInt(row)));
    }

    /** The scale of a quantity. */
    static Scale scale(Dimension dimension) {
        return Scale.usual(dimension);
    }

    /** The scale of a distance between two values of a quantity. */
    static Scale difference(Dimension dimension) {
        return Scale.usual(dimension.ofDifference());
    }

    static String name(Limit limit) {
        return limit.subject() + " " + limit.quantity();
    }

    /** A share of one in per cent. */
    static String percent(double share) {
        return Double.isNaN(share) ? "-" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
