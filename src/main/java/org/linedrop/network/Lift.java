package org.linedrop.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Surroundings;
import org.linedrop.circuit.WayPoints;

/**
 * Shares the potential of gravity and acceleration over the rows of one run. Between two places that are known it is
 * shared by the length of the parts; places are known at the ends of the run, at devices that have their own, and where
 * a part says its end's height. Way-points bend the way between them without being tied to a part.
 */
final class Lift {
    private final Circuit circuit;
    private final Run run;
    private final List<Piece> pieces;

    private Lift(Circuit circuit, Run run, List<Piece> pieces) {
        this.circuit = circuit;
        this.run = run;
        this.pieces = pieces;
    }

    /** A known place before a row. */
    private record Known(int piece, Position place) {}

    /**
     * Adds to each row what it is lifted by.
     *
     * @param pieces rows in flow order; their lift is modified
     * @param from   place of the run's start
     * @param to     place of its end
     */
    static void share(Circuit circuit, Run run, List<Piece> pieces, Position from, Position to) {
        new Lift(circuit, run, pieces).share(from, to);
    }

    private void share(Position from, Position to) {
        List<Known> known = known(from, to);
        List<Position> between =
                known.subList(1, known.size() - 1).stream().map(Known::place).toList();
        List<List<Position>> passed = WayPoints.between(from, run.via(), between, to);
        for (int i = 1; i < known.size(); i++) {
            List<Position> places = new ArrayList<>(List.of(known.get(i - 1).place()));
            places.addAll(passed.get(i - 1));
            places.add(known.get(i).place());
            stretch(known.get(i - 1).piece(), known.get(i).piece(), places);
        }
    }

    /** Places in flow order, the run's ends included. */
    private List<Known> known(Position from, Position to) {
        List<Known> devices = new ArrayList<>(List.of(new Known(0, from)));
        for (int i = 1; i < pieces.size(); i++) { // a device that comes first has no length before it
            Position here = pieces.get(i).device.isEmpty() ? null : devicePosition(pieces.get(i).device);
            if (here != null) {
                devices.add(new Known(i, here));
            }
        }
        devices.add(new Known(pieces.size(), to));
        List<Known> all = new ArrayList<>(devices);
        for (Run.EndHeight end : run.endHeights()) {
            int behind = behind(end.part());
            int at = 1;
            while (all.get(at).piece() < behind) {
                at++;
            }
            all.add(
                    at,
                    new Known(behind, onTheWay(devices, behind, end.heightM().value())));
        }
        return all;
    }

    /** The row behind the last one of a part. */
    private int behind(int part) {
        int behind = 0;
        for (int i = 0; i < pieces.size(); i++) {
            String row = pieces.get(i).row;
            if (row.equals("" + part) || row.startsWith(part + ".")) {
                behind = i + 1;
            }
        }
        return behind;
    }

    /** A place of which the height alone is known: the rest is shared by length between the places around it. */
    private Position onTheWay(List<Known> devices, int piece, double heightM) {
        int next = 1;
        while (devices.get(next).piece() < piece) {
            next++;
        }
        Known before = devices.get(next - 1);
        Known after = devices.get(next);
        double all = length(before.piece(), after.piece());
        double share = all > 0 ? length(before.piece(), piece) / all : 1;
        Position start = before.place();
        Position end = after.place();
        return new Position(
                start.aheadM() + share * (end.aheadM() - start.aheadM()),
                start.leftM() + share * (end.leftM() - start.leftM()),
                heightM);
    }

    private double length(int first, int end) {
        double length = 0;
        for (int i = first; i < end; i++) {
            length += pieces.get(i).lengthM;
        }
        return length;
    }

    private @Nullable Position devicePosition(String id) {
        return circuit.device(id).map(Device::position).orElse(null);
    }

    /**
     * Shares the potential along the way through some places: a share of the length of parts is taken for the same share
     * of the straight distances between the places.
     */
    private void stretch(int first, int end, List<Position> places) {
        double length = length(first, end);
        if (places.size() == 2) {
            double potential = circuit.surroundings().potentialJPerKg(places.get(0), places.get(1));
            for (int i = first; i < end; i++) {
                Piece piece = pieces.get(i);
                double part = length > 0 ? piece.lengthM / length : 1.0 / (end - first);
                piece.liftPa += potential * part * piece.stream.densityKgPerM3();
            }
            return;
        }
        double[] way = new double[places.size()];
        for (int i = 1; i < way.length; i++) {
            way[i] = way[i - 1] + places.get(i - 1).distanceM(places.get(i));
        }
        double done = 0;
        double before = 0;
        for (int i = first; i < end; i++) {
            Piece piece = pieces.get(i);
            done += length > 0 ? piece.lengthM / length : 1.0 / (end - first);
            double potential = potential(places, way, i == end - 1 ? 1 : done);
            piece.liftPa += (potential - before) * piece.stream.densityKgPerM3();
            before = potential;
        }
    }

    /** Potential over the first place at a share of the way. */
    private double potential(List<Position> places, double[] way, double share) {
        Surroundings around = circuit.surroundings();
        int last = way.length - 1;
        double distance = share * way[last];
        int leg = 1;
        while (leg < last && way[leg] < distance) {
            leg++;
        }
        double step = way[leg] - way[leg - 1];
        double part = share >= 1 || !(step > 0) ? 1 : (distance - way[leg - 1]) / step;
        int end = share >= 1 ? last : leg;
        Position start = places.get(0);
        double low = around.potentialJPerKg(start, places.get(end - 1));
        double high = around.potentialJPerKg(start, places.get(end));
        return low + part * (high - low);
    }
}
