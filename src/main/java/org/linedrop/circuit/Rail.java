package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A fuel rail in a run: a bore along which injectors take equal shares. For limits it is a point, behind its last injector.
 *
 * @param id       its name
 * @param position where it is, or null
 * @param boreM    its bore
 * @param lengthM  its length
 * @param takes    what its injectors take together
 * @param taps     how many injectors there are
 */
public record Rail(String id, @Nullable Position position, Figure boreM, Figure lengthM, Demand takes, int taps)
        implements Device {

    /** Its word. */
    static final String KIND = "rail";

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.rail(this);
    }
}
