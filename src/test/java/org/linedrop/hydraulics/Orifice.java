package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A thin sharp-edged plate in a bore, or a thin jet between vessels: loss of total pressure from the discharge
 * coefficient of ISO 5167-2 with corner taps, plus the creeping-flow term of a hole. One instance is one shape; it is
 * immutable.
 *
 * <p>Coefficient on the velocity head of the hole, {@code beta = d/D}:
 * {@code K = (sqrt(1 - beta^4 (1 - C^2))/C - beta^2)^2 + 12 pi/Re_d}. The first term is the permanent loss of ISO 5167-2,
 * the second Sampson's exact loss of a hole in creeping flow. {@code C} is Reader-Harris and Gallagher's equation. It is
 * held below pipe Reynolds number 5000 (16000 beta^2 where that is more), the end of its range, corner rounded over a
 * tenth in ln Re.
 *
 * <p>ISO 5167-2 is for D of 50 mm and more and d of 12.5 mm and more: every jet of a vehicle is outside it, and the law
 * is then an extrapolation (its small-bore term is kept, and not let under zero). A measured plate of d/D 0.488 in 52 mm
 * has a permanent loss 4 per cent under the law; Idelchik's thin orifice lies within 4 per cent at area ratio 0.25.
 */
final class Orifice {
    /** Permanent loss of a thin plate. */
    public static final Formula FORMULA = new Formula(
            "thin orifice",
            "K = (sqrt(1 - b^4 (1 - C^2))/C - b^2)^2 + 12 pi/Re on the hole, C of Reader-Harris and Gallagher",
            new Source(
                    "ISO 5167-2:2003, 5.3.2.1 and 5.4.1 (coefficients of C from memory); R. A. Sampson, Phil. Trans. R."
                            + " Soc. A 182, 1891 (creeping flow, from memory)",
                    "",
                    Status.FROM_MEMORY),
            "D over 50 mm, d over 12.5 mm, Re_D over 5000; small jets are an extrapolation");

    /** Spread of small holes: thin, slightly rounded or slightly thick edges of jets that ISO does not cover. */
    public static final Band BAND = Band.ratios(
            0.55,
            1.15,
            new Source(
                    "Weisbach's mouth orifices within 13 %; a jet that reattaches has Cd 0.81 for 0.60 (Lichtarowicz)",
                    "", Status.DERIVED));

    /** Sampson: dp = 24 mu Q/d^3, which is K1/Re with K1 = 12 pi on the hole. */
    private static final double CREEPING_K1 = 12 * Math.PI;

    private static final double CORNER = 0.1;

    private final double holeM;
    private final double beta;
    private final double constantC;
    private final double lowestLogRe;

    private Orifice(double upstreamBoreM, double holeM) {
        this.holeM = holeM;
        beta = holeM / upstreamBoreM;
        double square = beta * beta;
        double smallBore =
                upstreamBoreM < 0.07112 ? 0.011 * Math.max(0, 0.75 - beta) * (2.8 - upstreamBoreM / 0.0254) : 0;
        constantC = 0.5961 + 0.0261 * square - 0.216 * square * square * square * square + smallBore;
        double lowestRe = Math.max(5000, 16000 * square) / Math.max(beta, 0.1);
        lowestLogRe = Math.log(lowestRe);
    }

    /**
     * A plate of given shape.
     *
     * @param upstreamBoreM bore on both sides in m, over the hole; infinite is a vessel
     * @param holeM         diameter of the hole in m, over zero
     * @return the law of that shape
     * @throws IllegalArgumentException when the hole is not narrower than the bore, or NaN
     */
    public static Orifice of(double upstreamBoreM, double holeM) {
        if (!(holeM > 0 && holeM < upstreamBoreM)) {
            throw new IllegalArgumentException("orifice of " + holeM + " m in a bore of " + upstreamBoreM
                    + " m: the hole must be over zero and narrower than the bore");
        }
        return new Orifice(upstreamBoreM, holeM);
    }

