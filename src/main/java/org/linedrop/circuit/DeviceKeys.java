package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;
import static org.linedrop.circuit.KeyForms.number;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.circuit.form.Factor;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.circuit.form.Span;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;

/** Keys of devices, and the kinds of device that take them. */
final class DeviceKeys {
    static final Key<String> CURVES_MARK = optional(
            "curves",
            KeyForms.words("a list of {at: 13.5 V, pressure: 0 200 400 kPa, flow: 420 362 300 L/h}"),
            "its tables: each has at, pressure and flow");
    static final Key<Quantity> AT = required(
            "at",
            KeyForms.quantity("13.5 V", Dimension.VOLTAGE, Dimension.ROTATION),
            "volts at the pump or speed",
            "Write for example: at: 13.5 V");
    static final Key<List<Quantity>> CURVE_PRESSURE = required(
            "pressure",
            KeyForms.list("0 200 400 kPa", Dimension.PRESSURE_DIFFERENCE),
            "pressure rise of each row, rising",
            "Write for example: pressure: 0 200 400 kPa");
    static final Key<List<Quantity>> CURVE_FLOW = required(
            "flow",
            KeyForms.list("420 362 300 L/h", Dimension.VOLUME_FLOW),
            "flow of each row, falling",
            "Write for example: flow: 420 362 300 L/h");
    static final Key<Quantity> RUNS_AT = optional(
            "runs at",
            KeyForms.quantity("13.5 V", Dimension.VOLTAGE, Dimension.ROTATION),
            "volts AT the pump (not at the battery), or speed");
    static final Key<RatedPoint> GIVES = optional(
            "gives",
            KeyForms.flowFirst(KeyForms.of(
                    "255 L/h at 276 kPa",
                    text -> RatedPoint.read(text).writeFlowFirst(),
                    (text, scope) -> atPressure(text))),
            "one catalogue point at the volts it runs at, used only as at least this much up to this pressure");
    static final Key<String> BETWEEN_ROWS = optional(
            "between rows",
            KeyForms.choice(List.of(Pump.SMOOTH, Pump.STRAIGHT), word -> word),
            "how its table is read between rows: smooth curve when not given");
    static final Key<RatedPoint> DROP = required(
            "drop",
            KeyForms.form("6 kPa at 300 L/h", RatedPoint::loss, RatedPoint::write),
            "drop at a rated flow, clean and open",
            "Write for example: drop: 6 kPa at 300 L/h");
    static final Key<Figure> EXPONENT = optional(
            "exponent",
            number(Dimension.RATIO, "x", 1, 2, "1 is all element, 2 all housing"),
            "exponent of the flow, 1 to 2");
    static final Key<Factor> CLOG = optional(
            "clog", KeyForms.form("5 x", Factor::read, Factor::write), "how many times the clean drop; 1 when clean");

