package org.linedrop.study.kit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * One hose to make up.
 *
 * @param circuit    title of its circuit
 * @param part       its name in the circuit
 * @param hose       family and size
 * @param fromEnd    its end at the start of the run, {@code none} for a bare piece
 * @param toEnd      its other end
 * @param overallM   overall length, seat to seat, elbows to their centre line, m; as the file gives it
 * @param tolerance  how far that may be off, m each way
 * @param pathM      length of its path from its way-points, m; NaN when they do not decide it
 * @param cutM       length to cut, m; NaN when the cut-off of an end is not known
 * @param cutTolerance how far the cut may be off, m each way; null when there is no cut length
 * @param cutFrom    where its cut-offs are from, or which are missing
 * @param clocking   the angle between its ends
 * @param bend       its bends
 */
public record KitHose(
        String circuit,
        String part,
        String hose,
        String fromEnd,
        String toEnd,
        double overallM,
        Figure tolerance,
        double pathM,
        double cutM,
        @Nullable Figure cutTolerance,
        String cutFrom,
        Clocking clocking,
        BendCheck bend)
        implements Serializable {

    /**
     * What its overall length has over its path.
     *
     * @return share of the path, NaN when the path is not known
     */
    public double slackShare() {
        return overallM / pathM - 1;
    }
}
