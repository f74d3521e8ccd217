package org.linedrop.circuit;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Forms;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** Reads points. */
final class PointReader {
    /** More than any engine on wheels burns: 2000 hp at 0.85 lb/hp/h of E85 is some 980 L/h. */
    private static final double MOST_BELIEVED_M3_PER_S = 5000 / 3.6e6;

    private static final Figure ZERO = Figure.exact(0, Source.of("default", Status.GIVEN));

    private PointReader() {}

    static @Nullable Point point(String id, Kind kind, Fields fields, Problems problems) {
        Position position = position(fields);
        return switch (kind.word()) {
            case "tank" ->
                new Tank(
                        id,
                        position,
                        returnPosition(fields, position),
                        fields.get(Keys.DEPTH, ZERO),
                        fields.get(Keys.CAP, ZERO));
            case "held" -> {
                if (fields.has(Keys.HELD_PRESSURE) == fields.has(Keys.HELD_HEAD)) {
                    fields.problem(
                            Keys.HELD_PRESSURE,
                            "a held point needs its pressure" + (fields.has(Keys.HELD_HEAD) ? " once" : ""),
                            "Write for example pressure: 400 kPa, or head: 30 m");
                    yield null;
                }
                yield new Held(id, position, fields.get(Keys.HELD_PRESSURE), fields.get(Keys.HELD_HEAD));
            }
            case "draw" -> {
                Demand takes = takes(fields);
                yield takes == null ? null : new Draw(id, position, takes, gaugeBore(fields));
            }
            case "joint" -> new Joint(id, position, gaugeBore(fields));
            default -> throw new IllegalStateException("no reader for a point of kind " + kind.word());
        };
    }

    /** The place of an element; null when it has no height. */
    static @Nullable Position position(Fields fields) {
        Figure height = fields.get(Keys.HEIGHT);
        return height == null
                ? null
                : new Position(
                        fields.get(Keys.AHEAD, ZERO).value(),
                        fields.get(Keys.LEFT, ZERO).value(),
                        height.value());
    }

    private static @Nullable Position returnPosition(Fields fields, @Nullable Position outlet) {
        Figure height = fields.get(Keys.RETURN_HEIGHT);
        return outlet == null || height == null
                ? outlet
                : new Position(outlet.aheadM(), outlet.leftM(), height.value());
    }

    private static @Nullable Double gaugeBore(Fields fields) {
        String text = fields.get(Keys.GAUGE_BORE);
        if (text == null) {
            return null;
        }
        if (text.equals("vessel")) {
            return Double.POSITIVE_INFINITY;
        }
        try {
            return Units.read(text, Dimension.LENGTH).si();
        } catch (UnitException wrong) {
            fields.problem(Keys.GAUGE_BORE, "bore " + wrong.message(), wrong.hint());
            return null;
        }
    }

    private static @Nullable Demand takes(Fields fields) {
        String text = fields.get(Keys.TAKES);
        if (text == null) {
            return null;
        }
        try {
            if (text.endsWith("of engine")) {
                double share = Units.read(
                                text.substring(0, text.length() - "of engine".length())
                                        .strip(),
                                Dimension.RATIO)
                        .si();
                if (!(share >= 0 && share <= 1)) {
                    fields.problem(Keys.TAKES, "takes \"" + text + "\" is no share", "Write 0 % to 100 % of engine");
                    return null;
                }
                return new Demand.OfEngine(share);
            }
            boolean really = text.endsWith(" really");
            String plain = really ? text.substring(0, text.length() - " really".length()) : text;
            if (KeyForms.isMass(plain)) {
                return new Demand.ByMass(Forms.figure(plain, Dimension.MASS_FLOW));
            }
            Figure flow = Forms.figure(plain, Dimension.VOLUME_FLOW, Dimension.MASS_FLOW);
            if (flow.value() > MOST_BELIEVED_M3_PER_S && !really) {
                fields.problem(
                        Keys.TAKES,
                        String.format(
                                Locale.ROOT,
                                "takes %s = %s, more than a 2000 hp engine burns on E85 several times over",
                                text,
                                Units.fixed(flow.value(), Units.unit("L/h"), 0) + " L/h"),
                        "Did you mean L/h? If it is so, write " + text + " really");
            }
            return new Demand.ByVolume(flow);
        } catch (UnitException wrong) {
            fields.problem(Keys.TAKES, "takes " + wrong.message(), wrong.hint());
            return null;
        }
    }
}
