package org.linedrop.circuit;

import static org.linedrop.circuit.Key.optional;
import static org.linedrop.circuit.Key.required;
import static org.linedrop.circuit.KeyForms.number;

import java.util.List;
import org.linedrop.circuit.form.Motion;
import org.linedrop.circuit.form.Span;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Fluid;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/** Keys of the whole file that hold one value, and of the engine. */
final class FileKeys {
    static final Key<String> FORM = required(
            "linedrop",
            KeyForms.choice(List.of("1"), word -> word),
            "form of the file",
            "Write \"linedrop: 1\" as the first line");
    static final Key<String> TITLE = optional("title", KeyForms.words("Hill-climb V8"), "what the circuit is");
    static final Key<Service> SERVICE = optional(
            "service",
            KeyForms.choice(List.of(Service.values()), Service::word),
            "what kind of circuit; picks the usual limits");
    static final Key<Fluid> FLUID = required(
            "fluid", KeyForms.fluid(), "what flows", "Write for example: fluid: E85 summer, fluid: engine oil 15W-50");
    static final Key<Figure> TEMPERATURE = required(
            "temperature",
            number(Dimension.TEMPERATURE, "C", 173.15, 573.15, "Is that C or F?"),
            "of the fluid; decides the answer, so it has no default",
            "Fuel: 20 C spring, 40-50 C after a hot stop; oil: 110 C hot, 0 C start. It decides the answer, so there"
                    + " is no default");
    static final Key<String> THIS_CASE =
            optional("this case", KeyForms.words("full load"), "name of the file as written");
    static final Key<Figure> ALTITUDE = optional(
            "altitude",
            number(Dimension.LENGTH, "m", -500, 6000, "Altitude is over the sea"),
            "over the sea, 0 when not given");
    static final Key<Figure> GRAVITY = optional(
            "gravity",
            number(Dimension.ACCELERATION, "m/s2", 1, 11, "Textbooks use 9.8 to 9.81 m/s2"),
            "where a source has its own; 9.80665 m/s2 when not given");
    static final Key<Motion> MOTION =
            optional("motion", KeyForms.form("launch 0.9 g", Motion::read, Motion::write), "what the vehicle does");
    static final Key<Figure> GRADE = optional(
            "grade",
            number(Dimension.RATIO, "%", -1, 1, "A grade is rise over run: 20 % is 11 degrees"),
            "slope of the road, rise over run, uphill positive");
    static final Key<Span> TRANSITION = optional(
            "transition",
            KeyForms.form("2000 to 3000", FileKeys::transition, Span::write),
            "Reynolds numbers between which laminar flow turns turbulent; 2000 to 3000 when not given");
    static final Key<Figure> POWER =
            optional("power", number(Dimension.POWER, "kW", 0, 3e6, "Is that kW or W?"), "brake power of the engine");
    static final Key<Figure> BSFC = optional(
            "bsfc",
            number(Dimension.FUEL_PER_POWER, "lb/hp/h", 2e-8, 6e-7, "Petrol 0.45-0.65, E85 0.6-0.85, methanol 1.0-1.2"),
            "fuel mass per brake work");
    static final Key<KeyForms.Flow> ENGINE_FLOW = optional("flow", KeyForms.flow(), "what the engine burns");
    static final Key<Figure> MANIFOLD = optional(
            "manifold",
            number(Dimension.GAUGE_PRESSURE, "kPa", -101_325, 500_000, "Manifold pressure is gauge"),
            "gauge pressure in the manifold");
    static final Key<Figure> ENGINE_SPEED =
            optional("speed", number(Dimension.ROTATION, "rpm", 0, 500, "Crankshaft speed in rpm"), "crankshaft speed");
    static final Kind ENGINE_KIND =
            new Kind("engine", "what the engine asks", List.of(POWER, BSFC, ENGINE_FLOW, MANIFOLD, ENGINE_SPEED));

    /** Those of the whole file, in the order in which they are written. */
    static final List<Key<?>> ALL =
            List.of(FORM, TITLE, SERVICE, FLUID, TEMPERATURE, THIS_CASE, ALTITUDE, GRAVITY, MOTION, GRADE, TRANSITION);

    private FileKeys() {}

    /** Flow has been kept laminar to Re 100,000 in the most careful tests, and is never turbulent under some 1000. */
    private static Span transition(String text) {
        Span span = Span.read(text, Dimension.RATIO);
        if (!(span.low() >= 500 && span.high() <= 100_000)) {
            throw new UnitException(
                    "\"" + text.strip() + "\" is outside 500 to 100000", "Hose and tube turn between 2000 and 4000");
        }
        return span;
    }
}
