package org.linedrop.hydraulics;

/** Velocity, Reynolds number and velocity head of a round bore: the arithmetic every law shares. */
public final class Reynolds {
    private Reynolds() {}

    /**
     * Area of a bore.
     *
     * @param boreM bore in m, over zero
     * @return {@code pi d^2/4} in m2
     */
    public static double areaM2(double boreM) {
        return 0.25 * Math.PI * boreM * boreM;
    }

    /**
     * Mean velocity in a bore.
     *
     * @param flowM3PerS volume flow in m3/s, any sign
     * @param boreM      bore in m, over zero
     * @return velocity in m/s with the sign of the flow
     */
    public static double velocityMPerS(double flowM3PerS, double boreM) {
        return flowM3PerS / areaM2(boreM);
    }

    /**
     * Reynolds number {@code 4 rho |Q|/(pi d mu)} of a bore.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore in m, over zero
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return the Reynolds number, not negative
     */
    public static double of(double flowM3PerS, double boreM, double densityKgPerM3, double dynamicViscosityPaS) {
        return 4 * densityKgPerM3 * Math.abs(flowM3PerS) / (Math.PI * boreM * dynamicViscosityPaS);
    }

    /**
     * Dynamic pressure {@code rho v^2/2}.
     *
     * @param flowM3PerS     volume flow in m3/s, any sign
     * @param boreM          bore in m, over zero
     * @param densityKgPerM3 density in kg/m3, over zero
     * @return velocity head in Pa
     */
    public static double velocityHeadPa(double flowM3PerS, double boreM, double densityKgPerM3) {
        double velocity = velocityMPerS(flowM3PerS, boreM);
        return 0.5 * densityKgPerM3 * velocity * velocity;
    }
}
