package org.linedrop.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Joint;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.NotSolvableException;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Port;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Surroundings;
import org.linedrop.circuit.Tank;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Band;
import org.linedrop.fluid.FluidState;
import org.linedrop.hydraulics.Transition;

/**
 * A circuit as a network: a point number per port, a branch per run, and the rows behind each branch. Pressures are
 * gauge.
 */
public final class CircuitNetwork {
    /** What is left of every loss of hose, tube, ends and fittings when {@link Setting#lossless} asks for none. */
    private static final double LOSSLESS_SHARE = 1e-6; // under a millionth of the loss, and still one flow per pressure

    private final Circuit circuit;
    private final Setting setting;
    private final Network network;
    private final Map<String, Integer> numbers;
    private final List<Trace.RunTrace> runs;
    private final List<Trace.JunctionTrace> junctions;

    /**
     * How a circuit is turned into a network.
     *
     * @param bores    which end of the bands of bore
     * @param band     which end of the fluid's class
     * @param lossless whether hoses, tubes, ends and fittings lose nothing, so that only devices and height remain
     * @param level    whether height and acceleration take nothing
     */
    public record Setting(Bores bores, Band band, boolean lossless, boolean level) {
        /** Usual bores, usual fluid, every loss counted. */
        public static final Setting USUAL = new Setting(Bores.USUAL, Band.USUAL, false, false);

        /**
         * The same with other bores.
         *
         * @param other which bores
         * @return a copy
         */
        public Setting with(Bores other) {
            return new Setting(other, band, lossless, level);
        }

        /**
         * The same with another end of the fluid's class.
         *
         * @param other which end
         * @return a copy
         */
        public Setting with(Band other) {
            return new Setting(bores, other, lossless, level);
        }
    }

    private CircuitNetwork(
            Circuit circuit,
            Setting setting,
            Network network,
            Map<String, Integer> numbers,
            List<Trace.RunTrace> runs,
            List<Trace.JunctionTrace> junctions) {
        this.circuit = circuit;
        this.setting = setting;
        this.network = network;
        this.numbers = numbers;
        this.runs = List.copyOf(runs);
        this.junctions = List.copyOf(junctions);
    }

    /**
     * Makes the network of a circuit.
     *
     * @param circuit a built circuit
     * @param setting bores, fluid band, losses
     * @return the network with its trace
     * @throws NotSolvableException when the circuit holds something that no law is written for yet
     */
    public static CircuitNetwork of(Circuit circuit, Setting setting) {
        NotSolvableException.check(circuit);
        return new Assembly(circuit, setting).assemble();
    }

    /**
     * The circuit behind it.
     *
     * @return the circuit
     */
    public Circuit circuit() {
        return circuit;
    }

    /**
     * How it was made.
     *
     * @return the setting
     */
    public Setting setting() {
        return setting;
    }

    /**
     * The indexed network.
     *
     * @return points and branches
     */
    public Network network() {
        return network;
    }

    /**
     * The runs with their rows.
     *
     * @return in the circuit's order
     */
    public List<Trace.RunTrace> runs() {
        return runs;
    }

    /**
     * The tees and Y blocks.
     *
     * @return in the order in which runs come to them
     */
    public List<Trace.JunctionTrace> junctions() {
        return junctions;
    }

    /**
     * Number of a port's point.
     *
     * @param port text of the port, as {@link Port#text()}; a tank has {@code .outlet} and {@code .return}
     * @return its number, or -1 when no run uses it
     */
    public int number(String port) {
        return numbers.getOrDefault(port, -1);
    }

    /** Fluid of the circuit at its own temperature. */
    static FluidState state(Circuit circuit, Band band) {
        return circuit.surroundings()
                .fluid()
                .at(circuit.surroundings().temperatureK().value(), band);
    }

    private static final class Assembly {
        private final Circuit circuit;
        private final Setting setting;
        private final Surroundings around;
        private final FluidState state;
        private final NetworkBuilder builder = Network.builder();
        private final Map<String, Integer> numbers = new LinkedHashMap<>();
        private final Map<Double, Stream> streams = new LinkedHashMap<>();
        private final JunctionEnds junctions;
        private final List<Trace.RunTrace> traces = new ArrayList<>();

