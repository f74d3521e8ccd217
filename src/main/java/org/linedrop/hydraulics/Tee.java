package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Differences of total pressure between the three ports of a tee or Y block, for all six flow patterns, with true
 * derivatives. One instance is one shape; it is immutable.
 *
 * <p>Ports: 0 and 1 are the two run legs (one bore), 2 is the branch. {@code angleRad} is the deflection of flow that
 * turns from leg 0 into the branch or back; between leg 1 and the branch it is {@code pi - angleRad}. In a Y block the
 * common port is the branch. With {@code k = rho/(2 A^2)}, {@code A} the area of the run, {@code m} the branch area over
 * {@code A}, {@code q} the branch flow over the flow of the common leg, {@code t = tan(delta/2)}, {@code c = cos(delta)} and
 * {@code r} the edge radius over the run bore, coefficients on the head of the common flow in the run:
 *
 * <ul>
 *   <li>run common, dividing (Gardel): run {@code 0.03 (1-q)^2 + 0.35 q^2 - 0.2 q (1-q)}; branch
 *       {@code 0.95 (1-q)^2 + q^2 (1.3 t - 0.3 + (0.4 - 0.1 m)/m^2)(1 - 0.9 sqrt(r/m)) + 0.4 q (1-q)(1 + 1/m) t}.
 *   <li>run common, combining (Gardel): run
 *       {@code 0.03 (1-q)^2 - q^2 (1 + (1.62 - sqrt r)(c/m - 1) - 0.38 (1-m)) + (2-m) q (1-q)}; branch
 *       {@code -0.92 (1-q)^2 - q^2 ((1.2 - sqrt r)(c/m - 1) + 0.8 (1 - 1/m^2) - (1-m) c/m) + (2-m) q (1-q)}.
 *   <li>branch common: each run leg {@code K0 + (K1 - K0) q^2}, {@code q} its share of the branch flow. {@code K1} and
 *       {@code K0} follow from Gardel's values at q = 1, where one leg is at rest and both descriptions must agree: 0.58
 *       and 1.20 dividing, 0.95 and 1.30 combining for an equal sharp 90-degree tee. The shape between is assumed.
 * </ul>
 *
 * <p>Every difference is therefore a quadratic form of two flows, a different one in each pattern; forms of neighbouring
 * patterns agree where a leg is at rest, so that nothing jumps. Slopes jump there, as published. Coefficients may be
 * negative: a gain of pressure is real. To this comes a linear term, K1/Re with 150 along the run and 800 into the branch
 * (Darby, flanged tee), as a star of three resistances, which rules at rest.
 *
 * <p>Against the Munich tests of an equal sharp 90-degree tee: within 0.3 on the branch and 0.07 on the run, combining;
 * 45 degrees within 0.09. A tee whose ports are all one bore is what Gardel measured; others are formulas only.
 */
public final class Tee {
    /** Gardel's tee law. */
    public static final Formula FORMULA = new Formula(
            "Gardel, dividing and combining tees",
            "quadratic in q = Q_branch/Q_common with angle, area ratio and edge radius; branch common K0 + (K1 - K0) q^2",
            new Source(
                    "A. Gardel, Les pertes de charge dans les ecoulements au travers de branchements en te, Bull. Tech."
                            + " Suisse Romande 9 and 10, 1957; branch-common form derived by continuity",
                    "",
                    Status.FROM_MEMORY),
            "45 to 135 degrees, area ratio up to 1; +-0.3");

    /** Spread of published tee coefficients, on the head of the common flow in the run. */
    public static final Band BAND = new Band(
            1,
            1,
            0.3,
            new Source(
                    "Gardel and Bassett against the Munich tests (Vogel 1926), equal 90-degree tee",
                    "",
                    Status.DERIVED));

    /** Who feeds whom. */
    public enum Pattern {
        /** Leg 0 feeds leg 1 and the branch. */
        DIVIDING_FROM_0(0, true),
        /** Leg 1 feeds leg 0 and the branch. */
        DIVIDING_FROM_1(1, true),
        /** The branch feeds both run legs. */
        DIVIDING_FROM_BRANCH(2, true),
        /** Leg 1 and the branch feed leg 0. */
        COMBINING_INTO_0(0, false),
        /** Leg 0 and the branch feed leg 1. */
        COMBINING_INTO_1(1, false),
        /** Both run legs feed the branch. */
        COMBINING_INTO_BRANCH(2, false);

