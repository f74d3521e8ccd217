package org.linedrop.network;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.FloatValve;
import org.linedrop.circuit.GearPump;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.OneWayValve;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Rail;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Restriction;
import org.linedrop.circuit.Route;
import org.linedrop.circuit.StatedLaw;
import org.linedrop.circuit.Thermostat;
import org.linedrop.circuit.Through;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.Valve;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Explanation.Given;
import org.linedrop.fact.Figure;
import org.linedrop.hydraulics.FittingLoss;

/** Turns one part into its rows with their law terms, in flow order. */
final class PartLaws implements Part.Visitor<List<Piece>>, Device.Visitor<Piece> {
    /** Under this flow a pump of constant power is continued linearly: its rise would have no end. */
    private static final double LEAST_FLOW_M3_PER_S = 1e-4;

    /** Drawn tube, of which rails are made. */
    private static final double DRAWN_ROUGHNESS_M = 1.5e-6;

    private final Bores bores;
    private final Stream stream;
    private final Circuit circuit;
    private final PlumbingLaws laws;
    private final GateLaws gates;
    private final double gravityMPerS2;

    PartLaws(Bores bores, Stream stream, Circuit circuit) {
        this.bores = bores;
        this.stream = stream;
        this.circuit = circuit;
        this.gravityMPerS2 = circuit.surroundings().upMPerS2();
        this.laws = new PlumbingLaws(stream);
        this.gates = new GateLaws(stream, circuit);
    }

    @Override
    public List<Piece> hose(Hose part) {
        String size = part.size().sizeText();
        List<Piece> pieces = new ArrayList<>();
        double bore = bores.of(part.size().boreM());
        Piece length = new Piece("hose", named(part, "hose") + metres(part.lengthM()), part.id(), size, stream)
                .bore(part.size().boreM(), bore);
        length.lengthM = part.lengthM().value();
        double roughness = part.size().roughnessM().value();
        length.friction.addAll(hoseFriction(part, bore, roughness));
        length.story = Tales.hose(part, at -> hoseFriction(part, at, roughness));
        if (part.fromEnd() != null) {
            pieces.add(end(part.fromEnd(), part, bore, false));
        }
        pieces.add(length);
        if (part.toEnd() != null) {
            pieces.add(end(part.toEnd(), part, bore, true));
        }
        return pieces;
    }

    private static double bent(@Nullable Route bends, double lengthM) {
        return bends == null ? 0 : Math.min(lengthM, bends.count() * bends.angleRad() * bends.radiusM());
    }

    private List<Term> hoseFriction(Hose part, double boreM, double roughnessM) {
        double length = part.lengthM().value();
        Route bends = part.bends();
        double bent = bent(bends, length);
        List<Term> terms = new ArrayList<>();
        if (part.lossFactor() != null) {
            return List.of(
                    laws.multiplied("hose", boreM, length, part.lossFactor().value()));
        }
        if (part.size().convoluted()) {
            return List.of(laws.convoluted("hose", boreM, length));
        }
        terms.add(laws.friction("hose", boreM, length - bent, roughnessM));
        if (bends != null) {
            double radius = Math.max(bends.radiusM(), boreM); // a centre line tighter than its bore is no bend
            terms.add(laws.curved("hose", boreM, bent, radius, roughnessM));
        }
        return terms;
    }

    private Piece end(EndSize end, Hose hose, double hoseBoreM, boolean hoseFirst) {
        double nipple = bores.of(end.nippleBoreM());
        double through = bores.of(end.throughBoreM());
        Piece piece =
                new Piece("end", end.text(), hose.id(), hose.size().sizeText(), stream).bore(end.nippleBoreM(), nipple);
        piece.fitting = true;
        piece.inBoreM = hoseFirst ? hoseBoreM : through;
        piece.outBoreM = hoseFirst ? through : hoseBoreM;
        piece.local.addAll(laws.end(end, end.kind(), hoseBoreM, nipple, through, hoseFirst));
        boolean barb = end.throughBoreM().equals(end.nippleBoreM());
        piece.story = Tales.end(
                end,
                hose,
                hoseFirst,
                at -> laws.end(end, end.kind(), hoseBoreM, at, barb ? at : through, hoseFirst),
                other -> laws.end(end, other, hoseBoreM, nipple, through, hoseFirst));
        return piece;
    }

