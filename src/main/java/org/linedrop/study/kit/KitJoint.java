package org.linedrop.study.kit;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.Gender;
import org.linedrop.catalogue.Seat;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Fitted;
import org.linedrop.circuit.Hose;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Through;

/**
 * One joint that can leak.
 *
 * @param circuit title of its circuit
 * @param run     name of its run
 * @param before  the part or port upstream
 * @param after   the part or port downstream
 * @param seat    how it seals; not stated where nobody said
 * @param size    its size as written, empty where nobody said
 * @param leaks   places where it can leak: 2 of a banjo, which has a washer on each side, else 1
 * @param stated  true when both sides are known; false where a port's connection is taken from what meets it
 */
public record KitJoint(
        String circuit, String run, String before, String after, Seat seat, String size, int leaks, boolean stated)
        implements Serializable {

    /**
     * Faces that seal against each other.
     *
     * @return two for each place where it can leak
     */
    public int faces() {
        return 2 * leaks;
    }

    static KitJoint of(Circuit circuit, Fitted.Joint joint) {
        Connection a = clamped(circuit, joint.before(), joint.a());
        Connection b = clamped(circuit, joint.after(), joint.b());
        Connection telling = telling(a, b);
        Seat seat = telling.seat();
        return new KitJoint(
                circuit.title(),
                joint.run(),
                name(joint.before(), joint),
                name(joint.after(), joint),
                seat,
                telling.size(),
                seat == Seat.BANJO ? 2 : 1,
                a.seat() != Seat.NOT_STATED && b.seat() != Seat.NOT_STATED);
    }

    /** Hose of a kind that has no screwed ends is pushed over what it meets and clamped, also as a bare piece. */
    static boolean clamped(Circuit circuit, @Nullable Part part) {
        return part instanceof Hose hose
                && circuit.catalogue().family(hose.size().family()).endBuild().equals("barb");
    }

    private static Connection clamped(Circuit circuit, @Nullable Part part, Connection side) {
        if (side.seat() == Seat.NOT_STATED && part instanceof Hose hose && clamped(circuit, part)) {
            return new Connection(
                    Seat.BARB, Gender.FEMALE, hose.size().sizeText().replace(" in", ""), null, side.text(), false);
        }
        return side;
    }

    /** What seals is said by the banjo, by the hose on its barb or bead, by the thread that goes in; else by whoever says. */
    private static Connection telling(Connection a, Connection b) {
        if (a.seat() == Seat.NOT_STATED) {
            return b;
        }
        if (b.seat() == Seat.NOT_STATED) {
            return a;
        }
        if (a.seat() == Seat.BANJO || a.seat() == Seat.BARB) {
            return a;
        }
        if (b.seat() == Seat.BANJO || b.seat() == Seat.BARB) {
            return b;
        }
        return b.gender() == Gender.MALE ? b : a;
    }

    private static String name(@Nullable Part part, Fitted.Joint joint) {
        if (part != null) {
            return part instanceof Through through ? through.device() : part.id();
        }
        return joint.port() == null ? "" : joint.port().text();
    }
}
