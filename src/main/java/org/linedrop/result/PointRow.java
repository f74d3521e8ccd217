package org.linedrop.result;

import java.io.Serializable;

/**
 * Pressures at one point.
 *
 * @param id                 its name
 * @param kind               tank, held, draw, joint ...
 * @param totalPressurePa    gauge total pressure
 * @param staticPressurePa   gauge static pressure: what a gauge reads in the bore
 * @param staticBoreM        that bore; infinite in a vessel where the fluid stands still
 * @param absolutePressurePa absolute static pressure
 * @param netInflowKgPerS    what the runs bring to it less what they take: a draw's take, a tank's gain
 */
public record PointRow(
        String id,
        String kind,
        double totalPressurePa,
        double staticPressurePa,
        double staticBoreM,
        double absolutePressurePa,
        double netInflowKgPerS)
        implements Serializable {}
