package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.AdapterSize;
import org.linedrop.fact.Figure;

/**
 * An open valve in the line.
 *
 * @param id              its name, or run and line number
 * @param build           ball, gate, globe, swing check ...; empty where only its flow coefficient is known
 * @param size            its connections and through bore: male flares of its dash size
 * @param kvM3PerHourAtBar flow of water in m3/h at 1 bar, as sheets give it; null where the kind decides
 * @param temperatureK    its own temperature, or null
 */
public record Valve(
        String id,
        String build,
        AdapterSize size,
        @Nullable Figure kvM3PerHourAtBar,
        @Nullable Figure temperatureK) implements Part {
    /** Ball valve of full bore. */
    public static final String BALL = "ball";
    /** Gate valve. */
    public static final String GATE = "gate";
    /** Globe valve. */
    public static final String GLOBE = "globe";
    /** Check valve with a hinged flap. */
    public static final String SWING_CHECK = "swing check";
    /** Check valve with a lifting disc. */
    public static final String LIFT_CHECK = "lift check";
    /** One US gallon a minute at 1 psi in m3/h at 1 bar, from the definitions of gallon and psi. */
    static final double KV_PER_CV = 3.785411784e-3 * 60 / Math.sqrt(0.06894757293168);
    /** Every build whose loss is known. */
    static final List<String> BUILDS = List.of(BALL, GATE, GLOBE, SWING_CHECK, LIFT_CHECK);

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.valve(this);
    }
}
