package org.linedrop.study.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Adapter;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;

/** What alternatives save: the cases of the file that change parts, and parts that one part could stand for. */
final class Savings {
    private Savings() {}

    static List<Alternative> of(Circuit circuit, OwnFigures own) {
        List<Alternative> found = new ArrayList<>();
        Tally here = new Tally(own);
        List<KitJoint> joints = here.add(circuit);
        Map<String, KitItem> items = byName(here.items());
        for (String name : circuit.caseNames()) {
            if (name.equals(circuit.caseName())) {
                continue;
            }
            Tally other = new Tally(own);
            List<KitJoint> otherJoints = other.add(circuit.in(name));
            List<Alternative.Change> changes = changes(items, byName(other.items()));
            if (!changes.isEmpty()) {
                found.add(
                        new Alternative(circuit.title(), "case " + name, changes, leaks(joints) - leaks(otherJoints)));
            }
        }
        circuit.runs().forEach(run -> neighbours(circuit, run, found));
        return found;
    }

    private static int leaks(List<KitJoint> joints) {
        return joints.stream().mapToInt(KitJoint::leaks).sum();
    }

    private static Map<String, KitItem> byName(List<KitItem> items) {
        Map<String, KitItem> named = new LinkedHashMap<>();
        items.forEach(item -> named.put(item.item(), item));
        return named;
    }

    private static List<Alternative.Change> changes(Map<String, KitItem> from, Map<String, KitItem> to) {
        List<Alternative.Change> changes = new ArrayList<>();
        from.forEach((name, item) -> {
            KitItem then = to.get(name);
            double left = then == null ? 0 : then.quantity();
            if (Math.abs(left - item.quantity()) > 1e-9) {
                changes.add(new Alternative.Change(name, item.byLength(), left - item.quantity()));
            }
        });
        to.forEach((name, item) -> {
            if (!from.containsKey(name)) {
                changes.add(new Alternative.Change(name, item.byLength(), item.quantity()));
            }
        });
        return changes;
    }

    /** Two hoses of a kind on a union, two adapters in a row. */
    private static void neighbours(Circuit circuit, Run run, List<Alternative> found) {
        List<Part> parts = run.parts();
        for (int i = 0; i < parts.size(); i++) {
            if (i + 2 < parts.size()
                    && parts.get(i) instanceof Hose first
                    && parts.get(i + 1) instanceof Adapter union
                    && union.size().kind().equals("union")
                    && parts.get(i + 2) instanceof Hose second
                    && first.size().name().equals(second.size().name())) {
                found.add(new Alternative(
                        circuit.title(),
                        "one hose in place of " + first.id() + ", " + union.id() + " and " + second.id(),
                        without(first, union, second, circuit),
                        2));
            }
            if (i + 1 < parts.size()
                    && parts.get(i) instanceof Adapter first
                    && parts.get(i + 1) instanceof Adapter second
                    && !bulkhead(first)
                    && !bulkhead(second)) {
                found.add(new Alternative(
                        circuit.title(),
                        "one adapter in place of " + first.id() + " and " + second.id(),
                        List.of(
                                new Alternative.Change(Tally.adapterName(first.size()), false, -1),
                                new Alternative.Change(Tally.adapterName(second.size()), false, -1),
                                new Alternative.Change(
                                        "adapter " + first.size().from().sizeName() + " to "
                                                + second.size().to().sizeName(),
                                        false,
                                        1)),
                        1));
            }
        }
    }

    private static List<Alternative.Change> without(Hose first, Adapter union, Hose second, Circuit circuit) {
        Map<String, Double> less = new LinkedHashMap<>();
        for (EndSize end : new EndSize[] {first.toEnd(), second.fromEnd()}) {
            if (end != null) {
                less.merge(Tally.endName(end, circuit.catalogue()), -1.0, Double::sum);
            }
        }
        less.merge(Tally.adapterName(union.size()), -1.0, Double::sum);
        List<Alternative.Change> changes = new ArrayList<>();
        less.forEach((item, more) -> changes.add(new Alternative.Change(item, false, more)));
        return changes;
    }

    private static boolean bulkhead(Adapter adapter) {
        return adapter.size().kind().equals("bulkhead");
    }
}
