package org.linedrop.solver;

import java.io.Serializable;
import org.linedrop.fact.Inner;

/**
 * Budget and tolerances of a solve.
 *
 * @param maxIterations     Newton steps allowed in all, the second attempt included; at least 1
 * @param flowTolerance     node imbalance and last correction allowed, over the largest flow; above 0
 * @param pressureTolerance law residual allowed, over the pressure scale; above 0
 */
@Inner
public record Options(int maxIterations, double flowTolerance, double pressureTolerance) implements Serializable {
    /**
     * Newton steps allowed by default. Most networks need 4 to 9; flows that end at zero by a square law about 40; those
     * that need the second attempt some 150, those whose draws cannot be met up to 1,000.
     */
    private static final int USUAL_ITERATIONS = 2000;
    /** Both tolerances by default: six figures better than any bore is known, three worse than rounding allows. */
    private static final double USUAL_TOLERANCE = 1e-9;

    /** Checks that all three are above zero. */
    public Options {
        if (!(maxIterations >= 1 && flowTolerance > 0 && pressureTolerance > 0)) {
            throw new IllegalArgumentException("iterations and tolerances must be above 0, but are " + maxIterations
                    + ", " + flowTolerance + ", " + pressureTolerance);
        }
    }

    /**
     * The usual budget of 2,000 steps and tolerances of 1e-9.
     *
     * @return the options
     */
    public static Options usual() {
        return new Options(USUAL_ITERATIONS, USUAL_TOLERANCE, USUAL_TOLERANCE);
    }
}
