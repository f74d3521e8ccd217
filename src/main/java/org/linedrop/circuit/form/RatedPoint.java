package org.linedrop.circuit.form;

import java.io.Serializable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;

/**
 * A drop at a flow, with the viscosity of the fluid it was rated with where that is given.
 *
 * @param drop      pressure drop in Pa
 * @param flow      volume flow in m3/s, above zero
 * @param viscosity kinematic viscosity in m2/s, or null
 */
public record RatedPoint(Figure drop, Figure flow, @Nullable Figure viscosity) implements Serializable {
    private static final Pattern SHAPE = Pattern.compile("(.+?)\\s+at\\s+(.+?)(?:\\s+with\\s+(.+))?");

    /**
     * Reads a rated point.
     *
     * @param text for example {@code 55 kPa at 45 L/min with 14 cSt}
     * @return the point
     * @throws UnitException when the text is anything else
     */
    public static RatedPoint read(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            throw new UnitException("\"" + text + "\" is no rated point", "Write for example 6 kPa at 300 L/h");
        }
        Figure drop = Forms.figure(shape.group(1), Dimension.PRESSURE_DIFFERENCE);
        Figure flow = Forms.figure(shape.group(2), Dimension.VOLUME_FLOW);
        if (!(drop.value() >= 0 && flow.value() > 0)) {
            throw new UnitException(
                    "\"" + text + "\": a rated drop is 0 or more, a rated flow above 0",
                    "Write for example 6 kPa at 300 L/h");
        }
        String with = shape.group(3);
        return new RatedPoint(drop, flow, with == null ? null : Forms.figure(with, Dimension.KINEMATIC_VISCOSITY));
    }
}
