package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A drilled restrictor, jet or needle seat of any length between two bores. One instance is one shape; it is immutable.
 *
 * <p>Two laws, on the velocity head of the hole:
 *
 * <ul>
 *   <li>up to 2 bores long, and from 15: Idelchik's thick edge ({@link Nipple#turbulentK}) with {@code f l/d} and
 *       Sampson's creeping term {@code 12 pi/Re}. Its sum in creeping flow, {@code (12 pi + 64 l/d)/Re}, is exact to 1 per
 *       cent (Dagan, Weinbaum and Pfeffer 1982).
 *   <li>from 3 to 10 bores: Lichtarowicz's discharge coefficient,
 *       {@code 1/Cd = 1/(0.827 - 0.0085 l/d) + (20/Re)(1 + 2.25 l/d) - 0.005 l/d/(1 + 7.5 log10(0.00015 Re)^2)}, fitted to
 *       data over Re 10 to 20000. It leaves a drop at rest, and is therefore continued through zero, with the same value and
 *       slope, from the Reynolds number where its drop becomes proportional to the flow. Bores that are not large take
 *       it times the turbulent thick-edge loss over that between vessels (1.5), the mean of both directions so that the
 *       slope is continuous at rest: our assumption.
 * </ul>
 *
 * <p>Between 2 and 3 and between 10 and 15 bores the two drops are blended by smoothstep in l/d. At low Reynolds number
 * the laws disagree by a factor of up to 3 (Lichtarowicz being the higher): {@link #lowPressureDrop} is the lower end.
 */
public final class Restrictor {
    /** Thick-edged restrictors. */
    public static final Formula THICK = new Formula(
            "thick orifice",
            "K = 0.5 (1 - b1^2)^0.75 + tau (1 - b1^2)^0.375 (1 - b2^2) + (1 - b2^2)^2 + f l/d + 12 pi/Re on the hole",
            new Source(
                    "I. E. Idelchik, Handbook of Hydraulic Resistance, diagram 4-15; R. A. Sampson 1891 and Z. Dagan,"
                            + " S. Weinbaum, R. Pfeffer, J. Fluid Mech. 115, 1982 for creeping flow",
                    "",
                    Status.FROM_MEMORY),
            "sharp edges; 13 % against Weisbach's mouth orifices");

    /** Long restrictors. */
    public static final Formula LONG = new Formula(
            "long orifice",
            "1/Cd = 1/(0.827 - 0.0085 l/d) + (20/Re)(1 + 2.25 l/d) - 0.005 l/d/(1 + 7.5 log10(0.00015 Re)^2)",
            new Source(
                    "A. Lichtarowicz, R. K. Duggins, E. Markland, J. Mech. Eng. Sci. 7, 1965, 210-219",
                    "",
                    Status.FROM_MEMORY),
            "l/d 2 to 10, Re 10 to 2e4; straight through zero at low Re");

    /** Spread of the turbulent coefficient; at low Reynolds number {@link #lowPressureDrop} is the lower end. */
    public static final Band BAND = Band.ratios(
            0.8, 1.25, new Source("thick edge against long orifice and Weisbach's mouth orifices", "", Status.DERIVED));

    /** Sampson: a hole in creeping flow loses 24 mu Q/d^3, which is K1/Re with K1 = 12 pi on the hole. */
    private static final double CREEPING_K1 = 12 * Math.PI;

    private static final double LONG_FROM = 2;
    private static final double LONG_FULL = 3;
    private static final double LONG_TO = 10;
    private static final double LONG_NONE = 15;
    private static final double BETWEEN_VESSELS = 1.5; // 0.5 + 1.0, both neighbours infinite

    private final double holeM;
    private final double lengthM;
    private final double forwardK;
    private final double backwardK;
    private final double longShare;

    private Restrictor(double firstBoreM, double holeM, double lengthM, double secondBoreM) {
        this.holeM = holeM;
        this.lengthM = lengthM;
        forwardK = Nipple.turbulentK(firstBoreM, holeM, lengthM, secondBoreM);
        backwardK = Nipple.turbulentK(secondBoreM, holeM, lengthM, firstBoreM);
        double lengthOverBore = lengthM / holeM;
        longShare = Joins.step((lengthOverBore - LONG_FROM) / (LONG_FULL - LONG_FROM))
                * (1 - Joins.step((lengthOverBore - LONG_TO) / (LONG_NONE - LONG_TO)));
    }

    /**
     * A restrictor of given shape.
     *
     * @param firstBoreM  bore on the first side in m, at least the hole; infinite is a vessel
     * @param holeM       diameter of the hole in m, over zero
     * @param lengthM     length of the hole in m, not negative
     * @param secondBoreM bore on the second side in m, at least the hole; infinite is a vessel
     * @return the law of that shape
     * @throws IllegalArgumentException when the hole is wider than a neighbour, or something is NaN
     */
    public static Restrictor of(double firstBoreM, double holeM, double lengthM, double secondBoreM) {
        if (!(holeM > 0 && holeM <= firstBoreM && holeM <= secondBoreM)) {
            throw new IllegalArgumentException("restrictor of " + holeM + " m between bores of " + firstBoreM + " and "
                    + secondBoreM + " m: the hole must be over zero and not wider than either");
        }
        if (!(lengthM >= 0 && lengthM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "restrictor length " + lengthM + " m: it must be zero or more and finite");
        }
        return new Restrictor(firstBoreM, holeM, lengthM, secondBoreM);
    }

    /**
     * Discharge coefficient of Lichtarowicz's law at any Reynolds number, as published.
     *
     * @param lengthOverBore length over bore of the hole, 2 to 10
     * @param holeReynolds   Reynolds number on the hole, 10 to 2e4
     * @return Cd between large vessels
     */
    static double longDischargeCoefficient(double lengthOverBore, double holeReynolds) {
        double log = Math.log10(0.00015 * holeReynolds);
        return 1
                / (1 / ultimate(lengthOverBore)
                        + viscous(lengthOverBore) / holeReynolds
                        - 0.005 * lengthOverBore / (1 + 7.5 * log * log));
    }

    private static double ultimate(double lengthOverBore) {
        return 0.827 - 0.0085 * lengthOverBore;
    }

    private static double viscous(double lengthOverBore) {
        return 20 * (1 + 2.25 * lengthOverBore);
    }

    /**
     * Total-pressure drop of the restrictor.
     *
     * @param flowM3PerS          volume flow in m3/s, positive from the first bore to the second
     * @param transition          rule between laminar and turbulent in the hole
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public void pressureDrop(
            double flowM3PerS,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double drop = 0;
        double slope = 0;
        if (longShare < 1) {
            lowPressureDrop(flowM3PerS, transition, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
            drop = (1 - longShare) * valueAndSlope[0];
            slope = (1 - longShare) * valueAndSlope[1];
        }
        if (longShare > 0) {
            longDrop(flowM3PerS, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
            drop += longShare * valueAndSlope[0];
            slope += longShare * valueAndSlope[1];
        }
        valueAndSlope[0] = drop;
        valueAndSlope[1] = slope;
    }

    /**
     * The thick-edge law at any length: the lower end of what a long restrictor loses at low Reynolds number.
     *
     * @param flowM3PerS          volume flow in m3/s, positive from the first bore to the second
     * @param transition          rule between laminar and turbulent in the hole
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    void lowPressureDrop(
            double flowM3PerS,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        BoreFriction.pressureDrop(
                flowM3PerS, holeM, lengthM, 0, transition, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        Joins.addLocal(
                flowM3PerS,
                holeM,
                flowM3PerS >= 0 ? forwardK : backwardK,
                CREEPING_K1,
                densityKgPerM3,
                dynamicViscosityPaS,
                valueAndSlope);
    }

    private void longDrop(double flow, double density, double viscosity, double[] out) {
        double lengthOverBore = lengthM / holeM;
        double perFlow = Reynolds.of(1, holeM, density, viscosity);
        // where 1/Cd is twice 1/Cd_u the drop is proportional to the flow, but for the last term of the law (3e-3)
        double joinRe = viscous(lengthOverBore) * ultimate(lengthOverBore);
        double reynolds = Math.abs(flow) * perFlow;
        double share = 0.5 * (forwardK + backwardK) / BETWEEN_VESSELS;
        double join = joinRe / perFlow;
        if (reynolds > joinRe) {
            longAt(flow, reynolds, share, density, out);
        } else {
            longAt(join, joinRe, share, density, out);
            Joins.continueToZero(flow, join, out[0], out[1], out);
        }
    }

    private void longAt(double flow, double reynolds, double share, double density, double[] out) {
        double lengthOverBore = lengthM / holeM;
        double log = Math.log10(0.00015 * reynolds);
        double bell = 1 + 7.5 * log * log;
        double inverse = 1 / longDischargeCoefficient(lengthOverBore, reynolds);
        double perLnRe =
                -viscous(lengthOverBore) / reynolds + 0.005 * lengthOverBore * 15 * log / (bell * bell * Math.log(10));
        double head = share * Reynolds.velocityHeadPa(flow, holeM, density);
        out[0] = Math.signum(flow) * head * inverse * inverse;
        out[1] = 2 * head * inverse * (inverse + perLnRe) / Math.abs(flow);
    }
}