    /**
     * Discharge coefficient and its slope, corner taps, held below its range.
     *
     * @param holeReynolds  Reynolds number on the hole, over zero
     * @param valueAndSlope modified: slot 0 the coefficient, slot 1 its derivative in the Reynolds number
     */
    public void dischargeCoefficient(double holeReynolds, double[] valueAndSlope) {
        double log = Math.log(holeReynolds);
        double held = Math.exp(Joins.roundedFloor(log, lowestLogRe, CORNER));
        double viscous = 0.000521 * Math.pow(1e6 / held, 0.7);
        double a = Math.pow(19000 / held, 0.8);
        double pipe = Math.pow(beta, 3.2) * Math.pow(1e6 / held, 0.3); // beta^3.5 (1e6/Re_D)^0.3 with Re_D = beta Re_d
        double perLog = -0.7 * viscous - (0.3 * (0.0188 + 0.0063 * a) + 0.8 * 0.0063 * a) * pipe;
        valueAndSlope[0] = constantC + viscous + (0.0188 + 0.0063 * a) * pipe;
        valueAndSlope[1] = perLog * Joins.roundedFloorSlope(log, lowestLogRe, CORNER) / holeReynolds;
    }

    /**
     * Loss coefficient of the turbulent term for a discharge coefficient.
     *
     * @param beta                 hole over bore, 0 to 1
     * @param dischargeCoefficient C, over zero
     * @return K on the velocity head of the hole; divide by beta^4 for the pipe
     */
    public static double permanentK(double beta, double dischargeCoefficient) {
        double square = beta * beta;
        double c = dischargeCoefficient;
        double root = Math.sqrt(1 - square * square * (1 - c * c)) / c - square;
        return root * root;
    }

    /**
     * Permanent loss over the pressure difference at the taps.
     *
     * @param beta                 hole over bore, 0 to 1
     * @param dischargeCoefficient C, over zero
     * @return the ratio of ISO 5167-2, 5.4.1
     */
    public static double lossRatio(double beta, double dischargeCoefficient) {
        double square = beta * beta;
        double c = dischargeCoefficient;
        double root = Math.sqrt(1 - square * square * (1 - c * c));
        return (root - c * square) / (root + c * square);
    }

    /**
     * Total-pressure drop of the plate.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public void pressureDrop(
            double flowM3PerS, double densityKgPerM3, double dynamicViscosityPaS, double[] valueAndSlope) {
        double reynolds = Reynolds.of(flowM3PerS, holeM, densityKgPerM3, dynamicViscosityPaS);
        if (!(reynolds > 0)) {
            LocalLoss.pressureDrop(
                    flowM3PerS, holeM, 0, CREEPING_K1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
            return;
        }
        dischargeCoefficient(reynolds, valueAndSlope);
        double c = valueAndSlope[0];
        double fourth = beta * beta * beta * beta;
        double root = Math.sqrt(1 - fourth * (1 - c * c));
        double rest = root / c - beta * beta;
        double slopeInC = 2 * rest * (fourth / root - root / (c * c));
        double perRe = slopeInC * valueAndSlope[1];
        double headPerSquare = Reynolds.velocityHeadPa(1, holeM, densityKgPerM3);
        LocalLoss.pressureDrop(
                flowM3PerS, holeM, rest * rest, CREEPING_K1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        valueAndSlope[1] += headPerSquare * perRe * reynolds * Math.abs(flowM3PerS);
    }

    /**
     * The orifice law with a constant discharge coefficient, taken exactly: {@code dp = rho/2 (Q/(Cd A))^2}. Its slope
     * at rest is zero, and a solver must floor it.
     *
     * @param flowM3PerS           volume flow in m3/s, any sign
     * @param holeM                diameter of the hole in m, over zero
     * @param dischargeCoefficient Cd, over zero
     * @param densityKgPerM3       density in kg/m3, over zero
     * @param valueAndSlope        modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in
     *                             the flow, Pa s/m3
     */
    public static void constantCoefficient(
            double flowM3PerS,
            double holeM,
            double dischargeCoefficient,
            double densityKgPerM3,
            double[] valueAndSlope) {
        double k = 1 / (dischargeCoefficient * dischargeCoefficient);
        LocalLoss.pressureDrop(flowM3PerS, holeM, k, 0, densityKgPerM3, 0, valueAndSlope);
    }

    /**
     * Thin orifice by Idelchik's formula, a second opinion.
     *
     * @param areaRatio area of the hole over area of the bore, over 0 to 1
     * @return K on the velocity head of the BORE
     */
    public static double idelchikK(double areaRatio) {
        double root = 1 + 0.707 * Math.sqrt(1 - areaRatio) - areaRatio;
        return root * root / (areaRatio * areaRatio);
    }

    /**
     * Thin orifice at the mouth of a bore that is fed from a large space; 4 to 12 per cent over Weisbach's measurements.
     *
     * @param areaRatio area of the hole over area of the bore, over 0 to 1
     * @return K on the velocity head of the BORE
     */
    public static double mouthK(double areaRatio) {
        double root = 1.707 - areaRatio;
        return root * root / (areaRatio * areaRatio);
    }
}
