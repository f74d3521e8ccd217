package org.linedrop.solver;

import java.io.Serializable;
import java.util.List;
import org.linedrop.fact.Inner;

/**
 * What limits the flow into or out of a set of points.
 *
 * @param points      the points behind the cut, by number
 * @param branches    the limited branches that join them to the rest, by number; empty when nothing does
 * @param inward      true when flow has to come in, false when it has to get out
 * @param neededKgPerS mass flow that has to pass, above 0
 * @param passesKgPerS mass flow the branches can pass
 */
@Inner
public record Cut(
        List<Integer> points, List<Integer> branches, boolean inward, double neededKgPerS, double passesKgPerS)
        implements Serializable {

    /** Copies the lists. */
    public Cut {
        points = List.copyOf(points);
        branches = List.copyOf(branches);
    }
}
