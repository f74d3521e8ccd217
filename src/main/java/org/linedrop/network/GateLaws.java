package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.FloatValve;
import org.linedrop.circuit.GearPump;
import org.linedrop.circuit.OneWayValve;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Rail;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Thermostat;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.fact.Figure;
import org.linedrop.hydraulics.RatedLoss;

/** Laws of devices that switch, hold a pressure or take by it, at one state of the fluid. */
final class GateLaws {
    /** What a bypass valve of unknown loss gains over its opening pressure at the rated flow of its element. */
    private static final double BYPASS_GAIN = 0.2; // from memory: spring-loaded poppets, 10 to 30 %
    /** Stand-in slope where a device is said to lose nothing wide open; decides speed, not answers. */
    private static final double NOMINAL_KG_PER_S = 0.05;

    private final Stream stream;
    private final @Nullable Figure manifoldPa;

    GateLaws(Stream stream, Circuit circuit) {
        this.stream = stream;
        this.manifoldPa = circuit.engine() == null ? null : circuit.engine().manifoldPa();
    }

    /**
     * One way through a device with ports.
     *
     * @param port      port it leads to
     * @param name      what it is called
     * @param overPoint point of the circuit that its set pressure counts from; empty where there is none
     * @param open      what it loses wide open
     * @param gate      its law where it switches or passes nothing, null where it is just open
     */
    record Way(String port, String name, String overPoint, Law open, Piece.@Nullable Gate gate) {}

    private double kgPerS(Figure flowM3PerS) {
        return flowM3PerS.value() * stream.densityKgPerM3();
    }

    private double viscosityRatio(@Nullable Figure ratedM2PerS) {
        return ratedM2PerS == null ? 1 : stream.dynamicViscosityPaS() / stream.densityKgPerM3() / ratedM2PerS.value();
    }

    /** A power law through a rated point, laminar part by the viscosity. */
    Law power(RatedPoint rated, double exponent, double factor) {
        double thicker = Math.pow(viscosityRatio(rated.viscosity()), 2 - exponent);
        return Prescribed.pressurePower(
                factor * thicker * rated.drop().value() / Math.pow(kgPerS(rated.flow()), exponent), exponent);
    }

    /** What a filter, cooler, passage or tap loses; through its bypass too where that opens. */
    Law resistance(Resistance device) {
        Law element = device.second() == null
                ? power(device.rated(), device.exponent().value(), device.factor())
                : twoPoints(device.rated(), device.second(), device.factor());
        if (device.bypassPa() == null) {
            return element;
        }
        double opens = device.bypassPa().value();
        double slope = BYPASS_GAIN * opens / kgPerS(device.rated().flow());
        return slope > 0 ? new Bypassed(element, opens, slope) : element;
    }

    private Law twoPoints(RatedPoint one, RatedPoint other, double factor) {
        boolean rising = one.flow().value() <= other.flow().value();
        RatedPoint low = rising ? one : other;
        RatedPoint high = rising ? other : one;
        double density = stream.densityKgPerM3();
        double viscosity = low.viscosity() == null
                ? stream.dynamicViscosityPaS()
                : low.viscosity().value() * density;
        double[] fitted = new double[2];
        RatedLoss.fit(
                low.flow().value(),
                low.drop().value(),
                high.flow().value(),
                high.drop().value(),
                density,
                viscosity,
                fitted);
        return new FlowTerm(
                density,
                (flow, out) -> RatedLoss.pressureDrop(
                        flow, factor * fitted[0], factor * fitted[1], density, stream.dynamicViscosityPaS(), out));
    }

    /** A closed tap. */
    Piece.Gate closed(RatedPoint rated) {
        Law open = power(rated, 2, 1);
        return new Piece.Gate(new FixedFlow(0, OneWay.secantSlope(open, kgPerS(rated.flow()))), open, false);
    }

    Piece.Gate oneWayValve(OneWayValve device) {
        RatedPoint rated = device.rated();
        double flow = kgPerS(rated.flow());
        double opens = device.opensPa().value();
        Law square = power(rated, 2, 1);
        if (device.kind().equals(OneWayValve.CHECK)) {
            Law open = Prescribed.plus(square, opens);
            return new Piece.Gate(OneWay.check(open, OneWay.secantSlope(square, flow)), open, false);
        }
        double slope = (rated.drop().value() - opens) / flow;
        return new Piece.Gate(OneWay.relief(opens, slope, 0, square, OneWay.secantSlope(square, flow)), square, true);
    }

