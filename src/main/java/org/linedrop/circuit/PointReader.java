package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.JunctionSize;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;

/** Reads points. */
final class PointReader {
    private static final String VESSEL = "vessel";
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
                        fields.get(PointKeys.DEPTH, ZERO),
                        fields.get(PointKeys.CAP, ZERO),
                        fields.get(PointKeys.VOLUME));
            case "held" -> {
                if (fields.has(PointKeys.HELD_PRESSURE) == fields.has(PointKeys.HELD_HEAD)) {
                    fields.problem(
                            PointKeys.HELD_PRESSURE,
                            "a held point needs its pressure" + (fields.has(PointKeys.HELD_HEAD) ? " once" : ""),
                            "Write for example pressure: 400 kPa, or head: 30 m");
                    yield null;
                }
                yield new Held(id, position, fields.get(PointKeys.HELD_PRESSURE), fields.get(PointKeys.HELD_HEAD));
            }
            case "draw" -> {
                Demand takes = takes(id, fields);
                yield takes == null
                        ? null
                        : new Draw(
                                id,
                                position,
                                takes,
                                fields.get(PointKeys.DRAW_LAW, ""),
                                fields.get(PointKeys.GAUGE_BORE));
            }
            case Junction.TEE -> junction(id, position, fields.get(PointKeys.TEE_SIZE));
            case Junction.Y_BLOCK -> junction(id, position, fields.get(PointKeys.Y_SIZE));
            case "joint" -> new Joint(id, position, fields.get(PointKeys.GAUGE_BORE));
            default -> throw new IllegalStateException("no reader for a point of kind " + kind.word());
        };
    }

    private static @Nullable Point junction(String id, @Nullable Position position, @Nullable JunctionSize size) {
        return size == null ? null : new Junction(id, position, size);
    }

    /** The place of an element; null when it has no height. */
    static @Nullable Position position(Fields fields) {
        Figure height = fields.get(PointKeys.HEIGHT);
        return height == null
                ? null
                : new Position(
                        fields.get(PointKeys.AHEAD, ZERO).value(),
                        fields.get(PointKeys.LEFT, ZERO).value(),
                        height.value());
    }

    private static @Nullable Position returnPosition(Fields fields, @Nullable Position outlet) {
        Figure height = fields.get(PointKeys.RETURN_HEIGHT);
        return outlet == null || height == null
                ? outlet
                : new Position(outlet.aheadM(), outlet.leftM(), height.value());
    }

    static Double gaugeBore(String text) {
        return text.equals(VESSEL)
                ? Double.POSITIVE_INFINITY
                : Units.read(text, Dimension.LENGTH).si();
    }

    static String gaugeBoreText(Double boreM) {
        return Double.isInfinite(boreM) ? VESSEL : Units.write(boreM, Units.metric(boreM, Dimension.LENGTH));
    }

    private static @Nullable Demand takes(String id, Fields fields) {
        Demand takes = fields.get(PointKeys.TAKES);
        if (takes == null) {
            return null;
        }
        Demands.question(fields, takes, id);
        Figure duty = fields.get(PointKeys.DUTY);
        if (duty != null) {
            if (!(takes instanceof Demand.AtPressure rated)) {
                fields.problem(
                        PointKeys.DUTY,
                        "a duty belongs to injectors rated at a pressure",
                        "Write takes: 1600 L/h at 300 kPa over manifold, with law: jet, or leave the duty out");
                return null;
            }
            Figure flow = rated.flowM3PerS();
            takes = new Demand.AtPressure(
                    new Figure(
                            flow.low() * duty.low(),
                            flow.value() * duty.value(),
                            flow.high() * duty.high(),
                            flow.source()),
                    rated.pressurePa(),
                    rated.viscosityM2PerS(),
                    rated.over());
        }
        if (takes instanceof Demand.AtPressure && !fields.has(PointKeys.DRAW_LAW)) {
            fields.problem(
                    PointKeys.TAKES,
                    "takes \"" + fields.text(PointKeys.TAKES) + "\": how does it rise with pressure?",
                    "Add law: bearings, or law: jet");
        }
        return takes;
    }
}
