package org.linedrop.circuit;

import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.Gender;

/**
 * The two connections of an in-line device.
 *
 * @param inlet  where the flow of the run goes in
 * @param outlet where it comes out
 */
record DevicePorts(Connection inlet, Connection outlet) {
    private static final String MALE = "male ";
    private static final String FEMALE = "female ";

    /** Reads {@code ORB -8}, {@code ORB -8 to -6}, {@code male M18x1.5}. */
    static DevicePorts read(String text, Catalogue catalogue) {
        String[] sides = text.strip().split("\\s+to\\s+", -1);
        if (sides.length > 2) {
            throw new CatalogueException(
                    "ports \"" + text + "\": one size for both or two sizes are needed",
                    "Write ORB -8 or ORB -8 to -6");
        }
        return new DevicePorts(port(sides[0], catalogue), port(sides[sides.length - 1], catalogue));
    }

    /** Threads are cut into a housing; what hose goes on or over stands out of it. */
    private static Connection port(String text, Catalogue catalogue) {
        String size = text.strip();
        boolean male = size.startsWith(MALE);
        boolean female = size.startsWith(FEMALE);
        if (male || female) {
            size = size.substring(male ? MALE.length() : FEMALE.length());
        }
        Connection read = catalogue.connection(size, Gender.EITHER, size);
        boolean outside = switch (read.seat()) {
            case FLARE_37, FLARE_45, QUICK_CONNECT, BARB -> true;
            case O_RING_BOSS, TAPER_PIPE, PARALLEL_PIPE, METRIC, BANJO, NOT_STATED -> false;
        };
        return read.as(male || (outside && !female) ? Gender.MALE : Gender.FEMALE);
    }

    /** The same, named for messages. */
    DevicePorts of(String device) {
        return new DevicePorts(
                inlet.named(device + " port " + inlet.sizeName()), outlet.named(device + " port " + outlet.sizeName()));
    }
}
