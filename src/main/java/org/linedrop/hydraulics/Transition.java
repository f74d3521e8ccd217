package org.linedrop.hydraulics;

import java.io.Serializable;
import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * How the friction factor passes from laminar to turbulent flow. Every rule is continuous.
 *
 * @param fromReynolds Reynolds number up to which 64/Re holds
 * @param toReynolds   Reynolds number from which Colebrook's equation holds, over {@code fromReynolds}
 * @param shape        what joins the two
 */
public record Transition(double fromReynolds, double toReynolds, Shape shape) implements Serializable {
    /** What joins the laminar and the turbulent law. */
    public enum Shape {
        /** {@code (1 - g) 64/Re + g f_Colebrook(Re)} with {@code g = t^2 (3 - 2 t)}: slope continuous. */
        SMOOTHSTEP,
        /** {@code (1 - t) 64/Re + t f_Colebrook(Re)} with {@code t} linear in Re: slope jumps at both ends. */
        LINEAR_BLEND,
        /** A straight line between the factors at the two ends: slope jumps at both ends. */
        STRAIGHT_LINE
    }

    /** The default: within 4 to 7.5 per cent of two measured sets, C1, drop strictly rising with flow. */
    public static final Transition DEFAULT = new Transition(2000, 3000, Shape.SMOOTHSTEP);

    /** The later span often seen in textbooks; 8 to 18 per cent low against the same two sets. */
    public static final Transition LATE = new Transition(2300, 4000, Shape.SMOOTHSTEP);

    /** Laminar to 2300 and turbulent above, its jump closed by a straight line one Reynolds number wide. */
    public static final Transition NEAR_JUMP = new Transition(2300, 2301, Shape.STRAIGHT_LINE);

    /** Blend of two exact branches. */
    public static final Formula FORMULA = new Formula(
            "laminar to turbulent blend",
            "f = (1 - g) 64/Re + g f_Colebrook, g = t^2 (3 - 2 t), t = (Re - Re1)/(Re2 - Re1)",
            new Source(
                    "blend chosen on the wall shear tables of T. E. Stanton, J. R. Pannell, Phil. Trans. R. Soc. A 214,"
                            + " 1914, 199-224, and V. E. Senecal, thesis, Carnegie Institute of Technology, 1951",
                    "validation/friction",
                    Status.DERIVED),
            "2000 to 3000: 10 to 15 %, up to 50 % where the flow stays laminar");

    /**
     * Checks the span; NaN fails.
     *
     * @param fromReynolds Reynolds number up to which 64/Re holds, over zero
     * @param toReynolds   Reynolds number from which Colebrook's equation holds, over {@code fromReynolds}
     * @param shape        what joins the two
     */
    public Transition {
        if (!(fromReynolds > 0 && toReynolds > fromReynolds && toReynolds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("transition from Re " + fromReynolds + " to " + toReynolds
                    + ": the first must be over zero and the second over the first");
        }
    }

    /**
     * Whether a flow is in the band where the rule blends, so that its friction is known to 10 to 50 per cent only.
     *
     * @param reynolds Reynolds number
     * @return true strictly inside the span
     */
    boolean blends(double reynolds) {
        return reynolds > fromReynolds && reynolds < toReynolds;
    }
}
