package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Engine;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Surroundings;
import org.linedrop.network.Trace;
import org.linedrop.result.CaseResult;
import org.linedrop.result.DeviceRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.PointRow;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;

/**
 * What gauges should read on a test day: at every named point and at each device's inlet and outlet, in every case.
 *
 * @param cases  the cases asked for, in that order
 * @param places where a gauge can sit, in the order of the file: points, then devices
 */
public record GaugePlan(List<Case> cases, List<Place> places) implements Serializable {

    private static final String INLET = "inlet";
    private static final String OUTLET = "outlet";

    /** Copies the lists. */
    public GaugePlan {
        cases = List.copyOf(cases);
        places = List.copyOf(places);
    }

    /**
     * A case.
     *
     * @param name        its name
     * @param status      how its solve ended
     * @param detail      what the solver says when it did not converge, else empty
     * @param solved      whether there are readings
     * @param ambientPa   air pressure, Pa absolute: what an absolute sensor reads more than a gauge
     * @param manifoldPa  gauge pressure in the manifold, NaN when not said: what a sensor over the manifold reads less
     * @param liftPaPerM  what a gauge reads less for each metre that it sits higher, its hose full of the fluid and the
     *                    vehicle at rest, Pa/m
     */
    public record Case(
            String name,
            String status,
            String detail,
            boolean solved,
            double ambientPa,
            double manifoldPa,
            double liftPaPerM)
            implements Serializable {}

    /**
     * A place for a gauge.
     *
     * @param id       name of the point or device
     * @param at       kind of the point; {@code inlet} or {@code outlet} of a device in a run, else the port of a device
     *                 that runs end at
     * @param kind     kind of the device, empty at a point
     * @param boreM    bore that it sits in, m; infinite in a vessel where the fluid stands still, NaN when not known
     * @param heightM  its height over the datum, m; NaN when not known
     * @param readings one for each case, NaN in those that were not solved
     */
    public record Place(String id, String at, String kind, double boreM, double heightM, List<Reading> readings)
            implements Serializable {
        /** Copies the list. */
        public Place {
            readings = List.copyOf(readings);
        }
    }

    /**
     * What a gauge should read.
     *
     * @param caseName the case
     * @param lowPa    least over the bores sold, static gauge Pa
     * @param usualPa  at usual bores
     * @param highPa   most over the bores sold
     */
    public record Reading(String caseName, double lowPa, double usualPa, double highPa) implements Serializable {
        /**
         * Whether the bores sold make a difference.
         *
         * @return true when low and high differ by more than rounding
         */
        public boolean hasBand() {
            return highPa - lowPa > 1e-6 * Math.max(1, Math.abs(usualPa));
        }
    }

    /**
     * Solves the cases and reads the gauges.
     *
     * @param circuit the circuit
     * @param names   names of the cases, at least one
     * @return the plan
     */
    public static GaugePlan of(Circuit circuit, List<String> names) {
        List<CaseResult> results =
                names.stream().map(name -> CaseResult.of(circuit.in(name))).toList();
        List<Case> cases = new ArrayList<>();
        Map<Spot, Builder> places = new LinkedHashMap<>();
        for (CaseResult result : results) {
            cases.add(of(result));
            if (solved(result)) {
                for (Spot spot : spots(result.usual())) {
                    places.computeIfAbsent(spot.bare(), key -> new Builder(spot));
                }
            }
        }
        for (CaseResult result : results) {
            places.values().forEach(place -> place.readings.add(reading(result, place.spot)));
        }
        return new GaugePlan(cases, places.values().stream().map(Builder::place).toList());
    }

    private static Case of(CaseResult result) {
        Circuit circuit = result.circuit();
        Engine engine = circuit.engine();
        var surroundings = circuit.surroundings();
        double density = surroundings.fluidState().densityKgPerM3();
        return new Case(
                circuit.caseName(),
                result.outcome().word(),
                result.usual().detail(),
                solved(result),
                surroundings.ambientPa(),
                engine == null || engine.manifoldPa() == null
                        ? Double.NaN
                        : engine.manifoldPa().value(),
                density * Surroundings.STANDARD_GRAVITY_M_PER_S2);
    }

    private static boolean solved(CaseResult result) {
        return result.outcome() == Outcome.CONVERGED;
    }

    /** A place, with what only the first solved case knows of it. */
    private record Spot(String id, String at, String kind, double boreM, double heightM) {
        Spot bare() {
            return new Spot(id, at, kind, 0, 0);
        }
    }

    private static final class Builder {
        private final Spot spot;
        private final List<Reading> readings = new ArrayList<>();

        Builder(Spot spot) {
            this.spot = spot;
        }

