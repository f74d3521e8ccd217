package org.linedrop.fluid;

import java.util.List;

/** Laws of no particular family, and tables. */
final class SimpleLaws {
    private SimpleLaws() {}

    /** Horner's rule, lowest power first. */
    static double polynomial(List<Double> coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.size() - 1; i >= 0; i--) {
            sum = sum * x + coefficients.get(i);
        }
        return sum;
    }

    /**
     * The same at every temperature.
     *
     * @param value in SI; NaN for a property nobody knows
     */
    record Constant(double value) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return value;
        }
    }

    /**
     * A polynomial in the temperature in C times a factor.
     *
     * @param factor       to SI
     * @param coefficients lowest power first
     */
    record Polynomial(double factor, List<Double> coefficients) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        Polynomial {
            coefficients = List.copyOf(coefficients);
        }

        @Override
        public double at(double temperatureK) {
            return factor * polynomial(coefficients, temperatureK - ZERO_C_K);
        }
    }

    /**
     * Clausius-Clapeyron: pRef exp(-B (1/T - 1/TRef)).
     *
     * @param referencePa pressure at the reference temperature
     * @param referenceK  reference temperature
     * @param slopeK      B
     */
    record ExponentialPressure(double referencePa, double referenceK, double slopeK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return referencePa * Math.exp(-slopeK * (1 / temperatureK - 1 / referenceK));
        }
    }

    /**
     * Density with a constant expansion of the volume.
     *
     * @param referenceKgPerM3 density at 20 C
     * @param expansionPerK    volume expansion per kelvin, of the volume at 20 C
     */
    record LinearExpansion(double referenceKgPerM3, double expansionPerK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return referenceKgPerM3 / (1 + expansionPerK * (temperatureK - ZERO_C_K - 20));
        }
    }

    /**
     * Kinematic viscosity of a dimethyl silicone, nu25 10^(a/T - b), m2/s.
     *
     * @param at25M2PerS viscosity at 25 C, m2/s
     * @param a          K
     * @param b          -
     */
    record SiliconeViscosity(double at25M2PerS, double a, double b) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return at25M2PerS * Math.pow(10, a / temperatureK - b);
        }
    }

    /**
     * Straight lines between rows; beyond the ends the nearest line goes on. Used for everything but viscosity.
     *
     * @param temperaturesK rising
     * @param values        one each
     */
    record Table(List<Double> temperaturesK, List<Double> values) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        Table {
            temperaturesK = List.copyOf(temperaturesK);
            values = List.copyOf(values);
        }

        @Override
        public double at(double temperatureK) {
            if (values.size() == 1) {
                return values.get(0);
            }
            int i = segment(temperaturesK, temperatureK);
            double t0 = temperaturesK.get(i);
            double share = (temperatureK - t0) / (temperaturesK.get(i + 1) - t0);
            return values.get(i) + share * (values.get(i + 1) - values.get(i));
        }
    }

    /**
     * Kinematic viscosity by rows, each neighbouring pair joined by its own ASTM D341 line; beyond the ends the nearest
     * line goes on.
     *
     * @param temperaturesK rising
     * @param valuesM2PerS  one each
     */
    record ViscosityTable(List<Double> temperaturesK, List<Double> valuesM2PerS) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        ViscosityTable {
            temperaturesK = List.copyOf(temperaturesK);
            valuesM2PerS = List.copyOf(valuesM2PerS);
        }

        @Override
        public double at(double temperatureK) {
            if (valuesM2PerS.size() == 1) {
                return valuesM2PerS.get(0);
            }
            int i = segment(temperaturesK, temperatureK);
            return D341.through(
                            temperaturesK.get(i),
                            valuesM2PerS.get(i),
                            temperaturesK.get(i + 1),
                            valuesM2PerS.get(i + 1))
                    .at(temperatureK);
        }
    }

    /** Index of the segment that holds, or is nearest to, a temperature. */
    private static int segment(List<Double> temperaturesK, double temperatureK) {
        int i = 0;
        while (i < temperaturesK.size() - 2 && temperatureK > temperaturesK.get(i + 1)) {
            i++;
        }
        return i;
    }
}