        private final int commonPort;
        private final boolean divides;

        Pattern(int commonPort, boolean divides) {
            this.commonPort = commonPort;
            this.divides = divides;
        }

        private int firstForm() {
            return (divides ? commonPort : commonPort + 3) * 2 * FORM;
        }

        /**
         * Whether one leg feeds two.
         *
         * @return true when dividing, false when combining
         */
        public boolean divides() {
            return divides;
        }

        /**
         * The port that carries the whole flow.
         *
         * @return 0, 1 or 2
         */
        public int commonPort() {
            return commonPort;
        }
    }

    private static final double K1_RUN = 150;
    private static final double K1_BRANCH = 800;
    private static final int FORM = 3;

    private final double runBoreM;
    private final double branchBoreM;

    /** For each pattern the forms a Q1^2 + b Q1 Q2 + c Q2^2 of p0 - p1 and p0 - p2 over k. */
    private final double[] forms = new double[Pattern.values().length * 2 * FORM];

    private Tee(double runBoreM, double branchBoreM, double angleRad, double edgeRadiusM) {
        this.runBoreM = runBoreM;
        this.branchBoreM = branchBoreM;
        double bores = branchBoreM / runBoreM;
        Gardel near = Gardel.of(angleRad, bores * bores, edgeRadiusM / runBoreM);
        Gardel far = Gardel.of(Math.PI - angleRad, bores * bores, edgeRadiusM / runBoreM);
        // flows as rows of (Q1, Q2), both counted out of the tee: o0 = -(Q1 + Q2), o1 = Q1, o2 = Q2
        double[] out0 = {-1, -1};
        double[] out1 = {1, 0};
        double[] out2 = {0, 1};
        double[] in0 = {1, 1};
        double[] in1 = {-1, 0};
        double[] in2 = {0, -1};
        put(Pattern.DIVIDING_FROM_0, 0, 1, near.divideRun(), out1, out2);
        put(Pattern.DIVIDING_FROM_0, 1, 1, near.divideBranch(), out1, out2);
        put(Pattern.DIVIDING_FROM_1, 0, -1, far.divideRun(), out0, out2);
        put(Pattern.DIVIDING_FROM_1, 1, -1, far.divideRun(), out0, out2);
        put(Pattern.DIVIDING_FROM_1, 1, 1, far.divideBranch(), out0, out2);
        put(Pattern.COMBINING_INTO_0, 0, -1, near.combineRun(), in1, in2);
        put(Pattern.COMBINING_INTO_0, 1, -1, near.combineBranch(), in1, in2);
        put(Pattern.COMBINING_INTO_1, 0, 1, far.combineRun(), in0, in2);
        put(Pattern.COMBINING_INTO_1, 1, 1, far.combineRun(), in0, in2);
        put(Pattern.COMBINING_INTO_1, 1, -1, far.combineBranch(), in0, in2);
        // branch common: the leg at rest is worth what Gardel's pattern next door says at q = 1
        double[] leg0 = branchCommon(near.combineBranchEnd(), far.combineBranchEnd() - far.combineRunEnd());
        double[] leg1 = branchCommon(far.combineBranchEnd(), near.combineBranchEnd() - near.combineRunEnd());
        put(Pattern.DIVIDING_FROM_BRANCH, 0, 1, leg1, out1, out0);
        put(Pattern.DIVIDING_FROM_BRANCH, 0, -1, leg0, out0, out1);
        put(Pattern.DIVIDING_FROM_BRANCH, 1, -1, leg0, out0, out1);
        leg0 = branchCommon(near.divideBranchEnd(), far.divideBranchEnd() - far.divideRunEnd());
        leg1 = branchCommon(far.divideBranchEnd(), near.divideBranchEnd() - near.divideRunEnd());
        put(Pattern.COMBINING_INTO_BRANCH, 0, 1, leg0, in0, in1);
        put(Pattern.COMBINING_INTO_BRANCH, 0, -1, leg1, in1, in0);
        put(Pattern.COMBINING_INTO_BRANCH, 1, 1, leg0, in0, in1);
    }

