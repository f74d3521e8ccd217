package org.linedrop.circuit;

import java.io.Serializable;
import org.linedrop.fact.Figure;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.FluidState;

/**
 * What holds for the whole circuit.
 *
 * @param fluid              what flows
 * @param temperatureK       its temperature where no run or part has its own
 * @param altitudeM          above sea level; decides the air pressure
 * @param aheadMPerS2        acceleration felt ahead: launch positive, braking negative
 * @param leftMPerS2         acceleration felt to the left: a left turn positive
 * @param upMPerS2           acceleration felt upwards: gravity at rest
 * @param laminarUpToReynolds Reynolds number up to which 64/Re holds
 * @param turbulentFromReynolds Reynolds number from which Colebrook holds
 */
public record Surroundings(
        Fluid fluid,
        Figure temperatureK,
        double altitudeM,
        double aheadMPerS2,
        double leftMPerS2,
        double upMPerS2,
        double laminarUpToReynolds,
        double turbulentFromReynolds)
        implements Serializable {

    /** Standard gravity, ISO 80000-3, in m/s2. */
    public static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;

    /**
     * The fluid at the temperature that holds where no run or part has its own.
     *
     * @return its usual state
     */
    public FluidState fluidState() {
        return fluid.at(temperatureK.value());
    }

    /**
     * Air pressure at the altitude: ISO 2533 standard atmosphere, troposphere.
     *
     * @return absolute pressure in Pa
     */
    public double ambientPa() {
        return 101_325 * Math.pow(1 - 2.25577e-5 * altitudeM, 5.25588);
    }

    /**
     * How much the gravity and acceleration potential grows from one place to another.
     *
     * @param from the start
     * @param to   the end
     * @return J/kg; times a density it is the pressure lost on the way
     */
    public double potentialJPerKg(Position from, Position to) {
        return aheadMPerS2 * (to.aheadM() - from.aheadM())
                + leftMPerS2 * (to.leftM() - from.leftM())
                + upMPerS2 * (to.heightM() - from.heightM());
    }
}
