package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.catalogue.Bench;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseFamily;
import org.linedrop.catalogue.Seat;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Fitted;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Junction;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Restriction;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.StatedLaw;
import org.linedrop.circuit.Through;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.Valve;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;

/** Adds up what circuits are made of, by name. Its visits answer whether something is bought. */
final class Tally implements Part.Visitor<Boolean> {
    private static final double INCH_M = 0.0254;

    private final OwnFigures own;
    private final Map<String, Sum> sums = new LinkedHashMap<>();
    private Catalogue catalogue = Catalogue.standard();

    private static final class Sum {
        private final KitItem.Group group;
        private final boolean byLength;
        private final @Nullable Figure massEach;
        private int count;
        private double lengthM;

        Sum(KitItem.Group group, boolean byLength, @Nullable Figure massEach) {
            this.group = group;
            this.byLength = byLength;
            this.massEach = massEach;
        }
    }

    Tally(OwnFigures own) {
        this.own = own;
    }

    /** Adds the parts of a circuit and what its joints need; returns the joints. */
    List<KitJoint> add(Circuit circuit) {
        catalogue = circuit.catalogue();
        for (Run run : circuit.runs()) {
            run.parts().forEach(part -> part.accept(this));
        }
        for (Point point : circuit.points()) {
            if (point instanceof Junction junction) {
                piece(
                        KitItem.Group.JUNCTION,
                        junction.size().kind() + " " + junction.size().text());
            }
        }
        return joints(circuit, Meetings.joints(circuit));
    }

    /** Adds the parts of one run and what its joints need; one where two runs meet counts with the later of them. */
    void add(Circuit circuit, Run run) {
        catalogue = circuit.catalogue();
        run.parts().forEach(part -> part.accept(this));
        joints(
                circuit,
                Meetings.joints(circuit).stream()
                        .filter(joint -> joint.run().equals(run.id()))
                        .toList());
    }

    private List<KitJoint> joints(Circuit circuit, List<Fitted.Joint> all) {
        List<KitJoint> joints = new ArrayList<>();
        for (Fitted.Joint joint : all) {
            KitJoint counted = KitJoint.of(circuit, joint);
            joints.add(counted);
            seal(counted);
            tubeEnd(joint.before(), counted);
            tubeEnd(joint.after(), counted);
        }
        return joints;
    }

    private void seal(KitJoint joint) {
        switch (joint.seat()) {
            case O_RING_BOSS ->
                pieces(KitItem.Group.SEAL, "O-ring AS568-" + ring(joint.size()) + " (ORB " + joint.size() + ")", 1);
            case TAPER_PIPE -> pieces(KitItem.Group.SEAL, "thread sealant, joint of " + joint.size() + " NPT", 1);
            case PARALLEL_PIPE -> pieces(KitItem.Group.SEAL, "bonded seal or washer G " + joint.size(), 1);
            case METRIC -> pieces(KitItem.Group.SEAL, "O-ring or washer " + joint.size(), 1);
            case BANJO -> pieces(KitItem.Group.SEAL, "banjo washer " + joint.size(), 2);
            case BARB -> pieces(KitItem.Group.CLAMP, "clamp for hose " + inches(joint.size()), 1);
            case FLARE_37, FLARE_45, QUICK_CONNECT, NOT_STATED -> {
                // metal on metal, a seal of its own, or nobody knows
            }
        }
    }

    private static String inches(String size) {
        return size.startsWith("-") ? size : size + " in";
    }

    private String ring(String size) {
        return catalogue.dashSize(Integer.parseInt(size.substring(1))).bossRing();
    }

    /** A flared tube takes nut and sleeve; one that a hose is clamped on takes none. */
    private void tubeEnd(@Nullable Part part, KitJoint joint) {
        if (part instanceof Tube tube && tube.size().dash() != 0 && joint.seat() != Seat.BARB) {
            piece(KitItem.Group.TUBE_END, "tube nut and sleeve -" + tube.size().dash());
        }
    }

    private void piece(KitItem.Group group, String item) {
        pieces(group, item, 1);
    }

    private void pieces(KitItem.Group group, String item, int count) {
        sum(group, item, false, null).count += count;
    }

    private Sum sum(KitItem.Group group, String item, boolean byLength, @Nullable Figure massEach) {
        double mass = own.mass(item);
        Figure known = Double.isNaN(mass) ? massEach : Figure.exact(mass, OwnFigures.SOURCE);
        return sums.computeIfAbsent(item, name -> new Sum(group, byLength, known));
    }