    /**
     * A tee of given shape.
     *
     * @param runBoreM    bore of the two run legs in m, over zero
     * @param branchBoreM bore of the branch in m, over zero, at most 1.25 run bores
     * @param angleRad    deflection from leg 0 into the branch in rad, 30 to 150 degrees; pi/2 is a plain tee
     * @param edgeRadiusM radius of the edge between run and branch in m, 0 (sharp) to 0.2 run bores times the area ratio
     * @return the law of that shape
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static Tee of(double runBoreM, double branchBoreM, double angleRad, double edgeRadiusM) {
        if (!(runBoreM > 0 && branchBoreM > 0 && branchBoreM <= 1.25 * runBoreM)) {
            throw new IllegalArgumentException("tee with a run of " + runBoreM + " m and a branch of " + branchBoreM
                    + " m: both must be over zero and the branch at most 1.25 times the run; put the change of bore"
                    + " beside the tee");
        }
        Joins.within(
                "tee angle in rad",
                angleRad,
                Math.toRadians(30),
                Math.toRadians(150),
                "state the deflection from the first run leg into the branch");
        Joins.within(
                "tee edge radius in m",
                edgeRadiusM,
                0,
                0.2 * branchBoreM * branchBoreM / runBoreM,
                "take 0 for a sharp edge");
        return new Tee(runBoreM, branchBoreM, angleRad, edgeRadiusM);
    }

    /** K0 + (K1 - K0) q^2 on own flow X and other flow Y, whose sum is common: K1 X^2 + 2 K0 X Y + K0 Y^2. */
    private static double[] branchCommon(double through, double atRest) {
        return new double[] {through, 2 * atRest, atRest};
    }

    /** Adds sign (f0 X^2 + f1 X Y + f2 Y^2), X and Y linear in (Q1, Q2), to the form of a difference in a pattern. */
    private void put(Pattern pattern, int difference, double sign, double[] form, double[] x, double[] y) {
        int at = pattern.firstForm() + difference * FORM;
        forms[at] += sign * (form[0] * x[0] * x[0] + form[1] * x[0] * y[0] + form[2] * y[0] * y[0]);
        forms[at + 1] +=
                sign * (2 * form[0] * x[0] * x[1] + form[1] * (x[0] * y[1] + x[1] * y[0]) + 2 * form[2] * y[0] * y[1]);
        forms[at + 2] += sign * (form[0] * x[1] * x[1] + form[1] * x[1] * y[1] + form[2] * y[1] * y[1]);
    }

    /**
     * Which pattern a pair of flows is. Where a leg is at rest two patterns meet and agree.
     *
     * @param secondOutM3PerS flow out of the tee through leg 1 in m3/s, any sign
     * @param branchOutM3PerS flow out of the tee through the branch in m3/s, any sign
     * @return the pattern; leg 0 carries the balance
     */
    public static Pattern pattern(double secondOutM3PerS, double branchOutM3PerS) {
        boolean secondOut = secondOutM3PerS >= 0;
        boolean branchOut = branchOutM3PerS >= 0;
        boolean firstOut = secondOutM3PerS + branchOutM3PerS < 0;
        if (secondOut && branchOut) {
            return Pattern.DIVIDING_FROM_0;
        }
        if (!secondOut && !branchOut) {
            return Pattern.COMBINING_INTO_0;
        }
        if (secondOut) {
            return firstOut ? Pattern.DIVIDING_FROM_BRANCH : Pattern.COMBINING_INTO_1;
        }
        return firstOut ? Pattern.DIVIDING_FROM_1 : Pattern.COMBINING_INTO_BRANCH;
    }

