package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Bench;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Device;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Position;
import org.linedrop.circuit.Restriction;
import org.linedrop.circuit.Route;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.StatedLaw;
import org.linedrop.circuit.Tube;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fluid.Fluid;

/** Makes the kit of one circuit: its hoses one by one, what it holds, what is missing. */
final class CircuitKit {
    private static final Source OURS = Source.of("the circuit file", Status.GIVEN);

    private final Circuit circuit;
    private final OwnFigures own;
    private final Bench bench = Bench.standard();
    private final boolean brake;

    private CircuitKit(Circuit circuit, OwnFigures own) {
        this.circuit = circuit;
        this.own = own;
        this.brake = circuit.service() == Service.BRAKE;
    }

    static KitCircuit of(Circuit circuit, List<KitJoint> joints, OwnFigures own) {
        CircuitKit kit = new CircuitKit(circuit, own);
        double volume = kit.volumeM3(Figure::value);
        Fluid fluid = circuit.surroundings().fluid();
        double temperature = circuit.surroundings().temperatureK().value();
        double density =
                fluid.refusal(temperature) == null ? fluid.at(temperature).densityKgPerM3() : Double.NaN;
        return new KitCircuit(
                circuit.title(),
                circuit.caseName(),
                circuit.service(),
                fluid.name(),
                kit.hoses(),
                joints,
                kit.tooShort(),
                volume,
                kit.volumeM3(Figure::low),
                kit.volumeM3(Figure::high),
                volume * density,
                kit.notices(joints));
    }

    private Stream<Part> parts() {
        return circuit.runs().stream().map(Run::parts).flatMap(List::stream);
    }

    private double volumeM3(ToDoubleFunction<Figure> which) {
        return parts().mapToDouble(part -> {
                    if (part instanceof Hose hose) {
                        return boreVolumeM3(
                                which.applyAsDouble(hose.size().boreM()),
                                hose.lengthM().value());
                    }
                    return part instanceof Tube tube
                            ? boreVolumeM3(
                                    which.applyAsDouble(tube.size().boreM()),
                                    tube.lengthM().value())
                            : 0;
                })
                .sum();
    }

    private static double boreVolumeM3(double boreM, double lengthM) {
        return Math.PI / 4 * boreM * boreM * lengthM;
    }

    private List<KitHose> hoses() {
        Map<Hose, HosePath.Stretch> lies = new LinkedHashMap<>();
        List<KitHose> hoses = new ArrayList<>();
        for (HosePath.Stretch stretch : HosePath.of(circuit)) {
            stretch.parts().forEach(part -> {
                if (part instanceof Hose hose) {
                    lies.put(hose, stretch);
                }
            });
        }
        lies.forEach((hose, stretch) -> hoses.add(hose(hose, stretch)));
        return hoses;
    }

    private KitHose hose(Hose hose, HosePath.Stretch stretch) {
        double overall = hose.lengthM().value();
        List<Position> places = stretch.alone() ? stretch.places() : List.of();
        List<Position> axis = HosePath.axis(places, hose);
        Double radius = radiusM(hose);
        double path = places.size() > 2 && axis.size() > 1
                ? HosePath.lengthM(axis, radius == null ? Double.NaN : Math.min(radius, HosePath.roomM(axis)))
                : Double.NaN;
        double cut = brake ? Double.NaN : overall - cutOffM(hose.fromEnd()) - cutOffM(hose.toEnd());
        return new KitHose(
                circuit.title(),
                hose.id(),
                hose.size().name(),
                end(hose.fromEnd()),
                end(hose.toEnd()),
                overall,
                bench.assemblyToleranceM(overall),
                path,
                cut > 0 ? cut : Double.NaN,
                cut > 0 ? bench.cutToleranceM(cut) : null,
                cutFrom(hose, cut),
                brake ? Clocking.NONE : clocking(hose, stretch, places),
                brake
                        ? BendCheck.NOT_ASKED
                        : BendCheck.of(
                                radius,
                                Double.isNaN(path) ? Double.NaN : HosePath.roomM(axis),
                                hose.size().minBendRadiusM()));
    }

    private static String end(@Nullable EndSize end) {
        return end == null ? "none" : end.text().replaceFirst("^end ", "");
    }

