package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;
import static org.linedrop.circuit.KeyForms.number;

import java.util.ArrayList;
import java.util.List;
import org.linedrop.catalogue.JunctionSize;
import org.linedrop.circuit.form.AdapterChoice;
import org.linedrop.circuit.form.Bends;
import org.linedrop.circuit.form.Ends;
import org.linedrop.circuit.form.Factor;
import org.linedrop.circuit.form.Motion;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.circuit.form.SizeChoice;
import org.linedrop.circuit.form.Span;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Fluid;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;

/** The key table: every kind of element with its keys. Nothing else names a key. */
public final class Keys {
    private static final double NONE = Double.NEGATIVE_INFINITY;

    static final Key<String> NAME =
            optional("name", KeyForms.words("old hard line"), "a name for the part that survives editing");
    static final Key<Figure> TEMPERATURE_OF_PART = optional(
            "temperature",
            number(Dimension.TEMPERATURE, "C", 173.15, 573.15, "Is that C or F?"),
            "its own temperature; the nearest of part, run and circuit wins");
    static final Key<Figure> HEIGHT = optional(
            "height",
            number(Dimension.LENGTH, "m", NONE, 10, "Heights are from one datum in the vehicle"),
            "height over the datum, for all points or for none");
    static final Key<Figure> AHEAD = optional(
            "ahead",
            number(Dimension.LENGTH, "m", NONE, 30, "Distances are from one datum in the vehicle"),
            "distance ahead of the datum, 0 when not given");
    static final Key<Figure> LEFT = optional(
            "left",
            number(Dimension.LENGTH, "m", NONE, 10, "Distances are from one datum in the vehicle"),
            "distance to the left of the datum, 0 when not given");
    static final Key<Double> GAUGE_BORE = optional(
            "bore",
            KeyForms.form("14 mm", PointReader::gaugeBore, PointReader::gaugeBoreText),
            "bore in which a gauge sits, or vessel where the fluid stands still; the run end's when not given");

    // surroundings
    static final Key<String> FORM = required(
            "linedrop",
            KeyForms.choice(List.of("1"), word -> word),
            "form of the file",
            "Write \"linedrop: 1\" as the first line");
    static final Key<String> TITLE = optional("title", KeyForms.words("Hill-climb V8"), "what the circuit is");
    static final Key<Service> SERVICE = optional(
            "service",
            KeyForms.choice(List.of(Service.values()), Service::word),
            "what kind of circuit; picks the usual limits");
    static final Key<Fluid> FLUID = required(
            "fluid", KeyForms.fluid(), "what flows", "Write for example: fluid: E85 summer, fluid: engine oil 15W-50");
    static final Key<Figure> TEMPERATURE = required(
            "temperature",
            number(Dimension.TEMPERATURE, "C", 173.15, 573.15, "Is that C or F?"),
            "of the fluid; decides the answer, so it has no default",
            "Fuel: 20 C spring, 40-50 C after a hot stop; oil: 110 C hot, 0 C start. It decides the answer, so there"
                    + " is no default");
    static final Key<String> THIS_CASE =
            optional("this case", KeyForms.words("full load"), "name of the file as written");
    static final Key<Figure> ALTITUDE = optional(
            "altitude",
            number(Dimension.LENGTH, "m", -500, 6000, "Altitude is over the sea"),
            "over the sea, 0 when not given");
    static final Key<Figure> GRAVITY = optional(
            "gravity",
            number(Dimension.ACCELERATION, "m/s2", 1, 11, "Textbooks use 9.8 to 9.81 m/s2"),
            "where a source has its own; 9.80665 m/s2 when not given");
    static final Key<Motion> MOTION =
            optional("motion", KeyForms.form("launch 0.9 g", Motion::read, Motion::write), "what the vehicle does");
    static final Key<Figure> GRADE = optional(
            "grade",
            number(Dimension.RATIO, "%", -1, 1, "A grade is rise over run: 20 % is 11 degrees"),
            "slope of the road, rise over run, uphill positive");
    static final Key<Span> TRANSITION = optional(
            "transition",
            KeyForms.form("2000 to 3000", text -> Span.read(text, Dimension.RATIO), Span::write),
            "Reynolds numbers between which laminar flow turns turbulent; 2000 to 3000 when not given");

