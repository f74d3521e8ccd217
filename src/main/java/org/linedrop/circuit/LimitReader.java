package org.linedrop.circuit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.circuit.form.Tree;
import org.linedrop.fact.Words;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/** Reads limits. */
final class LimitReader {
    /** Quantities of points that a limit may bound. */
    static final Map<String, Dimension> OF_POINTS = new LinkedHashMap<>();
    /** Quantities of devices that a limit may bound. */
    static final Map<String, Dimension> OF_DEVICES = new LinkedHashMap<>();

    static {
        OF_POINTS.put("pressure", Dimension.GAUGE_PRESSURE);
        OF_POINTS.put("pressure over manifold", Dimension.PRESSURE_DIFFERENCE);
        OF_POINTS.put("flow", Dimension.VOLUME_FLOW);
        OF_DEVICES.put("spare flow", Dimension.RATIO);
        OF_DEVICES.put("flow", Dimension.VOLUME_FLOW);
        OF_DEVICES.put("inlet vacuum", Dimension.PRESSURE_DIFFERENCE);
        OF_DEVICES.put("inlet margin", Dimension.PRESSURE_DIFFERENCE);
        OF_DEVICES.put("inlet pressure", Dimension.GAUGE_PRESSURE);
        OF_DEVICES.put("outlet pressure", Dimension.GAUGE_PRESSURE);
        OF_DEVICES.put("drop", Dimension.PRESSURE_DIFFERENCE);
    }

    private static final String OFF = "off because ";

    private final Problems problems;

    LimitReader(Problems problems) {
        this.problems = problems;
    }

    List<Limit> limits(
            Tree.Branch section, @Nullable Service service, Map<String, Tree.Entry> ids, List<Point> points) {
        List<Limit> limits = new ArrayList<>();
        for (Tree.Entry subject : section.entries()) {
            Map<String, Dimension> known = quantities(subject.key(), ids, points);
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
                limit(subject.key(), bound, known).ifPresent(limits::add);
            }
        }
        return limits;
    }

    private static @Nullable Map<String, Dimension> quantities(
            String subject, Map<String, Tree.Entry> ids, List<Point> points) {
        if (points.stream().anyMatch(point -> point.id().equals(subject))) {
            return OF_POINTS;
        }
        Tree.Entry owner = ids.get(subject);
        if (owner == null
                || !(owner.value() instanceof Tree.Branch branch)
                || !(branch.get("kind") instanceof Tree.Text kind)) {
            return null;
        }
        boolean point = Keys.POINTS.stream().anyMatch(k -> k.word().equals(kind.text()));
        return point ? OF_POINTS : OF_DEVICES;
    }

    private Optional<Limit> limit(String subject, Tree.Entry bound, Map<String, Dimension> known) {
        Dimension dimension = known.get(bound.key());
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
        if (text.text().startsWith(OFF)) {
            return Optional.empty();
        }
        try {
            return Optional.of(new Limit(subject, bound.key(), LimitText.read(text.text(), dimension), "this file"));
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

    private void problem(int line, int column, String path, String key, String message, String hint) {
        problems.add(problems.place(line, column, path), key, "", message, hint);
    }
}