    /** NaN where the file has bends without a radius: the least was then taken, which proves nothing. */
    private @Nullable Double radiusM(Hose hose) {
        Route bends = hose.bends();
        if (bends == null) {
            return null;
        }
        boolean taken = circuit.assumptions().stream()
                .anyMatch(notice ->
                        notice.id().equals("bend-radius") && notice.element().equals(hose.id()));
        return taken ? Double.NaN : bends.radiusM();
    }

    /** The user's figure first; a military end's only where the hose is of its standard. */
    private double cutOffM(@Nullable EndSize end) {
        if (end == null || end.kind().equals("barb")) {
            return 0; // a bare piece, or hose that goes over its barb whole
        }
        double yours = own.cutOffM(Tally.endName(end, circuit.catalogue()));
        if (!Double.isNaN(yours)) {
            return yours;
        }
        return end.cutOffM() == null ? Double.NaN : end.cutOffM().value();
    }

    private String cutFrom(Hose hose, double cutM) {
        if (brake) {
            return "";
        }
        List<String> from = new ArrayList<>();
        for (EndSize end : Tally.ends(hose)) {
            String name = Tally.endName(end, circuit.catalogue());
            if (!Double.isNaN(own.cutOffM(name))) {
                add(from, OwnFigures.SOURCE.title());
            } else if (end.cutOffM() != null) {
                add(from, end.cutOffM().source().title() + ", military ends");
            } else {
                add(from, "cut-off of " + name + " not known");
            }
        }
        return cutM <= 0 ? "the ends alone are longer than the hose" : String.join("; ", from);
    }

    private static void add(List<String> texts, String text) {
        if (!texts.contains(text)) {
            texts.add(text);
        }
    }

    private Clocking clocking(Hose hose, HosePath.Stretch stretch, List<Position> places) {
        EndSize near = hose.fromEnd();
        EndSize far = hose.toEnd();
        if (near == null || far == null || !Clocking.bent(near) || !Clocking.bent(far)) {
            return Clocking.NONE;
        }
        Figure tolerance = bench.clockingToleranceRad(hose.lengthM().value());
        if (!stretch.alone()) {
            return new Clocking(
                    Double.NaN,
                    tolerance,
                    "other hoses or tubes lie between the same places, so way-points cannot be told apart; give it a run of its"
                            + " own, or the devices in it places, and write via: with the corner of each bent end",
                    "");
        }
        if (places.isEmpty()) {
            return new Clocking(
                    Double.NaN, tolerance, "no height, ahead and left of what it joins; give those first", "");
        }
        return Clocking.along(places, near, far, tolerance);
    }

    private List<KitCircuit.TooShort> tooShort() {
        List<KitCircuit.TooShort> found = new ArrayList<>();
        for (HosePath.Stretch stretch : HosePath.of(circuit)) {
            // 2 %: places are not known better; way-points say more than a straight line
            boolean judged = stretch.alone() && stretch.places().size() > 2;
            if (!judged && stretch.partsM() < 0.98 * stretch.distanceM()) {
                found.add(new KitCircuit.TooShort(
                        stretch.parts().stream().map(Part::id).toList(), stretch.partsM(), stretch.distanceM()));
            }
        }
        return found;
    }

    private List<Notice> notices(List<KitJoint> joints) {
        List<Notice> notices = new ArrayList<>(Meetings.missing(circuit));
        List<String> open = new ArrayList<>();
        for (KitJoint joint : joints) {
            if (!joint.stated()) {
                add(open, joint.before() + " to " + joint.after());
            }
        }
        if (!open.isEmpty()) {
            notices.add(Notice.of(
                    "port-not-stated",
                    "",
                    "what these meet is not stated, so what is bought may not go on it (write ports: on a device): "
                            + String.join(", ", open),
                    OURS));
        }
        if (parts().anyMatch(Restriction.class::isInstance)) {
            notices.add(Notice.of(
                    "restrictor-inside", "", "a restrictor sits inside its neighbour: no joint of its own", OURS));
        }
        if (parts().anyMatch(StatedLaw.class::isInstance)) {
            notices.add(Notice.of("law-only", "", "parts with a stated law only are nothing to buy", OURS));
        }
        if (!circuit.devices().isEmpty()) {
            notices.add(Notice.of(
                    "devices-left-out",
                    "",
                    "devices are no plumbing and not in the list: "
                            + String.join(
                                    ", ",
                                    circuit.devices().stream().map(Device::id).toList()),
                    OURS));
        }
        return notices;
    }
}