    static final Key<Figure> BYPASS_OPENS = optional(
            "bypass opens",
            number(Dimension.PRESSURE_DIFFERENCE, "kPa", 0, 5e6, "Spin-on filters open at 70 to 100 kPa"),
            "drop at which its bypass opens; it has none when not given");
    static final Key<Over> HOLDS = required(
            "holds",
            KeyForms.form("300 kPa over manifold", Over::read, Over::write),
            "the pressure it holds, and over what",
            "Write for example: holds: 300 kPa over manifold (hose on the regulator's nipple) or over air");
    static final Key<Rise> RISE = optional(
            "rise",
            KeyForms.form("23 kPa from 20 to 400 L/h", Rise::read, Rise::write),
            "what the held pressure gains with the spilled flow, from two gauge readings");
    static final Key<RatedPoint> WIDE_OPEN = optional(
            "wide open",
            KeyForms.form("35 kPa at 400 L/h", RatedPoint::loss, RatedPoint::write),
            "drop with the valve wide open; the idle floor is unknown without it");
    static final Key<Figure> MOVES = required(
            "moves",
            number(Dimension.DISPLACEMENT, "mL/rev", 1e-8, 1e-3, "Is that mL per turn of the pump?"),
            "volume per turn of the pump",
            "Write for example: moves: 9.5 mL/rev");
    static final Key<RatedPoint> LEAKS = required(
            "leaks",
            KeyForms.flowFirst(
                    KeyForms.form("3 L/min at 400 kPa with 14 cSt", RatedPoint::loss, RatedPoint::writeFlowFirst)),
            "what slips back at a rated pressure, with the liquid it was measured with",
            "Write for example: leaks: 3 L/min at 400 kPa with 14 cSt");
    static final Key<Factor> TURNS = optional(
            "turns",
            KeyForms.form("1.0 x engine", Factor::read, Factor::write),
            "its speed over the engine's, where the engine drives it");
    static final Key<Figure> OPENS = required(
            "opens",
            number(Dimension.PRESSURE_DIFFERENCE, "kPa", 0, 50e6, "Is that kPa?"),
            "drop at which it begins to open",
            "Write for example: opens: 480 kPa");
    static final Key<Span> OPENS_BETWEEN = required(
            "opens",
            KeyForms.form("80 to 92 C", text -> Span.read(text, Dimension.TEMPERATURE), Span::write),
            "temperatures at which it begins to open and is open",
            "Write for example: opens: 80 to 92 C");
    static final Key<Figure> BLEED_COLD = optional(
            "bleed cold",
            number(Dimension.RATIO, "%", 0, 1, "Write for example 10 %"),
            "share of the flow that goes to the cooler when cold; 0 when not given");
    static final Key<Figure> BLEED_HOT = optional(
            "bleed hot",
            number(Dimension.RATIO, "%", 0, 1, "Write for example 10 %"),
            "share of the flow that passes the cooler by when hot; 0 when not given");
    static final Key<Figure> RAIL_BORE = required(
            "bore",
            number(Dimension.LENGTH, "mm", 1e-3, 0.1, "Is that mm?"),
            "bore of the rail",
            "Write for example: bore: 14 mm");

    static final Key<DevicePorts> PORTS = optional(
            "ports",
            KeyForms.of("ORB -8", String::strip, (text, scope) -> DevicePorts.read(text, scope.catalogue())),
            "its two connections, ORB -8 or ORB -8 to -6 in flow order; joints with it are not checked when not given");

    static final Key<RatedPoint> SECOND = optional(
            "second point",
            KeyForms.form("2 kPa at 100 L/h", RatedPoint::loss, RatedPoint::write),
            "drop at another flow of the same liquid, which settles how the drop rises");
    static final Key<Figure> HEAT = optional(
            "heat",
            number(Dimension.POWER, "kW", 0, 3e6, "Is that kW or W?"),
            "heat that the fluid gives off or takes up in it; says how much colder or hotter it comes out");
    static final Key<Figure> OPEN = optional(
            "open",
            number(Dimension.RATIO, "%", 0, 1, "0 % is shut, 100 % is open"),
            "how far it is open; 100 % when not given");
    static final Key<Figure> CRACKS = optional(
            "opens",
            number(Dimension.PRESSURE_DIFFERENCE, "kPa", 0, 50e6, "Is that kPa?"),
            "drop at which it begins to open; 0 when not given");
    static final Key<RatedPoint> CHECK_DROP = required(
            "drop",
            KeyForms.form("3 kPa at 300 L/h", RatedPoint::loss, RatedPoint::write),
            "drop at a rated flow, over its opening pressure",
            "Write for example: drop: 3 kPa at 300 L/h");
    static final Key<RatedPoint> ALL_OPEN = required(
            "wide open",
            KeyForms.form("560 kPa at 60 L/min with 14 cSt", RatedPoint::loss, RatedPoint::write),
            "drop at the flow at which the valve is wide open",
            "Write for example: wide open: 560 kPa at 60 L/min with 14 cSt, off the sheet or from a gauge");
    static final Key<Rise> DROOP = optional(
            "droop",
            KeyForms.form("5 kPa from 0 to 100 L/h", Rise::read, Rise::write),
            "what the held pressure loses with the flow, from two gauge readings");
    static final Key<Figure> CREEP = optional(
            "creep",
            number(Dimension.PRESSURE_DIFFERENCE, "kPa", 0, 1e6, "Is that kPa?"),
            "how far over its set pressure the outlet may stand at no flow; 0 when not given");
    static final Key<Integer> INJECTORS =
            optional("injectors", KeyForms.count("4", 24), "how many injectors take along it; 4 when not given");
    static final Key<Figure> SEAT = required(
            "seat",
            number(Dimension.LENGTH, "mm", 3e-4, 0.01, "Is that mm?"),
            "bore of its seat",
            "Write for example: seat: 1.75 mm");
    static final Key<Figure> DISCHARGE = optional(
            "cd",
            number(Dimension.RATIO, "x", 0.3, 1, "Seats have 0.6 to 0.8"),
            "its discharge coefficient; 0.7 when not given");

