package org.linedrop.fluid;

import java.io.Serializable;
import java.util.List;

/** A property as a user gives it. A list of these on top of a catalogue fluid, or alone, makes a {@link UserFluid}. */
public sealed interface Given extends Serializable {

    /**
     * Which property is given.
     *
     * @return the property
     */
    PropertyKind kind();

    /**
     * The same value at every temperature.
     *
     * @param kind  which property
     * @param value in SI, above zero
     */
    record Constant(PropertyKind kind, double value) implements Given {
        private static final long serialVersionUID = 1;

        /**
         * Checks the value.
         *
         * @param kind which property
         * @param value in SI, above zero
         */
        public Constant {
            Checks.value(kind, value);
        }
    }

    /**
     * Density at one temperature, with the expansion of a petroleum liquid.
     *
     * @param temperatureK   where it was measured, K
     * @param densityKgPerM3 kg/m3, 500 to 1500
     */
    record DensityAt(double temperatureK, double densityKgPerM3) implements Given {
        private static final long serialVersionUID = 1;

        /**
         * Checks both numbers.
         *
         * @param temperatureK where it was measured, K
         * @param densityKgPerM3 kg/m3, 500 to 1500
         */
        public DensityAt {
            Checks.temperature(temperatureK);
            if (!(densityKgPerM3 >= 500 && densityKgPerM3 <= 1500)) {
                throw new IllegalArgumentException("density of an oil is " + densityKgPerM3
                        + " kg/m3; allowed are 500 to 1500 kg/m3. Give the density in kg/m3");
            }
        }

        @Override
        public PropertyKind kind() {
            return PropertyKind.DENSITY;
        }
    }

    /**
     * Kinematic viscosity at two temperatures, joined by ASTM D341.
     *
     * @param firstK       a temperature, K
     * @param firstM2PerS  kinematic viscosity there, m2/s
     * @param secondK      a higher temperature, K
     * @param secondM2PerS kinematic viscosity there, m2/s, lower
     */
    record TwoPoints(double firstK, double firstM2PerS, double secondK, double secondM2PerS) implements Given {
        private static final long serialVersionUID = 1;

        /**
         * Checks that the viscosity falls.
         *
         * @param firstK a temperature, K
         * @param firstM2PerS kinematic viscosity there, m2/s
         * @param secondK a higher temperature, K
         * @param secondM2PerS kinematic viscosity there, m2/s, lower
         */
        public TwoPoints {
            Checks.temperature(firstK);
            Checks.temperature(secondK);
            Checks.viscosity(firstM2PerS);
            Checks.viscosity(secondM2PerS);
            if (!(secondK - firstK >= 10)) {
                throw new IllegalArgumentException("the two viscosity points lie at " + Text.celsius(firstK) + " and "
                        + Text.celsius(secondK) + "; allowed is a second one at least 10 K hotter. Give the colder"
                        + " point first");
            }
            if (!(secondM2PerS < firstM2PerS)) {
                throw new IllegalArgumentException("viscosity rises from " + firstM2PerS + " m2/s at "
                        + Text.celsius(firstK) + " to " + secondM2PerS + " m2/s at " + Text.celsius(secondK)
                        + "; a liquid gets thinner when hot. Check the order of the two points");
            }
        }

        @Override
        public PropertyKind kind() {
            return PropertyKind.KINEMATIC_VISCOSITY;
        }
    }

    /**
     * Rows over temperature: viscosity is joined by ASTM D341 lines, everything else by straight lines.
     *
     * @param kind          which property
     * @param temperaturesK rising, K
     * @param values        one each, SI, above zero
     */
    record Table(PropertyKind kind, List<Double> temperaturesK, List<Double> values) implements Given {
        private static final long serialVersionUID = 1;

        /**
         * Checks order and values.
         *
         * @param kind which property
         * @param temperaturesK rising, K
         * @param values one each, SI, above zero
         */
        public Table {
            temperaturesK = List.copyOf(temperaturesK);
            values = List.copyOf(values);
            if (values.isEmpty() || temperaturesK.size() != values.size()) {
                throw new IllegalArgumentException("a table of " + kind.word() + " has " + temperaturesK.size()
                        + " temperatures and " + values.size() + " values; give the same number of each, at least one");
            }
            for (int i = 0; i < values.size(); i++) {
                Checks.temperature(temperaturesK.get(i));
                Checks.value(kind, values.get(i));
                Checks.step(kind, temperaturesK, values, i);
            }
        }
    }
}
