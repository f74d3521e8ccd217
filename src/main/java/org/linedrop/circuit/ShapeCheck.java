package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Over;
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
            if (run.from().equals(run.to())) {
                toItself(run);
            }
        }
        for (Point point : points) {
            if (point instanceof Junction junction) {
                junctionPorts(junction, runs);
            }
        }
        devicesUsed(runs);
        devicePorts(points, devices, runs);
        new PlaceCheck(problems, file).check(points, devices, runs);
        reference(points, runs);
        // a power or flow that could not be read, or that lacks its other half, was complained of where it stands
        boolean halfSaid = file.get("engine") instanceof Tree.Branch said
                && (said.get(FileKeys.POWER.name()) != null || said.get(FileKeys.ENGINE_FLOW.name()) != null);
        if (engineNeeded && !halfSaid && (engine == null || Double.isNaN(engine.fuelKgPerS(1)))) {
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

    /** Nothing would say which way anything flows in it. */
    private void toItself(Run run) {
        Tree.Branch tree = runTree(run);
        problems.add(
                place(tree == null ? null : tree.get("to"), run.id()),
                "to",
                run.to().text(),
                "the run starts and ends at " + run.to().text(),
                "Let it end at another point, or cut it in two at a point of its own (kind: joint)");
    }

    private void port(Run run, String key, Port port) {
        Tree.Branch tree = runTree(run);
        Tree at = tree == null ? null : tree.get(key);
        boolean device = in("devices", port.element());
        if (!device && !in("points", port.element())) {
            unknownPort(run, key, port, at);
            return;
        }
        String kind = kind(device ? "devices" : "points", port.element());
        List<String> ports = device ? Ports.ofDevice(kind) : Ports.ofPoint(kind);
        String message = port.element() + " has no port \"" + port.name() + "\"";
        String hint = "Write " + port.element() + " alone";
        if (ports.isEmpty()) {
            if (!kind.isEmpty()) {
                message = port.element() + " is an in-line device";
                hint = "Name it inside one run with \"through: " + port.element() + "\", not in from or to";
                problems.add(place(at, run.id()), key, port.text(), message, hint);
            }
            return;
        }
        if (ports.contains(port.name())) {
            return;
        }
        if (!ports.contains("")) {
            String list = ports.size() == 2 ? ports.get(0) + " and " + ports.get(1) : String.join(", ", ports);
            if (port.name().isEmpty()) {
                String likely = key.equals("to") ? ports.get(0) : ports.get(1);
                message = port.element() + " has ports " + list;
                hint = "Write " + port.element() + "." + likely;
            } else {
                hint = Words.nearest(port.name(), ports)
                                .map(near -> "Did you mean " + port.element() + "." + near + "? ")
                                .orElse("")
                        + "Its ports are " + list;
            }
        }
        problems.add(place(at, run.id()), key, port.text(), message, hint);
    }

    private void unknownPort(Run run, String key, Port port, @Nullable Tree at) {
        List<String> known = new ArrayList<>(names("points"));
        for (String device : names("devices")) {
            if (!Ports.ofDevice(kind("devices", device)).isEmpty()) {
                known.add(device);
            }
        }
        String hint = Words.nearest(port.element(), known)
                .map(near -> "Did you mean " + near + "? (line " + line(near) + ")")
                .orElse("Points here: " + String.join(", ", known));
        problems.add(place(at, run.id()), key, port.text(), "no point or device \"" + port.element() + "\"", hint);
    }

    private List<String> names(String section) {
        return file.get(section) instanceof Tree.Branch branch
                ? branch.entries().stream().map(Tree.Entry::key).toList()
                : List.of();
    }

    private String kind(String section, String id) {
        return file.get(section) instanceof Tree.Branch elements
                        && elements.get(id) instanceof Tree.Branch element
                        && element.get("kind") instanceof Tree.Text kind
                ? kind.text()
                : "";
    }

    /** Each port of a tee or Y block is used as often as it has holes. */
    private void junctionPorts(Junction junction, List<Run> runs) {
        List<String> ports = Junction.ports(junction.size().kind());
        for (int i = 0; i < ports.size(); i++) {
            String text = junction.id() + "." + ports.get(i);
            int holes = 2 - i;
            List<String> users = new ArrayList<>();
            for (Run run : runs) {
                for (Port port : List.of(run.from(), run.to())) {
                    if (port.text().equals(text)) {
                        users.add(run.id());
                    }
                }
            }
            if (users.size() == holes) {
                continue;
            }
            String takes = holes == 2 ? "takes two runs" : "takes one run";
            String has = users.isEmpty()
                    ? "none is there"
                    : users.size() < holes
                            ? "only " + users.get(0) + " is there"
                            : String.join(", ", users) + " are there";
            problems.add(
                    place(elementTree(junction.id()), junction.id()),
                    "",
                    "",
                    text + " " + takes + ", but " + has,
                    users.size() < holes
                            ? "Let a run start or end at " + text + "; without a third run it is a joint, not a "
                                    + junction.size().kind()
                            : "Use another port, or a second " + junction.size().kind());
        }
    }

    private @Nullable Tree elementTree(String id) {
        return file.get("points") instanceof Tree.Branch points ? points.get(id) : null;
    }

    private int line(String id) {
        Tree.Entry entry = ids.get(id);
        return entry == null ? 0 : entry.line();
    }

    private void devicesUsed(List<Run> runs) {
        Map<String, String> used = new LinkedHashMap<>();
        List<String> ends = new ArrayList<>();
        for (Run run : runs) {
            ends.add(run.from().element());
            ends.add(run.to().element());
        }
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
                                RunKeys.THROUGH.name(),
                                through.device(),
                                "no device \"" + through.device() + "\"",
                                hint);
                    }
                    if (!Ports.ofDevice(kind("devices", through.device())).isEmpty()) {
                        List<String> ports = Ports.ofDevice(kind("devices", through.device()));
                        problems.add(
                                place(throughTree(tree, through.device()), part.id()),
                                RunKeys.THROUGH.name(),
                                through.device(),
                                through.device() + " has the ports " + String.join(", ", ports)
                                        + " and cannot stand inside a run",
                                "End the run with to: " + through.device() + "." + ports.get(0)
                                        + " and start the next with from: " + through.device() + "." + ports.get(1));
                        continue;
                    }
                    String before = used.putIfAbsent(through.device(), part.id());
                    if (before != null) {
                        problems.add(
                                place(throughTree(tree, through.device()), part.id()),
                                RunKeys.THROUGH.name(),
                                through.device(),
                                through.device() + " already sits at " + before,
                                "Each device stands once in the file: describe a second one under its own name");
                    }
                }
            }
        }
        if (file.get("devices") instanceof Tree.Branch devices) {
            for (Tree.Entry entry : devices.entries()) {
                if (!used.containsKey(entry.key()) && !ends.contains(entry.key())) {
                    problems.add(
                            problems.place(entry.line(), entry.column(), entry.key()),
                            "",
                            "",
                            entry.key() + " (line " + entry.line() + ") is in no run",
                            Ports.ofDevice(kind("devices", entry.key())).isEmpty()
                                    ? "Put \"through: " + entry.key() + "\" where it sits, or delete it"
                                    : "Name its ports in from and to of the runs that meet it, or delete it");
                }
            }
        }
    }

    /** A device with ports works when runs come to them; only the direct way of a thermostat may be plugged. */
    private void devicePorts(List<Point> points, List<Device> devices, List<Run> runs) {
        for (Device device : devices) {
            List<String> met = new ArrayList<>();
            for (Run run : runs) {
                met.add(run.from().text());
                met.add(run.to().text());
            }
            boolean any = device.ports().stream().anyMatch(port -> met.contains(device.id() + "." + port));
            for (String port : device.ports()) {
                if (any && !port.equals(Thermostat.DIRECT) && !met.contains(device.id() + "." + port)) {
                    problems.add(
                            problems.place(line(device.id()), 0, device.id()),
                            "",
                            "",
                            "no run meets " + device.id() + "." + port,
                            "Let a run start or end there");
                }
            }
            if (device instanceof Regulator regulator
                    && !regulator.overPoint().isEmpty()
                    && points.stream().noneMatch(point -> point.id().equals(regulator.overPoint()))) {
                List<String> known = new ArrayList<>(List.of(Over.AIR, Over.MANIFOLD));
                points.forEach(point -> known.add(point.id()));
                problems.add(
                        problems.place(line(device.id()), 0, device.id()),
                        DeviceKeys.HOLDS.name(),
                        regulator.holds().write(),
                        "it holds over \"" + regulator.overPoint() + "\", which is no point here",
                        Words.nearest(regulator.overPoint(), known)
                                .map(near -> "Did you mean " + near + "?")
                                .orElse("Write over air, over manifold, or over a point of this file"));
            }
        }
    }

    private static @Nullable Tree throughTree(Tree.@Nullable Branch run, String device) {
        if (run != null && run.get("parts") instanceof Tree.Items items) {
            for (Tree item : items.items()) {
                if (item instanceof Tree.Branch part
                        && part.get(RunKeys.THROUGH.name()) instanceof Tree.Text text
                        && text.text().equals(device)) {
                    return text;
                }
            }
        }
        return run;
    }

    private void reference(List<Point> points, List<Run> runs) {
        boolean known = points.stream().anyMatch(point -> point instanceof Tank || point instanceof Held);
        // a point whose kind could not be read may be the one: that was complained of
        boolean written = file.get("points") instanceof Tree.Branch branch
                && branch.entries().stream()
                        .anyMatch(entry -> entry.value() instanceof Tree.Branch point
                                && !(point.get("kind") instanceof Tree.Text kind
                                        && Keys.POINTS.stream()
                                                .anyMatch(k -> k.word().equals(kind.text())
                                                        && !List.of("tank", "held")
                                                                .contains(k.word()))));
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
