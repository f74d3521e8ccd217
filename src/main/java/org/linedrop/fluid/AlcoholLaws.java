package org.linedrop.fluid;

import java.util.List;

/** Handbook equations for pure liquids: ethanol and methanol. Names of the equations as in their handbooks. */
final class AlcoholLaws {
    private AlcoholLaws() {}

    /**
     * DIPPR equation 105, liquid density.
     *
     * @param molarMassGPerMol molar mass, g/mol
     * @param c1               mol/m3
     * @param c2               -
     * @param c3               critical temperature, K
     * @param c4               -
     */
    record RackettDensity(double molarMassGPerMol, double c1, double c2, double c3, double c4) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return molarMassGPerMol / 1000 * c1 / Math.pow(c2, 1 + Math.pow(1 - temperatureK / c3, c4));
        }
    }

    /**
     * DIPPR equation 101, viscosity exp(C1 + C2/T + C3 ln T), Pa s.
     *
     * @param c1 -
     * @param c2 K
     * @param c3 -
     */
    record LogarithmicViscosity(double c1, double c2, double c3) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            return Math.exp(c1 + c2 / temperatureK + c3 * Math.log(temperatureK));
        }
    }

    /**
     * PPDS equation 9, viscosity E exp(A q^(1/3) + B q^(4/3)) with q = (C - T)/(T - D), Pa s.
     *
     * @param a -
     * @param b -
     * @param c K
     * @param d K
     * @param e Pa s
     */
    record TwoPowerViscosity(double a, double b, double c, double d, double e) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double q = (c - temperatureK) / (temperatureK - d);
            double third = Math.pow(q, 1.0 / 3);
            return e * Math.exp(a * third + b * q * third);
        }
    }

    /**
     * Wagner's vapour pressure in the 1, 1.5, 2.5, 5 form.
     *
     * @param criticalK  critical temperature, K
     * @param criticalPa critical pressure, Pa
     * @param a          factor of x
     * @param b          factor of x^1.5
     * @param c          factor of x^2.5
     * @param d          factor of x^5
     */
    record WagnerPressure(double criticalK, double criticalPa, double a, double b, double c, double d)
            implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double x = 1 - temperatureK / criticalK;
            double sum = a * x + b * Math.pow(x, 1.5) + c * Math.pow(x, 2.5) + d * Math.pow(x, 5);
            return criticalPa * Math.exp(criticalK / temperatureK * sum);
        }
    }

    /**
     * DIPPR equation 100, molar specific heat as a polynomial in K.
     *
     * @param molarMassGPerMol molar mass, g/mol
     * @param coefficients     J/(kmol K), lowest power first
     */
    record MolarPolynomial(double molarMassGPerMol, List<Double> coefficients) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        MolarPolynomial {
            coefficients = List.copyOf(coefficients);
        }

        @Override
        public double at(double temperatureK) {
            return SimpleLaws.polynomial(coefficients, temperatureK) / molarMassGPerMol;
        }
    }

    /**
     * Adiabatic bulk modulus from the speed of sound, rho (c0 + c1 t)^2, t in C.
     *
     * @param density     density law
     * @param c0MPerS     speed of sound at 0 C, m/s
     * @param c1MPerSPerK its change per kelvin
     */
    record SoundSpeedModulus(PropertyLaw density, double c0MPerS, double c1MPerSPerK) implements PropertyLaw {
        private static final long serialVersionUID = 1;

        @Override
        public double at(double temperatureK) {
            double sound = c0MPerS + c1MPerSPerK * (temperatureK - ZERO_C_K);
            return density.at(temperatureK) * sound * sound;
        }
    }
}
