package org.linedrop.circuit;

import java.util.List;
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

/** Reads the parts of runs, one by one. */
final class PartReader {
    /** Centre-line radius of a tube bend over its outside diameter, where none is given. */
    private static final double TUBE_BEND_RATIO = 3;

    private final Scope scope;
    private final Problems problems;
    private final List<Notice> assumptions;

    PartReader(Scope scope, Problems problems, List<Notice> assumptions) {
        this.scope = scope;
        this.problems = problems;
        this.assumptions = assumptions;
    }

    /**
     * What was read of one line of a run.
     *
     * @param part       the part; null where it could not be read, which was complained of
     * @param endHeightM height of its end, null when not given
     */
    record Read(@Nullable Part part, @Nullable Figure endHeightM) {}

    /**
     * Reads one part.
     *
     * @param number its number, such as {@code feed 4}
     * @param keys   what is said of it
     */
    Read part(String number, Tree.Branch keys) {
        for (Kind kind : Keys.PARTS) {
            if (keys.get(kind.word()) != null) {
                Fields fields = new Fields(keys, number, kind, List.of(), scope, problems);
                return new Read(part(number, kind, fields), fields.get(RunKeys.ENDS_AT_HEIGHT));
            }
        }
        List<String> words = Keys.PARTS.stream().map(Kind::word).toList();
        problems.add(
                problems.place(keys.line(), keys.column(), number),
                "",
                "",
                "it is not said what this part is",
                keys.get("tee") != null || keys.get("Y block") != null
                        ? "A tee or Y block is a point: name it under points, end this run at it and start two others"
                        : "A part has one of the keys " + String.join(", ", words));
        return new Read(null, null);
    }

