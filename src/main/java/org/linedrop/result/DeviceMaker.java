package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Filter;
import org.linedrop.circuit.OtherDevice;
import org.linedrop.circuit.Pump;
import org.linedrop.network.Trace;

/** Makes the device rows of a result. */
final class DeviceMaker implements Device.Visitor<DeviceRow> {
    private final Result result;
    private final PartRow row;

    private DeviceMaker(Result result, PartRow row) {
        this.result = result;
        this.row = row;
    }

    static List<DeviceRow> devices(Result result) {
        List<DeviceRow> rows = new ArrayList<>();
        for (Device device : result.circuit().devices()) {
            Optional<PartRow> row = result.rows().stream()
                    .filter(r -> r.part().equals(device.id()) && r.kind().equals(device.kind()))
                    .findFirst();
            row.ifPresent(r -> rows.add(device.accept(new DeviceMaker(result, r))));
        }
        return List.copyOf(rows);
    }

    @Override
    public DeviceRow pump(Pump device) {
        List<Double> flows = device.table().flowM3PerS();
        double flow = row.flowM3PerS();
        String state = "on its table";
        if (flow > flows.get(0)) {
            state = "outside pump table: run-out";
        } else if (flow < flows.get(flows.size() - 1)) {
            state = flow < 0 ? "outside pump table: back-flow" : "outside pump table: over its highest pressure";
        }
        double wanted = -result.points().stream()
                .filter(point -> point.kind().equals("draw"))
                .mapToDouble(point -> -point.netInflowKgPerS())
                .sum();
        double spilled = row.massFlowKgPerS() - wanted;
        boolean canSpill = Math.abs(spilled) > 1e-6 * Math.abs(wanted); // a dead-headed feed balances to 1e-9
        double density = row.massFlowKgPerS() / row.flowM3PerS();
        return made(
                state,
                List.of(
                        new DeviceRow.Fact("risePa", -row.localDropPa()),
                        new DeviceRow.Fact("inletMarginPa", inletMarginPa()),
                        new DeviceRow.Fact("spilledFlowM3PerS", canSpill ? spilled / density : Double.NaN),
                        new DeviceRow.Fact("spareFlowRatio", canSpill && wanted > 0 ? spilled / wanted : Double.NaN)));
    }

    /** Absolute static pressure at the inlet over the vapour pressure of what comes in. */
    private double inletMarginPa() {
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
    public DeviceRow filter(Filter device) {
        double clog = device.clog().value();
        String state = clog == 1 ? "clean" : String.format(Locale.ROOT, "%.3g times its clean drop", clog);
        return made(state, List.of(new DeviceRow.Fact("clogRatio", clog)));
    }

    @Override
    public DeviceRow other(OtherDevice device) {
        throw new IllegalStateException("a circuit with " + device.what() + " is refused before it comes here");
    }

    private DeviceRow made(String state, List<DeviceRow.Fact> figures) {
        return new DeviceRow(
                row.part(),
                row.kind(),
                state,
                row.massFlowKgPerS(),
                row.flowM3PerS(),
                row.staticPressureInPa(),
                row.staticPressureOutPa(),
                row.localDropPa(),
                figures);
    }
}
