package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A hose end of one hose: the nipple inside the hose, the bore of the fitting behind it and how it turns.
 *
 * @param family          hose family it belongs to
 * @param kind            straight, swept, forged, banjo, quick-connect, male or barb
 * @param build           two-piece, three-piece, crimped, push-on or barb
 * @param dash            dash number of the hose, positive; sixteenths of an inch for hose sized by inch
 * @param sizeText        size as written, {@code -6} or {@code 5/16 in}
 * @param angleRad        deflection, rad; 0 is straight
 * @param nippleBoreM     bore of the nipple inside the hose, m
 * @param nippleLengthM   length of that bore, m
 * @param throughBoreM    bore of the fitting behind the nipple, m; a barb's is its nipple's
 * @param bendRatio       centre-line bend radius over through bore of a swept end, null for the others
 * @param lossCoefficient loss coefficient on the velocity in the through bore where the part is known by that only
 *                        (banjo, quick-connect), else null
 * @param cutOffM         what the end adds to the hose's cut length, m, null when not known
 * @param connection      what the neighbour meets
 */
public record EndSize(
        String family,
        String kind,
        String build,
        int dash,
        String sizeText,
        double angleRad,
        Figure nippleBoreM,
        Figure nippleLengthM,
        Figure throughBoreM,
        @Nullable Figure bendRatio,
        @Nullable Figure lossCoefficient,
        @Nullable Figure cutOffM,
        Connection connection)
        implements Serializable {

    /**
     * The end as a row prints it.
     *
     * @return for example {@code end straight}, {@code end 90 swept}, {@code end banjo M12}
     */
    public String text() {
        return switch (kind) {
            case "swept", "forged" -> "end " + Math.round(Math.toDegrees(angleRad)) + " " + kind;
            case "banjo", "quick-connect" -> "end " + connection.sizeName();
            default -> "end " + kind;
        };
    }

    /**
     * The same end with a nipple bore that somebody measured or read.
     *
     * @param bore nipple bore, m
     * @return a copy with that nipple
     */
    public EndSize withNippleBore(Figure bore) {
        return new EndSize(
                family,
                kind,
                build,
                dash,
                sizeText,
                angleRad,
                bore,
                nippleLengthM,
                kind.equals("barb") ? bore : throughBoreM,
                bendRatio,
                lossCoefficient,
                cutOffM,
                connection);
    }
}