    private @Nullable Part part(String number, Kind kind, Fields fields) {
        String id = fields.get(RunKeys.NAME, number);
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

    private @Nullable Part hose(String id, Fields fields) {
        SizeChoice choice = fields.get(RunKeys.HOSE);
        Ends ends = fields.get(RunKeys.ENDS);
        Figure length = fields.get(RunKeys.LENGTH);
        if (choice == null) {
            return null;
        }
        HoseSize size = scope.catalogue().hose(choice.write());
        if (ends == null || length == null) {
            return null;
        }
        Figure bore = fields.get(RunKeys.BORE);
        if (bore != null) {
            size = size.withBore(bore);
        }
        return new Hose(
                id,
                size,
                length,
                end(size, ends.from(), fields),
                end(size, ends.to(), fields),
                route(fields.get(RunKeys.BENDS), size.minBendRadiusM(), id),
                lossFactor(fields),
                fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Figure lossFactor(Fields fields) {
        Factor factor = fields.get(RunKeys.LOSS_FACTOR);
        if (factor == null) {
            return null;
        }
        if (!factor.of().isEmpty()) {
            fields.problem(
                    RunKeys.LOSS_FACTOR,
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
        String build = fields.get(RunKeys.ENDS_KIND, "");
        EndSize end = catalogue.end(hose, choice.kind(), choice.angleDeg(), build, choice.detail());
        Figure bore = fields.get(RunKeys.END_BORE);
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
        TubeChoice choice = fields.get(RunKeys.TUBE);
        Figure length = fields.get(RunKeys.LENGTH);
        if (choice == null || length == null) {
            return null;
        }
        var size = scope.catalogue().tube(choice.material(), choice.outsideDiameterM(), choice.wallM());
        Bends bends = fields.get(RunKeys.BENDS);
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
        return new Tube(id, size, length, route, fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part adapter(String id, Fields fields) {
        AdapterChoice choice = fields.get(RunKeys.ADAPTER);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().adapter(choice.write()), fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part bulkhead(String id, Fields fields) {
        SizeChoice choice = fields.get(RunKeys.BULKHEAD);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().bulkhead(choice.write()), fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part union(String id, Fields fields) {
        SizeChoice choice = fields.get(RunKeys.UNION);
        return choice == null
                ? null
                : new Adapter(id, scope.catalogue().union(choice.write()), fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Part restriction(String id, Fields fields) {
        Figure hole = fields.get(RunKeys.RESTRICTOR);
        Figure length = fields.get(RunKeys.RESTRICTOR_LENGTH);
        return hole == null || length == null
                ? null
                : new Restriction(id, hole, length, fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private @Nullable Part valve(String id, Fields fields) {
        SizeChoice choice = fields.get(RunKeys.VALVE);
        if (choice == null) {
            return null;
        }
        String build = choice.family();
        if (!build.isEmpty() && !Valve.BUILDS.contains(build)) {
            String hint = Words.nearest(build, Valve.BUILDS)
                    .map(near -> "Did you mean " + near + "?")
                    .orElse("Write one of " + String.join(", ", Valve.BUILDS) + ", or the size alone with its kv");
            fields.problem(RunKeys.VALVE, "no build of valve is called \"" + build + "\"", hint);
            return null;
        }
        Figure kv = fields.get(RunKeys.KV);
        Figure cv = fields.get(RunKeys.CV);
        if (kv != null && cv != null) {
            fields.problem(RunKeys.CV, "the valve has both kv and cv", "Give one of the two");
        }
        if (build.isEmpty() && !fields.has(RunKeys.KV) && !fields.has(RunKeys.CV)) {
            fields.problem(
                    RunKeys.VALVE,
                    "valve \"" + choice.write() + "\" does not say what it loses",
                    "Write its build, for example ball " + choice.size() + ", or add its kv or cv from the sheet");
            return null;
        }
        return new Valve(
                id,
                build,
                scope.catalogue().valve(choice.size()),
                kv == null && cv != null ? cv.times(Valve.KV_PER_CV) : kv,
                fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    private static @Nullable Part statedLaw(String id, Fields fields) {
        StatedLaw.Law law = fields.get(RunKeys.LAW);
        if (law == null) {
            return null;
        }
        List<Key<?>> needed = switch (law) {
            case CONSTANT_F -> List.of(RunKeys.LAW_F, RunKeys.LAW_LENGTH, RunKeys.LAW_BORE);
            case POWER -> List.of(RunKeys.LAW_R, RunKeys.LAW_N);
            case LAMINAR -> List.of(RunKeys.LAW_LENGTH, RunKeys.LAW_BORE);
            case K -> List.of(RunKeys.LAW_K, RunKeys.LAW_BORE);
            case PUMP_POLYNOMIAL -> List.of(RunKeys.LAW_HEADS);
            case PUMP_POWER -> List.of(RunKeys.LAW_POWER);
        };
        for (Key<?> key : List.<Key<?>>of(
                RunKeys.LAW_BORE,
                RunKeys.LAW_LENGTH,
                RunKeys.LAW_F,
                RunKeys.LAW_K,
                RunKeys.LAW_R,
                RunKeys.LAW_N,
                RunKeys.LAW_HEADS,
                RunKeys.LAW_POWER)) {
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
        if (isNothing(law, fields)) {
            return null;
        }
        Key<Figure> coefficient = switch (law) {
            case K -> RunKeys.LAW_K;
            case POWER -> RunKeys.LAW_R;
            case PUMP_POWER -> RunKeys.LAW_POWER;
            default -> RunKeys.LAW_F;
        };
        List<Quantity> heads = fields.get(RunKeys.LAW_HEADS, List.of());
        return new StatedLaw(
                id,
                law,
                fields.get(RunKeys.LAW_BORE),
                fields.get(RunKeys.LAW_LENGTH),
                fields.get(coefficient),
                fields.get(RunKeys.LAW_N),
                heads.stream().map(Quantity::si).toList(),
                fields.get(RunKeys.TEMPERATURE_OF_PART));
    }

    /** Whether a law loses or adds nothing at any flow: a run of it alone would have no flow that is the right one. */
    private static boolean isNothing(StatedLaw.Law law, Fields fields) {
        Key<Figure> size = switch (law) {
            case K -> RunKeys.LAW_K;
            case POWER -> RunKeys.LAW_R;
            case CONSTANT_F, LAMINAR -> RunKeys.LAW_LENGTH;
            case PUMP_POWER -> RunKeys.LAW_POWER;
            case PUMP_POLYNOMIAL -> null;
        };
        Figure figure = size == null ? null : fields.get(size);
        if (size == null || figure == null || figure.value() != 0) {
            return false;
        }
        fields.problem(
                size,
                "a " + law.word() + " law needs " + size.name() + " above 0",
                law == StatedLaw.Law.PUMP_POWER
                        ? "Leave the pump out: it adds nothing"
                        : "Leave the part out: it loses nothing");
        return true;
    }

    private static @Nullable Part through(String number, Fields fields) {
        String device = fields.get(RunKeys.THROUGH);
        return device == null ? null : new Through(number, device, fields.get(RunKeys.TEMPERATURE_OF_PART));
    }
}
