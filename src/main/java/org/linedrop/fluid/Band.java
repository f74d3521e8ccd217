package org.linedrop.fluid;

/**
 * Which end of what is known of a fluid: the usual fluid of that name, or the two ends of its class that matter in a
 * line. Bands cover both the spread between fluids sold under one name and the error of the method.
 */
public enum Band {
    /** The usual fluid. */
    USUAL,
    /** Lowest viscosity and highest vapour pressure of the class. */
    THIN,
    /** Highest viscosity and lowest vapour pressure of the class. */
    THICK
}
