package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.circuit.form.AdapterChoice;
import org.linedrop.circuit.form.Bends;
import org.linedrop.circuit.form.EndChoice;
import org.linedrop.circuit.form.Ends;
import org.linedrop.circuit.form.Factor;
import org.linedrop.circuit.form.SizeChoice;
import org.linedrop.circuit.form.Tree;
import org.linedrop.circuit.form.TubeChoice;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.units.Quantity;

/** Reads runs and their parts. */
final class RunReader {
    /** Centre-line radius of a tube bend over its outside diameter, where none is given. */
    private static final double TUBE_BEND_RATIO = 3;

    private final Scope scope;
    private final Problems problems;
    private final Map<String, Tree.Entry> ids;
    private final List<Notice> assumptions;
    private final JointCheck joints;

    RunReader(
            Scope scope, Problems problems, Map<String, Tree.Entry> ids, List<Notice> assumptions, JointCheck joints) {
        this.scope = scope;
        this.problems = problems;
        this.ids = ids;
        this.assumptions = assumptions;
        this.joints = joints;
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
            Fields fields = new Fields(branch, entry.key(), Keys.RUN, List.of(), scope, problems);
            String from = fields.get(Keys.FROM);
            String to = fields.get(Keys.TO);
            Port start = from == null ? null : port(from, Tank.OUTLET);
            Port end = to == null ? null : port(to, Tank.RETURN);
            joints.start(entry.key(), start);
            List<Part> parts = parts(entry.key(), branch);
            joints.end(branch, end);
            if (start != null && end != null) {
                runs.add(new Run(
                        entry.key(),
                        start,
                        end,
                        via(entry.key(), branch),
                        parts,
                        fields.get(Keys.TEMPERATURE_OF_PART)));
            }
        }
        return runs;
    }

    private List<Position> via(String run, Tree.Branch branch) {
        Tree said = branch.get(Keys.VIA_MARK.name());
        List<Position> places = new ArrayList<>();
        if (said == null) {
            return places;
        }
        if (!(said instanceof Tree.Items items)) {
            problems.add(
                    problems.place(said.line(), said.column(), run),
                    Keys.VIA_MARK.name(),
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
            Fields fields = new Fields(keys, path, Keys.WAY_POINT, List.of(), scope, problems);
            Position place = PointReader.position(fields);
            if (place != null) {
                places.add(place);
            } else if (!fields.has(Keys.HEIGHT)) {
                fields.problem(Keys.HEIGHT, "a way-point needs its height", "Add height: 0.90 m");
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

    private List<Part> parts(String run, Tree.Branch branch) {
        Tree said = branch.get(Keys.PARTS_MARK.name());
        List<Part> parts = new ArrayList<>();
        if (said == null || (said instanceof Tree.Text text && text.text().equals("none"))) {
            return parts;
        }
        if (!(said instanceof Tree.Items items)) {
            problems.add(
                    problems.place(said.line(), said.column(), run),
                    Keys.PARTS_MARK.name(),
                    "",
                    "parts takes a list",
                    "Write each part on a line of its own, with - before it");
            return parts;
        }
        for (int i = 0; i < items.items().size(); i++) {
            Tree item = items.items().get(i);
            String number = run + " " + (i + 1);
            if (item instanceof Tree.Branch keys) {
                if (keys.get(Keys.NAME.name()) instanceof Tree.Text name) {
                    CircuitReader.register(
                            new Tree.Entry(name.text(), name.line(), name.column(), keys), ids, problems);
                }
                Part part = part(number, keys);
                joints.next(i + 1, item, part);
                if (part != null) {
                    parts.add(part);
                }
            } else if (!(item instanceof Tree.Text text && text.text().equals("none"))) {
                problems.add(
                        problems.place(item.line(), item.column(), number),
                        "",
                        item instanceof Tree.Text text ? text.text() : "",
                        "a part has keys",
                        "Write for example - {hose: race PTFE -6, length: 0.60 m, ends: straight to 90}");
            }
        }
        return parts;
    }

    private @Nullable Part part(String number, Tree.Branch keys) {
        for (Kind kind : Keys.PARTS) {
            if (keys.get(kind.word()) != null) {
                Fields fields = new Fields(keys, number, kind, List.of(), scope, problems);
                String id = fields.get(Keys.NAME, number);
                try {
                    return switch (kind.word()) {
                        case "hose" -> hose(id, fields);
                        case "tube" -> tube(id, fields);
                        case "adapter" -> adapter(id, fields);
                        case "bulkhead" -> bulkhead(id, fields);
                        case "union" -> union(id, fields);
                        case "through" -> through(number, fields);
                        case "restrictor" -> restriction(id, fields);
                        case "valve" -> valve(id, fields);
                        case "law" -> statedLaw(id, fields);
                        default -> throw new IllegalStateException("no reader for a part of kind " + kind.word());
                    };
                } catch (CatalogueException wrong) {
                    fields.problem(kind.keys().get(0), wrong.message(), wrong.hint());
                    return null;
                }
            }
        }
        List<String> words = Keys.PARTS.stream().map(Kind::word).toList();
        problems.add(
                problems.place(keys.line(), keys.column(), number),
                "",
                "",
                "it is not said what this part is",
                "A part has one of the keys " + String.join(", ", words));
        return null;
    }

    private @Nullable Part hose(String id, Fields fields) {
        SizeChoice choice = fields.get(Keys.HOSE);
        Ends ends = fields.get(Keys.ENDS);
        Figure length = fields.get(Keys.LENGTH);
        if (choice == null) {
            return null;
        }
        HoseSize size = scope.catalogue().hose(choice.write());
        if (ends == null || length == null) {
            return null;
        }
        Figure bore = fields.get(Keys.BORE);
        if (bore != null) {
            size = size.withBore(bore);
        }
        return new Hose(
                id,
                size,
                length,
                end(size, ends.from(), fields),
                end(size, ends.to(), fields),
                route(fields.get(Keys.BENDS), size.minBendRadiusM(), id),
                lossFactor(fields),
                fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Figure lossFactor(Fields fields) {
        Factor factor = fields.get(Keys.LOSS_FACTOR);
        if (factor == null) {
            return null;
        }
        if (!factor.of().isEmpty()) {
            fields.problem(
                    Keys.LOSS_FACTOR,
                    "loss factor \"" + factor.write()
                            + "\": it is a multiple of a smooth straight bore, of nothing else",
                    "Write for example loss factor: 4.5 x measured");
            return null;
        }
        return factor.figure();
    }

    private @Nullable EndSize end(HoseSize hose, EndChoice choice, Fields fields) {
        if (choice.kind().equals("none")) {
            return null;
        }
        Catalogue catalogue = scope.catalogue();
        String build = fields.get(Keys.ENDS_KIND, "");
        EndSize end = catalogue.end(hose, choice.kind(), choice.angleDeg(), build, choice.detail());
        Figure bore = fields.get(Keys.END_BORE);
        return bore == null ? end : end.withNippleBore(bore);
    }

    private @Nullable Route route(@Nullable Bends bends, @Nullable Figure least, String id) {
        if (bends == null) {
            return null;
        }
        double radius = bends.radiusM();
        if (Double.isNaN(radius)) {
            if (least == null) {
                return null;
            }
            radius = least.value();
            assumptions.add(Notice.of(
                    "bend-radius", id, "bend radius not given: taken as the least the hose allows", least.source()));
        }
        return new Route(bends.count(), Math.toRadians(bends.angleDeg()), radius);
    }

    private @Nullable Part tube(String id, Fields fields) {
        TubeChoice choice = fields.get(Keys.TUBE);
        Figure length = fields.get(Keys.LENGTH);
        if (choice == null || length == null) {
            return null;
        }
        var size = scope.catalogue().tube(choice.material(), choice.outsideDiameterM(), choice.wallM());
        Bends bends = fields.get(Keys.BENDS);
        Route route = null;
        if (bends != null) {
            double radius = bends.radiusM();
            if (Double.isNaN(radius)) {
                radius = TUBE_BEND_RATIO * choice.outsideDiameterM();
                assumptions.add(Notice.of(
                        "bend-radius",
                        id,
                        "tube bends taken at a radius of 3 times the outside diameter",
                        Source.of("common practice of tube benders", Status.COMMON_PRACTICE)));
            }
            route = new Route(bends.count(), Math.toRadians(bends.angleDeg()), radius);
        }
        return new Tube(id, size, length, route, fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part adapter(String id, Fields fields) {
        AdapterChoice choice = fields.get(Keys.ADAPTER);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().adapter(choice.write()), fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part bulkhead(String id, Fields fields) {
        SizeChoice choice = fields.get(Keys.BULKHEAD);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().bulkhead(choice.write()), fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part union(String id, Fields fields) {
        SizeChoice choice = fields.get(Keys.UNION);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().union(choice.write()), fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Part restriction(String id, Fields fields) {
        Figure hole = fields.get(Keys.RESTRICTOR);
        Figure length = fields.get(Keys.RESTRICTOR_LENGTH);
        return hole == null || length == null
                ? null
                : new Restriction(id, hole, length, fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part valve(String id, Fields fields) {
        SizeChoice choice = fields.get(Keys.VALVE);
        if (choice == null) {
            return null;
        }
        String build = choice.family();
        if (!build.isEmpty() && !Valve.BUILDS.contains(build)) {
            String hint = Words.nearest(build, Valve.BUILDS)
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("Write one of " + String.join(", ", Valve.BUILDS) + ", or the size alone with its kv");
            fields.problem(Keys.VALVE, "no build of valve is called \"" + build + "\"", hint);
            return null;
        }
        Figure kv = fields.get(Keys.KV);
        Figure cv = fields.get(Keys.CV);
        if (kv != null && cv != null) {
            fields.problem(Keys.CV, "the valve has both kv and cv", "Give one of the two");
        }
        if (build.isEmpty() && !fields.has(Keys.KV) && !fields.has(Keys.CV)) {
            fields.problem(
                    Keys.VALVE,
                    "valve \"" + choice.write() + "\" does not say what it loses",
                    "Write its build, for example ball " + choice.size() + ", or add its kv or cv from the sheet");
            return null;
        }
        return new Valve(
                id,
                build,
                scope.catalogue().valve(choice.size()),
                kv == null && cv != null ? cv.times(Valve.KV_PER_CV) : kv,
                fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Part statedLaw(String id, Fields fields) {
        StatedLaw.Law law = fields.get(Keys.LAW);
        if (law == null) {
            return null;
        }
        List<Key<?>> needed = switch (law) {
            case CONSTANT_F -> List.of(Keys.LAW_F, Keys.LAW_LENGTH, Keys.LAW_BORE);
            case POWER -> List.of(Keys.LAW_R, Keys.LAW_N);
            case LAMINAR -> List.of(Keys.LAW_LENGTH, Keys.LAW_BORE);
            case K -> List.of(Keys.LAW_K, Keys.LAW_BORE);
            case PUMP_POLYNOMIAL -> List.of(Keys.LAW_HEADS);
            case PUMP_POWER -> List.of(Keys.LAW_POWER);
        };
        for (Key<?> key : List.<Key<?>>of(
                Keys.LAW_BORE,
                Keys.LAW_LENGTH,
                Keys.LAW_F,
                Keys.LAW_K,
                Keys.LAW_R,
                Keys.LAW_N,
                Keys.LAW_HEADS,
                Keys.LAW_POWER)) {
            if (needed.contains(key) && !fields.has(key)) {
                fields.problem(
                        key,
                        "a " + law.word() + " law needs " + key.name(),
                        "Give " + key.name() + ": " + key.meaning());
            } else if (!needed.contains(key) && fields.has(key)) {
                fields.problem(key, "a " + law.word() + " law has no " + key.name(), "Leave it out");
            }
        }
        if (needed.stream().anyMatch(key -> fields.get(key) == null)) {
            return null;
        }
        Key<Figure> coefficient = switch (law) {
            case K -> Keys.LAW_K;
            case POWER -> Keys.LAW_R;
            case PUMP_POWER -> Keys.LAW_POWER;
            default -> Keys.LAW_F;
        };
        List<Quantity> heads = fields.get(Keys.LAW_HEADS, List.of());
        return new StatedLaw(
                id,
                law,
                fields.get(Keys.LAW_BORE),
                fields.get(Keys.LAW_LENGTH),
                fields.get(coefficient),
                fields.get(Keys.LAW_N),
                heads.stream().map(Quantity::si).toList(),
                fields.get(Keys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Part through(String number, Fields fields) {
        String device = fields.get(Keys.THROUGH);
        return device == null ? null : new Through(number, device, fields.get(Keys.TEMPERATURE_OF_PART));
    }
}
