package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Thermostat;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Trace;

/** Makes the device rows of a result. */
final class DeviceMaker implements Device.Visitor<Optional<DeviceRow>> {
    private final Result result;

    private DeviceMaker(Result result) {
        this.result = result;
    }

    static List<DeviceRow> devices(Result result) {
        List<DeviceRow> rows = new ArrayList<>();
        DeviceMaker maker = new DeviceMaker(result);
        for (Device device : result.circuit().devices()) {
            device.accept(maker).ifPresent(rows::add);
        }
        return List.copyOf(rows);
    }

    private Optional<PartRow> row(Device device) {
        return result.rows().stream()
                .filter(r -> r.part().equals(device.id()) && r.kind().equals(device.kind()))
                .findFirst();
    }

    private List<Trace.Gate> gates(Device device) {
        return result.network().gates().stream()
                .filter(gate -> gate.device().equals(device.id()))
                .toList();
    }

    private int state(Trace.Gate gate) {
        return result.solution().state(gate.branch());
    }

    @Override
    public Optional<DeviceRow> pump(Pump device) {
        return row(device).map(row -> {
            List<Double> flows = device.table().flowM3PerS();
            double flow = row.flowM3PerS();
            String state = device.bound() ? "known by one point" : "on its table";
            if (flow > flows.get(0)) {
                state = "outside pump table: run-out";
            } else if (flow < flows.get(flows.size() - 1)) {
                state = flow < 0 ? "outside pump table: back-flow" : "outside pump table: over its highest pressure";
            }
            double wanted = wantedKgPerS();
            double spilled = spilledKgPerS(row.massFlowKgPerS(), wanted);
            // nothing spills in a loop, and a dead-headed feed balances to 1e-9
            boolean canSpill = wanted > 0 && Math.abs(spilled) > 1e-6 * wanted;
            double density = row.massFlowKgPerS() / row.flowM3PerS();
            return made(
                    row,
                    state,
                    new DeviceRow.Fact("risePa", -row.localDropPa()),
                    new DeviceRow.Fact("inletMarginPa", inletMarginPa(row)),
                    new DeviceRow.Fact("fillTimeS", volumeM3() / flows.get(0)),
                    new DeviceRow.Fact("spilledFlowM3PerS", canSpill ? spilled / density : Double.NaN),
                    new DeviceRow.Fact("spareFlowRatio", canSpill ? spilled / wanted : Double.NaN));
        });
    }