    @Override
    public List<Piece> tube(Tube part) {
        double bore = bores.of(part.size().boreM());
        String size = new TubeChoice(
                        part.size().material(),
                        part.size().outsideDiameterM(),
                        part.size().wallM())
                .sizeText();
        Piece length = new Piece("tube", named(part, "tube") + metres(part.lengthM()), part.id(), size, stream)
                .bore(part.size().boreM(), bore);
        length.lengthM = part.lengthM().value();
        double roughness = part.size().roughnessM().value();
        length.friction.add(laws.friction("tube", bore, length.lengthM, roughness));
        length.story = Tales.tube(
                part, at -> List.of(laws.friction("tube", at, part.lengthM().value(), roughness)));
        List<Piece> pieces = new ArrayList<>(List.of(length));
        Route bends = part.bends();
        if (bends != null) {
            String name = "its bends " + bends.count() + " x " + Math.round(Math.toDegrees(bends.angleRad()));
            Piece bent = new Piece("bends", name, part.id(), size, stream)
                    .bore(part.size().boreM(), bore);
            bent.local.addAll(laws.tubeBends(bends, bore));
            bent.story = Tales.bends(part, bends, at -> laws.tubeBends(bends, at));
            pieces.add(bent);
        }
        return pieces;
    }

    @Override
    public List<Piece> adapter(Adapter part) {
        double from = bores.of(part.size().fromBoreM());
        double to = bores.of(part.size().toBoreM());
        boolean narrowFirst = from <= to;
        Piece piece = new Piece(
                        part.size().kind(),
                        named(part, part.size().kind()),
                        part.id(),
                        part.size().text(),
                        stream)
                .bore(narrowFirst ? part.size().fromBoreM() : part.size().toBoreM(), Math.min(from, to));
        piece.fitting = true;
        piece.inBoreM = from;
        piece.outBoreM = to;
        boolean forged = part.size().forged();
        piece.local.addAll(laws.adapter(part.size(), forged, from, to));
        piece.story = Tales.adapter(part, () -> laws.adapter(part.size(), !forged, from, to));
        return List.of(piece);
    }

    @Override
    public List<Piece> statedLaw(StatedLaw part) {
        double bore = part.boreM() == null ? Double.NaN : part.boreM().value();
        double length = part.lengthM() == null ? 0 : part.lengthM().value();
        double coefficient = part.coefficient() == null ? 0 : part.coefficient().value();
        Piece piece = new Piece("law", named(part, part.law().word() + " law"), part.id(), "", stream);
        if (part.boreM() != null) {
            piece.bore(part.boreM(), bore);
        }
        piece.lengthM = length;
        double density = stream.densityKgPerM3();
        piece.story = Tales.stated(part);
        switch (part.law()) {
            case CONSTANT_F ->
                piece.friction.add(Tales.law(part, Prescribed.constantFriction(coefficient, length, bore, 0, density)));
            case LAMINAR ->
                piece.friction.add(
                        Tales.law(part, Prescribed.laminar(stream.dynamicViscosityPaS(), length, bore, 0, density)));
            case K -> piece.local.add(Tales.law(part, Prescribed.loss(coefficient, bore, density)));
            case POWER ->
                piece.local.add(Tales.law(
                        part,
                        Prescribed.headPower(
                                coefficient,
                                part.exponent() == null ? 2 : part.exponent().value(),
                                density,
                                gravityMPerS2)));
            case PUMP_POLYNOMIAL ->
                piece.local.add(Tales.law(
                        part,
                        PrescribedPump.polynomial(
                                part.rise().stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray(),
                                density,
                                gravityMPerS2)));
            case PUMP_POWER ->
                piece.local.add(
                        Tales.law(part, PrescribedPump.constantPower(coefficient, density, LEAST_FLOW_M3_PER_S)));
        }
        return List.of(piece);
    }

    @Override
    public List<Piece> restriction(Restriction part) {
        double hole = bores.of(part.holeM());
        String size = plain(part.holeM().value() * 1000) + " mm";
        Piece piece =
                new Piece("restrictor", named(part, "restrictor"), part.id(), size, stream).bore(part.holeM(), hole);
        piece.story = Story.of(
                List.of(new Given("hole", part.holeM(), "m"), new Given("length", part.lengthM(), "m")), "hole", null);
        piece.between = (from, to) -> laws.restrictor(from, hole, part.lengthM().value(), to);
        return List.of(piece);
    }

    @Override
    public List<Piece> valve(Valve part) {
        double bore = bores.of(part.size().fromBoreM());
        String build = part.build().isEmpty() ? "valve" : part.build() + " valve";
        Piece piece = new Piece(
                        "valve", named(part, build), part.id(), part.size().text(), stream)
                .bore(part.size().fromBoreM(), bore);
        piece.fitting = true;
        List<Given> given =
                new ArrayList<>(List.of(new Given("bore", part.size().fromBoreM(), "m")));
        Figure kv = part.kvM3PerHourAtBar();
        if (kv != null) {
            piece.local.add(laws.valve("valve", bore, kv));
            given.add(new Given("Kv, m3/h at 1 bar", kv, ""));
        } else {
            piece.local.add(laws.valve(build, bore, loss(part.build())));
        }
        piece.story = Story.of(given, "bore", null);
        return List.of(piece);
    }

