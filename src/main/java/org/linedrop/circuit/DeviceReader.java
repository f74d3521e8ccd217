package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Quantity;

/** Reads devices. */
final class DeviceReader {
    /** Exponent of a filter of which one point is known: mostly element, some housing. */
    private static final Figure FILTER_EXPONENT = new Figure(
            1.0, 1.3, 1.75, Source.of("one rated point: exponent of a mostly laminar element", Status.FROM_MEMORY));

    private static final Figure CLEAN = Figure.exact(1, Source.of("default: clean", Status.GIVEN));

    private final Scope scope;
    private final Problems problems;
    private final List<Notice> assumptions;

    DeviceReader(Scope scope, Problems problems, List<Notice> assumptions) {
        this.scope = scope;
        this.problems = problems;
        this.assumptions = assumptions;
    }

    @Nullable Device device(String id, Kind kind, Fields fields) {
        return switch (kind.word()) {
            case "pump" -> pump(id, fields);
            case "filter" -> filter(id, fields);
            default -> other(id, kind, "a " + kind.word(), fields);
        };
    }

    private @Nullable Device filter(String id, Fields fields) {
        RatedPoint drop = fields.get(Keys.DROP);
        if (drop == null) {
            return null;
        }
        if (fields.has(Keys.BYPASS_OPENS)) {
            return other(id, Keys.device("filter"), "a filter with a bypass", fields);
        }
        if (!fields.has(Keys.EXPONENT)) {
            assumptions.add(Notice.of(
                    "filter-exponent",
                    id,
                    "one rated point: drop taken as flow to the power 1.3 (1.0 to 1.75); a second point would settle it",
                    FILTER_EXPONENT.source()));
        }
        var clog = fields.get(Keys.CLOG);
        return new Filter(
                id,
                PointReader.position(fields),
                drop.drop(),
                drop.flow(),
                drop.viscosity(),
                fields.get(Keys.EXPONENT, FILTER_EXPONENT),
                clog == null ? CLEAN : clog.figure());
    }

    /** A device that is known by its words alone. */
    private @Nullable Device other(String id, Kind kind, String what, Fields fields) {
        Demand takes = fields.get(PointKeys.TAKES);
        if (takes != null) {
            Demands.question(fields, takes, id);
        }
        if (!fields.complete(kind)) {
            return null;
        }
        List<OtherDevice.Value> values = new ArrayList<>();
        for (Key<?> key : kind.keys()) {
            if (fields.has(key)) {
                values.add(new OtherDevice.Value(key.name(), fields.canonical(key)));
            }
        }
        return new OtherDevice(
                id, kind.word(), what, PointReader.position(fields), Ports.ofDevice(kind.word()), values);
    }

    private @Nullable Device pump(String id, Fields fields) {
        Quantity runsAt = fields.get(Keys.RUNS_AT);
        Tree said = fields.tree().get(Keys.CURVES_MARK.name());
        if (!(said instanceof Tree.Items items)) {
            if (fields.has(Keys.GIVES)) {
                String gives = fields.text(Keys.GIVES);
                boolean freeFlow = !gives.contains(" at ");
                fields.problem(
                        Keys.GIVES,
                        freeFlow
                                ? gives + " at what pressure and volts? A free-flow figure cannot say what reaches the"
                                        + " rail"
                                : "gives \"" + gives + "\": one point cannot say what reaches the rail",
                        "Write curves: with pressures and flows at the volts it runs at");
            } else {
                fields.problem(
                        Keys.CURVES_MARK,
                        "a pump needs its table",
                        "Write curves: and below it - {at: 13.5 V, pressure: 0 200 400 kPa, flow: 420 362 300 L/h}");
            }
            return null;
        }
        List<Pump.Curve> curves = new ArrayList<>();
        boolean whole = true;
        for (int i = 0; i < items.items().size(); i++) {
            Pump.Curve curve = curve(items.items().get(i), id + " curve " + (i + 1), runsAt);
            whole &= curve != null;
            if (curve != null) {
                curves.add(curve);
            }
        }
        if (!whole || runsAt == null || curves.isEmpty()) {
            return null;
        }
        curves.sort(Comparator.comparingDouble(Pump.Curve::at));
        double lowest = curves.get(0).at();
        double highest = curves.get(curves.size() - 1).at();
        if (!(runsAt.si() >= lowest && runsAt.si() <= highest)) {
            fields.problem(
                    Keys.RUNS_AT,
                    String.format(Locale.ROOT, "runs at %s is outside its curves", runsAt.text()),
                    "Give a curve at that figure or beyond it: a pump table is not extended");
            return null;
        }
        return new Pump(id, PointReader.position(fields), curves, runsAt.si(), PumpTables.at(curves, runsAt.si()));
    }

    private Pump.@Nullable Curve curve(Tree said, String path, @Nullable Quantity runsAt) {
        if (!(said instanceof Tree.Branch branch)) {
            problems.add(
                    problems.place(said.line(), said.column(), path),
                    "",
                    "",
                    "a curve has keys at, pressure and flow",
                    "Write - {at: 13.5 V, pressure: 0 200 400 kPa, flow: 420 362 300 L/h}");
            return null;
        }
        Fields fields = new Fields(branch, path, Keys.CURVE, List.of(), scope, problems);
        Quantity at = fields.get(Keys.AT);
        List<Quantity> pressures = fields.get(Keys.CURVE_PRESSURE);
        List<Quantity> flows = fields.get(Keys.CURVE_FLOW);
        if (at == null || pressures == null || flows == null) {
            return null;
        }
        if (runsAt != null && at.dimension() != runsAt.dimension()) {
            fields.problem(
                    Keys.AT,
                    "at " + at.text() + " and runs at " + runsAt.text() + " are no like figures",
                    "Give both in volts or both in rpm");
            return null;
        }
        if (pressures.size() != flows.size() || pressures.size() < 2) {
            fields.problem(
                    Keys.CURVE_FLOW,
                    pressures.size() + " pressures stand against " + flows.size() + " flows",
                    "Give as many flows as pressures, at least two");
            return null;
        }
        List<Double> rise = pressures.stream().map(Quantity::si).toList();
        List<Double> flow = flows.stream().map(Quantity::si).toList();
        for (int i = 1; i < rise.size(); i++) {
            if (!(rise.get(i) > rise.get(i - 1) && flow.get(i) < flow.get(i - 1))) {
                fields.problem(
                        Keys.CURVE_FLOW,
                        "from row " + i + " to row " + (i + 1) + " pressure must rise and flow must fall, but "
                                + pressures.get(i - 1).text() + " "
                                + flows.get(i - 1).text() + " is followed by "
                                + pressures.get(i).text() + " " + flows.get(i).text(),
                        "Write the rows from free flow to the highest pressure");
                return null;
            }
        }
        return new Pump.Curve(at.si(), rise, flow);
    }
}
