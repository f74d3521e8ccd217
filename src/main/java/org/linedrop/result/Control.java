package org.linedrop.result;

import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Engine;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.Rise;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Trace;
import org.linedrop.solver.Solution;

/**
 * What a regulator does: whether it holds what it was set to, and how far it is from not doing so.
 *
 * @param state      shut, in control or wide open
 * @param heldPa     gauge pressure it is set to hold at the flow it passes
 * @param openDropPa what it would lose wide open at that flow
 * @param boundPa    of a bypass regulator the lowest pressure its inlet can come to at that flow; of a dead-head one the
 *                   highest that its outlet can come to
 * @param marginPa   pressure it throttles away when in control; else minus what is missing to be in control
 */
record Control(String state, double heldPa, double openDropPa, double boundPa, double marginPa) {

    static Control of(Result result, Regulator device, Trace.Gate gate) {
        Solution solution = result.solution();
        int branch = gate.branch();
        double flow = solution.massFlowKgPerS(branch);
        double in = solution.totalPressurePa(result.network().network().from(branch));
        double out = solution.totalPressurePa(result.network().network().to(branch));
        double[] open = new double[2];
        gate.open().evaluate(flow, open);
        Rise slope = device.slope();
        double density = result.circuit().surroundings().fluidState().densityKgPerM3();
        double byFlow = slope == null ? 0 : slope.slopePaPerM3PerS() * (flow / density - slope.fromM3PerS());
        double held =
                device.holds().pressurePa().value() + overPa(result, device) + (device.bypass() ? byFlow : -byFlow);
        int state = solution.state(branch);
        double off = device.bypass() ? held - in : out - held;
        double margin = state == DeviceLaw.IN_CONTROL ? in - out - open[0] : -Math.abs(off);
        return new Control(
                new String[] {"shut", "in control", "wide open"}[state],
                held,
                open[0],
                device.bypass() ? out + open[0] : in - open[0],
                margin);
    }

    private static double overPa(Result result, Regulator device) {
        String point = device.overPoint();
        if (!point.isEmpty()) {
            return result.point(point).map(PointRow::totalPressurePa).orElse(Double.NaN);
        }
        @Nullable Engine engine = result.circuit().engine();
        boolean manifold = device.holds().reference().equals(Over.MANIFOLD);
        return manifold && engine != null && engine.manifoldPa() != null
                ? engine.manifoldPa().value()
                : 0;
    }
}
