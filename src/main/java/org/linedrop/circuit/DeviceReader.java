package org.linedrop.circuit;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

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

    private final PumpReader pumps;
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
        this.pumps = new PumpReader(scope, problems, assumptions, engine);
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
            case "pump" -> pumps.pump(id, fields);
            case GearPump.KIND -> pumps.gearPump(id, fields);
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
    static <V> V given(Fields fields, Key<V> key) {
        return Objects.requireNonNull(fields.get(key), key.name());
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
            assumptions.add(Notice.of(
                    kind.word() + "-exponent",
                    id,
                    String.format(
                            Locale.ROOT,
                            "one rated point: drop taken as flow to the power %s (%s to %s); a second point would settle it",
                            usual.value(),
                            usual.low(),
                            usual.high()),
                    usual.source()));
        }
        Figure bypass = fields.get(DeviceKeys.BYPASS_OPENS);
        if (bypass != null) {
            assumptions.add(Notice.of(
                    "bypass-loss",
                    id,
                    "its bypass is taken to gain 20 % over its opening pressure at the rated flow",
                    Source.of("spring-loaded poppets", Status.FROM_MEMORY)));
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
            assumptions.add(Notice.of(
                    bypass ? "no-rise" : "no-droop",
                    id,
                    bypass
                            ? "its rise is not given: taken to hold the same at any spilled flow; two gauge readings would tell"
                            : "its droop is not given: taken to hold the same at any flow; two gauge readings would tell",
                    DEFAULT));
        }
        if (wide == null) {
            assumptions.add(Notice.of(
                    "no-wide-open",
                    id,
                    bypass
                            ? "what it loses wide open is not given: the lowest pressure it can come to is at least what is"
                                    + " shown"
                            : "what it loses wide open is not given: what it needs at its inlet is at least what is shown",
                    DEFAULT));
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
            assumptions.add(Notice.of("injectors", id, "taken to have " + INJECTORS + " injectors", DEFAULT));
        }
        return new Rail(
                id,
                PointReader.position(fields),
                given(fields, DeviceKeys.RAIL_BORE),
                given(fields, RunKeys.LENGTH),
                takes,
                injectors == null ? INJECTORS : injectors);
    }
}
