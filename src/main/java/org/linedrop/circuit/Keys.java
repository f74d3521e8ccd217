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

/**
 * The key table: every kind of element with its keys, and the keys of devices. Nothing else names a key; those of the
 * whole file, of points, of runs and of the user's hoses are in classes of their own.
 */
public final class Keys {

    // devices
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
    static final Key<Quantity> RUNS_AT = required(
            "runs at",
            KeyForms.quantity("13.5 V", Dimension.VOLTAGE, Dimension.ROTATION),
            "volts AT the pump (not at the battery), or speed",
            "Write for example: runs at: 13.5 V, measured at the pump under load");
    static final Key<String> GIVES = optional(
            "gives", KeyForms.words("255 L/h at 276 kPa"), "one catalogue point, used only as at least this much");
    static final Key<RatedPoint> DROP = required(
            "drop",
            KeyForms.form("6 kPa at 300 L/h", RatedPoint::read, RatedPoint::write),
            "drop at a rated flow, clean",
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
            KeyForms.form("35 kPa at 400 L/h", RatedPoint::read, RatedPoint::write),
            "drop with the valve wide open; the idle floor is unknown without it");
    static final Key<Figure> MOVES = required(
            "moves",
            number(Dimension.DISPLACEMENT, "mL/rev", 1e-8, 1e-3, "Is that mL per turn of the pump?"),
            "volume per turn of the pump",
            "Write for example: moves: 9.5 mL/rev");
    static final Key<RatedPoint> LEAKS = required(
            "leaks",
            KeyForms.form("3 L/min at 400 kPa with 14 cSt", RatedPoint::read, RatedPoint::writeFlowFirst),
            "what slips back at a rated pressure, with the liquid it was measured with",
            "Write for example: leaks: 3 L/min at 400 kPa with 14 cSt");
    static final Key<Factor> TURNS = required(
            "turns",
            KeyForms.form("1.0 x engine", Factor::read, Factor::write),
            "its speed over the engine's",
            "Write for example: turns: 0.5 x engine");
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

    // parts
    static final Key<DevicePorts> PORTS = optional(
            "ports",
            KeyForms.of("ORB -8", String::strip, (text, scope) -> DevicePorts.read(text, scope.catalogue())),
            "its two connections, ORB -8 or ORB -8 to -6 in flow order; joints with it are not checked when not given");

    static final Kind CURVE = new Kind("curve", "one table of a pump", List.of(AT, CURVE_PRESSURE, CURVE_FLOW));

    private static final List<Key<?>> PLACE = List.of(PointKeys.HEIGHT, PointKeys.AHEAD, PointKeys.LEFT);

    /** Kinds of point, by the word of {@code kind:}. */
    public static final List<Kind> POINTS = List.of(
            new Kind(
                    "tank",
                    "a vessel with a free surface",
                    with(PLACE, PointKeys.DEPTH, PointKeys.RETURN_HEIGHT, PointKeys.CAP)),
            new Kind(
                    "draw",
                    "something that takes fluid",
                    with(PLACE, PointKeys.TAKES, PointKeys.DRAW_LAW, PointKeys.GAUGE_BORE)),
            new Kind("joint", "where runs meet", with(PLACE, PointKeys.GAUGE_BORE)),
            new Kind(
                    Junction.TEE, "a tee: port run for two runs, port branch for one", with(PLACE, PointKeys.TEE_SIZE)),
            new Kind(
                    Junction.Y_BLOCK,
                    "a Y block: port common for one run, port leg for two",
                    with(PLACE, PointKeys.Y_SIZE)),
            new Kind(
                    "held",
                    "a point whose pressure something else keeps",
                    with(PLACE, PointKeys.HELD_PRESSURE, PointKeys.HELD_HEAD)));

    /** Kinds of device, by the word of {@code kind:}. */
    public static final List<Kind> DEVICES = withPorts(List.of(
            new Kind("pump", "a pump known by its tables", with(PLACE, CURVES_MARK, RUNS_AT, GIVES)),
            new Kind("filter", "a filter known by a rated point", with(PLACE, DROP, EXPONENT, CLOG, BYPASS_OPENS)),
            new Kind("bypass regulator", "spills what is not wanted", with(PLACE, HOLDS, RISE, WIDE_OPEN)),
            new Kind("gear pump", "a pump that moves a volume per turn", with(PLACE, MOVES, LEAKS, TURNS)),
            new Kind("relief valve", "opens at a pressure", with(PLACE, OPENS, WIDE_OPEN)),
            new Kind(
                    "thermostat",
                    "shares its flow by temperature",
                    with(PLACE, OPENS_BETWEEN, BLEED_COLD, BLEED_HOT, DROP, BYPASS_OPENS)),
            new Kind("cooler", "a cooler known by a rated point", with(PLACE, DROP, BYPASS_OPENS)),
            new Kind(
                    "rail",
                    "a fuel rail that takes along its length",
                    with(PLACE, RAIL_BORE, RunKeys.LENGTH, PointKeys.TAKES))));

    /** Kinds of part, by the key that names what it is. */
    public static final List<Kind> PARTS = RunKeys.PARTS;

    /** Keys that hold more than one value and have a reader of their own. */
    static final List<String> LISTS = List.of(CURVES_MARK.name(), RunKeys.PARTS_MARK.name(), RunKeys.VIA_MARK.name());

    /** Keys of the whole file that hold one value. */
    public static final List<Key<?>> TOP = FileKeys.ALL;

    /** Keys of the whole file that hold more than one value, in the order in which they are written. */
    public static final List<String> SECTIONS = List.of(
            "engine", "fluids", "catalogue", "points", "devices", "runs", "limits", "cases", "sections", "uses");

    private Keys() {}

    /** The kind of device of a word. */
    static Kind device(String word) {
        return DEVICES.stream()
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow();
    }

    private static List<Kind> withPorts(List<Kind> devices) {
        return devices.stream()
                .map(kind -> new Kind(kind.word(), kind.meaning(), with(kind.keys(), PORTS)))
                .toList();
    }

    private static List<Key<?>> with(List<Key<?>> first, Key<?>... more) {
        List<Key<?>> all = new ArrayList<>(first);
        all.addAll(List.of(more));
        return all;
    }
}
