package org.linedrop.fluid;

import java.io.Serializable;

/**
 * What a fluid is like at one temperature, near atmospheric pressure. Evaluated once per fluid, temperature and case,
 * never inside a solve. A property nobody knows is {@link Double#NaN}; density and viscosity are always known.
 *
 * @param temperatureK           temperature, K
 * @param densityKgPerM3         density, kg/m3; of air at 101.325 kPa absolute
 * @param dynamicViscosityPaS    dynamic viscosity, Pa s
 * @param vapourPressurePa       vapour pressure, Pa absolute (bubble point of a mixture); NaN where unknown (brake
 *                               fluids, of which only boiling points are specified) and of air
 * @param bulkModulusPa          isothermal bulk modulus, Pa (of the alcohols adiabatic, a few per cent higher); NaN
 *                               where unknown
 * @param specificHeatJPerKgK    specific heat at constant pressure, J/(kg K); NaN where unknown
 */
public record FluidState(
        double temperatureK,
        double densityKgPerM3,
        double dynamicViscosityPaS,
        double vapourPressurePa,
        double bulkModulusPa,
        double specificHeatJPerKgK)
        implements Serializable {

    /**
     * Kinematic viscosity.
     *
     * @return dynamic viscosity over density, m2/s
     */
    public double kinematicViscosityM2PerS() {
        return dynamicViscosityPaS / densityKgPerM3;
    }
}
