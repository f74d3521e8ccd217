package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Place;
import org.linedrop.fact.Words;

/** Checks that runs, points and devices fit together: names that exist, devices used once, a pressure reference. */
final class ShapeCheck {
    private final Problems problems;
    private final Tree.Branch file;
    private final Map<String, Tree.Entry> ids;

    ShapeCheck(Problems problems, Tree.Branch file, Map<String, Tree.Entry> ids) {
        this.problems = problems;
        this.file = file;
        this.ids = ids;
    }

    void check(
            List<Point> points, List<Device> devices, List<Run> runs, boolean engineNeeded, @Nullable Engine engine) {
        for (Run run : runs) {
            port(run, "from", run.from());
            port(run, "to", run.to());
        }
        devicesUsed(runs);
        reference(points, runs);
        if (engineNeeded && (engine == null || Double.isNaN(engine.fuelKgPerS(1)))) {
            Tree at = file.get("engine") == null ? file : file.get("engine");
            problems.add(
                    place(at, "engine"),
                    "engine",
                    "",
                    "a draw takes a share of the engine, but what the engine burns is not given",
                    "Write engine: {power: 520 hp, bsfc: 0.70 lb/hp/h} or engine: {flow: 216 L/h}");
        }
    }

    private Place place(@Nullable Tree at, String path) {
        return at == null ? problems.place(0, 0, path) : problems.place(at.line(), at.column(), path);
    }

    private Tree.@Nullable Branch runTree(Run run) {
        return file.get("runs") instanceof Tree.Branch runs && runs.get(run.id()) instanceof Tree.Branch branch
                ? branch
                : null;
    }

    private boolean in(String section, String id) {
        return file.get(section) instanceof Tree.Branch branch && branch.get(id) != null;
    }

    private void port(Run run, String key, Port port) {
        Tree.Branch tree = runTree(run);
        Tree at = tree == null ? null : tree.get(key);
        if (in("devices", port.element())) {
            problems.add(
                    place(at, run.id()),
                    key,
                    port.text(),
                    port.element() + " is an in-line device",
                    "Name it inside one run with \"through: " + port.element() + "\", not in from or to");
            return;
        }
        if (!in("points", port.element())) {
            List<String> known = new ArrayList<>();
            if (file.get("points") instanceof Tree.Branch points) {
                points.entries().forEach(entry -> known.add(entry.key()));
            }
            String hint = Words.nearest(port.element(), known)
                    .map(near -> "Did you mean " + near + "? (line " + line(near) + ")")
                    .orElse("Points here: " + String.join(", ", known));
            problems.add(place(at, run.id()), key, port.text(), "no point or device \"" + port.element() + "\"", hint);
            return;
        }
        boolean tank = file.get("points") instanceof Tree.Branch points
                && points.get(port.element()) instanceof Tree.Branch point
                && point.get("kind") instanceof Tree.Text kind
                && kind.text().equals("tank");
        List<String> ports = tank ? List.of(Tank.OUTLET, Tank.RETURN) : List.of("");
        if (!ports.contains(port.name())) {
            problems.add(
                    place(at, run.id()),
                    key,
                    port.text(),
                    port.element() + " has no port \"" + port.name() + "\"",
                    tank ? "A tank has the ports outlet and return" : "Write " + port.element() + " alone");
        }
    }

    private int line(String id) {
        Tree.Entry entry = ids.get(id);
        return entry == null ? 0 : entry.line();
    }

    private void devicesUsed(List<Run> runs) {
        Map<String, String> used = new LinkedHashMap<>();
        for (Run run : runs) {
            for (Part part : run.parts()) {
                if (part instanceof Through through) {
                    Tree.Branch tree = runTree(run);
                    if (!in("devices", through.device())) {
                        List<String> known = new ArrayList<>();
                        if (file.get("devices") instanceof Tree.Branch devices) {
                            devices.entries().forEach(entry -> known.add(entry.key()));
                        }
                        String hint = Words.nearest(through.device(), known)
                                .map(near -> "Did you mean " + near + "? (line " + line(near) + ")")
                                .orElse("Devices here: " + String.join(", ", known));
                        problems.add(
                                place(throughTree(tree, through.device()), part.id()),
                                Keys.THROUGH.name(),
                                through.device(),
                                "no device \"" + through.device() + "\"",
                                hint);
                    }
                    String before = used.putIfAbsent(through.device(), part.id());
                    if (before != null) {
                        problems.add(
                                place(throughTree(tree, through.device()), part.id()),
                                Keys.THROUGH.name(),
                                through.device(),
                                through.device() + " already sits at " + before,
                                "Each device stands once in the file: describe a second one under its own name");
                    }
                }
            }
        }
        if (file.get("devices") instanceof Tree.Branch devices) {
            for (Tree.Entry entry : devices.entries()) {
                if (!used.containsKey(entry.key())) {
                    problems.add(
                            problems.place(entry.line(), entry.column(), entry.key()),
                            "",
                            "",
                            entry.key() + " (line " + entry.line() + ") is in no run",
                            "Put \"through: " + entry.key() + "\" where it sits, or delete it");
                }
            }
        }
    }

    private static @Nullable Tree throughTree(Tree.@Nullable Branch run, String device) {
        if (run != null && run.get("parts") instanceof Tree.Items items) {
            for (Tree item : items.items()) {
                if (item instanceof Tree.Branch part
                        && part.get(Keys.THROUGH.name()) instanceof Tree.Text text
                        && text.text().equals(device)) {
                    return text;
                }
            }
        }
        return run;
    }

    private void reference(List<Point> points, List<Run> runs) {
        boolean known = points.stream().anyMatch(point -> point instanceof Tank || point instanceof Held);
        boolean written = file.get("points") instanceof Tree.Branch branch
                && branch.entries().stream()
                        .anyMatch(entry -> entry.value() instanceof Tree.Branch point
                                && point.get("kind") instanceof Tree.Text kind
                                && (kind.text().equals("tank") || kind.text().equals("held")));
        if (!known && !written) {
            problems.add(
                    place(file.get("points"), ""),
                    "points",
                    "",
                    "nothing in this circuit fixes a pressure",
                    "Add a tank, an expansion tank with its cap, or a point of kind held");
        }
        if (runs.isEmpty()
                && !(file.get("runs") instanceof Tree.Branch branch
                        && !branch.entries().isEmpty())) {
            problems.add(
                    place(file.get("runs"), ""),
                    "runs",
                    "",
                    "there is no run",
                    "Write runs: and below it each line with from, to and parts");
        }
    }
}
