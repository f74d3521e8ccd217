package org.linedrop.fluid;

/**
 * A temperature at which no honest figure can be given: far outside the fluid's range, or the cold extrapolation of a
 * very-high-VI fluid. The message says what was asked, what is allowed and what to do.
 */
public final class FluidRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /**
     * Carries the message.
     *
     * @param message what was asked, what is allowed, what to do
     */
    FluidRangeException(String message) {
        super(message);
    }
}
