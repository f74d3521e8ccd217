package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.circuit.form.Span;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Place;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.fluid.Fluid;

/** Reads the words of a circuit into data and lists everything that is wrong with them. */
final class CircuitReader {
    /** What people write that is no kind here, and what to write instead; by element and word. */
    private static final Map<String, String> ELSEWHERE = Map.of(
            "point gauge",
            "A gauge takes no flow: write kind: joint where two runs meet there; a tee with a branch that leads nowhere is"
                    + " a joint too. linedrop gauges says what it should read",
            "point rail",
            "Where fuel is taken write {kind: draw, takes: 100 % of engine}; a rail that flow goes through stands under"
                    + " devices",
            "point engine",
            "Write {kind: draw, takes: 100 % of engine}",
            "point pump",
            "A pump stands under devices, and in a run as - {through: pump}",
            "point filter",
            "A filter stands under devices, and in a run as - {through: filter}",
            "device regulator",
            "Write bypass regulator where it spills the rest back to the tank, dead-head regulator where it only shuts",
            "device tee",
            "A tee stands under points, and runs start and end at its run and its branch",
            "device gauge",
            "A gauge takes no flow: leave it out, or make its place a point of kind joint",
            "device restrictor",
            "A restrictor is a part of a run: - {restrictor: 1.5 mm}");

