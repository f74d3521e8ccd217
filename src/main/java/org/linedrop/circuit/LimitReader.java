package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** Reads limits. */
final class LimitReader {
    /** Quantities of points that a limit may bound. */
    static final Map<String, Dimension> OF_POINTS;
    /** Quantities of devices that a limit may bound. */
    static final Map<String, Dimension> OF_DEVICES;

    static {
        Map<String, Dimension> points = new LinkedHashMap<>();
        Map<String, Dimension> devices = new LinkedHashMap<>();
        points.put("pressure", Dimension.GAUGE_PRESSURE);
        points.put("pressure over manifold", Dimension.PRESSURE_DIFFERENCE);
        points.put("flow", Dimension.VOLUME_FLOW);
        devices.put("spare flow", Dimension.RATIO);
        devices.put("flow", Dimension.VOLUME_FLOW);
        devices.put("inlet vacuum", Dimension.PRESSURE_DIFFERENCE);
        devices.put("inlet margin", Dimension.PRESSURE_DIFFERENCE);
        devices.put("inlet pressure", Dimension.GAUGE_PRESSURE);
        devices.put("outlet pressure", Dimension.GAUGE_PRESSURE);
        devices.put("drop", Dimension.PRESSURE_DIFFERENCE);
        OF_POINTS = Collections.unmodifiableMap(points);
        OF_DEVICES = Collections.unmodifiableMap(devices);
    }

    /** States of devices that a limit may ask for, by the word of the kind. */
    private static final Map<String, List<String>> STATES;

    static {
        Map<String, List<String>> states = new LinkedHashMap<>();
        states.put(Regulator.BYPASS, List.of("in control", "shut", "wide open"));
        states.put(Regulator.DEAD_HEAD, List.of("in control", "shut", "wide open"));
        states.put(OneWayValve.RELIEF, List.of("shut", "open"));
        states.put(OneWayValve.CHECK, List.of("shut", "open"));
        states.put(Thermostat.KIND, List.of("shut", "opening", "open"));
        STATES = Collections.unmodifiableMap(states);
    }

    /** Name of the limit on a device's state. */
    static final String STATE = "state";

    /** Beginning of a limit on the pressure between two places. */
    static final String OVER = "pressure over ";

    private final Problems problems;
    private final Map<String, Tree.Entry> ids;

    LimitReader(Problems problems, Map<String, Tree.Entry> ids) {
        this.problems = problems;
        this.ids = ids;
    }

    List<Limit> limits(Tree.Branch section, @Nullable Engine engine, List<Notice> assumptions) {
        List<Limit> limits = new ArrayList<>();
        for (Tree.Entry subject : section.entries()) {
            String known = kind(subject.key());
            if (known == null) {
                List<String> names = new ArrayList<>(ids.keySet());
                problem(
                        subject.line(),
                        subject.column(),
                        subject.key(),
                        "",
                        "no point or device \"" + subject.key() + "\" to limit",
                        Words.nearest(subject.key(), names)
                                .map(near -> "Did you mean " + near + "?")
                                .orElse("Limits are of points and devices"));
                continue;
            }
            if (!(subject.value() instanceof Tree.Branch bounds)) {
                problem(
                        subject.line(),
                        subject.column(),
                        subject.key(),
                        "",
                        "a limit names a quantity and a bound",
                        "Write for example " + subject.key() + ": {pressure: at least 375 kPa}");
                continue;
            }
            for (Tree.Entry bound : bounds.entries()) {
                limit(subject.key(), bound, known, engine, assumptions).ifPresent(limits::add);
            }
        }
        return limits;
    }

    /** The word of the kind of a point or device, null when there is none of that name. */
    private @Nullable String kind(String subject) {
        Tree.Entry owner = ids.get(subject);
        return owner != null && owner.value() instanceof Tree.Branch branch ? kind(branch) : null;
    }

    private static @Nullable String kind(Tree.Branch branch) {
        return branch.get("kind") instanceof Tree.Text kind ? kind.text() : null;
    }

