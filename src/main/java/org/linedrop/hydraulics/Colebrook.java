package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Friction factor of turbulent flow in a round bore, exactly and without iteration on the factor.
 *
 * <p>Equation: {@code 1/sqrt f = -2 log10(e/(3.7 D) + 2.51/(Re sqrt f))} with the Darcy factor {@code f}, the roughness
 * {@code e}, the bore {@code D} and the Reynolds number {@code Re}.
 *
 * <p>Closed form: with {@code c = 2/ln 10}, {@code s = 1/(c sqrt f)}, {@code b = 2.51 c/Re} and
 * {@code z = (e/D)/(3.7 b)} the equation reads {@code s = -ln(b (z + s))}, so that {@code u = z + s} is the Wright omega
 * function of {@code z - ln b} (the solution of {@code u + ln u = x}). The function is evaluated by a starting value good
 * to 0.01 and one fourth-order step on the residual {@code -ln(b u) - s}: two logarithms in all. Written like this no digit
 * is lost between {@code u} and {@code z}, which agree to ten digits at Re 1e8 and e/D 0.05.
 *
 * <p>Range: fitted to data over Re 4000 to 1e8 and e/D 0 to 0.05. The equation itself is solved for every
 * {@code Re > 0} and {@code 0 <= e/D <= 1}; over e/D 0.05 it reads 35 to 52 per cent high against measured rough bores,
 * so that a caller must warn there ({@link #ROUGHNESS_LIMIT}). Below Re 4000 it is used only inside a blend
 * ({@link FrictionFactor}). Accuracy against measurements: 4 per cent in smooth bores; against the equation: better than
 * 1e-13, tested on 30-digit values over Re 1e-3 to 1e12.
 */
public final class Colebrook {
    /** Relative roughness up to which the equation was compared with data. */
    public static final double ROUGHNESS_LIMIT = 0.05;

    /** The law as a handbook would cite it. */
    public static final Formula FORMULA = new Formula(
            "Colebrook",
            "1/sqrt f = -2 log10(e/(3.7 D) + 2.51/(Re sqrt f))",
            new Source(
                    "C. F. Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11, 1939, 133-156",
                    "",
                    Status.FROM_MEMORY),
            "Re over 4000, e/D up to 0.05; 4 % against measured smooth bores");

    private static final double C = 2 / Math.log(10);
    private static final double VISCOUS = 2.51 * C;
    private static final double ROUGH = 1 / (3.7 * VISCOUS);
    private static final double LN_2 = Math.log(2);
    /** Multiplied by, not divided: both places are corrections, where a rounding of their own does not reach the answer. */
    private static final double THIRD = 1.0 / 3;

    /** Below this argument, Re about 120, the starting value is useless. */
    private static final double FAST_PATH = 4.0;

    /** From this argument, Re about 900, a single step reaches rounding error. */
    private static final double ONE_STEP = 6.0;

    /*
     * Starting value of the fast path, u = x - l + l/(x - 0.5588 l + 1.2079) with l = ln x: P. Praks, D. Brkic, Review
     * of new flow friction equations: constructing Colebrook's explicit correlations accurately, 2020; from memory. It
     * decides speed only: the step after it brings any start of this quality to rounding error.
     */
    private static final double START_A = 0.5588;
    private static final double START_B = 1.2079;

    private Colebrook() {}

    /**
     * Friction factor and its slope in the Reynolds number.
     *
     * @param reynolds          Reynolds number, over zero and finite
     * @param relativeRoughness roughness over bore, 0 to 1; over {@link #ROUGHNESS_LIMIT} the equation is beyond its
     *                          data and only its mathematics holds
     * @param valueAndSlope     modified: slot 0 the Darcy friction factor, slot 1 its derivative in the Reynolds number
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static void evaluate(double reynolds, double relativeRoughness, double[] valueAndSlope) {
        double b = scale(reynolds, relativeRoughness);
        double z = relativeRoughness * reynolds * ROUGH;
        double s = solve(b, z);
        double root = C * s;
        double f = 1 / (root * root);
        valueAndSlope[0] = f;
        valueAndSlope[1] = -2 * f / (reynolds * (1 + z + s)); // from s = -ln(b (z + s)) by implicit differentiation
    }

    /**
     * Friction factor alone.
     *
     * @param reynolds          Reynolds number, over zero and finite
     * @param relativeRoughness roughness over bore, 0 to 1
     * @return the Darcy friction factor
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        double b = scale(reynolds, relativeRoughness);
        double root = C * solve(b, relativeRoughness * reynolds * ROUGH);
        return 1 / (root * root);
    }

    private static double scale(double reynolds, double relativeRoughness) {
        if (!(reynolds > 0 && reynolds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "Reynolds number " + reynolds + " is outside the friction law: it must be over zero and finite");
        }
        if (!(relativeRoughness >= 0 && relativeRoughness <= 1)) {
            throw new IllegalArgumentException("roughness over bore " + relativeRoughness
                    + " is outside the friction law: it must be from 0 to 1; check the roughness and the bore");
        }
        return VISCOUS / reynolds;
    }

    /** The s of s = -ln(b (z + s)), to rounding error. */
    private static double solve(double b, double z) {
        double x = z - Math.log(b);
        if (x > FAST_PATH) {
            double logX = roughLog(x);
            double s = improve(x - logX + logX / (x - START_A * logX + START_B) - z, b, z);
            return x > ONE_STEP ? s : improve(s, b, z);
        }
        // only under Re 120: e^x bounds u from above and ln(1 + e^x) is within a third of it, three steps converge
        double u = Math.log1p(Math.exp(x));
        double s = u - z > 0 ? u - z : 0.5 * u;
        for (int i = 0; i < 3; i++) {
            s = improve(s, b, z);
        }
        return s;
    }

    /**
     * Natural logarithm to 0.006, from the exponent and a parabola of the mantissa. Enough for a start: the error of the
     * fourth-order step is its fourth power times 1e-5 or less.
     */
    private static double roughLog(double x) {
        long bits = Double.doubleToRawLongBits(x);
        double mantissa = Double.longBitsToDouble((bits & 0x000F_FFFF_FFFF_FFFFL) | 0x3FF0_0000_0000_0000L);
        double exponent = (int) (bits >>> 52) - 1023; // of a normal number over 1
        return LN_2 * (exponent + (2 - mantissa * THIRD) * mantissa - 5.0 / 3);
    }

    /**
     * One step of fourth order: F. N. Fritsch, R. E. Shafer, W. P. Crowley, Algorithm 443, Comm. ACM 16, 1973, 123-124
     * (from memory; the truth file is the check), on the shifted unknown s = u - z.
     */
    private static double improve(double s, double b, double z) {
        double u = z + s;
        double residual = -Math.log(b * u) - s;
        double onePlus = 1 + u;
        double q = 2 * onePlus * (onePlus + 2 * THIRD * residual);
        return s + u * residual * (q - residual) / (onePlus * (q - 2 * residual));
    }
}
