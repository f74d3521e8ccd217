package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Joint;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Port;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tube;
import org.linedrop.circuit.form.Tree;

/**
 * A whole run in one dash size. What the run meets at its ends, and the devices in it, keep the size they are written
 * with: a change of size there takes an adapter, or does away with one. A plain joint is bought in whatever sizes meet.
 */
final class RunSizes {
    private static final double INCH_M = 0.0254;
    private static final int SIXTEENTHS = 16;

    private final Circuit circuit;
    private final Run run;
    private final String family;
    private final int dash;
    private final List<Item> items = new ArrayList<>();
    private final List<Tree> made = new ArrayList<>();

    private RunSizes(Circuit circuit, Run run, String family, int dash) {
        this.circuit = circuit;
        this.run = run;
        this.family = family;
        this.dash = dash;
    }

    /**
     * One line of the run as written.
     *
     * @param words what it says
     * @param part  what it is
     */
    private record Item(Tree.Branch words, Part part) {
        boolean is(String key) {
            return words.get(key) != null;
        }

        /** Hose, tube or fitting: what changes its size with the run. */
        boolean sized() {
            return is("hose") || is("tube") || is("bulkhead") || is("union") || is("valve");
        }

        boolean nut() {
            return is("hose") || is("tube");
        }
    }

    /**
     * What makes a run so.
     *
     * @param circuit the circuit in the case that is meant
     * @param run     name of the run
     * @param family  hose family, empty for the one each hose has
     * @param dash    the size
     * @return the change; empty when something is not made in that size, or no adapter for it is known
     */
    static Optional<Change> change(Circuit circuit, String run, String family, int dash) {
        for (Run each : circuit.runs()) {
            if (each.id().equals(run)) {
                return new RunSizes(circuit, each, family, dash).change();
            }
        }
        return Optional.empty();
    }

    private Optional<Change> change() {
        read();
        try {
            for (int i = 0; i < items.size(); i++) {
                if (!add(i)) {
                    return Optional.empty();
                }
            }
        } catch (CatalogueException notMade) {
            return Optional.empty();
        }
        Tree parts = new Tree.Items(made, 0, 0);
        return Optional.of(new Change(run.id(), new Tree.Branch(List.of(new Tree.Entry("parts", 0, 0, parts)), 0, 0)));
    }

    private void read() {
        if (circuit.words().here().get("runs") instanceof Tree.Branch runs
                && runs.get(run.id()) instanceof Tree.Branch words
                && words.get("parts") instanceof Tree.Items parts) {
            for (int i = 0; i < parts.items().size(); i++) {
                if (parts.items().get(i) instanceof Tree.Branch branch) {
                    String name = branch.get("name") != null ? text(branch, "name") : run.id() + " " + (i + 1);
                    run.parts().stream()
                            .filter(part -> part.id().equals(name))
                            .findFirst()
                            .ifPresent(part -> items.add(new Item(branch, part)));
                }
            }
        }
    }

    private static String text(Tree.Branch branch, String key) {
        return branch.get(key) instanceof Tree.Text text ? text.text() : "";
    }

    private @Nullable Item at(int i) {
        return i >= 0 && i < items.size() ? items.get(i) : null;
    }

    /** Whether what stands beside an item keeps its size: a device, or the end of the run unless it is a plain joint. */
    private boolean fixed(int i) {
        Item item = at(i);
        if (item != null) {
            return item.is("through");
        }
        Port port = i < 0 ? run.from() : run.to();
        return !(circuit.point(port.element()).orElse(null) instanceof Joint);
    }

    private boolean add(int i) {
        Item item = items.get(i);
        if (item.is("adapter")) {
            adapter(i, (Adapter) item.part());
            return true;
        }
        if (!item.sized()) {
            made.add(item.words());
            return true;
        }
        Tree.Branch resized = resized(item);
        if (resized == null) {
            return false;
        }
        String now = size(item.part());
        boolean changes = !now.equals("-" + dash);
        if (changes && fixed(i - 1) && !join(now, "-" + dash)) {
            return false;
        }
        made.add(resized);
        return !(changes && fixed(i + 1)) || join("-" + dash, now);
    }

    /** Puts an adapter in; false where none is known. */
    private boolean join(String from, String to) {
        if (!from.startsWith("-") || !to.startsWith("-")) {
            return false;
        }
        circuit.catalogue().adapter(from + " to " + to);
        made.add(Tree.of("adapter", from + " to " + to));
        return true;
    }

    /** The size as its neighbour sees it. */
    private static String size(Part part) {
        if (part instanceof Hose hose) {
            return hose.size().sizeText();
        }
        if (part instanceof Tube tube) {
            return tube.size().dash() > 0 ? "-" + tube.size().dash() : "";
        }
        if (part instanceof Adapter adapter) {
            return adapter.size().text();
        }
        return "";
    }

    private Tree.@Nullable Branch resized(Item item) {
        Tree.Branch words = item.words();
        if (item.part() instanceof Hose hose) {
            HoseSize size = hoseSize(hose);
            boolean same = size.name().equals(hose.size().name());
            // a bore that was measured is that of the hose that was measured
            return same ? words : words.without("bore").without("end bore").with("hose", Tree.text(size.name()));
        }
        if (item.part() instanceof Tube tube) {
            if (tube.size().dash() == dash) {
                return words;
            }
            return words.with(
                    "tube", Tree.text(Sizes.text(Sizes.tube(circuit.catalogue(), tube, dash * INCH_M / SIXTEENTHS))));
        }
        for (String key : new String[] {"bulkhead", "union", "valve"}) {
            if (item.is(key)) {
                String said = text(words, key);
                int cut = said.lastIndexOf('-');
                if (cut < 0 || words.get("kv") != null || words.get("cv") != null) {
                    return null; // what it passes was said of this one
                }
                circuit.catalogue().union("-" + dash);
                return words.with(key, Tree.text(said.substring(0, cut) + "-" + dash));
            }
        }
        return null;
    }

    private HoseSize hoseSize(Hose hose) {
        String wanted = family.isEmpty() ? hose.size().family() : family;
        if (hose.size().dash() == dash && wanted.equals(hose.size().family())) {
            return hose.size();
        }
        for (HoseSize size : circuit.catalogue().hoses()) {
            if (size.family().equals(wanted) && size.dash() == dash) {
                return size;
            }
        }
        return circuit.catalogue().hose(wanted, "-" + dash); // says what there is
    }

    /** An adapter as written: its sides beside what keeps its size stay, the others change with the run. */
    private void adapter(int i, Adapter adapter) {
        String[] sides = adapter.size().text().split(" to ", -1);
        if (sides.length != 2) {
            made.add(items.get(i).words());
            return;
        }
        String from = side(i - 1, sides[0]);
        String to = side(i + 1, sides[1]);
        if (from.equals(to)) {
            Item before = at(i - 1);
            Item after = at(i + 1);
            if (before != null && after != null && before.nut() && after.nut()) {
                made.add(Tree.of("union", from)); // two nuts do not meet without something between them
            }
            return;
        }
        circuit.catalogue().adapter(from + " to " + to);
        made.add(items.get(i).words().with("adapter", Tree.text(from + " to " + to)));
    }

    private String side(int neighbour, String now) {
        Item item = at(neighbour);
        return item != null && item.sized() && now.matches("-\\d+") ? "-" + dash : now;
    }
}
