package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.network.Trace;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.units.Dimension;

/**
 * A number that a study reads off a result.
 *
 * @param kind      where it is read
 * @param subject   the point, run or device
 * @param quantity  what of it, as limits name it
 * @param dimension what it measures
 * @param limit     the limit that bounds it, empty when none does
 */
public record Output(Kind kind, String subject, String quantity, Dimension dimension, Optional<Limit> limit)
        implements Serializable {

    /** Where an output is read. */
    public enum Kind {
        /** Static pressure of a point. */
        PRESSURE,
        /** Flow of a run, at its first row. */
        FLOW,
        /** The quantity of a limit. */
        LIMIT
    }

    /**
     * Static pressure of a point.
     *
     * @param point its name
     * @return the output
     */
    public static Output pressure(String point) {
        return new Output(Kind.PRESSURE, point, "pressure", Dimension.GAUGE_PRESSURE, Optional.empty());
    }

    /**
     * Volume flow of a run, in its own sense, at the density of its first row.
     *
     * @param run its name
     * @return the output
     */
    public static Output flow(String run) {
        return new Output(Kind.FLOW, run, "flow", Dimension.VOLUME_FLOW, Optional.empty());
    }

    /**
     * What a limit bounds; of a limit on the state of a regulator the pressure that it throttles, or lacks.
     *
     * @param limit the limit
     * @return the output
     */
    public static Output of(Limit limit) {
        boolean state = limit.bound().kind() == LimitText.Kind.STATE;
        return new Output(
                Kind.LIMIT,
                limit.subject(),
                state ? "control margin" : limit.quantity(),
                state ? Dimension.PRESSURE_DIFFERENCE : limit.bound().dimension(),
                Optional.of(limit));
    }

    /**
     * Every output of a result: what limits bound, static pressures of the other points that are solved for, flows of
     * the runs.
     *
     * @param result a solved circuit
     * @return those that have a value, limits first
     */
    static List<Output> all(Result result) {
        List<Output> all = new ArrayList<>();
        Circuit circuit = result.circuit();
        circuit.limits().forEach(limit -> all.add(of(limit)));
        for (PointRow point : result.points()) {
            boolean given = circuit.point(point.id())
                    .filter(p -> p instanceof Tank || p instanceof Held)
                    .isPresent();
            boolean bounded = circuit.limits().stream()
                    .anyMatch(limit -> limit.subject().equals(point.id())
                            && limit.quantity().equals("pressure"));
            if (!given && !bounded) {
                all.add(pressure(point.id()));
            }
        }
        circuit.runs().forEach(run -> all.add(flow(run.id())));
        return all.stream().filter(output -> Double.isFinite(output.of(result))).toList();
    }

    /**
     * Its name in reports.
     *
     * @return for example {@code rail pressure}, {@code feed flow}
     */
    public String id() {
        return subject + " " + quantity;
    }

    /**
     * Reads it.
     *
     * @param result a result
     * @return its value in SI, NaN when it has none there
     */
    public double of(Result result) {
        return switch (kind) {
            case PRESSURE ->
                result.point(subject).map(PointRow::staticPressurePa).orElse(Double.NaN);
            case FLOW -> flow(result);
            case LIMIT -> limit.map(result::value).orElse(Double.NaN);
        };
    }

    private double flow(Result result) {
        List<PartRow> rows = result.rows(subject);
        if (!rows.isEmpty()) {
            return rows.get(0).flowM3PerS();
        }
        List<Run> runs = result.circuit().runs();
        for (int i = 0; i < runs.size(); i++) {
            if (runs.get(i).id().equals(subject)) {
                Trace.RunTrace trace = result.network().runs().get(i);
                var around = result.circuit().surroundings();
                return result.solution().massFlowKgPerS(trace.first().branch())
                        / around.fluidState().densityKgPerM3();
            }
        }
        return Double.NaN;
    }
}
