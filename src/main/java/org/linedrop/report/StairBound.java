package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Engine;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.Figure;
import org.linedrop.result.LimitRow;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FlowPath;

/**
 * A bound of a place or device on the way.
 *
 * @param subject the place or device
 * @param boundPa gauge pressure
 */
record StairBound(String subject, double boundPa) {
    /** Limits on gauge pressure, at points and at the ports of devices. */
    static List<StairBound> of(CaseCheck check) {
        List<StairBound> bounds = new ArrayList<>();
        for (LimitRow row : Standing.limits(check.result())) {
            LimitText bound = row.limit().bound();
            String quantity = row.limit().quantity();
            if (row.ofState() || !row.unit().equals("Pa") || !(quantity.equals("inlet vacuum") || gauged(quantity))) {
                continue;
            }
            double sense = quantity.equals("inlet vacuum") ? -1 : 1;
            double over = quantity.endsWith("over manifold")
                    ? manifoldPa(check.result().usual().circuit().engine())
                    : 0;
            for (double end : new double[] {bound.low(), bound.high()}) {
                if (Double.isFinite(over + end)) {
                    bounds.add(new StairBound(row.limit().subject(), over + sense * end));
                }
            }
        }
        return bounds;
    }

    private static boolean gauged(String quantity) {
        return quantity.equals("pressure")
                || quantity.endsWith("let pressure")
                || quantity.equals("pressure over manifold");
    }

    private static double manifoldPa(@Nullable Engine engine) {
        Figure manifold = engine == null ? null : engine.manifoldPa();
        return manifold == null ? Double.NaN : manifold.value();
    }

    /** Whether its place or device is on a way. */
    boolean on(FlowPath path) {
        return path.places().contains(subject)
                || path.legs().stream()
                        .flatMap(leg -> leg.rows().stream())
                        .anyMatch(met -> met.row().part().equals(subject));
    }

    /** Whether a line is its place or device. */
    boolean at(StairStretch.Stop stop) {
        return stop.row() == null
                ? stop.place().equals(subject)
                : stop.row().row().part().equals(subject);
    }
}
