package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.catalogue.TubeSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.form.TubeChoice;

/** What one size up or down is, for each thing one would change. */
final class Sizes {
    static final List<Integer> DASHES = List.of(2, 3, 4, 5, 6, 8, 10, 12, 16, 20, 24, 32);

    private Sizes() {}

    /**
     * One thing in another size.
     *
     * @param part    name of the part
     * @param words   for a sentence
     * @param changes what it takes, adapters that fall away or change with it included
     */
    record Step(String part, String words, List<Change> changes) {}

    /** Every hose and tube one size smaller, with the fittings between them; empty when nothing gets smaller. */
    static List<Change> smallerEverywhere(Circuit circuit) {
        List<Change> changes = new ArrayList<>();
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                smaller(circuit.catalogue(), part).ifPresent(changes::add);
            }
        }
        return changes;
    }

    private static Optional<Change> smaller(Catalogue catalogue, Part part) {
        if (part instanceof Hose hose) {
            return hose(catalogue, hose, -1).map(size -> Change.of(hose.id(), "hose", size.name()));
        }
        if (part instanceof Tube tube) {
            return tube(catalogue, tube, -1).map(size -> Change.of(tube.id(), "tube", text(size)));
        }
        if (part instanceof Adapter adapter) {
            String text = adapter.size().text();
            String smaller = text;
            for (int i = 1; i < DASHES.size(); i++) {
                // from small to large, so that a size already changed is not changed again
                smaller = smaller.replaceAll("-" + DASHES.get(i) + "\\b", "-" + DASHES.get(i - 1));
            }
            String key = text.contains(" to ") ? "adapter" : adapter.size().kind(); // a union may be written as either
            return smaller.equals(text) ? Optional.empty() : Optional.of(Change.of(adapter.id(), key, smaller));
        }
        return Optional.empty();
    }

    /**
     * One thing some sizes up.
     *
     * @param catalogue the circuit's rows
     * @param run       the run it is in
     * @param part      a hose or tube
     * @param up        how many sizes
     * @return the step, empty when there is no such size
     */
    static Optional<Step> larger(Catalogue catalogue, Run run, Part part, int up) {
        if (part instanceof Hose hose) {
            return hose(catalogue, hose, up)
                    .map(size ->
                            new Step(hose.id(), size.sizeText(), List.of(Change.of(hose.id(), "hose", size.name()))));
        }
        if (part instanceof Tube tube) {
            return tube(catalogue, tube, up).map(size -> tubeStep(run, tube, size));
        }
        return Optional.empty();
    }

    /** A tube with the adapters beside it, which change with it or fall away. */
    private static Step tubeStep(Run run, Tube tube, TubeSize size) {
        Map<String, Change> changes = new LinkedHashMap<>();
        changes.put(tube.id(), Change.of(tube.id(), "tube", text(size)));
        int gone = 0;
        int unions = 0;
        int at = run.parts().indexOf(tube);
        for (int beside : new int[] {at - 1, at + 1}) {
            if (beside < 0 || beside >= run.parts().size() || !(run.parts().get(beside) instanceof Adapter adapter)) {
                continue;
            }
            String[] sides = adapter.size().text().split(" to ", -1);
            if (sides.length != 2) {
                continue;
            }
            String far = beside < at ? sides[0] : sides[1];
            String near = "-" + size.dash();
            int beyond = beside < at ? beside - 1 : beside + 1;
            boolean hoseBeyond =
                    beyond >= 0 && beyond < run.parts().size() && run.parts().get(beyond) instanceof Hose;
            if (far.equals(near) && hoseBeyond) { // two swivel nuts do not meet without something between them
                changes.put(adapter.id(), Change.of(adapter.id(), "adapter", near + " to " + near));
                unions++;
            } else if (far.equals(near)) {
                changes.put(adapter.id(), Change.without(adapter.id()));
                gone++;
            } else {
                changes.put(
                        adapter.id(),
                        Change.of(adapter.id(), "adapter", beside < at ? far + " to " + near : near + " to " + far));
            }
        }
        String words = text(size).substring(size.material().length() + 1);
        return new Step(tube.id(), words + beside(gone, unions), List.copyOf(changes.values()));
    }

    /** What becomes of the adapters beside a tube. */
    private static String beside(int gone, int unions) {
        if (unions == 0) {
            return gone == 0 ? "" : gone == 1 ? ", which also drops an adapter" : ", which also drops both adapters";
        }
        String dropped = gone == 0 ? "" : ", which also drops one adapter and";
        return dropped + (gone == 0 ? ", which" : "") + " makes "
                + (unions == 1 ? (gone == 0 ? "an adapter" : "the other") : "both adapters")
                + (unions == 1 ? " a plain union" : " plain unions");
    }

    private static Optional<HoseSize> hose(Catalogue catalogue, Hose hose, int steps) {
        List<HoseSize> family = catalogue.hoses().stream()
                .filter(size -> size.family().equals(hose.size().family()))
                .sorted(Comparator.comparingDouble(size -> size.boreM().value()))
                .toList();
        for (int i = 0; i < family.size(); i++) {
            if (family.get(i).sizeText().equals(hose.size().sizeText())) {
                int other = i + steps;
                return other >= 0 && other < family.size() ? Optional.of(family.get(other)) : Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** The tube some diameters up or down: the wall sold that is nearest to the present one. */
    private static Optional<TubeSize> tube(Catalogue catalogue, Tube tube, int steps) {
        List<Double> diameters = catalogue.tubes().stream()
                .map(TubeSize::outsideDiameterM)
                .distinct()
                .sorted()
                .filter(od -> od >= 0.0047) // under 3/16 in there is no flare for fuel or oil
                .toList();
        int here = -1;
        for (int i = 0; i < diameters.size(); i++) {
            if (Math.abs(diameters.get(i) - tube.size().outsideDiameterM()) < 2e-5) {
                here = i;
            }
        }
        int other = here + steps;
        if (here < 0 || other < 0 || other >= diameters.size()) {
            return Optional.empty();
        }
        return Optional.of(tube(catalogue, tube, diameters.get(other)));
    }

    /** A tube of the same material and another diameter: the wall sold that is nearest to the present one. */
    static TubeSize tube(Catalogue catalogue, Tube tube, double diameter) {
        String material = tube.size().material();
        double wall = tube.size().wallM();
        Comparator<TubeSize> byMaterial =
                Comparator.comparingInt(size -> size.material().equals(material) ? 0 : 1);
        return catalogue.tubes().stream()
                .filter(size -> Math.abs(size.outsideDiameterM() - diameter) < 2e-5)
                .min(byMaterial.thenComparingDouble(size -> Math.abs(size.wallM() - wall)))
                .map(sold -> catalogue.tube(material, sold.outsideDiameterM(), sold.wallM()))
                .orElseGet(() -> catalogue.tube(material, diameter, wall));
    }

    static String text(TubeSize size) {
        return new TubeChoice(size.material(), size.outsideDiameterM(), size.wallM()).write();
    }

    /** Whether a part is something one would change the size of. */
    static boolean changeable(Part part) {
        return part instanceof Hose || part instanceof Tube;
    }
}
