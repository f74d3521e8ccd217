package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Port;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.Through;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.WayPoints;

/**
 * The places that hoses and tubes lie between. A run is cut where a device with a place of its own stands in it; its
 * way-points are shared out by the shortest way.
 */
final class HosePath {
    private final Circuit circuit;
    private final List<Stretch> stretches = new ArrayList<>();

    /**
     * Hoses and tubes between two known places.
     *
     * @param run    the run
     * @param places first and last place, with the way-points between; empty when they are not known
     * @param parts  the hoses and tubes
     */
    record Stretch(Run run, List<Position> places, List<Part> parts) {
        double partsM() {
            return parts.stream()
                    .mapToDouble(part -> part instanceof Hose hose
                            ? hose.lengthM().value()
                            : ((Tube) part).lengthM().value())
                    .sum();
        }

        /** The least that lies between its ends, NaN when not known. */
        double distanceM() {
            return places.size() < 2 ? Double.NaN : places.get(0).distanceM(places.get(places.size() - 1));
        }

        boolean alone() {
            return parts.size() == 1;
        }
    }

    private HosePath(Circuit circuit) {
        this.circuit = circuit;
    }

    static List<Stretch> of(Circuit circuit) {
        HosePath path = new HosePath(circuit);
        circuit.runs().forEach(path::run);
        return List.copyOf(path.stretches);
    }

    private void run(Run run) {
        List<Position> known = new ArrayList<>();
        List<List<Part>> pieces = new ArrayList<>();
        pieces.add(new ArrayList<>());
        Position start = place(run.from(), false);
        Position end = place(run.to(), true);
        for (Part part : run.parts()) {
            Position own = part instanceof Through through
                    ? circuit.device(through.device()).map(Device::position).orElse(null)
                    : null;
            if (own != null) {
                known.add(own);
                pieces.add(new ArrayList<>());
            } else if (part instanceof Hose || part instanceof Tube) {
                pieces.get(pieces.size() - 1).add(part);
            }
        }
        List<List<Position>> via =
                start == null || end == null ? List.of() : WayPoints.between(start, run.via(), known, end);
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).isEmpty()) {
                continue;
            }
            List<Position> places = new ArrayList<>();
            if (start != null && end != null) {
                places.add(i == 0 ? start : known.get(i - 1));
                places.addAll(via.get(i));
                places.add(i == pieces.size() - 1 ? end : known.get(i));
            }
            stretches.add(new Stretch(run, List.copyOf(places), List.copyOf(pieces.get(i))));
        }
    }

    private @Nullable Position place(Port port, boolean arriving) {
        Point point = circuit.point(port.element()).orElse(null);
        if (point instanceof Tank tank && (arriving || port.name().equals(Tank.RETURN))) {
            return tank.returnPosition();
        }
        return point != null
                ? point.position()
                : circuit.device(port.element()).map(Device::position).orElse(null);
    }

    /** Where the hose itself goes: from corner to corner, for the length of a bent end is measured to its corner. */
    static List<Position> axis(List<Position> places, Hose hose) {
        int from = Clocking.bent(hose.fromEnd()) ? 1 : 0;
        int to = places.size() - (Clocking.bent(hose.toEnd()) ? 1 : 0);
        return to - from < 2 ? List.of() : places.subList(from, to);
    }

    /** Length along some places; bends of a radius cut their corners. */
    static double lengthM(List<Position> places, double radiusM) {
        double length = 0;
        for (int i = 1; i < places.size(); i++) {
            length += places.get(i - 1).distanceM(places.get(i));
        }
        if (radiusM > 0) {
            for (int i = 1; i < places.size() - 1; i++) {
                double turn = turnRad(places, i);
                length -= radiusM * (2 * Math.tan(turn / 2) - turn);
            }
        }
        return length;
    }

    /** The largest radius for which the corners leave room; infinite without corners. */
    static double roomM(List<Position> places) {
        double room = Double.POSITIVE_INFINITY;
        for (int i = 1; i < places.size() - 1; i++) {
            double turn = turnRad(places, i);
            if (turn > 1e-3) {
                double before = places.get(i - 1).distanceM(places.get(i)) / (i == 1 ? 1 : 2);
                double after = places.get(i).distanceM(places.get(i + 1)) / (i == places.size() - 2 ? 1 : 2);
                room = Math.min(room, Math.min(before, after) / Math.tan(turn / 2));
            }
        }
        return room;
    }

    private static double turnRad(List<Position> places, int corner) {
        if (!(places.get(corner - 1).distanceM(places.get(corner)) > 0)
                || !(places.get(corner).distanceM(places.get(corner + 1)) > 0)) {
            return 0;
        }
        return Arrow.between(places.get(corner - 1), places.get(corner))
                .angleRad(Arrow.between(places.get(corner), places.get(corner + 1)));
    }
}
