package org.linedrop.fluid;

/** Laws of air. */
final class GasLaws {
    private GasLaws() {}

    /**
     * Ideal gas density.
     *
     * @param pressurePa      absolute pressure
     * @param gasConstantJPerKgK specific gas constant
     */
    record IdealDensity(double pressurePa, double gasConstantJPerKgK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return pressurePa / (gasConstantJPerKgK * temperatureK);
        }
    }

    /** Sutherland's law with the constants of the US Standard Atmosphere 1976 (from memory). */
    record SutherlandViscosity() implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return 1.458e-6 * temperatureK * Math.sqrt(temperatureK) / (temperatureK + 110.4);
        }
    }
}
