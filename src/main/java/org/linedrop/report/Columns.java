package org.linedrop.report;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.LimitRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;

/** The column lists: one for each type of row, whatever prints it. */
final class Columns {
    /** The rows of a run. */
    static final List<Column<PartRow>> PARTS = List.of(
            Column.seen("part", false, PartRow::name),
            Column.text("run", "run", PartRow::run),
            Column.text("row", "row", PartRow::row),
            Column.text("name", "name", PartRow::name),
            Column.text("part", "part", PartRow::part),
            Column.text("kind", "kind", PartRow::kind),
            Column.<PartRow>text("size", "size", row -> row.size().isEmpty() ? null : row.size())
                    .as("size", null, (row, look) -> row.size()),
            Column.<PartRow>number(
                            "boreM",
                            "bore",
                            Scale.BORE,
                            row -> bore(row, row.boreM().value()))
                    .as("bore", Scale.BORE, Columns::boreCell),
            Column.number(
                    "boreLowM",
                    "bore low",
                    Scale.BORE,
                    row -> bore(row, row.boreM().low())),
            Column.number(
                    "boreHighM",
                    "bore high",
                    Scale.BORE,
                    row -> bore(row, row.boreM().high())),
            Column.text(
                    "boreFrom",
                    "bore from",
                    row -> hasBore(row) ? row.boreM().status().word() : null),
            Column.number("massFlowKgPerS", "mass flow", Scale.MASS_FLOW, PartRow::massFlowKgPerS),
            Column.number("flowM3PerS", "flow", Scale.FLOW, PartRow::flowM3PerS),
            Column.number("velocityMPerS", "speed", Scale.SPEED, PartRow::velocityMPerS)
                    .as("speed", Scale.SPEED),
            Column.number("reynolds", "Re", Scale.PURE, PartRow::reynolds)
                    .as("Re", null, (row, look) -> reynolds(row.reynolds())),
            Column.text("regime", "type", Columns::regime)
                    .as(
                            "type",
                            null,
                            (row, look) -> Double.isFinite(row.reynolds())
                                    ? row.regime().word()
                                    : "-"),
            Column.seen("f or K", true, Columns::factor),
            Column.number("frictionFactor", "friction factor", Scale.PURE, PartRow::frictionFactor),
            Column.number("lossCoefficient", "loss coefficient", Scale.PURE, PartRow::lossCoefficient),
            drop("frictionDropPa", "friction", PartRow::frictionDropPa),
            drop("localDropPa", "local", PartRow::localDropPa),
            drop("liftDropPa", "lift", PartRow::liftDropPa),
            drop("dropPa", "drop", PartRow::dropPa),
            Column.number("totalPressureInPa", "total pressure in", Scale.PRESSURE, PartRow::totalPressureInPa)
                    .as("in", Scale.PRESSURE),
            Column.number("totalPressureOutPa", "total pressure out", Scale.PRESSURE, PartRow::totalPressureOutPa)
                    .as("out", Scale.PRESSURE),
            Column.number("staticPressureInPa", "static pressure in", Scale.PRESSURE, PartRow::staticPressureInPa),
            Column.number("staticPressureOutPa", "static pressure out", Scale.PRESSURE, PartRow::staticPressureOutPa),
            Column.number("velocityHeadInPa", "velocity head in", Scale.DROP, PartRow::velocityHeadInPa),
            Column.number("velocityHeadOutPa", "velocity head out", Scale.DROP, PartRow::velocityHeadOutPa),
            Column.number("lossShare", "share", Scale.SHARE, PartRow::lossShare).as("share", Scale.SHARE));

    /** Points. */
    static final List<Column<PointRow>> POINTS = List.of(
            Column.text("id", "point", PointRow::id),
            Column.number("totalPressurePa", "total pressure", Scale.PRESSURE, PointRow::totalPressurePa),
            Column.number("staticPressurePa", "static pressure", Scale.PRESSURE, PointRow::staticPressurePa),
            Column.number("staticBoreM", "static bore", Scale.BORE, PointRow::staticBoreM),
            Column.number("absolutePressurePa", "absolute pressure", Scale.ABSOLUTE, PointRow::absolutePressurePa));

    /** Devices; the figures of each follow behind, by their own keys. */
    static final List<Column<DeviceRow>> DEVICES = List.of(
            Column.text("id", "device", DeviceRow::id),
            Column.text("kind", "kind", DeviceRow::kind),
            Column.text("state", "state", DeviceRow::state),
            Column.number("massFlowKgPerS", "mass flow", Scale.MASS_FLOW, DeviceRow::massFlowKgPerS),
            Column.number("flowM3PerS", "flow", Scale.FLOW, DeviceRow::flowM3PerS)
                    .as("flow", Scale.FLOW),
            Column.number("inletPressurePa", "inlet pressure", Scale.PRESSURE, DeviceRow::inletPressurePa)
                    .as("inlet", Scale.PRESSURE),
            Column.number("outletPressurePa", "outlet pressure", Scale.PRESSURE, DeviceRow::outletPressurePa)
                    .as("outlet", Scale.PRESSURE),
            Column.number("dropPa", "drop", Scale.DROP, DeviceRow::dropPa));

