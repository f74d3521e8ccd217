package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.network.Trace;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/**
 * A way that fluid takes through a solved circuit, from where its pressure is given or made to where it is given or taken
 * again. Followed by flow alone, so that it does not matter what stands on the way.
 *
 * @param legs its runs, in the order in which the fluid passes them
 */
public record FlowPath(List<Leg> legs) {

    /** Copies the legs. */
    public FlowPath {
        legs = List.copyOf(legs);
    }

    /**
     * One run of a way.
     *
     * @param run  its name
     * @param from point or device where the fluid enters it
     * @param to   point or device where it leaves it
     * @param rows its rows, in the order in which the fluid passes them
     */
    public record Leg(String run, String from, String to, List<Row> rows) {
        /** Copies the rows. */
        public Leg {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One row as the fluid meets it.
     *
     * @param row      the row
     * @param backward whether the fluid goes against the sense of the run
     */
    public record Row(PartRow row, boolean backward) {
        /**
         * Total pressure where the fluid enters it.
         *
         * @return gauge Pa
         */
        public double pressureInPa() {
            return backward ? row.totalPressureOutPa() : row.totalPressureInPa();
        }

        /**
         * Total pressure where the fluid leaves it.
         *
         * @return gauge Pa
         */
        public double pressureOutPa() {
            return backward ? row.totalPressureInPa() : row.totalPressureOutPa();
        }

        /**
         * What the fluid loses on its way through it.
         *
         * @return Pa; negative where it gains
         */
        public double dropPa() {
            return pressureInPa() - pressureOutPa();
        }

        /**
         * Whether it is a pump.
         *
         * @return true where pressure is made
         */
        public boolean pump() {
            return row.kind().endsWith("pump");
        }

        /**
         * The part of it that is lost in plumbing or devices, rather than given up to height and acceleration.
         *
         * @return Pa; negative for a pump
         */
        public double lossPa() {
            double loss = row.frictionDropPa() + row.localDropPa();
            return backward ? -loss : loss;
        }
    }

    /**
     * Its rows, run by run.
     *
     * @return in the order in which the fluid passes them
     */
    public List<Row> rows() {
        return legs.stream().flatMap(leg -> leg.rows().stream()).toList();
    }

    /**
     * The places on the way.
     *
     * @return points and devices where its runs meet, first and last included
     */
    public List<String> places() {
        List<String> places = new ArrayList<>();
        places.add(legs.get(0).from());
        legs.forEach(leg -> places.add(leg.to()));
        return places;
    }

    /**
     * The runs of a circuit in the sense of flow.
     *
     * @param result a solved circuit
     * @return in the order of the runs; a run without parts has no rows
     */
    public static List<Leg> legs(Result result) {
        List<Leg> legs = new ArrayList<>();
        for (Trace.RunTrace trace : result.network().runs()) {
            for (Run run : result.circuit().runs()) {
                if (run.id().equals(trace.id())) {
                    legs.add(leg(run, result.rows(run.id()), flow(result, trace) < 0));
                }
            }
        }
        return List.copyOf(legs);
    }

    private static double flow(Result result, Trace.RunTrace trace) {
        return result.solution().massFlowKgPerS(trace.first().branch());
    }

    /**
     * The ways of a circuit: as few as pass every run with parts at least once. From where a run forks the way goes with
     * most of the flow; tanks, points of kept pressure and bypass regulators end it, and so does its own start.
     *
     * @param result a solved circuit
     * @return in the order of the runs; empty without runs
     */
    public static List<FlowPath> of(Result result) {
        List<Leg> legs = legs(result);
        Map<String, Double> flows = flows(result);
        Set<String> passed = new LinkedHashSet<>();
        List<FlowPath> paths = new ArrayList<>();
        for (Leg leg : legs) {
            if (!passed.contains(leg.run()) && !leg.rows().isEmpty()) {
                FlowPath path = through(result, leg, legs, flows);
                path.legs().forEach(each -> passed.add(each.run()));
                paths.add(path);
            }
        }
        return List.copyOf(paths);
    }

    /**
     * The way through one run.
     *
     * @param result a solved circuit
     * @param run    name of a run with parts
     * @return the way, by most of the flow
     */
    public static FlowPath of(Result result, String run) {
        List<Leg> legs = legs(result);
        Leg leg = legs.stream()
                .filter(each -> each.run().equals(run))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no run \"" + run + "\""));
        return through(result, leg, legs, flows(result));
    }

    private static Map<String, Double> flows(Result result) {
        Map<String, Double> flows = new LinkedHashMap<>();
        for (Trace.RunTrace trace : result.network().runs()) {
            flows.put(trace.id(), Math.abs(flow(result, trace)));
        }
        return flows;
    }

    private static Leg leg(Run run, List<PartRow> rows, boolean backward) {
        List<Row> met = new ArrayList<>();
        for (PartRow row : rows) {
            met.add(backward ? 0 : met.size(), new Row(row, backward));
        }
        String from = run.from().element();
        String to = run.to().element();
        return new Leg(run.id(), backward ? to : from, backward ? from : to, met);
    }

    /** Forward first, so that a circle closes; what is before it only where it does not. */
    private static FlowPath through(Result result, Leg leg, List<Leg> all, Map<String, Double> flows) {
        List<Leg> path = new ArrayList<>(List.of(leg));
        Set<String> met = new LinkedHashSet<>(List.of(leg.from(), leg.to()));
        while (passes(result, path.get(path.size() - 1).to())) {
            String place = path.get(path.size() - 1).to();
            Leg behind = largest(
                    all,
                    flows,
                    each -> each.from().equals(place)
                            && (!met.contains(each.to())
                                    || !passes(result, each.to())
                                    || each.to().equals(leg.from())));
            if (behind == null) {
                break;
            }
            path.add(behind);
            met.add(behind.to());
            if (behind.to().equals(leg.from())) {
                return new FlowPath(path);
            }
        }
        while (passes(result, path.get(0).from())) {
            String place = path.get(0).from();
            Leg before = largest(
                    all,
                    flows,
                    each -> each.to().equals(place) && (!met.contains(each.from()) || !passes(result, each.from())));
            if (before == null) {
                break;
            }
            path.add(0, before);
            met.add(before.from());
        }
        return new FlowPath(path);
    }

    private static boolean passes(Result result, String place) {
        Point point = result.circuit().point(place).orElse(null);
        boolean keeps =
                result.circuit().device(place).orElse(null) instanceof Regulator regulator && regulator.bypass();
        return !(point instanceof Tank) && !(point instanceof Held) && !keeps;
    }

    private static @org.jspecify.annotations.Nullable Leg largest(
            List<Leg> all, Map<String, Double> flows, java.util.function.Predicate<Leg> which) {
        Leg largest = null;
        for (Leg leg : all) {
            double flow = flows.getOrDefault(leg.run(), 0.0);
            if (which.test(leg) && (largest == null || flow > flows.getOrDefault(largest.run(), 0.0))) {
                largest = leg;
            }
        }
        return largest;
    }
}
