package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A fitting with two connections.
 *
 * @param kind         adapter, bulkhead, union, reducer or cap
 * @param text         its sizes as written, for example {@code -6 to -5}
 * @param fromBoreM    bore at the first connection, m
 * @param toBoreM      bore at the second connection, m
 * @param angleRad     deflection, rad; 0 is straight
 * @param forged       true when it turns by two drilled bores that meet; elbow adapters do unless said to be bent tube
 * @param bendRatio    centre-line bend radius over bore when it turns by a bent tube, else null
 * @param sealingFaces faces that can leak which it brings
 * @param from         first connection, in flow order
 * @param to           second connection; of a cap not stated
 */
public record AdapterSize(
        String kind,
        String text,
        Figure fromBoreM,
        Figure toBoreM,
        double angleRad,
        boolean forged,
        @Nullable Figure bendRatio,
        int sealingFaces,
        Connection from,
        Connection to)
        implements Serializable {

    /**
     * The bore that limits it.
     *
     * @return the smaller of its two bores, m
     */
    public Figure throughBoreM() {
        return fromBoreM.value() <= toBoreM.value() ? fromBoreM : toBoreM;
    }
}