    // engine
    static final Key<Figure> POWER =
            optional("power", number(Dimension.POWER, "kW", 0, 3e6, "Is that kW or W?"), "brake power of the engine");
    static final Key<Figure> BSFC = optional(
            "bsfc",
            number(Dimension.FUEL_PER_POWER, "lb/hp/h", 2e-8, 6e-7, "Petrol 0.45-0.65, E85 0.6-0.85, methanol 1.0-1.2"),
            "fuel mass per brake work");
    static final Key<KeyForms.Flow> ENGINE_FLOW = optional("flow", KeyForms.flow(), "what the engine burns");
    static final Key<Figure> MANIFOLD = optional(
            "manifold",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 500_000, "Manifold pressure is gauge"),
            "gauge pressure in the manifold");
    static final Key<Figure> ENGINE_SPEED =
            optional("speed", number(Dimension.ROTATION, "rpm", 0, 500, "Crankshaft speed in rpm"), "crankshaft speed");

    // points
    static final Key<Figure> DEPTH = optional(
            "depth", number(Dimension.LENGTH, "m", 0, 3, "Is that mm?"), "height of the surface over the outlet");
    static final Key<Figure> RETURN_HEIGHT = optional(
            "return height",
            number(Dimension.LENGTH, "m", NONE, 10, "Heights are from one datum in the vehicle"),
            "height of the return port; the outlet's when not given");
    static final Key<Figure> CAP = optional(
            "cap",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 500_000, "A cap holds 90 to 140 kPa"),
            "pressure over the surface where the tank is closed; 0 (vented) when not given");
    static final Key<Demand> TAKES = required(
            "takes",
            KeyForms.form("100 % of engine", Demands::read, Demands::write),
            "what the draw takes",
            "Write for example: takes: 113 L/h, takes: 50 % of engine");
    static final Key<String> DRAW_LAW = optional(
            "law",
            KeyForms.choice(List.of("bearings", "jet"), word -> word),
            "how a flow rated at a pressure rises with it");
    static final Key<Figure> HELD_PRESSURE = optional(
            "pressure",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 50e6, "Pressures are gauge"),
            "the pressure that something outside the circuit keeps");
    static final Key<Figure> HELD_HEAD = optional(
            "head",
            number(Dimension.LENGTH, "m", NONE, 1000, "A head is in metres of the fluid"),
            "the same in metres of the fluid, for textbook problems");

    static final Key<JunctionSize> TEE_SIZE = required(
            "size",
            KeyForms.of("-6", String::strip, (text, scope) -> scope.catalogue().tee(text)),
            "its size; -8 to -6 with a smaller branch",
            "Write for example size: -6, or size: -8 to -6 with a smaller branch");
    static final Key<JunctionSize> Y_SIZE = required(
            "size",
            KeyForms.of(
                    "-8 to -6",
                    String::strip,
                    (text, scope) -> scope.catalogue().yBlock(text)),
            "size of its common port, then of its legs",
            "Write for example size: -8 to -6");

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

    // runs
    static final Key<String> VIA_MARK = optional(
            "via",
            KeyForms.words("a list of {ahead: 0.5 m, height: 0.9 m}"),
            "way-points in flow order, which lift is shared over");
    static final Key<String> FROM =
            required("from", KeyForms.words("tank"), "where the run starts", "Write for example: from: tank");
    static final Key<String> TO =
            required("to", KeyForms.words("rail"), "where the run ends", "Write for example: to: rail");
    static final Key<String> PARTS_MARK =
            optional("parts", KeyForms.words("a list, or none"), "its parts in flow order");
    static final Key<SizeChoice> HOSES = optional(
            "hoses",
            KeyForms.form("-10", SizeChoice::read, SizeChoice::write),
            "in a case: changes all hoses of the run with their ends");

    // parts
    static final Key<SizeChoice> HOSE = required(
            "hose",
            KeyForms.form("race PTFE -6", SizeChoice::read, SizeChoice::write),
            "family and size of the hose",
            "Write for example: hose: race PTFE -6");
    static final Key<Figure> LENGTH = required(
            "length",
            number(Dimension.LENGTH, "m", 1e-3, 30, "Hose or tube in a vehicle? If you mean mm, write mm"),
            "overall length, seat to seat",
            "Write for example: length: 0.60 m");
    static final Key<Ends> ENDS = required(
            "ends",
            KeyForms.form("straight to 90", Ends::read, Ends::write),
            "its two ends in flow order",
            "A hose needs its ends: write \"ends: straight to 90\", or \"none\" for a bare measured piece");
    static final Key<String> ENDS_KIND = optional(
            "ends kind",
            KeyForms.choice(List.of("reusable", "crimped", "push-on"), word -> word),
            "how the ends are held; reusable when not given");
    static final Key<Bends> BENDS = optional(
            "bends",
            KeyForms.form("2 x 90 at 150 mm", Bends::read, Bends::write),
            "its bends; straight when not given");
    static final Key<Figure> BORE = optional(
            "bore",
            number(Dimension.LENGTH, "mm", 5e-4, 0.1, "Is that mm?"),
            "measured bore of the hose, in place of the catalogue's");
    static final Key<Figure> END_BORE = optional(
            "end bore",
            number(Dimension.LENGTH, "mm", 5e-4, 0.1, "Is that mm?"),
            "measured bore of its ends' nipples, in place of the catalogue's");
    static final Key<Factor> LOSS_FACTOR = optional(
            "loss factor",
            KeyForms.form("4.5 x measured", Factor::read, Factor::write),
            "loss of its length over that of a smooth straight bore, where somebody measured it");
    static final Key<TubeChoice> TUBE = required(
            "tube",
            KeyForms.form("aluminium 1/2 in x 0.035 in", TubeChoice::read, TubeChoice::write),
            "material, outside diameter and wall",
            "Write for example: tube: aluminium 1/2 in x 0.035 in");
    static final Key<AdapterChoice> ADAPTER = required(
            "adapter",
            KeyForms.form("-6 to -5", AdapterChoice::read, AdapterChoice::write),
            "its two connections in flow order",
            "Write for example: adapter: -6 to -5");
    static final Key<SizeChoice> BULKHEAD = required(
            "bulkhead",
            KeyForms.form("-6", SizeChoice::read, SizeChoice::write),
            "its size",
            "Write for example: bulkhead: -6");
    static final Key<SizeChoice> UNION = required(
            "union",
            KeyForms.form("-6", SizeChoice::read, SizeChoice::write),
            "its size",
            "Write for example: union: -6");
    static final Key<Figure> RESTRICTOR = required(
            "restrictor",
            number(Dimension.LENGTH, "mm", 1e-4, 0.05, "Is that mm?"),
            "diameter of its hole",
            "Write for example restrictor: 1.0 mm");
    static final Key<Figure> RESTRICTOR_LENGTH = required(
            "length",
            number(Dimension.LENGTH, "mm", 0, 0.5, "Is that mm?"),
            "length of its hole, 0 mm for a thin edge",
            "Write for example length: 2 mm");
    static final Key<SizeChoice> VALVE = required(
            "valve",
            KeyForms.of("ball -8", text -> SizeChoice.read(text).write(), (text, scope) -> SizeChoice.read(text)),
            "its build and size, open; the size alone where kv or cv says what it loses",
            "Write for example valve: ball -8");
    static final Key<Figure> KV = optional(
            "kv",
            number(Dimension.RATIO, "x", 1e-3, 1000, "kv is m3/h of water at 1 bar"),
            "its flow of water in m3/h at 1 bar, in place of what its build loses");
    static final Key<Figure> CV = optional(
            "cv",
            number(Dimension.RATIO, "x", 1e-3, 1000, "cv is US gallons of water a minute at 1 psi"),
            "its flow of water in US gallons a minute at 1 psi, in place of kv");
    static final Key<DevicePorts> PORTS = optional(
            "ports",
            KeyForms.of("ORB -8", String::strip, (text, scope) -> DevicePorts.read(text, scope.catalogue())),
            "its two connections, ORB -8 or ORB -8 to -6 in flow order; joints with it are not checked when not given");
    static final Key<String> THROUGH = required(
            "through",
            KeyForms.words("filter"),
            "the in-line device that sits here",
            "Write for example: through: filter");

    static final Key<StatedLaw.Law> LAW = required(
            "law",
            KeyForms.choice(List.of(StatedLaw.Law.values()), StatedLaw.Law::word),
            "a law stated outright, for textbook problems",
            "Write for example: law: constant f");
    static final Key<Figure> LAW_BORE =
            optional("bore", number(Dimension.LENGTH, "mm", 1e-4, 20, "Is that mm?"), "bore of its velocity");
    static final Key<Figure> LAW_LENGTH =
            optional("length", number(Dimension.LENGTH, "m", 0, 1e6, "Is that m?"), "its length");
    static final Key<Figure> LAW_F = optional(
            "f",
            number(Dimension.RATIO, "x", 1e-4, 10, "This is Darcy's factor, 4 times Fanning's"),
            "Darcy friction factor");
    static final Key<Figure> LAW_K =
            optional("K", number(Dimension.RATIO, "x", 0, 1e9, "K is over the velocity head"), "loss coefficient");
    static final Key<Figure> LAW_R = optional(
            "r", number(Dimension.RATIO, "x", 0, 1e15, "r is in m/(m3/s)^n"), "r of head = r Q^n, in m/(m3/s)^n");
    static final Key<Figure> LAW_N =
            optional("n", number(Dimension.RATIO, "x", 1, 3, "Turbulent flow has 1.75 to 2"), "n of head = r Q^n");

    // the user's own hoses
    static final Key<String> LIKE = required(
            "like",
            KeyForms.words("race PTFE"),
            "the family that gives what is not said here",
            "Write for example: like: race PTFE");
    static final Key<String> SIZES = required(
            "sizes", KeyForms.words("-6 -8 -10"), "its sizes, one for each column", "Write for example: sizes: -6 -8");
    static final Key<List<Figure>> USER_BORE =
            optional("bore", KeyForms.column("7.9 10.2 mm measured", Dimension.LENGTH, 5e-4, 0.1), "inside diameters");
    static final Key<List<Figure>> USER_END_BORE = optional(
            "end bore",
            KeyForms.column("6.6 8.9 mm measured", Dimension.LENGTH, 5e-4, 0.1),
            "bores of the nipples of its ends");
    static final Key<List<Figure>> USER_ROUGHNESS = optional(
            "roughness", KeyForms.column("0.0015 0.0015 mm", Dimension.LENGTH, 0, 2e-3), "roughness of the wall");
    static final Key<List<Figure>> USER_OUTSIDE = optional(
            "outside diameter",
            KeyForms.column("12 15 mm from sheet", Dimension.LENGTH, 1e-3, 0.2),
            "outside diameters");
    static final Key<List<Figure>> USER_BEND_RADIUS = optional(
            "bend radius",
            KeyForms.column("100 120 mm from sheet", Dimension.LENGTH, 1e-3, 3),
            "least bend radii, of the centre line");
    static final Key<List<Figure>> USER_WORKING = optional(
            "working pressure",
            KeyForms.column("140 140 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 2e8),
            "highest working pressures");
    static final Key<List<Figure>> USER_PROOF = optional(
            "proof pressure",
            KeyForms.column("280 280 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 4e8),
            "proof pressures");
    static final Key<List<Figure>> USER_BURST = optional(
            "burst pressure",
            KeyForms.column("560 560 bar from sheet", Dimension.GAUGE_PRESSURE, 0, 8e8),
            "least burst pressures");
    static final Key<List<Figure>> USER_VACUUM = optional(
            "vacuum",
            KeyForms.column("28 28 inHg from sheet", Dimension.PRESSURE_DIFFERENCE, 0, 101_325),
            "largest vacua, below the air outside");
    static final Key<List<Figure>> USER_COLDEST = optional(
            "lowest temperature",
            KeyForms.column("-40 -40 C from sheet", Dimension.TEMPERATURE, 173.15, 573.15),
            "lowest temperatures");
    static final Key<List<Figure>> USER_HOTTEST = optional(
            "highest temperature",
            KeyForms.column("150 150 C from sheet", Dimension.TEMPERATURE, 173.15, 673.15),
            "highest temperatures");

    /** Columns of the user's own hoses. */
    static final List<Key<List<Figure>>> HOSE_COLUMNS = List.of(
            USER_BORE,
            USER_END_BORE,
            USER_ROUGHNESS,
            USER_OUTSIDE,
            USER_BEND_RADIUS,
            USER_WORKING,
            USER_PROOF,
            USER_BURST,
            USER_VACUUM,
            USER_COLDEST,
            USER_HOTTEST);

    static final Kind HOSE_FAMILY =
            new Kind("hose family", "a hose family of the user's own", with(List.of(LIKE, SIZES), HOSE_COLUMNS));

    static final Key<List<Quantity>> LAW_HEADS = optional(
            "heads",
            KeyForms.list("40 -500 -3e5 x", Dimension.RATIO),
            "c0 c1 c2 ... of a pump's head c0 + c1 Q + c2 Q^2 ... in m and m3/s, with x behind the last");
    static final Key<Figure> LAW_POWER =
            optional("power", number(Dimension.POWER, "kW", 0, 1e9, "Is that kW or W?"), "hydraulic power of a pump");

    static final Kind ENGINE_KIND =
            new Kind("engine", "what the engine asks", List.of(POWER, BSFC, ENGINE_FLOW, MANIFOLD, ENGINE_SPEED));
    static final Kind CURVE = new Kind("curve", "one table of a pump", List.of(AT, CURVE_PRESSURE, CURVE_FLOW));
    static final Kind WAY_POINT = new Kind("way-point", "a place a run passes", List.of(AHEAD, LEFT, HEIGHT));
    static final Kind RUN = new Kind(
            "run", "a line from point to point", List.of(FROM, TO, TEMPERATURE_OF_PART, HOSES, VIA_MARK, PARTS_MARK));

    private static final List<Key<?>> PLACE = List.of(HEIGHT, AHEAD, LEFT);

    /** Kinds of point, by the word of {@code kind:}. */
    public static final List<Kind> POINTS = List.of(
            new Kind("tank", "a vessel with a free surface", with(PLACE, DEPTH, RETURN_HEIGHT, CAP)),
            new Kind("draw", "something that takes fluid", with(PLACE, TAKES, DRAW_LAW, GAUGE_BORE)),
            new Kind("joint", "where runs meet", with(PLACE, GAUGE_BORE)),
            new Kind(Junction.TEE, "a tee: port run for two runs, port branch for one", with(PLACE, TEE_SIZE)),
            new Kind(Junction.Y_BLOCK, "a Y block: port common for one run, port leg for two", with(PLACE, Y_SIZE)),
            new Kind("held", "a point whose pressure something else keeps", with(PLACE, HELD_PRESSURE, HELD_HEAD)));

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
            new Kind("rail", "a fuel rail that takes along its length", with(PLACE, RAIL_BORE, LENGTH, TAKES))));

    /** Kinds of part, by the key that names what it is. */
    public static final List<Kind> PARTS = List.of(
            new Kind(
                    "hose",
                    "a made-up hose",
                    List.of(
                            HOSE,
                            LENGTH,
                            ENDS,
                            ENDS_KIND,
                            BENDS,
                            BORE,
                            END_BORE,
                            LOSS_FACTOR,
                            TEMPERATURE_OF_PART,
                            NAME)),
            new Kind("tube", "a hard line", List.of(TUBE, LENGTH, BENDS, TEMPERATURE_OF_PART, NAME)),
            new Kind("adapter", "an adapter", List.of(ADAPTER, TEMPERATURE_OF_PART, NAME)),
            new Kind("bulkhead", "a bulkhead fitting", List.of(BULKHEAD, TEMPERATURE_OF_PART, NAME)),
            new Kind("union", "a union between two swivel nuts", List.of(UNION, TEMPERATURE_OF_PART, NAME)),
            new Kind("through", "an in-line device", List.of(THROUGH, TEMPERATURE_OF_PART)),
            new Kind("restrictor", "a drilled hole", List.of(RESTRICTOR, RESTRICTOR_LENGTH, TEMPERATURE_OF_PART, NAME)),
            new Kind("valve", "an open valve", List.of(VALVE, KV, CV, TEMPERATURE_OF_PART, NAME)),
            new Kind(
                    "law",
                    "a law stated outright",
                    List.of(
                            LAW,
                            LAW_BORE,
                            LAW_LENGTH,
                            LAW_F,
                            LAW_K,
                            LAW_R,
                            LAW_N,
                            LAW_HEADS,
                            LAW_POWER,
                            TEMPERATURE_OF_PART,
                            NAME)));

    /** Keys that hold more than one value and have a reader of their own. */
    static final List<String> LISTS = List.of(CURVES_MARK.name(), PARTS_MARK.name(), VIA_MARK.name());

    /** Keys of the whole file that hold one value. */
    public static final List<Key<?>> TOP =
            List.of(FORM, TITLE, SERVICE, FLUID, TEMPERATURE, THIS_CASE, ALTITUDE, GRAVITY, MOTION, GRADE, TRANSITION);

    /** Keys of the whole file that hold more than one value, in the order in which they are written. */
    public static final List<String> SECTIONS =
            List.of("engine", "catalogue", "points", "devices", "runs", "limits", "cases", "sections", "uses");

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

    private static List<Key<?>> with(List<Key<?>> first, List<Key<List<Figure>>> more) {
        List<Key<?>> all = new ArrayList<>(first);
        all.addAll(more);
        return all;
    }

    private static List<Key<?>> with(List<Key<?>> first, Key<?>... more) {
        List<Key<?>> all = new ArrayList<>(first);
        all.addAll(List.of(more));
        return all;
    }
}
