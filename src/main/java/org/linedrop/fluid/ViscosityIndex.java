package org.linedrop.fluid;

/**
 * Viscosity index by ASTM D2270: how little an oil's viscosity changes with temperature, from its kinematic viscosity
 * at 40 and 100 C. Constants from memory, checked against published pairs of viscosities and index.
 */
final class ViscosityIndex {
    private ViscosityIndex() {}

    /**
     * Oils above this index are polymer-thickened or synthetic to a degree where a D341 line must not be carried into
     * the cold: a fluid of VI 380 is 2.5 times as thick as its line at -40 C and five times at -54 C, while oils up to
     * VI 190 are extrapolated to -30 C with a warning. The number between is our choice.
     */
    static final double VERY_HIGH = 250;

    /** Rows: from a viscosity at 100 C in mm2/s, a, b, c of L = a Y^2 + b Y + c, then d, e, f of H. */
    private static final double[][] ROWS = {
        {2, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077},
        {3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183},
        {4.4, 2.5000, -7.2143, 13.812, 0.82143, 1.5679, 0.119},
        {5.0, 0.10100, 16.6350, -45.469, 0.04985, 9.1613, -18.557},
        {6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656},
        {7.0, 0.01191, 21.4750, -72.870, 0.79762, -0.7321, 14.610},
        {7.7, 0.41858, 16.1558, -56.040, 0.05794, 10.5156, -28.240},
        {9.0, 0.88779, 7.5527, -16.600, 0.26665, 6.7015, -10.810},
        {12, 0.76720, 10.7972, -38.180, 0.20073, 8.4658, -22.490},
        {15, 0.97305, 5.3135, -2.200, 0.28889, 5.9741, -4.930},
        {18, 0.97256, 5.2500, -0.980, 0.24504, 7.4160, -16.730},
        {22, 0.91413, 7.4759, -21.820, 0.20323, 9.1267, -34.230},
        {28, 0.87031, 9.7157, -50.770, 0.18411, 10.1015, -46.750},
        {40, 0.84703, 12.6752, -133.310, 0.17029, 11.4866, -80.620},
        {55, 0.85921, 11.1009, -83.190, 0.17130, 11.3680, -76.940},
        {70, 0.83531, 14.6731, -216.246, 0.16841, 11.8493, -96.947}
    };

    /**
     * Viscosity index.
     *
     * @param at40CM2PerS  kinematic viscosity at 40 C, m2/s
     * @param at100CM2PerS kinematic viscosity at 100 C, m2/s
     * @return the index; NaN below 2 mm2/s at 100 C, where the standard ends
     */
    static double of(double at40CM2PerS, double at100CM2PerS) {
        double u = at40CM2PerS * 1e6;
        double y = at100CM2PerS * 1e6;
        if (!(y >= 2) || !(u > y)) {
            return Double.NaN;
        }
        int i = ROWS.length - 1;
        while (y < ROWS[i][0]) {
            i--;
        }
        double[] row = ROWS[i];
        double l = (row[1] * y + row[2]) * y + row[3];
        double h = (row[4] * y + row[5]) * y + row[6];
        if (u >= h) {
            return 100 * (l - u) / (l - h);
        }
        double n = (Math.log10(h) - Math.log10(u)) / Math.log10(y);
        return 100 + (Math.pow(10, n) - 1) / 0.00715;
    }

    /**
     * Whether a line is too flat to be carried into the cold.
     *
     * @param line kinematic viscosity
     * @return true when its index is above {@link #VERY_HIGH}
     */
    static boolean veryHigh(PropertyLaw line) {
        return of(line.at(PropertyLaw.ZERO_C_K + 40), line.at(PropertyLaw.ZERO_C_K + 100)) > VERY_HIGH;
    }
}