    /** What all hose and hard line of the circuit hold: at its free flow the pump fills them in that over the flow. */
    private double volumeM3() {
        double volume = 0;
        for (Run run : result.circuit().runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose) {
                    volume += volumeM3(hose.size().boreM(), hose.lengthM());
                } else if (part instanceof Tube tube) {
                    volume += volumeM3(tube.size().boreM(), tube.lengthM());
                }
            }
        }
        return volume;
    }

    private static double volumeM3(Figure bore, Figure length) {
        return Math.PI / 4 * bore.value() * bore.value() * length.value();
    }

    /** What draws and rails take. */
    private double wantedKgPerS() {
        double wanted = result.points().stream()
                .filter(point -> point.kind().equals("draw"))
                .mapToDouble(PointRow::netInflowKgPerS)
                .sum();
        for (Device device : result.circuit().devices()) {
            if (device instanceof Rail) {
                wanted += result.network().network().drawKgPerS(result.network().number(device.id()));
            }
        }
        return wanted;
    }

    /** What comes back: of one pump all that is not drawn, of several what the regulators spill. */
    private double spilledKgPerS(double pumpedKgPerS, double wantedKgPerS) {
        long pumps = result.circuit().devices().stream()
                .filter(device -> device instanceof Pump || device instanceof GearPump)
                .count();
        if (pumps == 1) {
            return pumpedKgPerS - wantedKgPerS;
        }
        double spilled = 0;
        for (Device device : result.circuit().devices()) {
            if (device instanceof Regulator regulator && regulator.bypass()) {
                for (Trace.Gate gate : gates(device)) {
                    spilled += result.solution().massFlowKgPerS(gate.branch());
                }
            }
        }
        return spilled;
    }

    /** Absolute static pressure at the inlet over the vapour pressure of what comes in. */
    private double inletMarginPa(PartRow row) {
        for (Trace.RunTrace run : result.network().runs()) {
            for (Trace.Row trace : run.rows()) {
                if (trace.device().equals(row.part())) {
                    return row.staticPressureInPa()
                            + result.circuit().surroundings().ambientPa()
                            - trace.stream().vapourPressurePa();
                }
            }
        }
        return Double.NaN;
    }

    @Override
    public Optional<DeviceRow> gearPump(GearPump device) {
        return row(device)
                .map(row -> made(
                        row,
                        "turning",
                        new DeviceRow.Fact("risePa", -row.localDropPa()),
                        new DeviceRow.Fact("inletMarginPa", inletMarginPa(row)),
                        new DeviceRow.Fact("sweptFlowM3PerS", device.sweptM3PerS()),
                        new DeviceRow.Fact("leakFlowM3PerS", device.sweptM3PerS() - row.flowM3PerS())));
    }

    @Override
    public Optional<DeviceRow> resistance(Resistance device) {
        return row(device).map(row -> {
            double clog = device.clog().value();
            String state = switch (device.kind()) {
                case Resistance.FILTER ->
                    clog == 1 ? "clean" : String.format(Locale.ROOT, "%.3g times its clean drop", clog);
                case Resistance.TAP ->
                    device.shut()
                            ? "shut"
                            : String.format(
                                    Locale.ROOT,
                                    "%.3g %% open",
                                    100 * device.open().value());
                default -> "passes";
            };
            if (device.bypassPa() != null) {
                boolean open = row.localDropPa() > device.bypassPa().value();
                state += open ? ", bypass open" : ", bypass shut";
            }
            if (device.kind().equals(Resistance.FILTER)) {
                return made(row, state, new DeviceRow.Fact("clogRatio", clog));
            }
            return device.heatW() == null
                    ? made(row, state)
                    : made(row, state, new DeviceRow.Fact("temperatureChangeK", warmed(device.heatW(), row)));
        });
    }

    /** What a heat flow changes the temperature of the fluid by: heat over mass flow and specific heat. */
    private double warmed(Figure heatW, PartRow row) {
        double specificHeat = result.circuit().surroundings().fluidState().specificHeatJPerKgK();
        return heatW.value() / (Math.abs(row.massFlowKgPerS()) * specificHeat);
    }

    @Override
    public Optional<DeviceRow> oneWayValve(OneWayValve device) {
        return row(device).map(row -> made(row, state(gates(device).get(0)) == DeviceLaw.SHUT ? "shut" : "open"));
    }

    @Override
    public Optional<DeviceRow> regulator(Regulator device) {
        List<Trace.Gate> gates = gates(device);
        if (gates.isEmpty()) {
            return Optional.empty();
        }
        Control control = Control.of(result, device, gates.get(0));
        List<DeviceRow.Fact> facts = new ArrayList<>();
        facts.add(new DeviceRow.Fact("heldPressurePa", control.heldPa()));
        facts.add(new DeviceRow.Fact("openDropPa", control.openDropPa()));
        facts.add(new DeviceRow.Fact(device.bypass() ? "floorPa" : "ceilingPa", control.boundPa()));
        if (!device.bypass() && device.creepPa().value() > 0) {
            facts.add(new DeviceRow.Fact(
                    "lockUpPa", control.heldPa() + device.creepPa().value()));
        }
        facts.add(new DeviceRow.Fact("controlMarginPa", control.marginPa()));
        return Optional.of(between(device, gates.get(0), control.state(), facts));
    }

    @Override
    public Optional<DeviceRow> thermostat(Thermostat device) {
        List<Trace.Gate> gates = gates(device);
        if (gates.isEmpty()) {
            return Optional.empty();
        }
        double opening = device.opening();
        String state = opening <= 0 ? "shut" : opening >= 1 ? "open" : "opening";
        double all = 0;
        List<DeviceRow.Fact> facts = new ArrayList<>();
        double density = density();
        for (Trace.Gate gate : gates) {
            double flow = result.solution().massFlowKgPerS(gate.branch());
            all += flow;
            facts.add(new DeviceRow.Fact(gate.way() + "FlowM3PerS", flow / density));
        }
        facts.add(new DeviceRow.Fact("openRatio", opening));
        int branch = gates.get(0).branch();
        double in = result.solution().totalPressurePa(result.network().network().from(branch));
        double out =
                result.solution().totalPressurePa(result.network().network().to(branch));
        return Optional.of(
                new DeviceRow(device.id(), device.kind(), state, all, all / density, in, out, in - out, facts));
    }

    @Override
    public Optional<DeviceRow> rail(Rail device) {
        return row(device).map(row -> {
            double taken =
                    result.network().network().drawKgPerS(result.network().number(device.id()));
            double density = row.massFlowKgPerS() / row.flowM3PerS();
            return made(row, "feeds its injectors", new DeviceRow.Fact("takenFlowM3PerS", taken / density));
        });
    }

    @Override
    public Optional<DeviceRow> floatValve(FloatValve device) {
        return row(device).map(row -> made(row, "needle wide open"));
    }

    private double density() {
        return result.circuit().surroundings().fluidState().densityKgPerM3();
    }

    /** A device between two points of the network, where what stands there is still. */
    private DeviceRow between(Device device, Trace.Gate gate, String state, List<DeviceRow.Fact> facts) {
        Optional<PartRow> row = row(device);
        if (row.isPresent()) {
            return made(row.get(), state, facts.toArray(new DeviceRow.Fact[0]));
        }
        double flow = result.solution().massFlowKgPerS(gate.branch());
        double in = result.solution().totalPressurePa(result.network().network().from(gate.branch()));
        double out =
                result.solution().totalPressurePa(result.network().network().to(gate.branch()));
        return new DeviceRow(device.id(), device.kind(), state, flow, flow / density(), in, out, in - out, facts);
    }

    private static DeviceRow made(PartRow row, String state, DeviceRow.Fact... figures) {
        return new DeviceRow(
                row.part(),
                row.kind(),
                state,
                row.massFlowKgPerS(),
                row.flowM3PerS(),
                row.staticPressureInPa(),
                row.staticPressureOutPa(),
                row.localDropPa(),
                List.of(figures));
    }
}