    private static FittingLoss loss(String build) {
        return switch (build) {
            case Valve.BALL -> FittingLoss.BALL_VALVE;
            case Valve.GATE -> FittingLoss.GATE_VALVE;
            case Valve.GLOBE -> FittingLoss.GLOBE_VALVE;
            case Valve.SWING_CHECK -> FittingLoss.SWING_CHECK;
            case Valve.LIFT_CHECK -> FittingLoss.LIFT_CHECK;
            default -> throw new IllegalStateException("no loss is known of a valve of build " + build);
        };
    }

    @Override
    public List<Piece> through(Through part) {
        for (Device device : circuit.devices()) {
            if (device.id().equals(part.device())) {
                return List.of(device.accept(this));
            }
        }
        throw new IllegalStateException(
                "a built circuit names no missing device, but " + part.id() + " names " + part.device());
    }

    @Override
    public Piece pump(Pump device) {
        Piece piece = device(device);
        List<Double> flows = device.table().flowM3PerS();
        List<Double> rises = device.table().risePa();
        int rows = flows.size();
        double[] flow = new double[rows];
        double[] head = new double[rows];
        for (int i = 0; i < rows; i++) {
            flow[i] = flows.get(rows - 1 - i);
            head[i] = rises.get(rows - 1 - i) / stream.densityKgPerM3();
        }
        Law law = PrescribedPump.table(
                flow,
                head,
                device.straight() ? PrescribedPump.Between.STRAIGHT : PrescribedPump.Between.MONOTONE_CUBIC,
                stream.densityKgPerM3(),
                1);
        piece.mostKgPerS = flows.get(0) * stream.densityKgPerM3();
        piece.local.add(DeviceTales.pump(device, law, stream.densityKgPerM3()));
        return piece;
    }

    @Override
    public Piece gearPump(GearPump device) {
        Piece piece = device(device);
        Law law = gates.gearPump(device);
        piece.mostKgPerS = Math.max(0, device.sweptM3PerS()) * stream.densityKgPerM3();
        piece.local.add(DeviceTales.gearPump(device, law, stream));
        piece.story = DeviceTales.given(device);
        return piece;
    }

    @Override
    public Piece resistance(Resistance device) {
        Piece piece = device(device);
        piece.story = DeviceTales.given(device);
        if (device.shut()) {
            piece.gate = gates.closed(device.rated());
        } else {
            piece.local.add(DeviceTales.resistance(device, gates.resistance(device), stream));
        }
        return piece;
    }

    @Override
    public Piece oneWayValve(OneWayValve device) {
        Piece piece = device(device);
        piece.story = DeviceTales.given(device);
        piece.gate = gates.oneWayValve(device);
        return piece;
    }

    @Override
    public Piece regulator(Regulator device) {
        Piece piece = device(device);
        piece.story = DeviceTales.given(device);
        piece.gate = gates.regulator(device);
        return piece;
    }

    @Override
    public Piece rail(Rail device) {
        Piece piece = device(device).bore(device.boreM(), device.boreM().value());
        piece.lengthM = device.lengthM().value();
        piece.takenKgPerS = CircuitNetwork.massDrawKgPerS(circuit, device.takes(), stream.densityKgPerM3());
        Law whole = laws.friction("rail", device.boreM().value(), piece.lengthM, DRAWN_ROUGHNESS_M)
                .law();
        piece.friction.add(DeviceTales.rail(device, new Spread(whole, piece.takenKgPerS, device.taps())));
        piece.story = DeviceTales.given(device);
        return piece;
    }

    @Override
    public Piece floatValve(FloatValve device) {
        Piece piece = device(device);
        double discharge = device.discharge().value();
        Law law = Prescribed.loss(1 / (discharge * discharge), device.seatM().value(), stream.densityKgPerM3());
        piece.local.add(DeviceTales.floatValve(device, law));
        piece.story = DeviceTales.given(device);
        return piece;
    }

    @Override
    public Piece thermostat(Thermostat device) {
        throw new IllegalStateException("a built circuit has no thermostat inside a run, but " + device.id() + " is");
    }

    private Piece device(Device device) {
        Piece piece = new Piece(device.kind(), device.id(), device.id(), "", stream);
        piece.device = device.id();
        return piece;
    }

    private static String named(Part part, String kind) {
        return isNumbered(part.id()) ? kind : part.id();
    }

    /** Whether an id is run and number rather than a name of its own. */
    private static boolean isNumbered(String id) {
        return id.matches(".* \\d+");
    }

    /** Four digits, no more than are needed. */
    private static String plain(double value) {
        return new BigDecimal(value, new MathContext(4)).stripTrailingZeros().toPlainString();
    }

    private static String metres(Figure length) {
        return String.format(Locale.ROOT, " %.2f m", length.value());
    }
}
