package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Notice;

/** Reads runs: where they start and end, what they pass, and the list of their parts. */
final class RunReader {
    private final Scope scope;
    private final Problems problems;
    private final Map<String, Tree.Entry> ids;
    private final JointCheck joints;
    private final PartReader partReader;

    RunReader(
            Scope scope, Problems problems, Map<String, Tree.Entry> ids, List<Notice> assumptions, JointCheck joints) {
        this.scope = scope;
        this.problems = problems;
        this.ids = ids;
        this.joints = joints;
        this.partReader = new PartReader(scope, problems, assumptions);
    }

    List<Run> runs(Tree.Branch section) {
        List<Run> runs = new ArrayList<>();
        for (Tree.Entry entry : section.entries()) {
            CircuitReader.register(entry, ids, problems);
            if (!(entry.value() instanceof Tree.Branch branch)) {
                problems.add(
                        problems.place(entry.line(), entry.column(), entry.key()),
                        "",
                        "",
                        "a run has keys from, to and parts",
                        "Write from: tank, to: rail, parts: and the parts below it");
                continue;
            }
            Fields fields = new Fields(branch, entry.key(), RunKeys.RUN, List.of(), scope, problems);
            String from = fields.get(RunKeys.FROM);
            String to = fields.get(RunKeys.TO);
            Port start = from == null ? null : port(from, Tank.OUTLET);
            Port end = to == null ? null : port(to, Tank.RETURN);
            joints.start(entry.key(), start);
            List<Run.EndHeight> endHeights = new ArrayList<>();
            List<Part> parts = parts(entry.key(), branch, endHeights);
            joints.end(branch, end);
            if (start != null && end != null) {
                runs.add(new Run(
                        entry.key(),
                        start,
                        end,
                        via(entry.key(), branch),
                        parts,
                        endHeights,
                        fields.get(RunKeys.TEMPERATURE_OF_PART)));
            }
        }
        return runs;
    }

    private List<Position> via(String run, Tree.Branch branch) {
        Tree said = branch.get(RunKeys.VIA_MARK.name());
        List<Position> places = new ArrayList<>();
        if (said == null) {
            return places;
        }
        if (!(said instanceof Tree.Items items)) {
            problems.add(
                    problems.place(said.line(), said.column(), run),
                    RunKeys.VIA_MARK.name(),
                    "",
                    "via takes a list of places",
                    "Write via: [{ahead: 0.5 m, height: 0.9 m}]");
            return places;
        }
        for (int i = 0; i < items.items().size(); i++) {
            Tree item = items.items().get(i);
            String path = run + " via " + (i + 1);
            if (!(item instanceof Tree.Branch keys)) {
                problems.add(
                        problems.place(item.line(), item.column(), path),
                        "",
                        "",
                        "a way-point has keys ahead, left and height",
                        "Write - {ahead: 0.5 m, height: 0.9 m}");
                continue;
            }
            Fields fields = new Fields(keys, path, PointKeys.WAY_POINT, List.of(), scope, problems);
            Position place = PointReader.position(fields);
            if (place != null) {
                places.add(place);
            } else if (!fields.has(PointKeys.HEIGHT)) {
                fields.problem(PointKeys.HEIGHT, "a way-point needs its height", "Add height: 0.90 m");
            }
        }
        return places;
    }

    private Port port(String text, String tankPort) {
        int dot = text.indexOf('.');
        if (dot >= 0) {
            return new Port(text.substring(0, dot), text.substring(dot + 1));
        }
        Tree.Entry owner = ids.get(text);
        boolean tank = owner != null
                && owner.value() instanceof Tree.Branch branch
                && branch.get("kind") instanceof Tree.Text kind
                && kind.text().equals("tank");
        return new Port(text, tank ? tankPort : "");
    }

    private List<Part> parts(String run, Tree.Branch branch, List<Run.EndHeight> endHeights) {
        Tree said = branch.get(RunKeys.PARTS_MARK.name());
        List<Part> parts = new ArrayList<>();
        if (said == null || (said instanceof Tree.Text text && text.text().equals("none"))) {
            return parts;
        }
        if (!(said instanceof Tree.Items items)) {
            problems.add(
                    problems.place(said.line(), said.column(), run),
                    RunKeys.PARTS_MARK.name(),
                    "",
                    "parts takes a list",
                    "Write each part on a line of its own, with - before it");
            return parts;
        }
        for (int i = 0; i < items.items().size(); i++) {
            Tree item = items.items().get(i);
            String number = run + " " + (i + 1);
            if (item instanceof Tree.Branch keys) {
                if (keys.get(RunKeys.NAME.name()) instanceof Tree.Text name) {
                    CircuitReader.register(
                            new Tree.Entry(name.text(), name.line(), name.column(), keys), ids, problems);
                }
                PartReader.Read read = partReader.part(number, keys);
                joints.next(i + 1, item, read.part());
                if (read.part() != null) {
                    parts.add(read.part());
                    if (read.endHeightM() != null) {
                        endHeights.add(new Run.EndHeight(parts.size(), read.endHeightM()));
                    }
                }
            } else if (!(item instanceof Tree.Text text && text.text().equals("none"))) {
                problems.add(
                        problems.place(item.line(), item.column(), number),
                        "",
                        item instanceof Tree.Text text ? text.text() : "",
                        "a part has keys",
                        item instanceof Tree.Text text && ids.containsKey(text.text())
                                ? "Write - {through: " + text.text() + "}"
                                : "Write for example - {hose: race PTFE -6, length: 0.60 m, ends: straight to 90}");
            }
        }
        return parts;
    }
}
