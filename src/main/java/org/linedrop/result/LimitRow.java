package org.linedrop.result;

import java.io.Serializable;
import org.linedrop.circuit.Limit;

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
        String reason)
        implements Serializable {}
