package org.linedrop.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Port;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Surroundings;
import org.linedrop.circuit.Tank;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.FluidState;
import org.linedrop.hydraulics.Transition;

/** Makes the network of a circuit: a point per port, a branch per stretch of run with one flow, the devices with ports. */
final class Assembly {
    /** What is left of every loss of hose, tube, ends and fittings when {@link CircuitNetwork.Setting#lossless} asks for none. */
    private static final double LOSSLESS_SHARE = 1e-6; // under a millionth of the loss, and still one flow per pressure

    private final Circuit circuit;
    private final CircuitNetwork.Setting setting;
    private final Surroundings around;
    private final FluidState state;
    private final NetworkBuilder builder = Network.builder();
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final Map<Double, Stream> streams = new LinkedHashMap<>();
    private final JunctionEnds junctions;
    private final List<Trace.RunTrace> traces = new ArrayList<>();
    private final List<Trace.Gate> gates = new ArrayList<>();

    Assembly(Circuit circuit, CircuitNetwork.Setting setting) {
        this.circuit = circuit;
        this.setting = setting;
        this.around = circuit.surroundings();
        this.state = CircuitNetwork.state(circuit, setting.band());
        this.junctions = new JunctionEnds(
                setting.bores(),
                stream(around.temperatureK().value()),
                setting.lossless() ? LOSSLESS_SHARE : 1,
                builder);
    }

    CircuitNetwork assemble() {
        builder.ambient(around.ambientPa());
        for (Run run : circuit.runs()) {
            add(run);
        }
        List<Trace.JunctionTrace> made = junctions.build();
        made.forEach(junction -> numbers.put(junction.id(), junction.centre()));
        for (Device device : circuit.devices()) {
            portDevice(device);
        }
        return new CircuitNetwork(circuit, setting, builder.build(), numbers, traces, made, gates);
    }

    private void add(Run run) {
        List<Stream> parts = new ArrayList<>();
        for (Part part : run.parts()) {
            parts.add(stream(run, part));
        }
        Point start = circuit.point(run.from().element()).orElse(null);
        Point end = circuit.point(run.to().element()).orElse(null);
        JunctionEnds.End first = start instanceof Junction j ? junctions.end(j, run.from(), true) : null;
        JunctionEnds.End last = end instanceof Junction j ? junctions.end(j, run.to(), false) : null;
        int from = first == null ? number(run.from()) : first.port();
        int to = last == null ? number(run.to()) : last.port();
        List<Piece> pieces = RunPieces.of(
                circuit,
                run,
                setting.bores(),
                parts,
                new RunPieces.Ends(
                        start instanceof Tank,
                        end instanceof Tank,
                        first == null ? null : first.piece(),
                        last == null ? null : last.piece(),
                        setting.level() ? null : position(run.from()),
                        setting.level() ? null : position(run.to())));
        traces.add(new Trace.RunTrace(
                run.id(),
                first == null ? from : first.centre(),
                last == null ? to : last.centre(),
                sections(pieces, from, to)));
    }

