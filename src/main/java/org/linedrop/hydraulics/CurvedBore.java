package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Friction of a hose that lies on a bend, developed flow. {@code r} is the bore radius, {@code R} the radius of the bend
 * centre line, {@code De = Re sqrt(r/R)}, {@code X = Re (r/R)^2}.
 *
 * <ul>
 *   <li>Laminar, up to Re_c: 64/Re times White's ratio {@code 1/(1 - (1 - (11.6/De)^0.45)^(1/0.45))}, 1 up to De 11.6.
 *   <li>Critical: Ito's {@code Re_c = 20000 (r/R)^0.32} over R/r 15 to 860; R/r 15 is used below, and never under 2000.
 *   <li>Turbulent, from 1.25 Re_c: Colebrook times Ito's ratio {@code (0.304 + 0.029 X^0.25)/0.3164}, 1 up to X 0.034.
 * </ul>
 *
 * <p>Joins, all with continuous slope: smoothstep over Re_c to 1.25 Re_c; Ito's ratio grows from 1 by smoothstep over X
 * 0.034 to 0.068 (where it is under 1.008); it is held above X 300, the end of Ito's data, its corner rounded over X 246
 * to 362 (0.4 per cent at most), and bends tighter than R/r 5 are taken as R/r 5 (at R/r 1.5 White's ratio would leave the
 * laminar law above the turbulent one and the loss falling with flow). From R/r 860 to 2000 the law goes back to that of a straight
 * bore by smoothstep. Accuracy: about 5 per cent for developed flow; Mishra and Gupta's turbulent law agrees
 * within 5 per cent, Ito's laminar one within 4 per cent for De over 100 (10 per cent at De 20).
 */
public final class CurvedBore {
    /** White's laminar ratio. */
    public static final Formula LAMINAR = new Formula(
            "White, laminar curved pipe",
            "fc/f = 1/(1 - (1 - (11.6/De)^0.45)^(1/0.45))",
            new Source("C. M. White, Proc. R. Soc. A 123, 1929, 645-663", "", Status.FROM_MEMORY),
            "De 11.6 to 2000; about 5 %");

    /** Ito's turbulent ratio. */
    public static final Formula TURBULENT = new Formula(
            "Ito, turbulent curved pipe",
            "fc = 0.304 Re^-0.25 + 0.029 sqrt(r/R), as a ratio to 0.3164 Re^-0.25",
            new Source("H. Ito, Trans. ASME J. Basic Eng. 81, 1959, 123-134", "", Status.FROM_MEMORY),
            "0.034 < Re (r/R)^2 < 300; about 5 %");

    /** Ito's critical Reynolds number. */
    static final Formula CRITICAL = new Formula(
            "Ito, critical Reynolds number of a curved pipe",
            "Re_c = 20000 (r/R)^0.32",
            new Source("H. Ito, Trans. ASME J. Basic Eng. 81, 1959, 123-134", "", Status.FROM_MEMORY),
            "15 < R/r < 860");

    private static final double DEAN_LOW = 11.6;
    private static final double WHITE = 0.45;
    private static final double BLASIUS = 0.3164;
    private static final double RATIO_CONSTANT = 0.304 / BLASIUS;
    private static final double RATIO_RISE = 0.029 / BLASIUS;
    private static final double ITO_LOW = 0.034;
    private static final double ITO_HIGH = 300;
    private static final double CORNER = 0.2; // half width of the rounded corner in X^0.25
    private static final double CRITICAL_AT_ONE = 2e4;
    private static final double CRITICAL_POWER = -0.32;
    private static final double TIGHTEST = 15;
    private static final double HELD = 5;
    private static final double WIDEST = 860;
    private static final double STRAIGHT = 2000;
    private static final double LOWEST_CRITICAL = 2000;
    private static final double SPAN = 1.25;

    private CurvedBore() {}

    /**
     * Reynolds number up to which flow in a curved bore stays laminar.
     *
     * @param radiusRatio R/r, bend radius over bore radius, over 1
     * @return Ito's critical Reynolds number, held at its value for R/r 15 in tighter bends and never under 2000
     */
    public static double criticalReynolds(double radiusRatio) {
        double held = Math.max(radiusRatio, TIGHTEST);
        return Math.max(LOWEST_CRITICAL, CRITICAL_AT_ONE * Math.pow(held, CRITICAL_POWER));
    }