    private void length(KitItem.Group group, String item, double lengthM, @Nullable Figure massKgPerM) {
        Sum sum = sum(group, item, true, massKgPerM);
        sum.count++;
        sum.lengthM += lengthM;
    }

    @Override
    public Boolean hose(Hose hose) {
        length(
                KitItem.Group.HOSE,
                hose.size().name(),
                hose.lengthM().value(),
                hose.size().massKgPerM());
        for (EndSize end : ends(hose)) {
            piece(KitItem.Group.HOSE_END, endName(end, catalogue));
        }
        return true;
    }

    /** The ends of a hose that are bought; on a barb nothing is. */
    static List<EndSize> ends(Hose hose) {
        List<EndSize> ends = new ArrayList<>();
        for (EndSize end : new EndSize[] {hose.fromEnd(), hose.toEnd()}) {
            if (end != null && !end.kind().equals("barb")) {
                ends.add(end);
            }
        }
        return ends;
    }

    /** {@code hose end 90 swept, race PTFE -6}; its build where it is not the usual one. */
    static String endName(EndSize end, Catalogue catalogue) {
        HoseFamily family = catalogue.family(end.family());
        String build = end.build().equals(family.endBuild()) ? "" : ", " + end.build();
        return "hose " + end.text() + ", " + end.family() + " " + end.sizeText() + build;
    }

    @Override
    public Boolean tube(Tube tube) {
        length(
                KitItem.Group.TUBE,
                "tube " + tubeName(tube.size()),
                tube.lengthM().value(),
                Bench.standard()
                        .densityKgPerM3(tube.size().material())
                        .map(density -> density.times(wallAreaM2(tube.size())))
                        .orElse(null));
        return true;
    }

    static String tubeName(TubeSize size) {
        return new TubeChoice(size.material(), sold(size.outsideDiameterM(), 16), sold(size.wallM(), 1000)).write();
    }

    /** One name for one tube: rows of the catalogue and what a file says differ in the last bit. */
    private static double sold(double lengthM, int partsOfAnInch) {
        double parts = Math.rint(lengthM / INCH_M * partsOfAnInch);
        double named = Units.from(parts / partsOfAnInch, Units.unit("in", Dimension.LENGTH));
        return Math.abs(named - lengthM) < 1e-9 ? named : lengthM;
    }

    private static double wallAreaM2(TubeSize size) {
        return Math.PI * (size.outsideDiameterM() - size.wallM()) * size.wallM();
    }

    @Override
    public Boolean adapter(Adapter adapter) {
        piece(KitItem.Group.ADAPTER, adapterName(adapter.size()));
        return true;
    }

    static String adapterName(AdapterSize size) {
        String angle = size.angleRad() > 0
                ? " " + Math.round(Math.toDegrees(size.angleRad())) + (size.forged() ? " forged" : " swept")
                : "";
        return size.kind() + " " + (size.kind().equals("union") ? size.from().sizeName() : sides(size)) + angle;
    }

    /** One fitting has one name, whichever way it stands: the flare first, of two flares the larger. */
    private static String sides(AdapterSize size) {
        Connection from = size.from();
        Connection to = size.to();
        boolean other = from.seat() == to.seat()
                ? from.size().startsWith("-") && to.size().startsWith("-") && dash(to) > dash(from)
                : to.seat().compareTo(from.seat()) < 0;
        return other ? to.sizeName() + " to " + from.sizeName() : size.text();
    }

    private static int dash(Connection side) {
        return Integer.parseInt(side.size().substring(1));
    }

    @Override
    public Boolean valve(Valve valve) {
        String build = valve.build().isEmpty() ? "" : valve.build() + " ";
        piece(KitItem.Group.VALVE, build + "valve " + valve.size().text());
        return true;
    }

    @Override
    public Boolean restriction(Restriction restriction) {
        piece(
                KitItem.Group.VALVE,
                String.format(
                        Locale.ROOT, "restrictor %.2f mm", restriction.holeM().value() * 1000));
        return true;
    }

    @Override
    public Boolean through(Through through) {
        return false; // a device is no plumbing
    }

    @Override
    public Boolean statedLaw(StatedLaw law) {
        return false; // nothing that could be bought
    }

    /** The list, by group, in the order of the circuits. */
    List<KitItem> items() {
        List<KitItem> items = new ArrayList<>();
        sums.forEach((item, sum) -> items.add(new KitItem(
                sum.group,
                item,
                sum.byLength,
                sum.count,
                sum.byLength ? sum.lengthM : Double.NaN,
                sum.massEach,
                own.price(item))));
        items.sort(Comparator.comparing(KitItem::group));
        return List.copyOf(items);
    }
}