    /** What may be limited of a kind, with its dimension; a state is no quantity. */
    static Map<String, Dimension> quantities(String kind) {
        if (Keys.POINTS.stream().anyMatch(k -> k.word().equals(kind))) {
            return OF_POINTS;
        }
        Map<String, Dimension> known = new LinkedHashMap<>(OF_DEVICES);
        if (kind.equals("rail")) {
            known.putAll(OF_POINTS);
        }
        if (STATES.containsKey(kind)) {
            known.put(STATE, Dimension.RATIO);
        }
        return known;
    }

    /** States of a kind of device that a limit may ask for. */
    static List<String> states(String kind) {
        return STATES.getOrDefault(kind, List.of());
    }

    /** A bound as Linedrop writes it; the text itself where it is none. */
    static String canonical(String kind, String quantity, String text) {
        Dimension dimension = quantities(kind)
                .getOrDefault(quantity, quantity.startsWith(OVER) ? Dimension.PRESSURE_DIFFERENCE : null);
        try {
            return dimension == null
                    ? text
                    : bound(kind, quantity, dimension, text).write();
        } catch (UnitException wrong) {
            return text;
        }
    }

    private static LimitText bound(String kind, String quantity, Dimension dimension, String text) {
        return quantity.equals(STATE) ? LimitText.readState(text, states(kind)) : LimitText.read(text, dimension);
    }

    private Optional<Limit> limit(
            String subject, Tree.Entry bound, String kind, @Nullable Engine engine, List<Notice> assumptions) {
        Map<String, Dimension> known = quantities(kind);
        Dimension dimension = known.get(bound.key());
        if (dimension == null && bound.key().startsWith(OVER) && known.containsKey("pressure")) {
            String other = kind(bound.key().substring(OVER.length()));
            dimension =
                    other != null && quantities(other).containsKey("pressure") ? Dimension.PRESSURE_DIFFERENCE : null;
        }
        if (dimension == null) {
            problem(
                    bound.line(),
                    bound.column(),
                    subject,
                    bound.key(),
                    "there is no limit on \"" + bound.key() + "\" here",
                    Words.nearest(bound.key(), known.keySet())
                            .map(near -> "Did you mean " + near + "?")
                            .orElse("Limits here: " + String.join(", ", known.keySet())));
            return Optional.empty();
        }
        if (!(bound.value() instanceof Tree.Text text)) {
            problem(
                    bound.line(),
                    bound.column(),
                    subject,
                    bound.key(),
                    "a limit takes one value",
                    "Write for example " + bound.key() + ": at least 375 kPa");
            return Optional.empty();
        }
        try {
            return limit(
                    subject,
                    bound.key(),
                    text.text(),
                    bound(kind, bound.key(), dimension, text.text()),
                    engine,
                    assumptions);
        } catch (UnitException wrong) {
            problem(
                    text.line(),
                    text.column(),
                    subject,
                    bound.key(),
                    bound.key() + " " + wrong.message(),
                    wrong.hint());
            return Optional.empty();
        }
    }

    private static Optional<Limit> limit(
            String subject,
            String quantity,
            String text,
            LimitText bound,
            @Nullable Engine engine,
            List<Notice> assumptions) {
        if (bound.kind() == LimitText.Kind.OFF) {
            assumptions.add(Notice.of(
                    "limit-off",
                    subject,
                    quantity + " has no limit here: off because " + bound.words(),
                    Source.of("circuit file", Status.GIVEN)));
            return Optional.empty();
        }
        if (!(bound.perRevPerS() > 0)) {
            return Optional.of(new Limit(subject, quantity, bound, "this file"));
        }
        Figure speed = engine == null ? null : engine.speedRevPerS();
        if (speed == null || !(speed.value() > 0)) {
            throw new UnitException("\"" + text + "\" needs the engine's speed", "Write engine: {speed: 6500 rpm}");
        }
        return Optional.of(new Limit(
                subject,
                quantity,
                bound.atSpeed(speed.value()),
                "this file, per " + Units.write(bound.perRevPerS(), Units.unit("rpm"))));
    }

    private void problem(int line, int column, String path, String key, String message, String hint) {
        problems.add(problems.place(line, column, path), key, "", message, hint);
    }
}
