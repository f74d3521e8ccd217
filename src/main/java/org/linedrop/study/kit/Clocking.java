package org.linedrop.study.kit;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Position;
import org.linedrop.fact.Figure;

/**
 * The angle between the two bent ends of a hose (JOB E18, after SAE J517): looking along the hose with the near end
 * hanging straight down, at 6 o'clock, the far end stands so far counter-clockwise from it. It is the same from
 * whichever end one looks.
 *
 * @param angleRad  0 up to a whole turn, rad; NaN when nothing decides it or where there are not two bent ends
 * @param tolerance how far it may be off, rad each way; null where there are not two bent ends
 * @param missing   what is missing for it, empty when nothing is
 * @param remark    what does not fit the ends, empty when all does
 */
public record Clocking(double angleRad, @Nullable Figure tolerance, String missing, String remark)
        implements Serializable {
    static final Clocking NONE = new Clocking(Double.NaN, null, "", "");

    /** Where a way-point turns less than this, one cannot say to which side. */
    private static final double LEAST_TURN_RAD = Math.toRadians(8);

    /** An end that turns by so much else than its way-point is drawn wrong or is another end. */
    private static final double WRONG_TURN_RAD = Math.toRadians(15);

    /**
     * Whether there are two bent ends.
     *
     * @return true when an angle is wanted
     */
    public boolean wanted() {
        return tolerance != null;
    }

    static boolean bent(@Nullable EndSize end) {
        return end != null && end.angleRad() > 0;
    }

    /**
     * From the places a hose passes: the port, the corner of the near end, corners of the hose, the corner of the far
     * end, the other port. Between its corners the hose is laid without twist.
     */
    static Clocking along(List<Position> places, EndSize near, EndSize far, Figure tolerance) {
        int last = places.size() - 1;
        if (last < 3) {
            return new Clocking(
                    Double.NaN,
                    tolerance,
                    "no way-points at its two bent ends; write via: with the corner of each bent end, in flow order",
                    "");
        }
        for (int i = 0; i < last; i++) {
            if (!(places.get(i).distanceM(places.get(i + 1)) > 0)) {
                return new Clocking(
                        Double.NaN, tolerance, "two of its places are the same; give each its own place", "");
            }
        }
        Arrow axis = Arrow.between(places.get(1), places.get(2));
        Arrow nearEnd = Arrow.between(places.get(1), places.get(0));
        double nearTurn = Arrow.between(places.get(0), places.get(1)).angleRad(axis);
        for (int i = 2; i < last - 1; i++) {
            Arrow next = Arrow.between(places.get(i), places.get(i + 1));
            if (axis.angleRad(next) > Math.PI - 1e-6) {
                return new Clocking(Double.NaN, tolerance, "its way-points turn straight back; give the corners", "");
            }
            nearEnd = nearEnd.carried(axis, next);
            axis = next;
        }
        Arrow farEnd = Arrow.between(places.get(last - 1), places.get(last));
        double farTurn = axis.angleRad(farEnd);
        if (!sideways(nearTurn) || !sideways(farTurn)) {
            return new Clocking(
                    Double.NaN,
                    tolerance,
                    "its way-points run straight on (or straight back) at a bent end, so they do not say to which side it"
                            + " turns",
                    "");
        }
        return new Clocking(
                turned(nearEnd, farEnd, axis), tolerance, "", remark(near, nearTurn) + remark(far, farTurn));
    }

    private static boolean sideways(double turnRad) {
        return turnRad > LEAST_TURN_RAD && turnRad < Math.PI - LEAST_TURN_RAD;
    }

    /** Counter-clockwise for who looks along the axis: the axis points away from him. */
    private static double turned(Arrow near, Arrow far, Arrow axis) {
        Arrow a = near.across(axis);
        Arrow b = far.across(axis);
        double angle = Math.atan2(-a.cross(b).dot(axis), a.dot(b));
        double positive = angle < 0 ? angle + 2 * Math.PI : angle;
        // rounding must not make a whole turn of none
        return positive > 2 * Math.PI - 1e-9 ? 0 : positive;
    }

    private static String remark(EndSize end, double turnRad) {
        if (Math.abs(end.angleRad() - turnRad) <= WRONG_TURN_RAD) {
            return "";
        }
        return "the way-points turn by " + Math.round(Math.toDegrees(turnRad)) + " degrees where the " + end.text()
                + " sits. ";
    }
}