    static final Kind CURVE = new Kind("curve", "one table of a pump", List.of(AT, CURVE_PRESSURE, CURVE_FLOW));

    /** Kinds of device, by the word of {@code kind:}; all have a place and may name their connections. */
    static final List<Kind> ALL = placed(List.of(
            new Kind("pump", "a pump known by its tables", List.of(CURVES_MARK, RUNS_AT, TURNS, BETWEEN_ROWS, GIVES)),
            new Kind(GearPump.KIND, "a pump that moves a volume per turn", List.of(MOVES, LEAKS, TURNS, RUNS_AT)),
            new Kind(
                    Resistance.FILTER,
                    "a filter known by rated points",
                    List.of(DROP, SECOND, EXPONENT, CLOG, BYPASS_OPENS)),
            new Kind(
                    Resistance.COOLER,
                    "a cooler, radiator or heater core known by rated points",
                    List.of(DROP, SECOND, EXPONENT, BYPASS_OPENS, HEAT)),
            new Kind(
                    Resistance.PASSAGE,
                    "a passage through an engine, gearbox or other component, known by rated points",
                    List.of(DROP, SECOND, EXPONENT, HEAT)),
            new Kind(Resistance.TAP, "a tap that may be half open", List.of(DROP, OPEN)),
            new Kind(Regulator.BYPASS, "spills what is not wanted, to hold its inlet", List.of(HOLDS, RISE, WIDE_OPEN)),
            new Kind(Regulator.DEAD_HEAD, "throttles, to hold its outlet", List.of(HOLDS, DROOP, CREEP, WIDE_OPEN)),
            new Kind(OneWayValve.RELIEF, "opens at a pressure", List.of(OPENS, ALL_OPEN)),
            new Kind(OneWayValve.CHECK, "passes one way", List.of(CRACKS, CHECK_DROP)),
            new Kind(
                    Thermostat.KIND,
                    "shares its flow by temperature",
                    List.of(OPENS_BETWEEN, BLEED_COLD, BLEED_HOT, DROP, BYPASS_OPENS, RunKeys.TEMPERATURE_OF_PART)),
            new Kind(
                    Rail.KIND,
                    "a fuel rail that takes along its length",
                    List.of(RAIL_BORE, RunKeys.LENGTH, PointKeys.TAKES, INJECTORS)),
            new Kind(FloatValve.KIND, "needle and seat of a carburettor", List.of(SEAT, DISCHARGE))));

    private DeviceKeys() {}

    private static RatedPoint atPressure(String text) throws Key.FormException {
        if (!text.contains(" at ")) {
            throw new Key.FormException(
                    text + " at what pressure and volts? A free-flow figure cannot say what reaches the rail",
                    "Write curves: with pressures and flows at the volts it runs at");
        }
        return RatedPoint.read(text);
    }

    private static List<Kind> placed(List<Kind> devices) {
        List<Kind> all = new ArrayList<>();
        for (Kind kind : devices) {
            List<Key<?>> keys = new ArrayList<>(PointKeys.PLACE);
            keys.addAll(kind.keys());
            keys.add(PORTS);
            all.add(new Kind(kind.word(), kind.meaning(), keys));
        }
        return List.copyOf(all);
    }
}