        Place place() {
            return new Place(spot.id(), spot.at(), spot.kind(), spot.boreM(), spot.heightM(), readings);
        }
    }

    private static List<Spot> spots(Result result) {
        Circuit circuit = result.circuit();
        List<Spot> spots = new ArrayList<>();
        for (PointRow row : result.points()) {
            Position position = circuit.point(row.id()).map(Point::position).orElse(null);
            spots.add(new Spot(row.id(), row.kind(), "", row.staticBoreM(), heightM(position)));
        }
        for (DeviceRow row : result.devices()) {
            Position position = circuit.device(row.id()).map(Device::position).orElse(null);
            double height = heightM(position);
            List<RunEnd> ends = runEnds(result, row.id());
            for (RunEnd end : ends) {
                spots.add(new Spot(row.id(), end.port(), row.kind(), end.boreM(), height));
            }
            if (ends.isEmpty()) {
                spots.add(new Spot(row.id(), INLET, row.kind(), boreM(result, row.id(), Trace.Row::inBoreM), height));
                spots.add(new Spot(row.id(), OUTLET, row.kind(), boreM(result, row.id(), Trace.Row::outBoreM), height));
            }
        }
        return spots;
    }

    /**
     * The end of a run at a port of a device with several.
     *
     * @param inflowKgPerS what the run brings there
     */
    private record RunEnd(String port, double boreM, double staticPa, double inflowKgPerS) {}

    /** Of each port that end which brings the most; a run without parts has no bore to sit in. */
    private static List<RunEnd> runEnds(Result result, String device) {
        Map<String, RunEnd> ends = new LinkedHashMap<>();
        List<Run> runs = result.circuit().runs();
        for (int i = 0; i < runs.size(); i++) {
            List<Trace.Row> trace = result.network().runs().get(i).rows();
            List<PartRow> rows = result.rows(runs.get(i).id());
            if (trace.isEmpty() || rows.isEmpty()) {
                continue;
            }
            if (runs.get(i).from().element().equals(device)) {
                PartRow first = rows.get(0);
                take(
                        ends,
                        new RunEnd(
                                runs.get(i).from().name(),
                                trace.get(0).inBoreM(),
                                first.staticPressureInPa(),
                                -first.massFlowKgPerS()));
            }
            if (runs.get(i).to().element().equals(device)) {
                PartRow last = rows.get(rows.size() - 1);
                take(
                        ends,
                        new RunEnd(
                                runs.get(i).to().name(),
                                trace.get(trace.size() - 1).outBoreM(),
                                last.staticPressureOutPa(),
                                last.massFlowKgPerS()));
            }
        }
        return List.copyOf(ends.values());
    }

    private static void take(Map<String, RunEnd> ends, RunEnd end) {
        ends.merge(end.port(), end, (a, b) -> a.inflowKgPerS() >= b.inflowKgPerS() ? a : b);
    }

    private static double heightM(@Nullable Position position) {
        return position == null ? Double.NaN : position.heightM();
    }

    /** Bore beside a device that stands in a run. */
    private static double boreM(Result result, String device, ToDoubleFunction<Trace.Row> side) {
        List<Double> bores = new ArrayList<>();
        for (Trace.RunTrace run : result.network().runs()) {
            for (Trace.Row row : run.rows()) {
                if (row.device().equals(device)) {
                    bores.add(side.applyAsDouble(row));
                }
            }
        }
        return bores.size() == 1 ? bores.get(0) : Double.NaN;
    }

    private static Reading reading(CaseResult result, Spot spot) {
        String name = result.circuit().caseName();
        if (!solved(result)) {
            return new Reading(name, Double.NaN, Double.NaN, Double.NaN);
        }
        double usual = staticPa(result.usual(), spot);
        double low = usual;
        double high = usual;
        for (Result other : List.of(result.smallest(), result.largest())) {
            double reading = other.outcome() == Outcome.CONVERGED ? staticPa(other, spot) : Double.NaN;
            if (!Double.isNaN(reading)) {
                low = Math.min(low, reading);
                high = Math.max(high, reading);
            }
        }
        return new Reading(name, low, usual, high);
    }

    private static double staticPa(Result result, Spot spot) {
        if (spot.kind().isEmpty()) {
            return result.point(spot.id()).map(PointRow::staticPressurePa).orElse(Double.NaN);
        }
        for (RunEnd end : runEnds(result, spot.id())) {
            if (end.port().equals(spot.at())) {
                return end.staticPa();
            }
        }
        ToDoubleFunction<DeviceRow> side =
                spot.at().equals(INLET) ? DeviceRow::inletPressurePa : DeviceRow::outletPressurePa;
        return result.device(spot.id()).map(side::applyAsDouble).orElse(Double.NaN);
    }
}
