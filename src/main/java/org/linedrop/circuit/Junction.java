package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Connection;
import org.linedrop.catalogue.JunctionSize;

/**
 * A tee or Y block: a point with three ports whose legs lose pressure by each other's flows.
 *
 * @param id       its name
 * @param position where it is, or null when heights are left out
 * @param size     the catalogue row, which also says whether it is a tee or a Y block
 */
public record Junction(String id, @Nullable Position position, JunctionSize size) implements Point {
    /** What the file calls a tee. */
    static final String TEE = "tee";
    /** What the file calls a Y block. */
    static final String Y_BLOCK = "Y block";
    /** Port of a tee that two runs use: the way straight through. */
    public static final String RUN = "run";
    /** Port of a tee that one run uses. */
    static final String BRANCH = "branch";
    /** Port of a Y block that one run uses. */
    static final String COMMON = "common";
    /** Port of a Y block that two runs use. */
    public static final String LEG = "leg";

    /**
     * The ports of a kind: the one that two runs use, then the one that a single run uses.
     *
     * @param kind {@link #TEE} or {@link #Y_BLOCK}
     * @return two names; empty for another kind
     */
    static List<String> ports(String kind) {
        return switch (kind) {
            case TEE -> List.of(RUN, BRANCH);
            case Y_BLOCK -> List.of(LEG, COMMON);
            default -> List.of();
        };
    }

    /**
     * Whether it is a Y block.
     *
     * @return false for a tee
     */
    public boolean yBlock() {
        return size.kind().equals(Y_BLOCK);
    }

    /**
     * The connection at a port.
     *
     * @param port name of the port
     * @return what a neighbour must mate with
     */
    Connection connection(String port) {
        return port.equals(RUN) || port.equals(COMMON) ? size.main() : size.branch();
    }

    @Override
    public @Nullable Double gaugeBoreM() {
        return null;
    }
}
