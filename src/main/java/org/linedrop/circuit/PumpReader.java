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
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.Units;

/** Reads pumps. */
final class PumpReader {
    /** Nobody has measured a pump at a twentieth of the speed it runs at. */
    private static final double MOST_TIMES = 20;

    /** How far the two sides of a single point are from level and upright, so that flow and pressure stay unique. */
    private static final double NEARLY_UPRIGHT = 1e-3;

    private final Scope scope;
    private final Problems problems;
    private final List<Notice> assumptions;
    private final @Nullable Engine engine;

    PumpReader(Scope scope, Problems problems, List<Notice> assumptions, @Nullable Engine engine) {
        this.scope = scope;
        this.problems = problems;
        this.assumptions = assumptions;
        this.engine = engine;
    }

    @Nullable Device gearPump(String id, Fields fields) {
        Quantity speed = speed(fields);
        if (speed == null) {
            return null;
        }
        RatedPoint leaks = DeviceReader.given(fields, DeviceKeys.LEAKS);
        if (!(leaks.drop().value() > 0)) {
            fields.problem(DeviceKeys.LEAKS, "it leaks at no pressure", "Give what slips back at a pressure over 0");
            return null;
        }
        return new GearPump(
                id, PointReader.position(fields), DeviceReader.given(fields, DeviceKeys.MOVES), leaks, speed.si());
    }

    /** What a pump runs at: its own volts or speed, or so many times the engine's. */
    private @Nullable Quantity speed(Fields fields) {
        Quantity runsAt = fields.get(DeviceKeys.RUNS_AT);
        var turns = fields.get(DeviceKeys.TURNS);
        boolean unread =
                (fields.has(DeviceKeys.RUNS_AT) && runsAt == null) || (fields.has(DeviceKeys.TURNS) && turns == null);
        if (unread) {
            return null; // complained of already
        }
        if ((runsAt == null) == (turns == null)) {
            fields.problem(
                    DeviceKeys.RUNS_AT,
                    runsAt == null ? "what it runs at is missing" : "both runs at and turns are given",
                    "Write runs at: 13.5 V, measured at the pump under load; or turns: 1.0 x engine where the engine"
                            + " drives it");
            return null;
        }
        if (turns == null) {
            return runsAt;
        }
        Figure engineSpeed = engine == null ? null : engine.speedRevPerS();
        if (engineSpeed == null) {
            fields.problem(
                    DeviceKeys.TURNS,
                    "it turns with the engine, whose speed is not given",
                    "Write engine: {speed: 6500 rpm}");
            return null;
        }
        double own = turns.figure().value() * engineSpeed.value();
        return new Quantity(own, Dimension.ROTATION, Units.unit("rpm"));
    }

