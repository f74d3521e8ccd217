package org.linedrop.catalogue;

import org.linedrop.fact.Inner;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Whether two neighbouring connections mate and seal, and what to use instead. Pure functions of the two; thread sizes
 * come with the connections.
 */
@Inner
public final class Mating {
    private static final Source PRACTICE = Source.of("Custom of the trade", Status.COMMON_PRACTICE);

    /** Whatever is put between two parts makes one joint two and brings a joint of its own. */
    private static final int FACES_OF_AN_ADAPTER = 2;

    private Mating() {}

    /**
     * Looks at one joint.
     *
     * @param a the connection upstream, in flow order
     * @param b the connection downstream
     * @return what was found; the remedy's size names are in flow order
     */
    public static MatingResult between(Connection a, Connection b) {
        if (a.seat() == Seat.NOT_STATED || b.seat() == Seat.NOT_STATED) {
            return fine(MatingResult.Kind.NOT_CHECKED);
        }
        if (banjoInPort(a, b) || banjoInPort(b, a) || hoseOnTube(a, b) || hoseOnTube(b, a)) {
            return fine(MatingResult.Kind.SEALS);
        }
        return a.seat() == b.seat() ? sameSeat(a, b) : otherSeat(a, b);
    }

    private static boolean banjoInPort(Connection banjo, Connection port) {
        boolean hole = port.gender() == Gender.FEMALE || port.gender() == Gender.EITHER;
        return banjo.seat() == Seat.BANJO
                && port.seat() == Seat.METRIC
                && hole
                && port.size().startsWith(banjo.size() + "x");
    }

    /** A hose pushed over the bead of a hard line of its own size and clamped. */
    private static boolean hoseOnTube(Connection hose, Connection tube) {
        return hose.seat() == Seat.BARB
                && hose.gender() != Gender.MALE
                && tube.tube()
                && SizeText.dashNumber(hose.size()) == SizeText.dashNumber(tube.size());
    }

    private static MatingResult sameSeat(Connection a, Connection b) {
        if (!a.size().equals(b.size())) {
            Connection odd = b.tube() && !a.tube() ? b : a;
            Connection other = odd.equals(a) ? b : a;
            String sized = odd.tube() ? " flares to " : " is ";
            return fault(
                    MatingResult.Kind.SIZE_DIFFERS,
                    false,
                    odd.text() + sized + odd.sizeName() + ", its neighbour is " + other.sizeName(),
                    "an adapter \"" + a.sizeName() + " to " + b.sizeName() + "\" is missing");
        }
        if (a.gender().fits(b.gender())) {
            return fine(MatingResult.Kind.SEALS);
        }
        String both = " (" + a.text() + " and " + b.text() + ")";
        String size = a.sizeName();
        if (a.seat() == Seat.BARB && a.gender() != Gender.MALE) {
            return fault(
                    MatingResult.Kind.TWO_FEMALES,
                    false,
                    "two hoses meet" + both,
                    "put a barbed joiner " + size + " between");
        }
        if (a.gender() == Gender.MALE) {
            return fault(
                    MatingResult.Kind.TWO_MALES,
                    false,
                    "two male connections meet" + both,
                    "put a swivel coupling " + size + " between");
        }
        return a.gender() == Gender.SWIVEL && b.gender() == Gender.SWIVEL
                ? fault(
                        MatingResult.Kind.TWO_SWIVEL_NUTS,
                        false,
                        "two swivel nuts meet",
                        "put a union or bulkhead " + size + " between")
                : fault(
                        MatingResult.Kind.TWO_FEMALES,
                        false,
                        "two inside threads meet" + both,
                        "put a union " + size + " between");
    }

    private static MatingResult otherSeat(Connection a, Connection b) {
        boolean sameThread =
                a.thread() != null && b.thread() != null && a.thread().same(b.thread());
        boolean starts = sameThread
                || (a.thread() != null && b.thread() != null && a.thread().near(b.thread()))
                || samePipe(a, b);
        String adapter = "use an adapter " + a.sizeName() + " to " + b.sizeName();
        String both = a.text() + " and " + b.text();
        if (pair(a, b, Seat.O_RING_BOSS, Seat.FLARE_37) && sameThread) {
            Connection boss = a.seat() == Seat.O_RING_BOSS ? a : b;
            Connection flare = a.seat() == Seat.O_RING_BOSS ? b : a;
            return fault(
                    MatingResult.Kind.BOSS_ON_FLARE,
                    true,
                    both + " share the " + designation(boss) + " thread and do not seal together",
                    "use an " + boss.sizeName() + " to " + flare.sizeName() + " adapter");
        }
        if (pair(a, b, Seat.FLARE_45, Seat.FLARE_37)) {
            String how = sameThread
                    ? both + " share the " + designation(a)
                            + " thread, but a 45-degree flare on a 37-degree seat cracks and leaks"
                    : both + ": a 45-degree flare does not go on a 37-degree seat, and the threads differ";
            return fault(
                    MatingResult.Kind.FLARE_45_ON_37,
                    sameThread,
                    how,
                    "flare the tube to 37 degrees with a new sleeve and nut, or " + adapter);
        }
        boolean taper = a.seat() == Seat.TAPER_PIPE || b.seat() == Seat.TAPER_PIPE;
        if (taper && threaded(a) && threaded(b)) {
            String how = starts
                    ? both + " start to screw together, but a taper thread does not seal in a straight one"
                    : both + ": a taper thread does not go in a straight one";
            return fault(MatingResult.Kind.TAPER_ON_STRAIGHT, starts, how, adapter);
        }
        String how = sameThread
                ? both + " share the " + designation(a) + " thread and do not seal together"
                : both + " do not go together (" + a.seat().word() + " on "
                        + b.seat().word() + ")";
        return fault(MatingResult.Kind.OTHER_SEAT, sameThread, how, adapter);
    }

    private static boolean samePipe(Connection a, Connection b) {
        return pair(a, b, Seat.TAPER_PIPE, Seat.PARALLEL_PIPE) && a.size().equals(b.size());
    }

    private static boolean pair(Connection a, Connection b, Seat one, Seat other) {
        return (a.seat() == one && b.seat() == other) || (a.seat() == other && b.seat() == one);
    }

    private static boolean threaded(Connection c) {
        return c.seat() != Seat.BARB && c.seat() != Seat.QUICK_CONNECT;
    }

    private static String designation(Connection c) {
        ThreadSize thread = c.thread();
        return thread == null ? c.sizeName() : thread.designation();
    }

    private static MatingResult fine(MatingResult.Kind kind) {
        boolean seals = kind == MatingResult.Kind.SEALS;
        return new MatingResult(kind, seals, seals, "", "", 0, PRACTICE);
    }

    private static MatingResult fault(MatingResult.Kind kind, boolean screwsOn, String message, String useInstead) {
        return new MatingResult(
                kind, screwsOn, false, message, useInstead + " (adds 2 sealing faces)", FACES_OF_AN_ADAPTER, PRACTICE);
    }
}
