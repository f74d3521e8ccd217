package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.network.Stream;
import org.linedrop.network.Trace;
import org.linedrop.solver.Solution;

/** Makes the point rows of a result. */
final class PointMaker {
    private final Result result;

    PointMaker(Result result) {
        this.result = result;
    }

    List<PointRow> points() {
        List<PointRow> rows = new ArrayList<>();
        for (Point point : result.circuit().points()) {
            PointRow row = point(point);
            if (row != null) {
                rows.add(row);
            }
        }
        return List.copyOf(rows);
    }

    /**
     * A point's row. The static bore is the point's own, or that of the end of the run that brings the most flow.
     */
    private @Nullable PointRow point(Point point) {
        Solution solution = result.solution();
        double inflow = 0;
        double most = Double.NEGATIVE_INFINITY;
        double runEndBore = Double.NaN;
        double headPerBore = 0;
        int number = -1;
        for (int i = 0; i < result.network().runs().size(); i++) {
            Trace.RunTrace trace = result.network().runs().get(i);
            Run run = result.circuit().runs().get(i);
            for (boolean atStart : new boolean[] {true, false}) {
                boolean here = (atStart ? run.from() : run.to()).element().equals(point.id());
                if (!here) {
                    continue;
                }
                boolean tankReturn = point instanceof Tank && !atStart;
                if (number < 0 || !tankReturn) {
                    number = atStart ? trace.from() : trace.to();
                }
                double into =
                        (atStart ? -1 : 1) * solution.massFlowKgPerS((atStart ? trace.first() : trace.last()).branch());
                inflow += into;
                List<Trace.Row> rows = trace.rows();
                if (!rows.isEmpty() && into > most) {
                    most = into;
                    Trace.Row end = rows.get(atStart ? 0 : rows.size() - 1);
                    Stream stream = end.stream();
                    runEndBore = atStart ? end.inBoreM() : end.outBoreM();
                    double bore = point.gaugeBoreM() == null ? runEndBore : point.gaugeBoreM();
                    headPerBore = stream.velocityHeadPa(into, bore);
                }
            }
        }
        if (number < 0) {
            return null;
        }
        double total = new Junctions(result.network(), solution).totalPressurePa(number);
        double bore = point.gaugeBoreM() == null ? runEndBore : point.gaugeBoreM();
        double still = total - headPerBore;
        return new PointRow(
                point.id(),
                kind(point),
                total,
                still,
                bore,
                still + result.circuit().surroundings().ambientPa(),
                inflow);
    }

    private static String kind(Point point) {
        if (point instanceof Tank) {
            return "tank";
        }
        if (point instanceof Held) {
            return "held";
        }
        if (point instanceof Junction junction) {
            return junction.size().kind();
        }
        return point instanceof Draw ? "draw" : "joint";
    }
}
