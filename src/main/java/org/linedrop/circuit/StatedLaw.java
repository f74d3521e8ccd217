package org.linedrop.circuit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A part whose law is stated outright, for textbook problems. Taken exactly: no low-Reynolds term is added.
 *
 * @param id              its name, or run and line number
 * @param law             which law
 * @param boreM           bore of its velocity; null for a power law, which needs none
 * @param lengthM         length, null where the law has none
 * @param coefficient     Darcy friction factor, loss coefficient K, r in m/(m3/s)^n, or hydraulic power in W; null for the
 *                        others
 * @param exponent        n of a power law, null for the others
 * @param rise            coefficients c0, c1, c2 ... of a pump's head c0 + c1 Q + c2 Q^2 ... in m and m3/s; empty for the
 *                        others
 * @param temperatureK    its own temperature, or null
 */
public record StatedLaw(
        String id,
        Law law,
        @Nullable Figure boreM,
        @Nullable Figure lengthM,
        @Nullable Figure coefficient,
        @Nullable Figure exponent,
        List<Double> rise,
        @Nullable Figure temperatureK)
        implements Part {

    /** Copies the list. */
    public StatedLaw {
        rise = List.copyOf(rise);
    }

    /** The laws that can be stated. */
    public enum Law {
        /** drop = f (L/D) rho v^2/2 with a friction factor that does not change. */
        CONSTANT_F("constant f"),
        /** head = r Q^n in metres of the fluid. */
        POWER("power"),
        /** drop = 32 mu L v/D^2 at every Reynolds number. */
        LAMINAR("laminar"),
        /** drop = K rho v^2/2. */
        K("K"),
        /** A pump whose head is a polynomial of the flow, in metres of the fluid; back-flow is odd about shut-off. */
        PUMP_POLYNOMIAL("pump polynomial"),
        /** A pump of constant hydraulic power: rise = power / flow. */
        PUMP_POWER("pump power");

        private final String word;

        Law(String word) {
            this.word = word;
        }

        /**
         * The word of the circuit file.
         *
         * @return for example {@code constant f}
         */
        public String word() {
            return word;
        }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.statedLaw(this);
    }
}
