package org.linedrop.fluid;

/** Laws of hydrocarbon fuels and oils. */
final class PetroleumLaws {
    private PetroleumLaws() {}

    /**
     * Density by API MPMS 11.1 / ASTM D1250 (1980): alpha = K0/rho15^2 + K1/rho15 + K2,
     * rho15 exp(-alpha d (1 + 0.8 alpha d)), d = t - 15 C.
     *
     * @param at15KgPerM3 density at 15 C
     * @param alphaPerK   expansion at 15 C
     */
    record ExpandedDensity(double at15KgPerM3, double alphaPerK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        /** A fuel: constants by density group. */
        static ExpandedDensity fuel(double rho15) {
            double alpha;
            if (rho15 < 770.5) {
                alpha = 346.4228 / (rho15 * rho15) + 0.4388 / rho15;
            } else if (rho15 < 787.5) {
                alpha = 2680.3206 / (rho15 * rho15) - 0.00336312;
            } else if (rho15 < 838.5) {
                alpha = 594.5418 / (rho15 * rho15);
            } else {
                alpha = 186.9696 / (rho15 * rho15) + 0.4862 / rho15;
            }
            return new ExpandedDensity(rho15, alpha);
        }

        /** A lubricating oil. */
        static ExpandedDensity oil(double rho15) {
            return new ExpandedDensity(rho15, 0.6278 / rho15);
        }

        /** A lubricating oil whose density was measured at another temperature. */
        static ExpandedDensity oil(double temperatureK, double densityKgPerM3) {
            double rho15 = densityKgPerM3;
            // the expansion over the 15 C density moves by under 1e-3 per step: eight steps reach rounding
            for (int i = 0; i < 8; i++) {
                rho15 *= densityKgPerM3 / oil(rho15).at(temperatureK);
            }
            return oil(rho15);
        }

        @Override
        public double at(double temperatureK) {
            double ad = alphaPerK * (temperatureK - ZERO_C_K - 15);
            return at15KgPerM3 * Math.exp(-ad * (1 + 0.8 * ad));
        }
    }

    /**
     * Isothermal bulk modulus by API MPMS 11.2.1M (1984), constants from memory; 0 to 20 % below handbook figures.
     *
     * @param at15KgPerM3 density at 15 C
     */
    record Modulus(double at15KgPerM3) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double t = temperatureK - ZERO_C_K;
            double q = at15KgPerM3 / 1000 * (at15KgPerM3 / 1000);
            return 1e9 / Math.exp(-1.62080 + 0.00021592 * t + 0.87096 / q + 0.0042092 * t / q);
        }
    }

    /**
     * Specific heat of petroleum liquids, NBS Miscellaneous Publication 97 (Cragoe 1929), constants from memory.
     *
     * @param at15KgPerM3 density at 15 C
     */
    record SpecificHeat(double at15KgPerM3) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return 4186.8 * (0.403 + 0.00081 * (temperatureK - ZERO_C_K)) / Math.sqrt(at15KgPerM3 / 999);
        }
    }

    /**
     * Kinematic viscosity exp(A + B/T) mm2/s.
     *
     * @param a intercept of the logarithm
     * @param b slope, K
     */
    record AndradeViscosity(double a, double b) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return 1e-6 * Math.exp(a + b / temperatureK);
        }
    }

    /**
     * Bubble-point pressure of gasoline, US EPA AP-42 chapter 7.1: ln P[psia] = A - B/T[R] with A and B from the Reid
     * vapour pressure and the slope S of the distillation curve.
     *
     * @param reidPressurePa Reid vapour pressure
     * @param slope          S, F per cent; about 3 for motor, 2 for aviation gasoline (from memory)
     */
    record GasolinePressure(double reidPressurePa, double slope) implements PropertyLaw {
        private static final long serialVersionUID = 1;
        private static final double PSI = 6894.757293168;

        @Override
        public double at(double temperatureK) {
            double root = Math.sqrt(slope);
            double logReid = Math.log(reidPressurePa / PSI);
            double a = 15.64 - 1.854 * root - (0.8742 - 0.3280 * root) * logReid;
            double b = 8742 - 1042 * root - (1049 - 179.4 * root) * logReid;
            return PSI * Math.exp(a - b / (temperatureK * 1.8));
        }
    }

    /**
     * Kinematic viscosity on the ASTM D341 chart.
     *
     * @param line the line
     */
    record WaltherViscosity(D341 line) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return line.at(temperatureK);
        }
    }

    /**
     * One end of an oil's class: a ratio, and below the lower point of a two-point line the error of the extrapolation,
     * which grows with the square of the distance to a factor 1.4 at 35 K. Measured on a mono-grade oil the line is too
     * thick by 7 % at 20 K, 20 % at 30 K and 38 % at 37 K; polymer-thickened oils err the other way, so that both ends
     * move.
     *
     * @param law     the usual viscosity
     * @param ratio   spread of the class, for example 1.15 or 0.85
     * @param thick   whether this is the thick end
     * @param anchorK the lower point
     */
    record ColdSpread(PropertyLaw law, double ratio, boolean thick, double anchorK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double depth = Math.max(0, anchorK - temperatureK) / 35;
            double drift = 1 + 0.4 * depth * depth;
            return law.at(temperatureK) * ratio * (thick ? drift : 1 / drift);
        }
    }
}
