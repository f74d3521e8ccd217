package org.linedrop.network;

import java.io.Serializable;
import java.util.List;
import java.util.Map;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Port;
import org.linedrop.fluid.Band;
import org.linedrop.fluid.FluidState;

/**
 * A circuit as a network: a point number per port, a branch per run, and the rows behind each branch. Pressures are
 * gauge.
 */
public final class CircuitNetwork {
    private final Circuit circuit;
    private final Setting setting;
    private final Network network;
    private final Map<String, Integer> numbers;
    private final List<Trace.RunTrace> runs;
    private final List<Trace.JunctionTrace> junctions;
    private final List<Trace.Gate> gates;

    /**
     * How a circuit is turned into a network.
     *
     * @param bores    which end of the bands of bore
     * @param band     which end of the fluid's class
     * @param lossless whether hoses, tubes, ends and fittings lose nothing, so that only devices and height remain
     * @param level    whether height and acceleration take nothing
     * @param friction factor on every friction of plumbing, 1 as the laws say
     * @param local    factor on every local loss of plumbing, 1 as the laws say
     */
    public record Setting(Bores bores, Band band, boolean lossless, boolean level, double friction, double local)
            implements Serializable {
        /** Usual bores, usual fluid, every loss counted. */
        public static final Setting USUAL = new Setting(Bores.USUAL, Band.USUAL, false, false);

        /**
         * With every loss as the laws say.
         *
         * @param bores    which end of the bands of bore
         * @param band     which end of the fluid's class
         * @param lossless whether hoses, tubes, ends and fittings lose nothing
         * @param level    whether height and acceleration take nothing
         */
        public Setting(Bores bores, Band band, boolean lossless, boolean level) {
            this(bores, band, lossless, level, 1, 1);
        }

        /**
         * The same with losses over or under what the laws say.
         *
         * @param ofFriction factor on every friction of plumbing, above 0
         * @param ofLocal    factor on every local loss of plumbing, above 0
         * @return a copy
         */
        public Setting times(double ofFriction, double ofLocal) {
            if (!(ofFriction > 0 && ofLocal > 0)) {
                throw new IllegalArgumentException(
                        "factors of loss must be above 0, but are " + ofFriction + " and " + ofLocal);
            }
            return new Setting(bores, band, lossless, level, ofFriction, ofLocal);
        }

        /**
         * The same with other bores.
         *
         * @param other which bores
         * @return a copy
         */
        public Setting with(Bores other) {
            return new Setting(other, band, lossless, level, friction, local);
        }

        /**
         * The same with another end of the fluid's class.
         *
         * @param other which end
         * @return a copy
         */
        public Setting with(Band other) {
            return new Setting(bores, other, lossless, level, friction, local);
        }
    }

    CircuitNetwork(
            Circuit circuit,
            Setting setting,
            Network network,
            Map<String, Integer> numbers,
            List<Trace.RunTrace> runs,
            List<Trace.JunctionTrace> junctions,
            List<Trace.Gate> gates) {
        this.circuit = circuit;
        this.setting = setting;
        this.network = network;
        this.numbers = numbers;
        this.runs = List.copyOf(runs);
        this.junctions = List.copyOf(junctions);
        this.gates = List.copyOf(gates);
    }

    /**
     * Makes the network of a circuit.
     *
     * @param circuit a built circuit
     * @param setting bores, fluid band, losses
     * @return the network with its trace
     */
    public static CircuitNetwork of(Circuit circuit, Setting setting) {
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
     * The branches of devices that switch, or share their flow over more than one way.
     *
     * @return those in runs first, then those with ports of their own
     */
    public List<Trace.Gate> gates() {
        return gates;
    }

    /**
     * Number of a port's point.
     *
     * @param port text of the port, as {@link Port#text()}; a tank has {@code .outlet} and {@code .return}, and a rail is
     *             a point behind its last injector
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

    /**
     * What a fixed draw takes.
     *
     * @param circuit        the circuit, for its engine
     * @param takes          a volume, a mass or a share of the engine
     * @param densityKgPerM3 density there
     * @return kg/s
     */
    static double massDrawKgPerS(Circuit circuit, Demand takes, double densityKgPerM3) {
        if (takes instanceof Demand.ByMass byMass) {
            return byMass.flowKgPerS().value();
        }
        if (takes instanceof Demand.ByVolume byVolume) {
            return byVolume.flowM3PerS().value() * densityKgPerM3;
        }
        Demand.OfEngine share = (Demand.OfEngine) takes;
        if (circuit.engine() == null) {
            throw new IllegalStateException("a built circuit has an engine where a draw takes a share of it");
        }
        return share.share() * circuit.engine().fuelKgPerS(densityKgPerM3);
    }
}