    @Nullable Device pump(String id, Fields fields) {
        Quantity runsAt = speed(fields);
        Tree said = fields.tree().get(DeviceKeys.CURVES_MARK.name());
        if (!(said instanceof Tree.Items items)) {
            return ofOnePoint(id, fields, runsAt);
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
        boolean inside = runsAt.si() >= lowest && runsAt.si() <= highest;
        boolean bySpeed = runsAt.dimension() == Dimension.ROTATION;
        if (!inside && !(bySpeed && runsAt.si() > 0)) {
            fields.problem(
                    DeviceKeys.RUNS_AT,
                    String.format(Locale.ROOT, "runs at %s is outside its curves", runsAt.text()),
                    bySpeed
                            ? "A pump that stands still is taken out of the file, or replaced by a passage"
                            : "Give a curve at that figure or beyond it: a table by volts is not extended");
            return null;
        }
        if (runsAt.si() > MOST_TIMES * highest || runsAt.si() * MOST_TIMES < lowest) {
            fields.problem(
                    DeviceKeys.RUNS_AT,
                    String.format(
                            Locale.ROOT,
                            "runs at %s is more than %.0f times off its curves",
                            runsAt.text(),
                            MOST_TIMES),
                    "Give a curve nearer to it: the affinity laws do not reach that far");
            return null;
        }
        if (!inside) {
            assumptions.add(Notice.of(
                    "affinity",
                    id,
                    String.format(
                            Locale.ROOT,
                            "no curve at %s: the nearest is taken with flow by speed and pressure by its square",
                            runsAt.text()),
                    Source.of("affinity laws of centrifugal pumps", Status.DERIVED)));
        }
        return new Pump(
                id,
                PointReader.position(fields),
                curves,
                runsAt.si(),
                PumpTables.at(curves, runsAt.si()),
                false,
                fields.get(DeviceKeys.BETWEEN_ROWS, Pump.SMOOTH).equals(Pump.STRAIGHT));
    }

    /** A pump of which one point of a catalogue is known: at least that flow up to that pressure, and nothing beyond. */
    private @Nullable Device ofOnePoint(String id, Fields fields, @Nullable Quantity runsAt) {
        RatedPoint gives = fields.get(DeviceKeys.GIVES);
        if (gives == null) {
            if (!fields.has(DeviceKeys.GIVES)) {
                fields.problem(
                        DeviceKeys.CURVES_MARK,
                        "a pump needs its table",
                        "Write curves: and below it - {at: 13.5 V, pressure: 0 200 400 kPa, flow: 420 362 300 L/h}; where the"
                                + " sheet has one point only, gives: 255 L/h at 276 kPa");
            }
            return null;
        }
        if (runsAt == null) {
            return null;
        }
        if (!(gives.drop().value() > 0)) {
            fields.problem(
                    DeviceKeys.GIVES,
                    fields.text(DeviceKeys.GIVES) + ": a free-flow figure cannot say what reaches the rail",
                    "Give a flow at a pressure, or curves:");
            return null;
        }
        assumptions.add(Notice.of(
                "one-point-pump",
                id,
                "known by one point: it gives at least " + fields.text(DeviceKeys.GIVES)
                        + ", and what it does at more pressure is not known",
                gives.flow().source()));
        double rise = gives.drop().value();
        double flow = gives.flow().value();
        Pump.Curve table = new Pump.Curve(
                runsAt.si(),
                List.of(0.0, rise, rise * (1 + NEARLY_UPRIGHT)),
                List.of(flow * (1 + NEARLY_UPRIGHT), flow, 0.0));
        return new Pump(id, PointReader.position(fields), List.of(table), runsAt.si(), table, true, false);
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
        Fields fields = new Fields(branch, path, DeviceKeys.CURVE, List.of(), scope, problems);
        Quantity at = fields.get(DeviceKeys.AT);
        List<Quantity> pressures = fields.get(DeviceKeys.CURVE_PRESSURE);
        List<Quantity> flows = fields.get(DeviceKeys.CURVE_FLOW);
        if (at == null || pressures == null || flows == null) {
            return null;
        }
        if (runsAt != null && at.dimension() != runsAt.dimension()) {
            fields.problem(
                    DeviceKeys.AT,
                    "at " + at.text() + " and runs at " + runsAt.text() + " are no like figures",
                    "Give both in volts or both in rpm");
            return null;
        }
        if (!(at.si() > 0)) {
            fields.problem(
                    DeviceKeys.AT,
                    "a curve at " + at.text() + ": a pump that stands still has none",
                    "Write the volts or the speed it was measured at");
            return null;
        }
        if (pressures.size() != flows.size() || pressures.size() < 2) {
            fields.problem(
                    DeviceKeys.CURVE_FLOW,
                    pressures.size() + " pressures stand against " + flows.size() + " flows",
                    "Give as many flows as pressures, at least two");
            return null;
        }
        List<Double> rise = pressures.stream().map(Quantity::si).toList();
        List<Double> flow = flows.stream().map(Quantity::si).toList();
        for (int i = 1; i < rise.size(); i++) {
            if (!(rise.get(i) > rise.get(i - 1) && flow.get(i) < flow.get(i - 1))) {
                fields.problem(
                        DeviceKeys.CURVE_FLOW,
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
