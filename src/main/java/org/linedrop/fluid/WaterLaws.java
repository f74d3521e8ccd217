package org.linedrop.fluid;

import java.util.List;

/** Laws of water and of water with glycol. */
final class WaterLaws {
    private WaterLaws() {}

    /**
     * Density of liquid water at 101.325 kPa, Kell 1975 (J. Chem. Eng. Data 20:97), coefficients from memory, checked
     * against the steam tables: within 0.01 % from 0 to 130 C.
     */
    record KellDensity() implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double t = temperatureK - ZERO_C_K;
            double numerator = 999.83952
                    + t
                            * (16.945176
                                    + t
                                            * (-7.9870401e-3
                                                    + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
            return numerator / (1 + 16.879850e-3 * t);
        }
    }

    /**
     * Viscosity of liquid water at 0.1 MPa, IAPWS SR6-08(2011), stated range 253.15-383.15 K, coefficients from memory;
     * within 0.30 % of the steam tables from 0 to 130 C.
     */
    record Viscosity() implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double ratio = temperatureK / 300;
            return 1e-6
                    * (280.68 * Math.pow(ratio, -1.9)
                            + 511.45 * Math.pow(ratio, -7.7)
                            + 61.131 * Math.pow(ratio, -19.6)
                            + 0.45903 * Math.pow(ratio, -40));
        }
    }

    /**
     * Raoult's law on the water of a mixture: mole fraction of water times its saturation pressure after IAPWS-IF97
     * equation 30 (region 4, stated range 273.15-647 K; smooth below). The other component's own pressure is neglected.
     *
     * @param waterMoleFraction 1 for water itself
     */
    record SaturationPressure(double waterMoleFraction) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double theta = temperatureK - 0.23855557567849 / (temperatureK - 650.17534844798);
            double a = (theta + 1167.0521452767) * theta - 724213.16703206;
            double b = (-17.073846940092 * theta + 12020.82470247) * theta - 3232555.0322333;
            double c = (14.91510861353 * theta - 4823.2657361591) * theta + 405113.40542057;
            double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
            double square = root * root;
            return waterMoleFraction * 1e6 * square * square;
        }
    }

    /**
     * Viscosity of a glycol and water mixture: logarithm cubic in 1000/T, fitted to the ASHRAE tables (to 100 C);
     * above, an exponential in 1/T with the slope of 80-100 C.
     *
     * @param coefficients cubic in 1000/T for the logarithm of mPa s, lowest power first
     * @param tailSlopeK   slope of the logarithm in 1/T above 100 C
     */
    record GlycolViscosity(List<Double> coefficients, double tailSlopeK) implements PropertyLaw {
        private static final long serialVersionUID = 1;
        private static final double TAIL_K = 373.15;

        GlycolViscosity {
            coefficients = List.copyOf(coefficients);
        }

        @Override
        public double at(double temperatureK) {
            double body = cubic(Math.min(temperatureK, TAIL_K));
            return temperatureK > TAIL_K ? body * Math.exp(tailSlopeK * (1 / temperatureK - 1 / TAIL_K)) : body;
        }

        private double cubic(double temperatureK) {
            return 1e-3 * Math.exp(SimpleLaws.polynomial(coefficients, 1000 / temperatureK));
        }
    }
}