    /** Cuts a run where a device switches or something takes fluid. */
    private List<Trace.Section> sections(List<Piece> pieces, int from, int to) {
        List<List<Piece>> stretches = new ArrayList<>();
        List<Piece> open = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece.gate != null && !open.isEmpty()) {
                stretches.add(open);
                open = new ArrayList<>();
            }
            open.add(piece);
            if (piece.gate != null || piece.takes()) {
                stretches.add(open);
                open = new ArrayList<>();
            }
        }
        boolean endsWithDraw =
                !pieces.isEmpty() && pieces.get(pieces.size() - 1).takes();
        if (!open.isEmpty() || stretches.isEmpty() || endsWithDraw) {
            stretches.add(open);
        }
        List<Trace.Section> sections = new ArrayList<>();
        int here = from;
        for (int i = 0; i < stretches.size(); i++) {
            List<Piece> stretch = stretches.get(i);
            Piece last = stretch.isEmpty() ? null : stretch.get(stretch.size() - 1);
            int next = i == stretches.size() - 1 ? to : free(last != null && last.takes() ? last.takenKgPerS : 0);
            if (last != null && last.takes()) {
                numbers.put(last.device, next);
            }
            sections.add(
                    last != null && last.gate != null
                            ? gate(last, last.gate, here, next)
                            : smooth(stretch, here, next));
            here = next;
        }
        return sections;
    }

    private Trace.Section smooth(List<Piece> pieces, int from, int to) {
        List<Trace.Row> rows = new ArrayList<>();
        List<Law> terms = new ArrayList<>();
        double lift = 0;
        double most = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces) {
            if (piece.device.isEmpty() && (setting.friction() != 1 || setting.local() != 1)) {
                scale(piece);
            }
            Trace.Row row = (setting.lossless() && piece.device.isEmpty() ? withoutLoss(piece) : piece).freeze();
            rows.add(row);
            row.friction().forEach(term -> terms.add(term.law()));
            row.local().forEach(term -> terms.add(term.law()));
            lift += row.liftPa();
            most = Math.min(most, piece.mostKgPerS);
        }
        if (terms.isEmpty()) {
            terms.add(Prescribed.pressurePower(1, 1)); // 1 Pa per kg/s: two ports joined by nothing
        }
        int branch = builder.branch(from, to, new Series(terms, lift), Double.NEGATIVE_INFINITY, most);
        return new Trace.Section(branch, false, rows);
    }

    private Trace.Section gate(Piece piece, Piece.Gate gate, int from, int to) {
        int branch = builder.device(from, to, gate.overOutlet() ? to : -1, gate.law());
        gates.add(new Trace.Gate(piece.device, "", branch, gate.open()));
        return new Trace.Section(branch, true, List.of(piece.freeze()));
    }

    private void scale(Piece piece) {
        piece.friction.replaceAll(term -> term.times(setting.friction()));
        piece.local.replaceAll(term -> term.times(setting.local()));
        piece.joined.replaceAll(term -> term.times(setting.local()));
    }

    private static Piece withoutLoss(Piece piece) {
        piece.friction.replaceAll(term -> term.times(LOSSLESS_SHARE));
        piece.local.replaceAll(term -> term.times(LOSSLESS_SHARE));
        piece.joined.replaceAll(term -> term.times(LOSSLESS_SHARE));
        piece.story = piece.story.bare();
        return piece;
    }

    /** A device with ports of its own, between the points that runs come to. */
    private void portDevice(Device device) {
        List<String> ports = device.ports();
        if (ports.isEmpty()) {
            return;
        }
        Stream stream = stream(around.temperatureK().value());
        int inlet = number(new Port(device.id(), ports.get(0)));
        for (GateLaws.Way way : device.accept(new GateLaws.Ways(new GateLaws(stream, circuit)))) {
            Integer outlet = numbers.get(device.id() + "." + way.port());
            if (outlet == null) {
                continue; // the port is plugged
            }
            int branch;
            if (way.gate() == null) {
                branch = builder.branch(inlet, outlet, way.open());
            } else {
                String point = way.overPoint();
                int reference = way.gate().overOutlet() ? outlet : point.isEmpty() ? -1 : pointNumber(point);
                branch = builder.device(inlet, outlet, reference, way.gate().law());
            }
            gates.add(new Trace.Gate(device.id(), way.name(), branch, way.open()));
        }
    }

    /** A point that a regulator refers to. */
    private int pointNumber(String id) {
        Integer known = numbers.get(id);
        return known != null
                ? known
                : number(new Port(id, circuit.point(id).orElse(null) instanceof Tank ? Tank.OUTLET : ""));
    }

    private Stream stream(Run run, Part part) {
        Figure own = part.temperatureK() != null ? part.temperatureK() : run.temperatureK();
        return stream((own == null ? around.temperatureK() : own).value());
    }

    private Stream stream(double temperature) {
        Stream known = streams.get(temperature);
        if (known == null) {
            Transition transition = new Transition(
                    around.laminarUpToReynolds(),
                    around.turbulentFromReynolds(),
                    around.turbulentFromReynolds() - around.laminarUpToReynolds() < 2
                            ? Transition.Shape.STRAIGHT_LINE
                            : Transition.Shape.SMOOTHSTEP);
            known = Stream.of(around.fluid().at(temperature, setting.band()), transition);
            streams.put(temperature, known);
        }
        return known;
    }

    private @Nullable Position position(Port port) {
        Point point = circuit.point(port.element()).orElse(null);
        if (point == null) {
            return circuit.device(port.element()).map(Device::position).orElse(null);
        }
        if (point instanceof Tank tank && port.name().equals(Tank.RETURN)) {
            return tank.returnPosition();
        }
        return point.position();
    }

    private int number(Port port) {
        Integer known = numbers.get(port.text());
        if (known != null) {
            return known;
        }
        Point point = circuit.point(port.element()).orElse(null);
        int number;
        if (point instanceof Tank tank) {
            number = builder.fixedPoint(tankPressurePa(tank, position(port)));
        } else if (point instanceof Held held) {
            number = builder.fixedPoint(heldPressurePa(held));
        } else if (point instanceof Draw draw) {
            number = draw(draw);
        } else {
            number = free(0); // a joint, or the port of a device
        }
        numbers.put(port.text(), number);
        return number;
    }

    /** A given pressure is the user's word: fuel that boils in an open tank is warned of, not refused. Here it is. */
    private int free(double massDrawKgPerS) {
        int number = builder.freePoint(massDrawKgPerS);
        if (state.vapourPressurePa() >= 0) {
            builder.vapour(number, state.vapourPressurePa());
        }
        return number;
    }

    private int draw(Draw draw) {
        if (!(draw.takes() instanceof Demand.AtPressure rated)) {
            return free(massDrawKgPerS(draw.takes()));
        }
        int number = free(0);
        GateLaws laws = new GateLaws(stream(around.temperatureK().value()), circuit);
        builder.branch(number, builder.fixedPoint(laws.behindPa(rated)), laws.taken(rated, draw.law()));
        return number;
    }

    private double heldPressurePa(Held held) {
        if (held.pressurePa() != null) {
            return held.pressurePa().value();
        }
        double head = held.headM() == null ? Double.NaN : held.headM().value();
        return head * state.densityKgPerM3() * around.upMPerS2();
    }

    /** A port under the surface feels the column over it; one above it is open to the gas. */
    private double tankPressurePa(Tank tank, @Nullable Position port) {
        double gas = tank.gasPressurePa().value();
        Position outlet = tank.position();
        if (outlet == null || port == null) {
            return gas
                    + state.densityKgPerM3() * around.upMPerS2() * tank.depthM().value();
        }
        Position surface = new Position(
                outlet.aheadM(),
                outlet.leftM(),
                outlet.heightM() + tank.depthM().value());
        return gas + Math.max(0, state.densityKgPerM3() * around.potentialJPerKg(port, surface));
    }

    private double massDrawKgPerS(Demand takes) {
        return CircuitNetwork.massDrawKgPerS(circuit, takes, state.densityKgPerM3());
    }
}