    /**
     * Differences of total pressure from port 0 and their derivatives. Leg 0 carries the balance of the two flows given,
     * into the tee.
     *
     * @param secondOutM3PerS     Q1, volume flow out of the tee through leg 1 in m3/s, any sign
     * @param branchOutM3PerS     Q2, volume flow out of the tee through the branch in m3/s, any sign
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param out                 modified: slots 0 and 1 p0 - p1 and p0 - p2 in Pa, slots 2 and 3 the derivatives of the
     *                            first in Q1 and Q2, slots 4 and 5 those of the second, Pa s/m3
     */
    public void evaluate(
            double secondOutM3PerS,
            double branchOutM3PerS,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] out) {
        double area = Reynolds.areaM2(runBoreM);
        double k = 0.5 * densityKgPerM3 / (area * area);
        int at = pattern(secondOutM3PerS, branchOutM3PerS).firstForm();
        for (int difference = 0; difference < 2; difference++) {
            double a = k * forms[at];
            double b = k * forms[at + 1];
            double c = k * forms[at + 2];
            out[difference] = (a * secondOutM3PerS + b * branchOutM3PerS) * secondOutM3PerS
                    + c * branchOutM3PerS * branchOutM3PerS;
            out[2 + 2 * difference] = 2 * a * secondOutM3PerS + b * branchOutM3PerS;
            out[3 + 2 * difference] = b * secondOutM3PerS + 2 * c * branchOutM3PerS;
            at += FORM;
        }
        double branchArea = Reynolds.areaM2(branchBoreM);
        double run = 0.25 * K1_RUN * dynamicViscosityPaS / (runBoreM * area); // half of K1 mu/(2 d A) in each run leg
        double branch = 0.5 * (K1_BRANCH - 0.5 * K1_RUN) * dynamicViscosityPaS / (branchBoreM * branchArea);
        out[0] += run * (2 * secondOutM3PerS + branchOutM3PerS);
        out[1] += run * (secondOutM3PerS + branchOutM3PerS) + branch * branchOutM3PerS;
        out[2] += 2 * run;
        out[3] += run;
        out[4] += run;
        out[5] += run + branch;
    }

    /**
     * Loss of total pressure of each leg against the common one, counted along the flow: the rows of a report. Negative
     * is a gain.
     *
     * @param secondOutM3PerS     volume flow out of the tee through leg 1 in m3/s, any sign
     * @param branchOutM3PerS     volume flow out of the tee through the branch in m3/s, any sign
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param out                 modified, at least 6 slots: 0 to 2 the losses of the legs in Pa, 0 for the common leg;
     *                            the rest is scratch
     */
    public void legLosses(
            double secondOutM3PerS,
            double branchOutM3PerS,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] out) {
        evaluate(secondOutM3PerS, branchOutM3PerS, densityKgPerM3, dynamicViscosityPaS, out);
        Pattern pattern = pattern(secondOutM3PerS, branchOutM3PerS);
        double fall1 = out[0];
        double fall2 = out[1];
        int common = pattern.commonPort();
        double fallCommon = common == 0 ? 0 : common == 1 ? fall1 : fall2;
        double sign = pattern.divides() ? 1 : -1;
        out[0] = sign * (0 - fallCommon);
        out[1] = sign * (fall1 - fallCommon);
        out[2] = sign * (fall2 - fallCommon);
    }

    /**
     * Gardel's four forms for one deflection. Each is {@code f0 X^2 + f1 X Y + f2 Y^2} over k, with X the flow of the
     * other run leg and Y that of the branch.
     */
    record Gardel(double divideTurn, double divideMixed, double combineRunTurn, double combineTurn, double mixed) {
        static Gardel of(double deflectionRad, double areaRatio, double edgeRatio) {
            double m = areaRatio;
            double tangent = Math.tan(deflectionRad / 2);
            double cosine = Math.cos(deflectionRad) / m;
            double edge = Math.sqrt(edgeRatio);
            return new Gardel(
                    (1.3 * tangent - 0.3 + (0.4 - 0.1 * m) / (m * m)) * (1 - 0.9 * Math.sqrt(edgeRatio / m)),
                    0.4 * (1 + 1 / m) * tangent,
                    1 + (1.62 - edge) * (cosine - 1) - 0.38 * (1 - m),
                    (1.2 - edge) * (cosine - 1) + 0.8 * (1 - 1 / (m * m)) - (1 - m) * cosine,
                    2 - m);
        }

        double[] divideRun() {
            return new double[] {0.03, -0.2, 0.35};
        }

        double[] divideBranch() {
            return new double[] {0.95, divideMixed, divideTurn};
        }

        double[] combineRun() {
            return new double[] {0.03, mixed, -combineRunTurn};
        }

        double[] combineBranch() {
            return new double[] {-0.92, mixed, -combineTurn};
        }

        double divideRunEnd() {
            return 0.35;
        }

        double divideBranchEnd() {
            return divideTurn;
        }

        double combineRunEnd() {
            return -combineRunTurn;
        }

        double combineBranchEnd() {
            return -combineTurn;
        }
    }
}
