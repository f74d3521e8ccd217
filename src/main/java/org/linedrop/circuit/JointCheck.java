package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.Mating;
import org.linedrop.catalogue.MatingResult;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;

/** Looks at each joint between neighbouring parts of a run while the runs are read. */
final class JointCheck {
    private final Catalogue catalogue;
    private final Map<String, DevicePorts> ports = new LinkedHashMap<>();
    private final Map<String, Junction> junctions = new LinkedHashMap<>();
    private final List<Joint> joints = new ArrayList<>();

    private String run = "";
    private int number;
    private @Nullable Supplier<Connection> before;

    JointCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Two neighbours. */
    private record Joint(String path, Tree second, Supplier<Connection> a, Supplier<Connection> b) {}

    /** Two neighbours that do not go together. */
    private record Fault(String path, Tree second, MatingResult found) {}

    /** What is known of a device's ports; devices come before runs. */
    void ports(String device, @Nullable DevicePorts said) {
        if (said != null) {
            ports.put(device, said.of(device));
        }
    }

    /** What is known of a point's ports; points come before runs. */
    void point(Point point) {
        if (point instanceof Junction junction) {
            junctions.put(junction.id(), junction);
        }
    }

    /** Begins a run at a port. */
    void start(String id, @Nullable Port from) {
        run = id;
        before = connection(from);
        number = 0;
    }

    /** Ends a run at a port. */
    void end(Tree said, @Nullable Port to) {
        Supplier<Connection> last = connection(to);
        if (before != null && last != null && number > 0) {
            joints.add(new Joint(run + " " + number, said, before, last));
        }
        before = null;
    }

    private @Nullable Supplier<Connection> connection(@Nullable Port port) {
        Junction junction = port == null ? null : junctions.get(port.element());
        if (port == null || junction == null) {
            return null;
        }
        return () -> junction.connection(port.name());
    }

    /** Takes the next part of the run; null where it could not be read. */
    void next(int itsNumber, Tree item, @Nullable Part part) {
        if (before != null && part != null) {
            String path = run + " " + (number == 0 ? "" : number + "/") + itsNumber;
            joints.add(new Joint(path, item, before, () -> sides(part).from()));
        }
        before = part == null ? null : () -> sides(part).to();
        number = itsNumber;
    }

    private List<Fault> faults() {
        List<Fault> faults = new ArrayList<>();
        for (Joint joint : joints) {
            MatingResult found = Mating.between(joint.a().get(), joint.b().get());
            if (!found.text().isEmpty()) {
                faults.add(new Fault(joint.path(), joint.second(), found));
            }
        }
        return faults;
    }

    void refuse(Problems problems) {
        for (Fault fault : faults()) {
            Tree at = fault.second();
            problems.add(
                    problems.place(at.line(), at.column(), fault.path()),
                    "",
                    "",
                    fault.found().text(),
                    "");
        }
    }

    List<Notice> notices() {
        return faults().stream()
                .map(fault -> Notice.of(
                        "does-not-mate",
                        fault.path(),
                        fault.found().text() + "; here what is missing costs nothing",
                        fault.found().source()))
                .toList();
    }

    private PartSides sides(Part part) {
        return PartSides.of(part, catalogue, ports);
    }
}