        Assembly(Circuit circuit, Setting setting) {
            this.circuit = circuit;
            this.setting = setting;
            this.around = circuit.surroundings();
            this.state = state(circuit, setting.band());
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
            return new CircuitNetwork(circuit, setting, builder.build(), numbers, traces, made);
        }

        private void add(Run run) {
            List<Stream> parts = new ArrayList<>();
            for (Part part : run.parts()) {
                parts.add(stream(run, part));
            }
            Point start = point(run.from());
            Point end = point(run.to());
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
                            setting.level() ? null : position(start, run.from()),
                            setting.level() ? null : position(end, run.to())));
            List<Trace.Row> rows = new ArrayList<>();
            List<Law> terms = new ArrayList<>();
            double lift = 0;
            for (Piece piece : pieces) {
                Trace.Row row = (setting.lossless() && piece.device.isEmpty() ? withoutLoss(piece) : piece).freeze();
                rows.add(row);
                row.friction().forEach(term -> terms.add(term.law()));
                row.local().forEach(term -> terms.add(term.law()));
                lift += row.liftPa();
            }
            if (terms.isEmpty()) {
                terms.add(Prescribed.pressurePower(1, 1)); // 1 Pa per kg/s: two ports joined by nothing
            }
            double most = mostKgPerS(pieces);
            int branch = builder.branch(from, to, new Series(terms, lift), Double.NEGATIVE_INFINITY, most);
            traces.add(new Trace.RunTrace(
                    run.id(), branch, first == null ? from : first.centre(), last == null ? to : last.centre(), rows));
        }

        private static Piece withoutLoss(Piece piece) {
            piece.friction.replaceAll(term -> term.times(LOSSLESS_SHARE));
            piece.local.replaceAll(term -> term.times(LOSSLESS_SHARE));
            piece.joined.replaceAll(term -> term.times(LOSSLESS_SHARE));
            piece.story = piece.story.bare();
            return piece;
        }

        /** What a run can pass before its pump runs out of table: the flow check of the solver needs it. */
        private double mostKgPerS(List<Piece> pieces) {
            double most = Double.POSITIVE_INFINITY;
            for (Piece piece : pieces) {
                if (piece.kind.equals("pump")) {
                    Pump pump = (Pump) circuit.device(piece.device).orElseThrow();
                    most = Math.min(most, pump.table().flowM3PerS().get(0) * piece.stream.densityKgPerM3());
                }
            }
            return most;
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

        private Point point(Port port) {
            return circuit.point(port.element()).orElseThrow();
        }

        private @Nullable Position position(Point point, Port port) {
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
            Point point = point(port);
            int number;
            if (point instanceof Tank tank) {
                number = builder.fixedPoint(tankPressurePa(tank, position(tank, port)));
            } else if (point instanceof Held held) {
                number = builder.fixedPoint(heldPressurePa(held));
            } else if (point instanceof Draw draw) {
                number = builder.freePoint(massDrawKgPerS(draw));
            } else if (point instanceof Joint) {
                number = builder.freePoint(0);
            } else {
                throw new IllegalStateException("no such kind of point: " + point);
            }
            // a given pressure is the user's word: fuel that boils in an open tank is warned of, not refused
            if (!(point instanceof Tank || point instanceof Held) && state.vapourPressurePa() >= 0) {
                builder.vapour(number, state.vapourPressurePa());
            }
            numbers.put(port.text(), number);
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
                        + state.densityKgPerM3()
                                * around.upMPerS2()
                                * tank.depthM().value();
            }
            Position surface = new Position(
                    outlet.aheadM(),
                    outlet.leftM(),
                    outlet.heightM() + tank.depthM().value());
            return gas + Math.max(0, state.densityKgPerM3() * around.potentialJPerKg(port, surface));
        }

        private double massDrawKgPerS(Draw draw) {
            Demand takes = draw.takes();
            if (takes instanceof Demand.ByMass byMass) {
                return byMass.flowKgPerS().value();
            }
            if (takes instanceof Demand.ByVolume byVolume) {
                return byVolume.flowM3PerS().value() * state.densityKgPerM3();
            }
            Demand.OfEngine share = (Demand.OfEngine) takes;
            if (circuit.engine() == null) {
                throw new IllegalStateException("a built circuit has an engine where a draw takes a share of it");
            }
            return share.share() * circuit.engine().fuelKgPerS(state.densityKgPerM3());
        }
    }
}
