package org.linedrop.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Port;
import org.linedrop.fact.Explanation;
import org.linedrop.fact.Figure;
import org.linedrop.hydraulics.Tee;

/**
 * Tees and Y blocks of a circuit while its network is made.
 *
 * <p>A Y block is taken as a sharp 90-degree tee of its common bore whose legs change to their own bore beside it, and a
 * tee with a branch wider than its run likewise: that shape is the one that was measured.
 */
final class JunctionEnds {
    private final Bores bores;
    private final Stream stream;
    private final double share;
    private final NetworkBuilder builder;
    private final Map<String, Made> made = new LinkedHashMap<>();

    /** One junction in the making; a port is -1 until a run comes to it. */
    private record Made(Junction junction, int number, int centre, List<Integer> ports) {}

    JunctionEnds(Bores bores, Stream stream, double share, NetworkBuilder builder) {
        this.bores = bores;
        this.stream = stream;
        this.share = share;
        this.builder = builder;
    }

    /** A run's end at a junction: the point at the port, the point in the middle, and the row of the leg. */
    record End(int port, int centre, Piece piece) {}

    End end(Junction junction, Port port, boolean runStartsHere) {
        Made here = made.computeIfAbsent(
                junction.id(),
                id -> new Made(junction, made.size(), builder.freePoint(0), new ArrayList<>(List.of(-1, -1, -1))));
        boolean twice = port.name().equals(Junction.RUN) || port.name().equals(Junction.LEG);
        int leg = !twice ? 2 : here.ports.get(0) < 0 ? 0 : 1;
        here.ports.set(leg, builder.freePoint(0));
        return new End(here.ports.get(leg), here.centre, piece(here, leg, port, runStartsHere));
    }

    private Piece piece(Made here, int leg, Port port, boolean runStartsHere) {
        Junction junction = here.junction;
        Figure figure = leg == 2 == junction.yBlock()
                ? junction.size().mainBoreM()
                : junction.size().branchBoreM();
        double bore = bores.of(figure);
        double inner = leg == 2 ? branchBore(junction) : runBore(junction);
        String kind = junction.size().kind();
        Piece piece = new Piece(
                kind, kind + " " + port.name(), junction.id(), junction.size().text(), stream);
        piece.bore(figure, bore);
        piece.fitting = true;
        piece.inBoreM = runStartsHere ? inner : bore;
        piece.outBoreM = runStartsHere ? bore : inner;
        piece.story = Story.of(List.of(new Explanation.Given("bore", figure, "m")), "bore", null);
        piece.row = runStartsHere ? "from" : "to";
        piece.leg = new Trace.Leg(here.number, leg, runStartsHere ? -1 : 1);
        if (inner != bore) {
            piece.local.add(
                    new PlumbingLaws(stream).areaChange("between its own bores", piece.inBoreM, piece.outBoreM));
        }
        return piece;
    }

    private double runBore(Junction junction) {
        return bores.of(junction.size().mainBoreM());
    }

    private double branchBore(Junction junction) {
        double main = bores.of(junction.size().mainBoreM());
        return junction.yBlock()
                ? main
                : Math.min(main, bores.of(junction.size().branchBoreM()));
    }

    /** Adds the junctions to the network once all runs have come to them. */
    List<Trace.JunctionTrace> build() {
        List<Trace.JunctionTrace> traces = new ArrayList<>();
        for (Made each : made.values()) {
            double run = runBore(each.junction);
            Tee tee = Tee.of(run, branchBore(each.junction), Math.PI / 2, 0);
            int[] ports = each.ports.stream().mapToInt(Integer::intValue).toArray();
            int centrePort = each.junction.yBlock() ? 2 : 0;
            builder.junction(each.centre, ports, new TeeLaw(tee, run, stream, centrePort, share));
            traces.add(new Trace.JunctionTrace(each.junction.id(), each.number, each.centre, run, stream));
        }
        return traces;
    }
}