    private static final Source DEFAULT = Source.of("default", Status.GIVEN);
    static final Pattern NAME_LETTERS = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} /-]*");

    private final Tree.Branch file;
    private final Problems problems;
    private final Scope scope;
    private final Map<String, Tree.Entry> ids = new LinkedHashMap<>();
    private final List<Notice> assumptions = new ArrayList<>();
    private final JointCheck joints;
    private final FluidReader fluids;

    CircuitReader(Tree.Branch file, Catalogue catalogue, Problems problems) {
        this.file = file;
        this.problems = problems;
        String service = file.get(FileKeys.SERVICE.name()) instanceof Tree.Text text ? text.text() : "";
        boolean otherFluid = Arrays.stream(Service.values())
                .anyMatch(known -> !known.fuel() && known.word().equals(service));
        this.fluids = new FluidReader(problems);
        Map<String, Fluid> own = fluids.read(file.get(FluidReader.SECTION));
        this.scope = new Scope(catalogue, !otherFluid, own, ratedLiquid(file, own, !otherFluid));
        this.joints = new JointCheck(catalogue);
    }

    private static boolean ratedLiquid(Tree.Branch file, Map<String, Fluid> own, boolean mayBeFuel) {
        try {
            return file.get(FileKeys.FLUID.name()) instanceof Tree.Text text
                    && RatedLiquid.needed(
                            FileKeys.FLUID
                                    .form()
                                    .read(text.text(), new Scope(Catalogue.standard(), mayBeFuel, own, false)),
                            mayBeFuel);
        } catch (Key.FormException unknown) {
            return false; // complained of where the key is read
        }
    }

    /** The circuit, or null where problems were found. */
    @Nullable Circuit read(Circuit.Said said, Joints kept) {
        Kind top = new Kind("circuit file", "the whole file", Keys.TOP);
        Fields fields = new Fields(file, "", top, Keys.SECTIONS, scope, problems);
        Engine engine = engine();
        List<Point> points = points();
        List<Device> devices = devices(points, new DeviceReader(scope, problems, assumptions, fields, engine));
        List<Run> runs = new RunReader(scope, problems, ids, assumptions, joints).runs(branch("runs"));
        List<Limit> limits =
                new ArrayList<>(new LimitReader(problems, ids).limits(branch("limits"), engine, assumptions));
        UsualLimits.add(fields.get(FileKeys.SERVICE), engine, file.get("limits"), points, devices, limits, assumptions);
        boolean engineNeeded =
                points.stream().anyMatch(p -> p instanceof Draw draw && draw.takes() instanceof Demand.OfEngine)
                        || devices.stream().anyMatch(CircuitReader::takesOfEngine);
        new ShapeCheck(problems, file, ids).check(points, devices, runs, engineNeeded, engine);
        if (fields.complete(top) && !fluids.broken(fields.text(FileKeys.FLUID).strip())) {
            temperatures(fields, runs);
        }
        if (kept == Joints.REFUSED) {
            joints.refuse(problems);
        }
        if (!problems.isEmpty() || !fields.complete(top)) {
            return null;
        }
        for (Run run : runs) {
            wayPoints(run, devices);
            for (Part part : run.parts()) {
                if (part instanceof Hose hose && hose.bends() == null) {
                    assume(
                            "straight",
                            hose.id(),
                            "hose taken as straight; bends cost 15-35 % more in fuel at the"
                                    + " tightest bend, up to twice in cold oil: write bends: 2 x 90 at 150 mm");
                }
            }
        }
        if (kept == Joints.NOTED) {
            assumptions.addAll(joints.notices());
        }
        assumptions.addAll(UserRows.notices(scope.catalogue(), runs));
        Notice ownFluid = fluids.notice(Objects.requireNonNull(fields.get(FileKeys.FLUID)));
        if (ownFluid != null) {
            assumptions.add(ownFluid);
        }
        return new Circuit(
                fields.get(FileKeys.TITLE, "untitled"),
                CaseMerge.thisCase(file),
                fields.get(FileKeys.SERVICE),
                surroundings(fields),
                engine,
                points,
                devices,
                runs,
                limits,
                assumptions,
                said);
    }

    /** A device with a place of its own in a run with way-points: the file does not say which comes first. */
    private void wayPoints(Run run, List<Device> devices) {
        for (Part part : run.parts()) {
            for (Device device : devices) {
                if (!run.via().isEmpty()
                        && part instanceof Through through
                        && through.device().equals(device.id())
                        && device.position() != null) {
                    assume(
                            "way-points",
                            device.id(),
                            "taken to sit between those way-points of " + run.id() + " that make the way shortest");
                }
            }
        }
    }

    private static boolean takesOfEngine(Device device) {
        return device instanceof Rail rail && rail.takes() instanceof Demand.OfEngine;
    }

    /** Refuses temperatures at which nothing is known of the fluid. */
    private void temperatures(Fields fields, List<Run> runs) {
        Fluid fluid = Objects.requireNonNull(fields.get(FileKeys.FLUID));
        refuse(fluid, Objects.requireNonNull(fields.get(FileKeys.TEMPERATURE)), fields.place(FileKeys.TEMPERATURE));
        for (Run run : runs) {
            Tree.Entry said = ids.get(run.id());
            int line = said == null ? 0 : said.line();
            refuse(fluid, run.temperatureK(), problems.place(line, 0, run.id()));
            for (Part part : run.parts()) {
                refuse(fluid, part.temperatureK(), problems.place(line, 0, part.id()));
            }
        }
    }

    private void refuse(Fluid fluid, @Nullable Figure temperature, Place place) {
        String refusal = temperature == null ? null : fluid.refusal(temperature.value());
        if (refusal != null) {
            problems.add(place, FileKeys.TEMPERATURE.name(), "", refusal, "");
        }
    }

    private Surroundings surroundings(Fields fields) {
        double gravity = value(fields.get(FileKeys.GRAVITY), Surroundings.STANDARD_GRAVITY_M_PER_S2);
        if (!fields.has(FileKeys.ALTITUDE)) {
            assume("altitude", "", "altitude taken as 0 m: air at 101.3 kPa");
        }
        Span transition = fields.get(FileKeys.TRANSITION);
        var motion = fields.get(FileKeys.MOTION);
        // on a slope the pull of the earth has a share along the vehicle: uphill it feels like a launch
        Figure grade = fields.get(FileKeys.GRADE);
        double slope = grade == null ? 0 : Math.atan(grade.value());
        double ahead = (motion == null ? 0 : motion.aheadMPerS2()) + gravity * Math.sin(slope);
        double left = motion == null ? 0 : motion.leftMPerS2();
        Figure temperature = fields.get(FileKeys.TEMPERATURE);
        var fluid = fields.get(FileKeys.FLUID);
        if (fluid == null || temperature == null) {
            throw new IllegalStateException("fluid and temperature are required keys");
        }
        return new Surroundings(
                fluid,
                temperature,
                value(fields.get(FileKeys.ALTITUDE), 0),
                ahead,
                left,
                gravity * Math.cos(slope),
                transition == null ? 2000 : transition.low(),
                transition == null ? 3000 : transition.high());
    }

    private static double value(@Nullable Figure figure, double other) {
        return figure == null ? other : figure.value();
    }

    private void assume(String id, String element, String text) {
        assumptions.add(Notice.of(id, element, text, DEFAULT));
    }

    private Tree.Branch branch(String section) {
        Tree said = file.get(section);
        if (said instanceof Tree.Branch branch) {
            return branch;
        }
        if (said != null) {
            problems.add(
                    problems.place(said.line(), said.column(), ""),
                    section,
                    "",
                    section + " takes named entries",
                    "Write one per line below it, each with its name, a colon and its keys");
        }
        return new Tree.Branch(List.of(), 0, 0);
    }

    private @Nullable Engine engine() {
        if (file.get("engine") == null) {
            return null;
        }
        Fields fields = new Fields(branch("engine"), "engine", FileKeys.ENGINE_KIND, List.of(), scope, problems);
        KeyForms.Flow flow = fields.get(FileKeys.ENGINE_FLOW);
        if (flow != null && fields.has(FileKeys.POWER)) {
            fields.problem(FileKeys.ENGINE_FLOW, "the engine has both power and flow", "Give one of the two");
        }
        if (fields.has(FileKeys.POWER) && !fields.has(FileKeys.BSFC)) {
            fields.problem(
                    FileKeys.POWER,
                    "power alone does not say how much fuel is burnt",
                    "Add bsfc: petrol 0.45-0.65, E85 0.6-0.85, methanol 1.0-1.2 lb/hp/h; where no point takes a share of"
                            + " the engine leave power out");
        }
        return new Engine(
                fields.get(FileKeys.POWER),
                fields.get(FileKeys.BSFC),
                flow != null && !flow.byMass() ? flow.figure() : null,
                flow != null && flow.byMass() ? flow.figure() : null,
                fields.get(FileKeys.MANIFOLD),
                fields.get(FileKeys.ENGINE_SPEED));
    }

    private List<Point> points() {
        List<Point> points = new ArrayList<>();
        List<Fields> read = new ArrayList<>();
        boolean heights = false;
        for (Tree.Entry entry : branch("points").entries()) {
            register(entry);
            Kind kind = kind(entry, Keys.POINTS, "point");
            if (kind == null) {
                continue;
            }
            Fields fields =
                    new Fields((Tree.Branch) entry.value(), entry.key(), kind, List.of("kind"), scope, problems);
            read.add(fields);
            heights |= fields.has(PointKeys.HEIGHT);
            Point point = PointReader.point(entry.key(), kind, fields, problems);
            if (point != null) {
                joints.point(point);
                points.add(point);
            }
        }
        for (Fields fields : read) {
            if (heights && !fields.has(PointKeys.HEIGHT)) {
                fields.problem(
                        PointKeys.HEIGHT,
                        "height is missing, and other points have one",
                        "Give it for all points or for none (none: lift is left out)");
            }
        }
        if (!heights && !read.isEmpty()) {
            assume("lift", "", "no heights given: lift left out");
        }
        return points;
    }

    private List<Device> devices(List<Point> points, DeviceReader reader) {
        boolean heights = points.stream().anyMatch(point -> point.position() != null);
        List<Device> devices = new ArrayList<>();
        for (Tree.Entry entry : branch("devices").entries()) {
            register(entry);
            Kind kind = kind(entry, Keys.DEVICES, "device");
            if (kind == null) {
                continue;
            }
            Fields fields =
                    new Fields((Tree.Branch) entry.value(), entry.key(), kind, List.of("kind"), scope, problems);
            joints.ports(entry.key(), fields.get(DeviceKeys.PORTS));
            if (heights && !Ports.ofDevice(kind.word()).isEmpty() && !fields.has(PointKeys.HEIGHT)) {
                fields.problem(
                        PointKeys.HEIGHT,
                        "height is missing, and points have one",
                        "Give it for all points and for devices with ports, or for none (none: lift is left out)");
            }
            Device device = reader.device(entry.key(), kind, fields);
            if (device != null) {
                devices.add(device);
            }
        }
        return devices;
    }

    /** Gives a name its owner; one namespace for points, devices, runs and named parts. */
    private void register(Tree.Entry entry) {
        register(entry, ids, problems);
    }

    static void register(Tree.Entry entry, Map<String, Tree.Entry> ids, Problems problems) {
        String id = entry.key();
        var place = problems.place(entry.line(), entry.column(), id);
        Tree.Entry before = ids.putIfAbsent(id, entry);
        if (before != null) {
            problems.add(
                    place,
                    "",
                    id,
                    "the name \"" + id + "\" is taken in line " + before.line(),
                    "Points, devices, runs and named parts need different names");
        }
        boolean topLevel = Keys.SECTIONS.contains(id)
                || Keys.TOP.stream().anyMatch(key -> key.name().equals(id));
        if (!NAME_LETTERS.matcher(id).matches() || topLevel || id.equals("like") || id.equals("none")) {
            problems.add(
                    place,
                    "",
                    id,
                    "\"" + id + "\" cannot be a name",
                    "Names are letters, digits, space, - and /, and not a key of the file itself");
        }
    }

    private @Nullable Kind kind(Tree.Entry entry, List<Kind> kinds, String what) {
        var place = problems.place(entry.line(), entry.column(), entry.key());
        List<String> words = kinds.stream().map(Kind::word).toList();
        if (!(entry.value() instanceof Tree.Branch branch) || !(branch.get("kind") instanceof Tree.Text word)) {
            problems.add(
                    place,
                    "kind",
                    "",
                    "it is not said what kind of " + what + " this is",
                    "Write for example {kind: " + words.get(0) + ", ...}; kinds are " + String.join(", ", words));
            return null;
        }
        for (Kind kind : kinds) {
            if (kind.word().equals(word.text())) {
                return kind;
            }
        }
        String elsewhere = ELSEWHERE.getOrDefault(what + " " + word.text(), "");
        String hint = !elsewhere.isEmpty()
                ? elsewhere
                : Words.nearest(word.text(), words)
                        .map(near -> "Did you mean " + near + "?")
                        .orElse("Kinds are " + String.join(", ", words));
        problems.add(
                problems.place(word.line(), word.column(), entry.key()),
                "kind",
                word.text(),
                "there is no kind of " + what + " \"" + word.text() + "\"",
                hint);
        return null;
    }
}
