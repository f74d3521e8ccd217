package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * The thread of one size of one seat.
 *
 * @param seat        how it seals
 * @param size        size as written: {@code -6}, {@code 1/4}, {@code M22x1.5}
 * @param designation diameter and turns, for example {@code 9/16-18}; two seats with the same one screw together
 * @param majorM      outside diameter of the male thread, m; of taper pipe the pipe's
 * @param turnsPerM   turns per metre
 * @param taper       true for taper threads
 */
public record ThreadSize(Seat seat, String size, String designation, Figure majorM, double turnsPerM, boolean taper)
        implements Serializable {

    /** Turns differing less than this mesh for a turn or two; 18 and 19 to the inch differ 5 %. */
    private static final double SAME_TURNS = 0.01;

    /** Diameters differing less than this start to screw: 1/4 pipe (13.7 mm) enters 9/16-18 (14.3 mm). */
    private static final double NEAR_DIAMETER = 0.05;

    /**
     * Whether the two threads are one and the same.
     *
     * @param other the neighbour's
     * @return true when the designations agree
     */
    boolean same(ThreadSize other) {
        return designation.equals(other.designation);
    }

    /**
     * Whether the two threads start to screw though they are not the same.
     *
     * @param other the neighbour's
     * @return true when turns agree within 1 % and diameters within 5 %
     */
    boolean near(ThreadSize other) {
        double turns = Math.abs(turnsPerM / other.turnsPerM - 1);
        double diameter = Math.abs(majorM.value() / other.majorM.value() - 1);
        return turns <= SAME_TURNS && diameter <= NEAR_DIAMETER;
    }
}
