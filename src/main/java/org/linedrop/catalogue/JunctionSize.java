package org.linedrop.catalogue;

import java.io.Serializable;
import org.linedrop.fact.Figure;

/**
 * A fitting with three connections.
 *
 * @param kind         tee or Y block
 * @param text         its sizes as written, for example {@code -8 to -6}
 * @param mainBoreM    bore of the run of a tee, of the common leg of a Y block, m
 * @param branchBoreM  bore of the branch of a tee, of each leg of a Y block, m
 * @param sealingFaces faces that can leak which it brings
 * @param main         connection of run or common leg
 * @param branch       connection of branch or leg
 */
public record JunctionSize(
        String kind,
        String text,
        Figure mainBoreM,
        Figure branchBoreM,
        int sealingFaces,
        Connection main,
        Connection branch)
        implements Serializable {}
