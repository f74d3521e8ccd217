package org.linedrop.result;

import java.io.Serializable;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.units.Dimension;

/**
 * One limit judged in one case.
 *
 * @param limit      what was asked
 * @param verdict    what became of it
 * @param value      the figure reached at usual bores, SI; NaN when not judged
 * @param bound      the nearest bound, SI
 * @param unit       SI unit of value, bound and margins
 * @param margin     distance to the bound at usual bores, negative when broken; NaN when not judged
 * @param marginLow  the least margin over usual, smallest and largest bores
 * @param marginHigh the most
 * @param reason     why it was not judged, empty otherwise
 * @param state      the state of the device at usual bores, where the limit asks for one; else empty
 */
public record LimitRow(
        Limit limit,
        Verdict verdict,
        double value,
        double bound,
        String unit,
        double margin,
        double marginLow,
        double marginHigh,
        String reason,
        String state)
        implements Serializable {

    /**
     * What its value and margins measure. A limit on the state of a regulator is measured by the pressure that it throttles,
     * or lacks.
     *
     * @return the dimension
     */
    public Dimension dimension() {
        return ofState() ? Dimension.PRESSURE_DIFFERENCE : limit.bound().dimension();
    }

    /**
     * Whether the limit asks for a state rather than a figure.
     *
     * @return true for states
     */
    public boolean ofState() {
        return limit.bound().kind() == LimitText.Kind.STATE;
    }
}
