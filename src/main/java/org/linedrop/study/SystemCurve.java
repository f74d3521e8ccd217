package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Tank;
import org.linedrop.network.Trace;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/**
 * What the plumbing on the way of a pump asks of it at other flows than the solved one. All flows on the way are taken in
 * proportion and the pressures at both its ends as they are, which is so where something keeps them (tank, regulator,
 * return) and is what the consumer asks for where nothing does. The laws are those of the solve; what has no law in its
 * flow alone - the legs of a tee, a device with several ports - is taken to lose by the square of it. The curve meets the
 * pump's own at the solved flow.
 *
 * @param pump       name of the pump
 * @param caseName   name of the case
 * @param table      flow and rise of the pump as it runs in that case
 * @param flowM3PerS the solved flow
 * @param risePa     the solved rise
 * @param places     flow and rise asked for, by rising flow from none
 * @param end        where the way ends
 */
public record SystemCurve(
        String pump,
        String caseName,
        List<Place> table,
        double flowM3PerS,
        double risePa,
        List<Place> places,
        String end) {
    private static final int STEPS = 32;

    /** Copies the lists. */
    public SystemCurve {
        table = List.copyOf(table);
        places = List.copyOf(places);
    }

    /**
     * A place on a curve.
     *
     * @param flowM3PerS flow
     * @param risePa     pressure rise
     */
    public record Place(double flowM3PerS, double risePa) {}

    /**
     * The curves of a solved circuit.
     *
     * @param result a solved circuit
     * @return one for each pump with a table through which something flows forward
     */
    public static List<SystemCurve> of(Result result) {
        List<SystemCurve> curves = new ArrayList<>();
        for (Device device : result.circuit().devices()) {
            if (device instanceof Pump pump) {
                result.rows().stream()
                        .filter(row -> row.part().equals(pump.id()) && row.massFlowKgPerS() > 0)
                        .findFirst()
                        .ifPresent(row -> curves.add(curve(result, pump, FlowPath.of(result, row.run()))));
            }
        }
        return List.copyOf(curves);
    }

    private static SystemCurve curve(Result result, Pump pump, FlowPath path) {
        Map<List<String>, Trace.Row> traces = traces(result);
        List<Loss> losses = new ArrayList<>();
        double flow = 0;
        double rise = 0;
        String end = path.places().get(path.places().size() - 1);
        boolean behind = false;
        FlowPath.Row last = closed(result, path) ? path.rows().get(path.rows().size() - 1) : null;
        for (FlowPath.Row met : path.rows()) {
            PartRow row = met.row();
            if (last != null) { // a device that stands where runs meet has no row of its own
                losses.add(new Loss(row.massFlowKgPerS(), last.pressureOutPa() - met.pressureInPa(), null));
            }
            last = met;
            if (row.part().equals(pump.id())) {
                flow = row.flowM3PerS();
                rise = -row.localDropPa();
                behind = true;
            } else if (behind && result.circuit().device(row.part()).orElse(null) instanceof Regulator) {
                end = row.part(); // it keeps its pressure whatever the line behind it takes
                break;
            } else if (!met.pump()) {
                losses.add(Loss.of(row, traces.get(List.of(row.run(), row.row()))));
            }
        }
        List<Place> table = new ArrayList<>();
        for (int i = 0; i < pump.table().flowM3PerS().size(); i++) {
            table.add(new Place(
                    pump.table().flowM3PerS().get(i), pump.table().risePa().get(i)));
        }
        List<Place> places = new ArrayList<>();
        double most = Math.max(table.get(0).flowM3PerS(), flow);
        for (int i = 0; i <= STEPS; i++) {
            double share = most * i / STEPS / flow;
            double needed = rise;
            for (Loss loss : losses) {
                needed += loss.atShare(share) - loss.solvedPa();
            }
            places.add(new Place(share * flow, needed));
        }
        return new SystemCurve(pump.id(), result.circuit().caseName(), table, flow, rise, places, end);
    }

    /** Whether the way comes back to a place that no tank or regulator keeps. */
    private static boolean closed(Result result, FlowPath path) {
        List<String> places = path.places();
        Point start = result.circuit().point(places.get(0)).orElse(null);
        boolean kept = start instanceof Tank || start instanceof Held;
        return !kept && places.get(0).equals(places.get(places.size() - 1));
    }

    /** Rows that have a law in their flow alone. */
    private static Map<List<String>, Trace.Row> traces(Result result) {
        Map<List<String>, Trace.Row> traces = new LinkedHashMap<>();
        for (Trace.RunTrace run : result.network().runs()) {
            for (Trace.Section section : run.sections()) {
                if (!section.gate()) {
                    section.rows().forEach(row -> traces.put(List.of(run.id(), row.row()), row));
                }
            }
        }
        return traces;
    }

    /**
     * What a row on the way loses.
     *
     * @param massFlowKgPerS its solved flow, in the sense of the run
     * @param solvedPa       its loss there, positive in the sense of the flow
     * @param law            its law, null where it has none in its flow alone
     */
    private record Loss(double massFlowKgPerS, double solvedPa, Trace.@org.jspecify.annotations.Nullable Row law) {
        static Loss of(PartRow row, Trace.@org.jspecify.annotations.Nullable Row trace) {
            double flow = row.massFlowKgPerS();
            double sense = flow < 0 ? -1 : 1;
            double solved = sense * (row.frictionDropPa() + row.localDropPa());
            boolean own = trace != null
                    && trace.leg() == null
                    && !(trace.friction().isEmpty() && trace.local().isEmpty());
            return new Loss(flow, solved, own ? trace : null);
        }

        double atShare(double share) {
            if (law == null) {
                return share * share * solvedPa;
            }
            double flow = share * massFlowKgPerS;
            double sense = massFlowKgPerS < 0 ? -1 : 1;
            return sense * (law.frictionDropPa(flow) + law.localDropPa(flow));
        }
    }
}
