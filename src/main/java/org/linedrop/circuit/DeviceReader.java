package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.Units;

/** Reads devices. */
final class DeviceReader {
    private static final Figure FILTER_EXPONENT =
            exponent(1.0, 1.3, 1.75, "one rated point: exponent of a mostly laminar element", Status.FROM_MEMORY);
    private static final Figure PLATE_EXPONENT =
            exponent(1.0, 1.3, 1.75, "one rated point: exponent of plates and flat channels", Status.DERIVED);
    private static final Figure TUBE_EXPONENT =
            exponent(1.3, 1.75, 2, "one rated point: exponent of turbulent round tubes", Status.DERIVED);
    private static final Figure PASSAGE_EXPONENT =
            exponent(1.75, 1.85, 2, "one rated point: exponent of cored and drilled passages", Status.FROM_MEMORY);
    private static final Figure SQUARE = exponent(2, 2, 2, "velocity heads lost at an opening", Status.DERIVED);
    private static final Figure DISCHARGE =
            new Figure(0.6, 0.7, 0.8, Source.of("discharge coefficient of needle seats", Status.FROM_MEMORY));
    private static final int INJECTORS = 4;

    private static final Source DEFAULT = Source.of("default", Status.GIVEN);
    private static final Figure ONE = Figure.exact(1, DEFAULT);
    private static final Figure NONE = Figure.exact(0, DEFAULT);

    private final Scope scope;
    private final Problems problems;
    private final List<Notice> assumptions;
    private final @Nullable Service service;
    private final @Nullable Engine engine;
    private final @Nullable Figure temperatureK;

    /**
     * Reads devices of one circuit.
     *
     * @param fields the keys of the whole file
     */
    DeviceReader(Scope scope, Problems problems, List<Notice> assumptions, Fields fields, @Nullable Engine engine) {
        this.scope = scope;
        this.problems = problems;
        this.assumptions = assumptions;
        this.service = fields.get(FileKeys.SERVICE);
        this.temperatureK = fields.get(FileKeys.TEMPERATURE);
        this.engine = engine;
    }

    private static Figure exponent(double low, double usual, double high, String what, Status status) {
        return new Figure(low, usual, high, Source.of(what, status));
    }

    @Nullable Device device(String id, Kind kind, Fields fields) {
        if (!fields.complete(kind)) {
            return null;
        }
        return switch (kind.word()) {
            case "pump" -> pump(id, fields);
            case GearPump.KIND -> gearPump(id, fields);
            case Regulator.BYPASS, Regulator.DEAD_HEAD -> regulator(id, kind, fields);
            case OneWayValve.RELIEF, OneWayValve.CHECK -> oneWayValve(id, kind, fields);
            case Thermostat.KIND -> thermostat(id, fields);
            case Rail.KIND -> rail(id, fields);
            case FloatValve.KIND ->
                new FloatValve(
                        id,
                        PointReader.position(fields),
                        given(fields, DeviceKeys.SEAT),
                        fields.get(DeviceKeys.DISCHARGE, DISCHARGE));
            default -> resistance(id, kind, fields);
        };
    }

    /** A required key of a complete element. */
    private static <V> V given(Fields fields, Key<V> key) {
        return Objects.requireNonNull(fields.get(key), key.name());
    }

    private void assume(String id, String element, String text, Source source) {
        assumptions.add(Notice.of(id, element, text, source));
    }

