package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A part whose law is stated outright, for textbook problems. Taken exactly: no low-Reynolds term is added.
 *
 * @param id              its name, or run and line number
 * @param law             which law
 * @param boreM           bore of its velocity; null for a power law, which needs none
 * @param lengthM         length, null where the law has none
 * @param coefficient     Darcy friction factor, loss coefficient K, or r in m/(m3/s)^n; null for a laminar law
 * @param exponent        n of a power law, null for the others
 * @param temperatureK    its own temperature, or null
 */
public record StatedLaw(
        String id,
        Law law,
        @Nullable Figure boreM,
        @Nullable Figure lengthM,
        @Nullable Figure coefficient,
        @Nullable Figure exponent,
        @Nullable Figure temperatureK)
        implements Part {

    /** The laws that can be stated. */
    public enum Law {
        /** drop = f (L/D) rho v^2/2 with a friction factor that does not change. */
        CONSTANT_F("constant f"),
        /** head = r Q^n in metres of the fluid. */
        POWER("power"),
        /** drop = 32 mu L v/D^2 at every Reynolds number. */
        LAMINAR("laminar"),
        /** drop = K rho v^2/2. */
        K("K");

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