    /**
     * Pressure drop of a bore along a bend.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               bore in m, over zero
     * @param lengthM             length along the centre line in m, not negative
     * @param bendRadiusM         radius of the centre line in m, over half the bore; infinite is straight
     * @param roughnessM          roughness in m, 0 to the bore
     * @param transition          rule of the straight bore, used as the bend radius becomes large
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double boreM,
            double lengthM,
            double bendRadiusM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double radiusRatio = 2 * bendRadiusM / boreM;
        double reynolds = Reynolds.of(flowM3PerS, boreM, densityKgPerM3, dynamicViscosityPaS);
        if (radiusRatio >= STRAIGHT || !(reynolds > DEAN_LOW)) { // De is under Re, so that the ratio is 1
            BoreFriction.pressureDrop(
                    flowM3PerS,
                    boreM,
                    lengthM,
                    roughnessM,
                    transition,
                    densityKgPerM3,
                    dynamicViscosityPaS,
                    valueAndSlope);
            return;
        }
        frictionFactor(reynolds, roughnessM / boreM, radiusRatio, transition, valueAndSlope);
        BoreFriction.fromFactor(flowM3PerS, reynolds, boreM, lengthM, densityKgPerM3, valueAndSlope);
    }

    /**
     * Darcy friction factor of a curved bore.
     *
     * @param reynolds          Reynolds number, over zero and finite
     * @param relativeRoughness roughness over bore, 0 to 1
     * @param radiusRatio       R/r, bend radius over bore radius, over 1; infinite is straight
     * @param transition        rule of the straight bore
     * @param valueAndSlope     modified: slot 0 the factor, slot 1 its derivative in the Reynolds number
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    static void frictionFactor(
            double reynolds,
            double relativeRoughness,
            double radiusRatio,
            Transition transition,
            double[] valueAndSlope) {
        if (!(radiusRatio > 1)) {
            throw new IllegalArgumentException("bend radius over bore radius " + radiusRatio
                    + " is outside the law: it must be over 1; check the bend radius and the bore");
        }
        double back = Joins.step((radiusRatio - WIDEST) / (STRAIGHT - WIDEST));
        double f = 0;
        double slope = 0;
        if (back < 1) {
            curved(reynolds, relativeRoughness, Math.max(radiusRatio, HELD), valueAndSlope);
            f = valueAndSlope[0];
            slope = valueAndSlope[1];
        }
        if (back > 0) {
            FrictionFactor.evaluate(reynolds, relativeRoughness, transition, valueAndSlope);
            f += back * (valueAndSlope[0] - f);
            slope += back * (valueAndSlope[1] - slope);
        }
        valueAndSlope[0] = f;
        valueAndSlope[1] = slope;
    }

    private static void curved(double reynolds, double roughness, double radiusRatio, double[] out) {
        double critical = criticalReynolds(radiusRatio);
        double width = (SPAN - 1) * critical;
        double t = (reynolds - critical) / width;
        if (t >= 1) {
            turbulent(reynolds, roughness, radiusRatio, out);
            return;
        }
        laminar(reynolds, radiusRatio, out);
        if (t > 0) {
            double f = out[0];
            double slope = out[1];
            turbulent(reynolds, roughness, radiusRatio, out);
            double share = Joins.step(t);
            out[1] = (1 - share) * slope + share * out[1] + Joins.stepSlope(t) / width * (out[0] - f);
            out[0] = f + share * (out[0] - f);
        }
    }

    private static void laminar(double reynolds, double radiusRatio, double[] out) {
        FrictionFactor.laminar(reynolds, out);
        double f = out[0];
        double slope = out[1];
        laminarRatio(reynolds / Math.sqrt(radiusRatio), out);
        double ratio = out[0];
        out[0] = f * ratio;
        out[1] = slope * ratio + f * out[1] / Math.sqrt(radiusRatio);
    }

    /**
     * White's ratio of curved to straight friction in laminar flow.
     *
     * @param dean          Dean number {@code Re sqrt(r/R)}, not negative
     * @param valueAndSlope modified: slot 0 the ratio, at least 1, slot 1 its derivative in the Dean number
     */
    static void laminarRatio(double dean, double[] valueAndSlope) {
        if (dean <= DEAN_LOW) {
            valueAndSlope[0] = 1;
            valueAndSlope[1] = 0;
            return;
        }
        double w = Math.pow(DEAN_LOW / dean, WHITE);
        double rest = 1 - w;
        double power = Math.pow(rest, 1 / WHITE);
        double ratio = 1 / (1 - power);
        valueAndSlope[0] = ratio;
        valueAndSlope[1] = ratio * ratio * power / rest * w / dean;
    }

    private static void turbulent(double reynolds, double roughness, double radiusRatio, double[] out) {
        Colebrook.evaluate(reynolds, roughness, out);
        double f = out[0];
        double slope = out[1];
        turbulentRatio(reynolds, radiusRatio, out);
        double ratio = out[0];
        out[0] = f * ratio;
        out[1] = slope * ratio + f * out[1];
    }

    /**
     * Ito's ratio of curved to straight friction in turbulent flow, joined and held as the class says.
     *
     * @param reynolds      Reynolds number, over zero
     * @param radiusRatio   R/r, over 1
     * @param valueAndSlope modified: slot 0 the ratio, at least 1, slot 1 its derivative in the Reynolds number
     */
    static void turbulentRatio(double reynolds, double radiusRatio, double[] valueAndSlope) {
        double x = reynolds / (radiusRatio * radiusRatio);
        double t = x / ITO_LOW - 1;
        if (t <= 0) {
            valueAndSlope[0] = 1;
            valueAndSlope[1] = 0;
            return;
        }
        double root = Math.sqrt(Math.sqrt(x));
        double cap = Math.sqrt(Math.sqrt(ITO_HIGH));
        double excess = RATIO_CONSTANT + RATIO_RISE * Joins.roundedCap(root, cap, CORNER) - 1;
        double excessSlope = RATIO_RISE * Joins.roundedCapSlope(root, cap, CORNER) * root / (4 * reynolds);
        valueAndSlope[0] = 1 + Joins.step(t) * excess;
        valueAndSlope[1] =
                Joins.step(t) * excessSlope + Joins.stepSlope(t) * excess / (ITO_LOW * radiusRatio * radiusRatio);
    }
}