    private @Nullable Device resistance(String id, Kind kind, Fields fields) {
        RatedPoint rated = given(fields, DeviceKeys.DROP);
        RatedPoint second = fields.get(DeviceKeys.SECOND);
        Figure usual = switch (kind.word()) {
            case Resistance.FILTER -> FILTER_EXPONENT;
            case Resistance.COOLER -> service == Service.COOLANT ? TUBE_EXPONENT : PLATE_EXPONENT;
            case Resistance.PASSAGE -> PASSAGE_EXPONENT;
            default -> SQUARE;
        };
        if (second != null && !fits(fields, rated, second)) {
            return null;
        }
        if (second == null && !fields.has(DeviceKeys.EXPONENT) && usual.hasBand()) {
            assume(
                    kind.word() + "-exponent",
                    id,
                    String.format(
                            Locale.ROOT,
                            "one rated point: drop taken as flow to the power %s (%s to %s); a second point would settle it",
                            usual.value(),
                            usual.low(),
                            usual.high()),
                    usual.source());
        }
        Figure bypass = fields.get(DeviceKeys.BYPASS_OPENS);
        if (bypass != null) {
            assume(
                    "bypass-loss",
                    id,
                    "its bypass is taken to gain 20 % over its opening pressure at the rated flow",
                    Source.of("spring-loaded poppets", Status.FROM_MEMORY));
        }
        var clog = fields.get(DeviceKeys.CLOG);
        return new Resistance(
                id,
                kind.word(),
                PointReader.position(fields),
                rated,
                second,
                fields.get(DeviceKeys.EXPONENT, usual),
                clog == null ? ONE : clog.figure(),
                fields.get(DeviceKeys.OPEN, ONE),
                bypass,
                fields.get(DeviceKeys.HEAT));
    }

    /** Whether a mu Q + b rho Q^2 passes through two points. */
    private static boolean fits(Fields fields, RatedPoint one, RatedPoint other) {
        boolean rising = one.flow().value() <= other.flow().value();
        RatedPoint low = rising ? one : other;
        RatedPoint high = rising ? other : one;
        double flows = high.flow().value() / low.flow().value();
        double drops = high.drop().value() / low.drop().value();
        if (flows > 1 && drops >= flows * (1 - 1e-9) && drops <= flows * flows * (1 + 1e-9)) {
            return true;
        }
        fields.problem(
                DeviceKeys.SECOND,
                String.format(
                        Locale.ROOT,
                        "second point \"%s\": with %.3g times the flow a drop grows by %.3g to %.3g times, but here by %.3g",
                        fields.text(DeviceKeys.SECOND),
                        flows,
                        flows,
                        flows * flows,
                        drops),
                "Check both points; they must be of the same liquid");
        return false;
    }

    private Device regulator(String id, Kind kind, Fields fields) {
        boolean bypass = kind.word().equals(Regulator.BYPASS);
        Over holds = given(fields, DeviceKeys.HOLDS);
        if (holds.reference().equals(Over.MANIFOLD) && (engine == null || engine.manifoldPa() == null)) {
            fields.problem(
                    DeviceKeys.HOLDS,
                    "it holds over the manifold, whose pressure is not given",
                    "Write engine: {manifold: -65 kPa}, or over air");
        }
        RatedPoint wide = fields.get(DeviceKeys.WIDE_OPEN);
        Rise slope = fields.get(bypass ? DeviceKeys.RISE : DeviceKeys.DROOP);
        if (slope == null) {
            assume(
                    bypass ? "no-rise" : "no-droop",
                    id,
                    bypass
                            ? "its rise is not given: taken to hold the same at any spilled flow; two gauge readings would tell"
                            : "its droop is not given: taken to hold the same at any flow; two gauge readings would tell",
                    DEFAULT);
        }
        if (wide == null) {
            assume(
                    "no-wide-open",
                    id,
                    bypass
                            ? "what it loses wide open is not given: the lowest pressure it can come to is at least what is"
                                    + " shown"
                            : "what it loses wide open is not given: what it needs at its inlet is at least what is shown",
                    DEFAULT);
        }
        return new Regulator(
                id, kind.word(), PointReader.position(fields), holds, slope, wide, fields.get(DeviceKeys.CREEP, NONE));
    }

