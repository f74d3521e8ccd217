package org.linedrop.fluid;

/** Laws made of other laws: blends, interpolation, bands. */
final class Combinations {
    private Combinations() {}

    /**
     * A law times a factor.
     *
     * @param law    the law
     * @param factor above zero
     */
    record Scaled(PropertyLaw law, double factor) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return factor * law.at(temperatureK);
        }
    }

    /**
     * Dynamic viscosity from kinematic.
     *
     * @param kinematic m2/s
     * @param density   kg/m3
     */
    record Dynamic(PropertyLaw kinematic, PropertyLaw density) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return kinematic.at(temperatureK) * density.at(temperatureK);
        }
    }

    /**
     * Density of a blend with ideal volumes, and straight interpolation: (1 - share) first + share second.
     *
     * @param first  law of the first component
     * @param second law of the second
     * @param share  of the second, by volume
     */
    record WeightedSum(PropertyLaw first, PropertyLaw second, double share) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return (1 - share) * first.at(temperatureK) + share * second.at(temperatureK);
        }
    }

    /**
     * Viscosity of a blend after Arrhenius, and interpolation of viscosity and vapour pressure between concentrations:
     * weighted logarithms.
     *
     * @param first  law of the first component
     * @param second law of the second
     * @param share  of the second
     */
    record WeightedLogSum(PropertyLaw first, PropertyLaw second, double share) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return Math.exp((1 - share) * Math.log(first.at(temperatureK)) + share * Math.log(second.at(temperatureK)));
        }
    }

    /**
     * Bulk modulus of a blend after Reuss: compressibilities weighted by volume.
     *
     * @param first  law of the first component
     * @param second law of the second
     * @param share  of the second, by volume
     */
    record WeightedInverseSum(PropertyLaw first, PropertyLaw second, double share) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return 1 / ((1 - share) / first.at(temperatureK) + share / second.at(temperatureK));
        }
    }

    /**
     * Specific heat of a blend: weighted by mass.
     *
     * @param first         specific heat of the first component
     * @param second        specific heat of the second
     * @param firstDensity  density of the first
     * @param secondDensity density of the second
     * @param share         of the second, by volume
     */
    record MassWeightedSum(
            PropertyLaw first, PropertyLaw second, PropertyLaw firstDensity, PropertyLaw secondDensity, double share)
            implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double m1 = (1 - share) * firstDensity.at(temperatureK);
            double m2 = share * secondDensity.at(temperatureK);
            return (m1 * first.at(temperatureK) + m2 * second.at(temperatureK)) / (m1 + m2);
        }
    }
}
