package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * One end of a part as its neighbour meets it.
 *
 * @param seat   how it seals
 * @param gender which half it is
 * @param size   size as written: {@code -6}, {@code 1/4}, {@code M22x1.5}; empty when not stated
 * @param thread its thread, or null for connections without one and for sizes whose thread is not known
 * @param text   how a message names it, for example {@code pump port ORB -8} or {@code 5/16 in tube}
 * @param tube   true for the end of a hard line: flared, with nut and sleeve, or beaded for a hose
 */
public record Connection(
        Seat seat, Gender gender, String size, @Nullable ThreadSize thread, String text, boolean tube)
        implements Serializable {

    /**
     * A connection about which nothing was said, for example a device's port.
     *
     * @param text how a message names it
     * @return a connection that mates with anything unchecked
     */
    public static Connection notStated(String text) {
        return new Connection(Seat.NOT_STATED, Gender.EITHER, "", null, text, false);
    }

    /**
     * The same connection under another name.
     *
     * @param newText how a message names it
     * @return the copy
     */
    public Connection named(String newText) {
        return new Connection(seat, gender, size, thread, newText, tube);
    }

    /**
     * The same connection as the other half.
     *
     * @param newGender which half it is
     * @return the copy
     */
    public Connection as(Gender newGender) {
        return new Connection(seat, newGender, size, thread, text, tube);
    }

    /**
     * The same connection as the end of a hard line.
     *
     * @return the copy
     */
    Connection ofTube() {
        return new Connection(seat, gender, size, thread, text, true);
    }

    /**
     * Seat and size as an adapter's name writes them.
     *
     * @return {@code -6}, {@code ORB -8}, {@code 1/4 NPT}, {@code G 3/8}, {@code M22x1.5}, {@code quick-connect 3/8 in}
     */
    public String sizeName() {
        return switch (seat) {
            case FLARE_37, METRIC -> size;
            case O_RING_BOSS -> "ORB " + size;
            case TAPER_PIPE -> size + " NPT";
            case PARALLEL_PIPE -> "G " + size;
            case FLARE_45 -> "45-degree " + size;
            case BANJO -> "banjo " + size;
            case QUICK_CONNECT -> "quick-connect " + size + " in";
            case BARB -> "barb " + (size.startsWith("-") ? size : size + " in");
            case NOT_STATED -> "?";
        };
    }
}
