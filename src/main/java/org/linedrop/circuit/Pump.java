package org.linedrop.circuit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A pump known by a table of pressure rise and flow.
 *
 * @param id       its name
 * @param position where it is, or null
 * @param curves   its tables as given, at least one
 * @param runsAt   what it runs at, in the unit of the curves' {@code at}; for volts this is at the pump
 * @param table    the table it runs on: the curve at {@code runsAt}, between curves by linear interpolation of the flow
 *                 at equal pressure, and beyond curves by speed by the affinity laws
 * @param straight whether the table is read by straight lines between its rows rather than by a monotone cubic
 * @param bound    whether it is known by one point alone, so that it gives at least what the table says
 */
public record Pump(
        String id,
        @Nullable Position position,
        List<Curve> curves,
        double runsAt,
        Curve table,
        boolean bound,
        boolean straight)
        implements Device {

    /** Word for tables read by a monotone cubic. */
    static final String SMOOTH = "smooth curve";
    /** Word for tables read by straight lines. */
    static final String STRAIGHT = "straight lines";

    /** Copies the curves. */
    public Pump {
        curves = List.copyOf(curves);
    }

    @Override
    public String kind() {
        return "pump";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.pump(this);
    }

    /**
     * One table of a pump.
     *
     * @param at        volts or revolutions per second
     * @param risePa    pressure rise, rising from row to row
     * @param flowM3PerS flow at that rise, falling from row to row
     */
    public record Curve(double at, List<Double> risePa, List<Double> flowM3PerS) implements Serializable {

        /** Copies the lists. */
        public Curve {
            risePa = List.copyOf(risePa);
            flowM3PerS = List.copyOf(flowM3PerS);
        }
    }
}
