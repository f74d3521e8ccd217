package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A forged, machined or low-profile elbow: two bores that meet at a sharp inner corner. The coefficient is that of a
 * single rough-walled mitre bend plus K1/Re, on the bore of the fitting.
 *
 * <p>Table of Kirchbach and Schubart, straight lines between its angles; above 90 degrees it grows as Weisbach's elbow
 * formula does. K1 is 500 at 45 and 1000 at 90 degrees and above. Published coefficients of such a corner at 90 degrees
 * run from 0.8 to 1.8; a measured 13.6 mm mitre lies 6 per cent under the law, a measured 3/4-inch push-connect elbow
 * reads 1.0 over Re 40000.
 */
public final class MitreElbow {
    /** Mitre law. */
    public static final Formula FORMULA = new Formula(
            "single mitre, rough wall",
            "K = 0.165, 0.320, 0.684, 1.265 at 30, 45, 60, 90 degrees, + K1/Re",
            new Source(
                    "Kirchbach and Schubart in Hydraulic Institute Engineering Data Book, 2nd ed. 1990",
                    "Table 33",
                    Status.PUBLISHED),
            "0 to 90 degrees, Re about 2.25e5; 12 % against a measured 13.6 mm mitre, published spread 0.8 to 1.8 at 90");

    /** Published spread at 90 degrees, 0.8 to 1.8 about 1.265; at 60 down to 0.40 for 0.684. */
    public static final Band BAND = Band.ratios(
            0.6,
            1.42,
            new Source(
                    "mitre and intersecting-bore elbows: Miller 1990 0.40 to 0.59 at 60 degrees, push-connect elbow 1.0,"
                            + " intersecting cylinders 1.25 to 1.8, screwed 3-K 0.85",
                    "",
                    Status.PUBLISHED));

    private static final double[] ANGLES_DEG = {0, 5, 10, 15, 22.5, 30, 45, 60, 90};
    private static final double[] ROUGH = {0, 0.024, 0.044, 0.062, 0.154, 0.165, 0.320, 0.684, 1.265};
    private static final double[] K1_ANGLES_DEG = {0, 45, 90};
    private static final double[] K1 = {0, 500, 1000}; // Darby 2001, mitres of 45 and 90 degrees

    private MitreElbow() {}

    /**
     * Coefficient at high Reynolds number, rough wall: the default for forged elbows.
     *
     * @param angleRad deflection in rad, 0 to pi
     * @return K on the velocity head of the fitting bore
     * @throws IllegalArgumentException when the angle is outside its range or NaN
     */
    public static double turbulentK(double angleRad) {
        Joins.within("elbow angle in rad", angleRad, 0, Math.PI, "state the deflection, 0 for straight");
        double atTable = Joins.interpolate(ANGLES_DEG, ROUGH, Math.toDegrees(angleRad));
        return angleRad <= Math.PI / 2 ? atTable : atTable * weisbach(angleRad) / weisbach(Math.PI / 2);
    }

    /**
     * Numerator of the low Reynolds number term.
     *
     * @param angleRad deflection in rad, 0 to pi
     * @return K1: 500 at 45 degrees, 1000 at 90 and above
     */
    public static double k1(double angleRad) {
        return Joins.interpolate(K1_ANGLES_DEG, K1, Math.toDegrees(angleRad));
    }

    /** Weisbach 1855, from memory: 0.9457 sin^2(t/2) + 2.047 sin^4(t/2). */
    private static double weisbach(double angleRad) {
        double sine = Math.sin(angleRad / 2);
        double square = sine * sine;
        return 0.9457 * square + 2.047 * square * square;
    }
}
