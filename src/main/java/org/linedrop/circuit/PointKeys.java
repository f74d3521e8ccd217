package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;
import static org.linedrop.circuit.KeyForms.number;

import java.util.List;
import org.linedrop.catalogue.JunctionSize;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;

/** Keys of points and of the places of points, devices and way-points. */
final class PointKeys {
    private static final double NONE = Double.NEGATIVE_INFINITY;

    static final Key<Figure> HEIGHT = optional(
            "height",
            number(Dimension.LENGTH, "m", NONE, 10, "Heights are from one datum in the vehicle"),
            "height over the datum, for all points or for none");
    static final Key<Figure> AHEAD = optional(
            "ahead",
            number(Dimension.LENGTH, "m", NONE, 30, "Distances are from one datum in the vehicle"),
            "distance ahead of the datum, 0 when not given");
    static final Key<Figure> LEFT = optional(
            "left",
            number(Dimension.LENGTH, "m", NONE, 10, "Distances are from one datum in the vehicle"),
            "distance to the left of the datum, 0 when not given");
    /** Where something is. */
    static final List<Key<?>> PLACE = List.of(HEIGHT, AHEAD, LEFT);

    static final Key<Double> GAUGE_BORE = optional(
            "bore",
            KeyForms.form("14 mm", PointReader::gaugeBore, PointReader::gaugeBoreText),
            "bore in which a gauge sits, or vessel where the fluid stands still; the run end's when not given");
    static final Key<Figure> DEPTH = optional(
            "depth", number(Dimension.LENGTH, "m", 0, 3, "Is that mm?"), "height of the surface over the outlet");
    static final Key<Figure> RETURN_HEIGHT = optional(
            "return height",
            number(Dimension.LENGTH, "m", NONE, 10, "Heights are from one datum in the vehicle"),
            "height of the return port; the outlet's when not given");
    static final Key<Figure> DUTY = optional(
            "duty",
            number(Dimension.RATIO, "%", 0, 1, "Injectors are run to 80 or 85 %"),
            "share of the time that injectors are open, where what they take is rated fully open; 100 % when not given");
    static final Key<Figure> VOLUME = optional(
            "volume",
            number(Dimension.VOLUME, "L", 0, 2, "Is that litres?"),
            "what a surge or swirl pot holds; says how long it lasts when more leaves it than comes");
    static final Key<Figure> CAP = optional(
            "cap",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 500_000, "A cap holds 90 to 140 kPa"),
            "pressure over the surface where the tank is closed; 0 (vented) when not given");
    static final Key<Demand> TAKES = required(
            "takes",
            KeyForms.form("100 % of engine", Demands::read, Demands::write),
            "what the draw takes",
            "Write for example: takes: 113 L/h, takes: 50 % of engine");
    static final Key<String> DRAW_LAW = optional(
            "law",
            KeyForms.choice(List.of("bearings", "jet"), word -> word),
            "how a flow rated at a pressure rises with it");
    static final Key<Figure> HELD_PRESSURE = optional(
            "pressure",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 50e6, "Pressures are gauge"),
            "the pressure that something outside the circuit keeps");
    static final Key<Figure> HELD_HEAD = optional(
            "head",
            number(Dimension.LENGTH, "m", NONE, 1000, "A head is in metres of the fluid"),
            "the same in metres of the fluid, for textbook problems");
    static final Key<JunctionSize> TEE_SIZE = required(
            "size",
            KeyForms.of("-6", String::strip, (text, scope) -> scope.catalogue().tee(text)),
            "its size; -8 to -6 with a smaller branch",
            "Write for example size: -6, or size: -8 to -6 with a smaller branch");
    static final Key<JunctionSize> Y_SIZE = required(
            "size",
            KeyForms.of(
                    "-8 to -6",
                    String::strip,
                    (text, scope) -> scope.catalogue().yBlock(text)),
            "size of its common port, then of its legs",
            "Write for example size: -8 to -6");
    static final Kind WAY_POINT = new Kind("way-point", "a place a run passes", List.of(AHEAD, LEFT, HEIGHT));

    private PointKeys() {}
}
