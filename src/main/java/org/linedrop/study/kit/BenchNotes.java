package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.linedrop.catalogue.Bench;
import org.linedrop.catalogue.DashSize;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseFamily;
import org.linedrop.catalogue.Seat;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Fitted;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.Tube;

/** Picks the tools and reminders for what circuits are made of. Brake hose is not made up at home: none for it. */
final class BenchNotes {
    private final Set<String> kinds = new LinkedHashSet<>();
    private final Set<String> families = new LinkedHashSet<>();

    private BenchNotes() {}

    static List<Bench.Note> of(List<Circuit> circuits) {
        BenchNotes picked = new BenchNotes();
        circuits.stream().filter(circuit -> circuit.service() != Service.BRAKE).forEach(picked::add);
        return Bench.standard().notes().stream()
                .filter(note -> picked.kinds.contains(note.kind())
                        && (note.family().isEmpty() || picked.families.contains(note.family())))
                .toList();
    }

    private void add(Circuit circuit) {
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                if (part instanceof Hose hose && !hose.size().neverJudged()) {
                    hose(circuit, hose);
                } else if (part instanceof Tube) {
                    kinds.add("tube");
                }
            }
        }
        Meetings.joints(circuit)
                .forEach(joint -> kinds.add(KitJoint.of(circuit, joint).seat().word()));
    }

    private void hose(Circuit circuit, Hose hose) {
        kinds.add("hose");
        HoseFamily family = circuit.catalogue().family(hose.size().family());
        families.add(family.name());
        families.add(family.like());
        if (KitJoint.clamped(circuit, hose)) {
            kinds.add("rubber barb");
        }
        for (EndSize end : new EndSize[] {hose.fromEnd(), hose.toEnd()}) {
            if (end != null) {
                kinds.add((family.surface().equals("PTFE") ? "PTFE " : "rubber ") + end.build());
            }
        }
    }

    /** One for each size of 37-degree nut. */
    static List<Wrench> wrenches(List<Circuit> circuits) {
        TreeMap<Integer, Wrench> bySize = new TreeMap<>();
        for (Circuit circuit : circuits) {
            if (circuit.service() == Service.BRAKE) {
                continue;
            }
            List<DashSize> sizes = circuit.catalogue().dashSizes();
            for (Fitted.Joint joint : Meetings.joints(circuit)) {
                KitJoint known = KitJoint.of(circuit, joint);
                if (known.seat() == Seat.FLARE_37) {
                    int dash = Integer.parseInt(known.size().substring(1));
                    bySize.put(
                            dash,
                            new Wrench(
                                    known.size(),
                                    sizes.stream()
                                            .filter(size -> size.dash() == dash)
                                            .map(DashSize::nutHexM)
                                            .findFirst()
                                            .orElse(null)));
                }
            }
        }
        return new ArrayList<>(bySize.values());
    }
}