    Piece.Gate regulator(Regulator device) {
        RatedPoint wide = device.wideOpen();
        Law open = wide == null ? Prescribed.constant(0) : power(wide, 2, 1);
        double set = device.holds().pressurePa().value() + overPa(device.holds().reference());
        Rise rise = device.slope();
        double slope = rise == null ? 0 : rise.slopePaPerM3PerS() / stream.densityKgPerM3();
        double at = rise == null ? 0 : rise.fromM3PerS() * stream.densityKgPerM3();
        double typical = wide == null
                ? device.holds().pressurePa().value() / NOMINAL_KG_PER_S
                : OneWay.secantSlope(open, kgPerS(wide.flow()));
        DeviceLaw law = device.bypass()
                ? OneWay.relief(set, slope, at, open, typical)
                : OneWay.reducing(set, slope, at, open, typical);
        return new Piece.Gate(law, open, false);
    }

    /** What lies behind a set pressure: nothing over air, the manifold's own gauge pressure over the manifold. */
    private double overPa(String reference) {
        return reference.equals(Over.MANIFOLD) && manifoldPa != null ? manifoldPa.value() : 0;
    }

    /** What a bearing, jet or injector set feels behind it. */
    double behindPa(Demand.AtPressure rated) {
        return overPa(rated.over());
    }

    /** What a draw takes at a pressure: bearings in proportion to it and to one over the viscosity, jets by its root. */
    Law taken(Demand.AtPressure rated, String law) {
        RatedPoint point = new RatedPoint(rated.pressurePa(), rated.flowM3PerS(), rated.viscosityM2PerS());
        return power(point, law.equals("bearings") ? 1 : 2, 1);
    }

    /** The rise of a gear pump as a law: what it moves falls on a straight line with the pressure. */
    Law gearPump(GearPump device) {
        RatedPoint leaks = device.leaks();
        double perPa = kgPerS(leaks.flow()) / leaks.drop().value() / viscosityRatio(leaks.viscosity());
        double swept = device.sweptM3PerS() * stream.densityKgPerM3();
        return Prescribed.plus(Prescribed.pressurePower(1 / perPa, 1), -swept / perPa);
    }

    /** The ways through devices with ports, in the order in which they are reported. */
    record Ways(GateLaws laws) implements Device.Visitor<List<Way>> {
        @Override
        public List<Way> regulator(Regulator device) {
            Piece.Gate gate = laws.regulator(device);
            return List.of(new Way(Regulator.RETURN, "", device.overPoint(), gate.open(), gate));
        }

        @Override
        public List<Way> thermostat(Thermostat device) {
            List<Way> ways = new ArrayList<>();
            ways.add(way(device, Thermostat.COOLER, device.coolerShare()));
            ways.add(way(device, Thermostat.DIRECT, device.directShare()));
            Figure bypass = device.bypassPa();
            if (bypass != null) {
                Law open = laws.power(device.rated(), 2, 1);
                double flow = laws.kgPerS(device.rated().flow());
                DeviceLaw law = OneWay.relief(
                        bypass.value(), BYPASS_GAIN * bypass.value() / flow, 0, open, OneWay.secantSlope(open, flow));
                ways.add(new Way(Thermostat.DIRECT, "bypass", "", open, new Piece.Gate(law, open, true)));
            }
            return ways;
        }

        private Way way(Thermostat device, String port, double share) {
            if (!(share > 0)) {
                return new Way(port, port, "", laws.power(device.rated(), 2, 1), laws.closed(device.rated()));
            }
            return new Way(port, port, "", laws.power(device.rated(), 2, 1 / (share * share)), null);
        }

        @Override
        public List<Way> pump(Pump device) {
            return List.of();
        }

        @Override
        public List<Way> gearPump(GearPump device) {
            return List.of();
        }

        @Override
        public List<Way> resistance(Resistance device) {
            return List.of();
        }

        @Override
        public List<Way> oneWayValve(OneWayValve device) {
            return List.of();
        }

        @Override
        public List<Way> rail(Rail device) {
            return List.of();
        }

        @Override
        public List<Way> floatValve(FloatValve device) {
            return List.of();
        }
    }
}
