package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.fluid.FluidState;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** One run of a solved case: a heading line, its rows, their sums, what a gauge at its end reads. */
final class RunTable {
    private final Result result;
    private final Run run;
    private final List<PartRow> rows;
    private final Display display;
    private final Column.Look look;

    RunTable(Result result, Run run, Display display) {
        this.result = result;
        this.run = run;
        this.rows = result.rows(run.id());
        this.display = display;
        double most = 0;
        for (PartRow row : rows) {
            if (isLine(row)) {
                most = Math.max(most, Math.max(Math.abs(row.frictionDropPa()), Math.abs(row.localDropPa())));
            }
        }
        this.look = new Column.Look(display, Scale.DROP.decimalsFor(most, display));
    }

    /** Whether a row loses pressure rather than makes it. */
    private static boolean isLine(PartRow row) {
        return !row.kind().endsWith("pump");
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>(Plain.joined(heading(), "   ", 2));
        if (rows.isEmpty()) {
            lines.add("no parts");
            return lines;
        }
        lines.addAll(table().lines());
        gauge().ifPresent(lines::add);
        return lines;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    Table table() {
        List<Column<PartRow>> columns = Columns.seen(Columns.PARTS);
        Table table = new Table();
        int indent = rows.stream().mapToInt(row -> number(row).length()).max().orElse(0);
        for (Column<PartRow> column : columns) {
            Column.Form<PartRow> form = java.util.Objects.requireNonNull(column.form());
            switch (form.heading()) {
                case "part" -> table.words("part", indent + 2);
                case "size" -> table.words("size", true);
                case "bore" -> table.numbers("bore ", form.unit(display) + " "); // over the figures, not the marks
                default -> table.numbers(form.heading(), form.unit(display));
            }
        }
        for (PartRow row : rows) {
            List<String> cells = new ArrayList<>();
            for (Column<PartRow> column : columns) {
                cells.add(java.util.Objects.requireNonNull(column.form()).cell().apply(row, look));
            }
            cells.set(0, Plain.left(number(row), indent) + "  " + row.name());
            table.row(cells);
        }
        if (!rows.stream().allMatch(RunTable::isLine)) {
            table.row(sums("without the pump", RunTable::isLine));
        }
        table.row(sums("whole run", row -> true));
        return table;
    }

    /** Entry and exit have no number. */
    private static String number(PartRow row) {
        return Character.isDigit(row.row().charAt(0)) ? row.row() : "";
    }

    List<String> heading() {
        Circuit circuit = result.circuit();
        double kelvin =
                (run.temperatureK() == null ? circuit.surroundings().temperatureK() : run.temperatureK()).value();
        FluidState state = circuit.surroundings().fluid().at(kelvin);
        boolean mixed = run.parts().stream().anyMatch(part -> part.temperatureK() != null);
        List<String> pieces = new ArrayList<>();
        pieces.add(run.id() + ": " + run.from().text() + " -> " + run.to().text());
        if (!rows.isEmpty()) {
            double flow = rows.get(0).flowM3PerS();
            pieces.add(Scale.FLOW.text(Math.abs(flow), display) + (flow < 0 ? " backwards" : ""));
        }
        pieces.add(circuit.surroundings().fluid().name() + " at "
                + display.text(kelvin, Dimension.TEMPERATURE) + ", "
                + display.text(state.densityKgPerM3(), Dimension.DENSITY) + ", "
                + display.text(state.kinematicViscosityM2PerS(), Dimension.KINEMATIC_VISCOSITY)
                + (mixed ? " (some parts at their own temperature)" : ""));
        pieces.add(caseWords(circuit));
        return pieces;
    }

    static String caseWords(Circuit circuit) {
        List<String> names = circuit.caseNames();
        String place =
                names.size() < 2 ? "" : " (" + (names.indexOf(circuit.caseName()) + 1) + " of " + names.size() + ")";
        return "case " + circuit.caseName() + place;
    }

    /** Sums over some rows; pressures in and out only where all are summed. */
    private List<String> sums(String name, Predicate<PartRow> which) {
        boolean all = rows.stream().allMatch(which);
        List<String> cells = new ArrayList<>();
        for (Column<PartRow> column : Columns.seen(Columns.PARTS)) {
            cells.add(
                    switch (column.key()) {
                        case "frictionDropPa", "localDropPa", "liftDropPa", "dropPa" ->
                            Columns.dropCell(sum(column.number(), which), look);
                        case "totalPressureInPa" -> all ? pressure(rows.get(0).totalPressureInPa()) : "";
                        case "totalPressureOutPa" ->
                            all ? pressure(rows.get(rows.size() - 1).totalPressureOutPa()) : "";
                        case "lossShare" -> share(which);
                        default -> "";
                    });
        }
        cells.set(0, name);
        return cells;
    }

    private String share(Predicate<PartRow> which) {
        boolean lost = rows.stream().anyMatch(row -> Double.isFinite(row.lossShare()));
        boolean pumped = !rows.stream().allMatch(RunTable::isLine);
        boolean whole = rows.stream().allMatch(which);
        return lost && pumped != whole
                ? Scale.SHARE.number(sum(row -> Double.isFinite(row.lossShare()) ? row.lossShare() : 0, which), display)
                : "";
    }

    private double sum(ToDoubleFunction<PartRow> of, Predicate<PartRow> which) {
        return rows.stream().filter(which).mapToDouble(of).sum();
    }

    private String pressure(double pressurePa) {
        return Scale.PRESSURE.number(pressurePa, display);
    }

    /** What a gauge at the end point reads; in a tank or where the pressure is given that is no news. */
    java.util.Optional<String> gauge() {
        String end = run.to().element();
        boolean news = result.circuit()
                .point(end)
                .filter(point -> !(point instanceof Tank) && !(point instanceof Held))
                .isPresent();
        return news
                ? result.point(end)
                        .map(point -> "A gauge at " + end + " reads "
                                + Scale.PRESSURE.text(point.staticPressurePa(), display) + " (static pressure).")
                : java.util.Optional.empty();
    }
}
