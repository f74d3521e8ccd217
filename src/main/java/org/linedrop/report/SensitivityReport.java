package org.linedrop.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.linedrop.circuit.Circuit;
import org.linedrop.study.Knob;
import org.linedrop.study.Output;
import org.linedrop.study.Sensitivities;
import org.linedrop.study.Sensitivities.Row;
import org.linedrop.study.Sensitivities.Slope;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** What every key does to every output: a table to read by natural steps, and derivatives in SI for programs. */
public final class SensitivityReport {
    /** Outputs that stand side by side on a page. */
    private static final int COLUMNS = 4;

    private SensitivityReport() {}

    /**
     * A pair of output and key.
     *
     * @param output the output
     * @param value  its value in SI
     * @param knob   the key
     * @param slope  SI over SI
     */
    record Pair(Output output, double value, Knob knob, Slope slope) {}

    /**
     * Every pair, for programs and spreadsheets.
     *
     * @param answer the sensitivities
     * @return the list; its numbers are SI in CSV too, for a derivative in mixed units helps nobody
     */
    public static Listing<?> pairs(Sensitivities answer) {
        List<Pair> pairs = new ArrayList<>();
        for (int o = 0; o < answer.outputs().size(); o++) {
            for (Row row : answer.rows()) {
                pairs.add(new Pair(
                        answer.outputs().get(o),
                        answer.values().get(o),
                        row.knob(),
                        row.slopes().get(o)));
            }
        }
        return Listing.of("sensitivities", heading(answer.circuit()), PAIRS, pairs, notes());
    }

    /**
     * A page: what a natural step of each key does to each output.
     *
     * @param answer  the sensitivities
     * @param display units
     * @return the page, ending with a line end
     */
    public static String text(Sensitivities answer, Display display) {
        List<Integer> outputs = new ArrayList<>();
        for (int o = 0; o < answer.outputs().size(); o++) {
            int at = o;
            if (answer.rows().stream().anyMatch(row -> moves(row.slopes().get(at)))) {
                outputs.add(o);
            }
        }
        List<Integer> first = outputs.subList(0, Math.min(COLUMNS, outputs.size()));
        Listing<Row> listing = Listing.of(
                "sensitivities",
                heading(answer.circuit()),
                columns(answer, first, display),
                rows(answer, first),
                notes());
        for (int from = COLUMNS; from < outputs.size(); from += COLUMNS) {
            List<Integer> some = outputs.subList(from, Math.min(from + COLUMNS, outputs.size()));
            listing = listing.below(
                    "more" + from, "The same, other outputs", columns(answer, some, display), rows(answer, some));
        }
        return listing.text(display);
    }

    private static boolean moves(Slope slope) {
        return Math.abs(slope.value()) > 0;
    }

    private static String heading(Circuit circuit) {
        return "What one step more of each key does, case " + circuit.caseName()
                + ": by the slope there, so for small steps only.";
    }

    private static List<String> notes() {
        return List.of(
                "a / b: at a joint of two laws, or at the end of what the key takes, one step less and one step more are"
                        + " different; - where there is no such side.",
                "Derivatives: --format csv or json.");
    }

    /** The key that moves the first of the outputs most comes first. */
    private static List<Row> rows(Sensitivities answer, List<Integer> outputs) {
        List<Row> rows = new ArrayList<>(answer.rows().stream()
                .filter(row -> outputs.stream().anyMatch(o -> moves(row.slopes().get(o))))
                .toList());
        if (!outputs.isEmpty()) {
            rows.sort(Comparator.comparingDouble(
                    row -> -Math.abs(row.slopes().get(outputs.get(0)).value() * step(row.knob(), Display.METRIC))));
        }
        return rows;
    }

    private static List<Column<Row>> columns(Sensitivities answer, List<Integer> outputs, Display display) {
        List<Column<Row>> columns = new ArrayList<>();
        columns.add(Cells.words("key", "key", "key", row -> row.knob().path()));
        columns.add(Column.seen("is", true, row -> row.knob().shown(row.knob().si(), display)));
        columns.add(Column.seen("step", true, row -> "+" + shownStep(row.knob(), display)));
        for (int o : outputs) {
            Output output = answer.outputs().get(o);
            Scale scale = output.dimension() == Dimension.GAUGE_PRESSURE ? Scale.DROP : Scale.usual(output.dimension());
            columns.add(Column.<Row>number(
                            "o" + o,
                            output.id(),
                            scale,
                            row -> row.slopes().get(o).value())
                    .as(output.id(), scale, (row, look) -> cell(row, o, scale, look.display())));
        }
        return columns;
    }

    private static String cell(Row row, int output, Scale scale, Display display) {
        Slope slope = row.slopes().get(output);
        double step = step(row.knob(), display);
        if (!slope.isJoint()) {
            return BottleneckReport.digits(slope.value() * step, scale, display);
        }
        return BottleneckReport.digits(slope.left() * step, scale, display) + " / "
                + BottleneckReport.digits(slope.right() * step, scale, display);
    }

    /** A step of a size that somebody would take. */
    private static double step(Knob knob, Display display) {
        boolean us = display.us();
        return switch (knob.dimension()) {
            case LENGTH -> {
                if (knob.key().endsWith("bore") || knob.key().equals("restrictor")) {
                    yield us ? 0.005 * 0.0254 : 1e-4;
                }
                yield knob.key().equals("altitude") ? us ? 304.8 : 100 : us ? 0.3048 : 0.1;
            }
            case TEMPERATURE -> us ? 5 / 9.0 : 1;
            case VOLTAGE -> 0.1;
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> us ? 6894.757 : 1000;
            case RATIO -> knob.key().equals("clog") ? 0.1 : 0.01 * nonZero(knob.si());
            default -> 0.01 * nonZero(knob.si());
        };
    }

    private static double nonZero(double si) {
        return si == 0 ? 1 : Math.abs(si);
    }

    private static String shownStep(Knob knob, Display display) {
        boolean us = display.us();
        return switch (knob.dimension()) {
            case LENGTH -> {
                if (knob.key().endsWith("bore") || knob.key().equals("restrictor")) {
                    yield us ? "0.005 in" : "0.1 mm";
                }
                yield knob.key().equals("altitude") ? us ? "1000 ft" : "100 m" : us ? "1 ft" : "0.1 m";
            }
            case TEMPERATURE -> us ? "1 F" : "1 C";
            case VOLTAGE -> "0.1 V";
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> us ? "1 psi" : "1 kPa";
            case RATIO -> knob.key().equals("clog") ? "0.1 x" : knob.si() == 0 ? "1 %" : "1 % of it";
            default -> "1 % of it";
        };
    }

    private static final List<Column<Pair>> PAIRS = List.of(
            Cells.words("output", "output", "output", pair -> pair.output().id()),
            Column.number("value", "value", Scale.PURE, Pair::value),
            Column.text("unit", "unit", pair -> pair.output().dimension().si()),
            Cells.words("key", "key", "key", pair -> pair.knob().path()),
            Column.number(
                    "keyValue", "key value", Scale.PURE, pair -> pair.knob().si()),
            Column.text("keyUnit", "key unit", pair -> pair.knob().dimension().si()),
            Column.number(
                    "derivative", "derivative", Scale.PURE, pair -> pair.slope().value()),
            Column.number(
                    "derivativeLeft",
                    "derivative left",
                    Scale.PURE,
                    pair -> pair.slope().left()),
            Column.number(
                    "derivativeRight",
                    "derivative right",
                    Scale.PURE,
                    pair -> pair.slope().right()),
            Column.text("joint", "joint", pair -> pair.slope().isJoint() ? "yes" : "no"));
}
