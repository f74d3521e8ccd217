package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.form.Over;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Rise;
import org.linedrop.fact.Figure;

/**
 * A pressure regulator: a bypass regulator holds its inlet by spilling what is not wanted, a dead-head regulator holds its
 * outlet by throttling.
 *
 * @param id        its name
 * @param kind      {@link #BYPASS} or {@link #DEAD_HEAD}
 * @param position  where it is, or null
 * @param holds     the pressure it holds, and over what
 * @param slope     what a bypass regulator's pressure gains with the spilled flow, and what a dead-head regulator's loses
 *                  with the flow passed; null where nobody said
 * @param wideOpen  drop wide open, as a square law; null where nobody said
 * @param creepPa   how far over its set pressure a dead-head regulator may stand at no flow
 */
public record Regulator(
        String id,
        String kind,
        @Nullable Position position,
        Over holds,
        @Nullable Rise slope,
        @Nullable RatedPoint wideOpen,
        Figure creepPa)
        implements Device {

    /** Word of a bypass regulator. */
    static final String BYPASS = "bypass regulator";
    /** Word of a dead-head regulator. */
    static final String DEAD_HEAD = "dead-head regulator";
    /** Port of a bypass regulator that it holds the pressure of. */
    static final String INLET = "inlet";
    /** Port of a bypass regulator that it spills through. */
    public static final String RETURN = "return";

    /**
     * Whether it holds its inlet.
     *
     * @return true for a bypass regulator
     */
    public boolean bypass() {
        return kind.equals(BYPASS);
    }

    /**
     * The point its pressure is held over.
     *
     * @return its name; empty over air or manifold
     */
    public String overPoint() {
        String over = holds.reference();
        return over.equals(Over.AIR) || over.equals(Over.MANIFOLD) ? "" : over;
    }

    @Override
    public List<String> ports() {
        return Ports.ofDevice(kind);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.regulator(this);
    }
}