    /** Limits of one case. In JSON value, limit and margins are in the SI unit named beside them. */
    static final List<Column<LimitRow>> LIMITS = List.of(
            Column.text("id", "limit", row -> row.limit().id()),
            Column.text("verdict", "verdict", row -> row.verdict().word()),
            Column.varying("value", "value", Columns::scale, LimitRow::value),
            Column.varying("limit", "bound", Columns::scale, LimitRow::bound),
            Column.text("unit", "unit", LimitRow::unit),
            Column.varying("margin", "margin", Columns::differences, LimitRow::margin),
            Column.varying("marginLow", "least margin", Columns::differences, LimitRow::marginLow),
            Column.varying("marginHigh", "most margin", Columns::differences, LimitRow::marginHigh),
            Column.text("state", "state", row -> row.state().isEmpty() ? null : row.state()),
            Column.text("reason", "reason", row -> row.reason().isEmpty() ? null : row.reason()));

    /** Warnings and assumptions. */
    static final List<Column<Notice>> NOTICES = List.of(
            Column.text("id", "id", Notice::id),
            Column.text("element", "element", notice -> notice.element().isEmpty() ? null : notice.element()),
            Column.text("text", "text", Notice::text),
            Column.number("value", "value", Scale.PURE, Notice::value),
            Column.number("limit", "limit", Scale.PURE, Notice::limit),
            Column.text("unit", "unit", notice -> Double.isNaN(notice.value()) ? null : notice.unit()),
            Column.text("source", "source", notice -> source(notice.source())));

    private static final double LARGEST_FACTOR = 1e5;

    private Columns() {}

    private static Column<PartRow> drop(String key, String name, ToDoubleFunction<PartRow> drop) {
        Column<PartRow> column = Column.number(key, name, Scale.DROP, drop);
        return column.as(name, Scale.DROP, (row, look) -> dropCell(drop.applyAsDouble(row), look));
    }

    /** Nothing lost is a dash, so that the eye finds what is. */
    static String dropCell(double dropPa, Column.Look look) {
        return dropPa == 0 ? "-" : Scale.DROP.number(dropPa, look.display(), look.dropPlaces());
    }

    private static boolean hasBore(PartRow row) {
        return row.boreM().value() > 0;
    }

    private static double bore(PartRow row, double boreM) {
        return hasBore(row) ? boreM : Double.NaN;
    }

    private static String boreCell(PartRow row, Column.Look look) {
        return Scale.BORE.number(bore(row, row.boreM().value()), look.display()) + mark(row);
    }

    /** The mark behind a bore; a space where there is none, so that the figures stay in line. */
    static String mark(PartRow row) {
        if (!hasBore(row)) {
            return " ";
        }
        Figure bore = row.boreM();
        return bore.status().doubtful() ? "?" : bore.status() == Status.MEASURED ? "*" : " ";
    }

    private static @Nullable String regime(PartRow row) {
        return Double.isFinite(row.reynolds()) ? row.regime().word() : null;
    }

    /** To four digits: nobody knows a Reynolds number better. */
    static String reynolds(double reynolds) {
        if (!Double.isFinite(reynolds)) {
            return "-";
        }
        double unit = 1;
        while (Math.abs(reynolds) >= 1e4 * unit) {
            unit *= 10;
        }
        return String.format(Locale.ROOT, "%.0f", Math.rint(reynolds / unit) * unit);
    }

    private static String factor(PartRow row) {
        // where a valve is shut, 64/Re of what is left of the flow is no figure
        if (Math.abs(row.frictionFactor()) < LARGEST_FACTOR) {
            return String.format(Locale.ROOT, "f %.4f", row.frictionFactor());
        }
        return Math.abs(row.lossCoefficient()) < LARGEST_FACTOR
                ? String.format(Locale.ROOT, "K %.2f", row.lossCoefficient())
                : "-";
    }

    static Scale scale(LimitRow row) {
        return Scale.usual(row.dimension());
    }

    /** Margins are differences, also of gauge and absolute pressures. */
    static Scale differences(LimitRow row) {
        Scale scale = scale(row);
        return row.unit().equals("Pa")
                ? new Scale(Scale.DROP.metric(), scale.decimals(), Scale.DROP.us(), scale.usDecimals())
                : scale;
    }

    static String source(Source source) {
        String locator = source.locator().isEmpty() ? "" : ": " + source.locator();
        return source.title() + locator + " (" + source.status().word() + ")";
    }

    static <R> List<Column<R>> seen(List<Column<R>> columns) {
        return columns.stream().filter(column -> column.form() != null).toList();
    }

    static <R> List<Column<R>> data(List<Column<R>> columns) {
        return columns.stream().filter(Column::isData).toList();
    }
}