    private @Nullable Device oneWayValve(String id, Kind kind, Fields fields) {
        if (kind.word().equals(OneWayValve.CHECK)) {
            return new OneWayValve(
                    id,
                    kind.word(),
                    PointReader.position(fields),
                    fields.get(DeviceKeys.CRACKS, NONE),
                    given(fields, DeviceKeys.CHECK_DROP));
        }
        Figure opens = given(fields, DeviceKeys.OPENS);
        RatedPoint wide = given(fields, DeviceKeys.ALL_OPEN);
        if (!(wide.drop().value() >= opens.value())) {
            fields.problem(
                    DeviceKeys.ALL_OPEN,
                    "wide open at " + fields.text(DeviceKeys.ALL_OPEN) + ", under the " + fields.text(DeviceKeys.OPENS)
                            + " at which it begins to open",
                    "Give the whole drop at a flow, not what it gains");
            return null;
        }
        return new OneWayValve(id, kind.word(), PointReader.position(fields), opens, wide);
    }

    private @Nullable Device thermostat(String id, Fields fields) {
        Figure temperature = fields.get(RunKeys.TEMPERATURE_OF_PART);
        if (temperature == null) {
            temperature = temperatureK;
        }
        if (temperature == null) {
            return null; // that the circuit has none is said once
        }
        return new Thermostat(
                id,
                PointReader.position(fields),
                given(fields, DeviceKeys.OPENS_BETWEEN),
                temperature,
                fields.get(DeviceKeys.BLEED_COLD, NONE),
                fields.get(DeviceKeys.BLEED_HOT, NONE),
                given(fields, DeviceKeys.DROP),
                fields.get(DeviceKeys.BYPASS_OPENS));
    }

    private @Nullable Device rail(String id, Fields fields) {
        Demand takes = given(fields, PointKeys.TAKES);
        Demands.question(fields, takes, id);
        if (takes instanceof Demand.AtPressure) {
            fields.problem(
                    PointKeys.TAKES,
                    "a rail takes a plain flow or a share of the engine",
                    "Write for example takes: 50 % of engine");
            return null;
        }
        Integer injectors = fields.get(DeviceKeys.INJECTORS);
        if (injectors == null) {
            assume("injectors", id, "taken to have " + INJECTORS + " injectors", DEFAULT);
        }
        return new Rail(
                id,
                PointReader.position(fields),
                given(fields, DeviceKeys.RAIL_BORE),
                given(fields, RunKeys.LENGTH),
                takes,
                injectors == null ? INJECTORS : injectors);
    }

    private @Nullable Device gearPump(String id, Fields fields) {
        Quantity speed = speed(fields);
        if (speed == null) {
            return null;
        }
        RatedPoint leaks = given(fields, DeviceKeys.LEAKS);
        if (!(leaks.drop().value() > 0)) {
            fields.problem(DeviceKeys.LEAKS, "it leaks at no pressure", "Give what slips back at a pressure over 0");
            return null;
        }
        return new GearPump(id, PointReader.position(fields), given(fields, DeviceKeys.MOVES), leaks, speed.si());
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

    private @Nullable Device pump(String id, Fields fields) {
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
        if (!inside) {
            assume(
                    "affinity",
                    id,
                    String.format(
                            Locale.ROOT,
                            "no curve at %s: the nearest is taken with flow by speed and pressure by its square",
                            runsAt.text()),
                    Source.of("affinity laws of centrifugal pumps", Status.DERIVED));
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
                        "Write curves: and below it - {at: 13.5 V, pressure: 0 200 400 kPa, flow: 420 362 300 L/h}");
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
        assume(
                "one-point-pump",
                id,
                "known by one point: it gives at least " + fields.text(DeviceKeys.GIVES)
                        + ", and what it does at more pressure is not known",
                gives.flow().source());
        double rise = gives.drop().value();
        double flow = gives.flow().value();
        Pump.Curve table = new Pump.Curve(
                runsAt.si(),
                List.of(0.0, rise, rise * (1 + NEARLY_UPRIGHT)),
                List.of(flow * (1 + NEARLY_UPRIGHT), flow, 0.0));
        return new Pump(id, PointReader.position(fields), List.of(table), runsAt.si(), table, true, false);
    }

    /** How far the two sides of a single point are from level and upright, so that flow and pressure stay unique. */
    private static final double NEARLY_UPRIGHT = 1e-3;

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
