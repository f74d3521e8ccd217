package org.linedrop.network;

import org.linedrop.hydraulics.FrictionFactor;
import org.linedrop.hydraulics.Transition;

/**
 * Laws exactly as a textbook or a user states them, so that published problems can be posed in code. Nothing is added:
 * no low-Reynolds term, no floor. Heads are in metres of the flowing fluid with the gravity the source uses.
 *
 * <p>Every law is odd in flow unless its factory says otherwise. Factories check their arguments and name the one that is
 * wrong.
 */
public final class Prescribed {
    private Prescribed() {}

    /**
     * A bore with a given friction factor and loss coefficients: drop = (f L/D + K) rho V |V| / 2.
     *
     * @param frictionFactor  Darcy friction factor, at least 0
     * @param lengthM         length in m, at least 0
     * @param boreM           bore in m, above 0
     * @param lossCoefficient sum of loss coefficients on the velocity head in this bore, at least 0
     * @param densityKgPerM3  density in kg/m3, above 0
     * @return the law
     */
    public static Law constantFriction(
            double frictionFactor, double lengthM, double boreM, double lossCoefficient, double densityKgPerM3) {
        atLeastZero("friction factor", frictionFactor);
        atLeastZero("length in m", lengthM);
        atLeastZero("loss coefficient", lossCoefficient);
        return new Power(
                (frictionFactor * lengthM / aboveZero("bore in m", boreM) + lossCoefficient)
                        * velocityHeadFactor(boreM, densityKgPerM3),
                2);
    }

    /**
     * A loss coefficient on the velocity head in a stated bore: drop = K rho V |V| / 2.
     *
     * @param lossCoefficient loss coefficient, above 0
     * @param boreM           bore in m, above 0
     * @param densityKgPerM3  density in kg/m3, above 0
     * @return the law
     */
    public static Law loss(double lossCoefficient, double boreM, double densityKgPerM3) {
        aboveZero("loss coefficient", lossCoefficient);
        return new Power(lossCoefficient * velocityHeadFactor(boreM, densityKgPerM3), 2);
    }

    /**
     * Head lost as a power of the volume flow: h = r Q |Q|^(n-1).
     *
     * @param resistance     r in m/(m3/s)^n, above 0
     * @param exponent       n, at least 1
     * @param densityKgPerM3 density in kg/m3, above 0
     * @param gravityMPerS2  gravity of the source in m/s2, above 0
     * @return the law
     */
    public static Law headPower(double resistance, double exponent, double densityKgPerM3, double gravityMPerS2) {
        aboveZero("r", resistance);
        aboveZero("density in kg/m3", densityKgPerM3);
        return pressurePower(
                densityKgPerM3
                        * aboveZero("gravity in m/s2", gravityMPerS2)
                        * resistance
                        * Math.pow(densityKgPerM3, -exponent),
                exponent);
    }

    /**
     * Pressure lost as a power of the mass flow: drop = r m |m|^(n-1).
     *
     * @param resistance r in Pa/(kg/s)^n, above 0
     * @param exponent   n, at least 1
     * @return the law
     */
    public static Law pressurePower(double resistance, double exponent) {
        aboveZero("r", resistance);
        if (!(exponent >= 1 && exponent < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("exponent n must be at least 1, but is " + exponent);
        }
        return exponent == 1 ? new Affine(0, resistance) : new Power(resistance, exponent);
    }

    /**
     * Laminar flow in a round bore at every Reynolds number, with loss coefficients:
     * drop = 32 mu L V / D^2 + K rho V |V| / 2 (Hagen and Poiseuille).
     *
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, above 0
     * @param lengthM             length in m, above 0
     * @param boreM               bore in m, above 0
     * @param lossCoefficient     sum of loss coefficients, at least 0
     * @param densityKgPerM3      density in kg/m3, above 0
     * @return the law
     */
    public static Law laminar(
            double dynamicViscosityPaS, double lengthM, double boreM, double lossCoefficient, double densityKgPerM3) {
        aboveZero("dynamic viscosity in Pa s", dynamicViscosityPaS);
        aboveZero("length in m", lengthM);
        aboveZero("bore in m", boreM);
        double linear = 128 * dynamicViscosityPaS * lengthM / (Math.PI * densityKgPerM3 * square(square(boreM)));
        double quadratic = atLeastZero("loss coefficient", lossCoefficient) * velocityHeadFactor(boreM, densityKgPerM3);
        return new LinearAndSquare(linear, quadratic);
    }

    /**
     * A rough bore with the textbook friction rule: 64/Re up to Re 2300, Colebrook above, the jump between closed by a
     * straight line over Re 2300 to 2301; drop = (f L/D + K) rho V |V| / 2.
     *
     * @param lengthM             length in m, at least 0
     * @param boreM               bore in m, above 0
     * @param roughnessM          roughness in m, at least 0 and at most the bore
     * @param lossCoefficient     sum of loss coefficients, at least 0
     * @param densityKgPerM3      density in kg/m3, above 0
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, above 0
     * @return the law
     */
    public static Law colebrook(
            double lengthM,
            double boreM,
            double roughnessM,
            double lossCoefficient,
            double densityKgPerM3,
            double dynamicViscosityPaS) {
        return roughBore(
                lengthM, boreM, roughnessM, lossCoefficient, densityKgPerM3, dynamicViscosityPaS, Transition.NEAR_JUMP);
    }

    /**
     * A rough bore with a rule of the caller's between 64/Re and Colebrook; drop = (f L/D + K) rho V |V| / 2.
     *
     * @param lengthM             length in m, at least 0
     * @param boreM               bore in m, above 0
     * @param roughnessM          roughness in m, at least 0 and at most the bore
     * @param lossCoefficient     sum of loss coefficients, at least 0
     * @param densityKgPerM3      density in kg/m3, above 0
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, above 0
     * @param transition          rule between laminar and turbulent
     * @return the law
     */
    public static Law roughBore(
            double lengthM,
            double boreM,
            double roughnessM,
            double lossCoefficient,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            Transition transition) {
        double factor = velocityHeadFactor(boreM, densityKgPerM3);
        atLeastZero("roughness in m", roughnessM);
        if (!(roughnessM <= boreM)) {
            throw new IllegalArgumentException(
                    "roughness must be at most the bore of " + boreM + " m, but is " + roughnessM + " m");
        }
        return new RoughBore(
                factor * atLeastZero("length in m", lengthM) / boreM,
                factor * atLeastZero("loss coefficient", lossCoefficient),
                roughnessM / boreM,
                4 / (Math.PI * boreM * aboveZero("dynamic viscosity in Pa s", dynamicViscosityPaS)),
                transition);
    }

    /**
     * A drop that does not depend on flow: a lift, or the negative rise of an ideal pressure source. Not strictly rising,
     * so two such branches side by side have no single answer.
     *
     * @param dropPa drop in Pa from the first point to the second
     * @return the law
     */
    public static Law constant(double dropPa) {
        return new Affine(finite("drop in Pa", dropPa), 0);
    }

    /**
     * A law with a constant drop added, such as the lift of a line between two heights.
     *
     * @param law    the law
     * @param dropPa drop in Pa added at every flow
     * @return the sum
     */
    public static Law plus(Law law, double dropPa) {
        return new Plus(law, finite("drop in Pa", dropPa));
    }

    static double velocityHeadFactor(double boreM, double densityKgPerM3) {
        double area = Math.PI / 4 * square(aboveZero("bore in m", boreM));
        return 1 / (2 * aboveZero("density in kg/m3", densityKgPerM3) * square(area));
    }

    static double square(double x) {
        return x * x;
    }

    static double aboveZero(String what, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be above 0, but is " + value);
        }
        return value;
    }

    static double atLeastZero(String what, double value) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " must be at least 0, but is " + value);
        }
        return value;
    }

    static double finite(String what, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be finite, but is " + value);
        }
        return value;
    }

    private record Power(double resistance, double exponent) implements Law {
        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            double size = Math.abs(massFlowKgPerS);
            double steep = exponent == 2 ? resistance * size : resistance * Math.pow(size, exponent - 1);
            dropPaAndSlope[0] = steep * massFlowKgPerS;
            dropPaAndSlope[1] = exponent * steep;
        }
    }

    private record Affine(double constant, double slope) implements Law {
        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            dropPaAndSlope[0] = constant + slope * massFlowKgPerS;
            dropPaAndSlope[1] = slope;
        }
    }

    private record LinearAndSquare(double linear, double quadratic) implements Law {
        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            double steep = quadratic * Math.abs(massFlowKgPerS);
            dropPaAndSlope[0] = (linear + steep) * massFlowKgPerS;
            dropPaAndSlope[1] = linear + 2 * steep;
        }
    }

    private record RoughBore(
            double friction, double local, double relativeRoughness, double reynoldsPerFlow, Transition transition)
            implements Law {
        /** An iterate beyond this is lost; NaN makes the solver halve its step. */
        private static final double MOST_REYNOLDS = 1e100;

        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            double size = Math.abs(massFlowKgPerS);
            double reynolds = size * reynoldsPerFlow;
            // the laminar law is written out: 64/Re has no value at rest
            if (reynolds <= transition.fromReynolds()) {
                double linear = 64 * friction / reynoldsPerFlow;
                dropPaAndSlope[0] = (linear + local * size) * massFlowKgPerS;
                dropPaAndSlope[1] = linear + 2 * local * size;
            } else if (reynolds < MOST_REYNOLDS) {
                FrictionFactor.evaluate(reynolds, relativeRoughness, transition, dropPaAndSlope);
                double f = dropPaAndSlope[0];
                double fSlope = dropPaAndSlope[1] * reynolds;
                dropPaAndSlope[0] = (friction * f + local) * size * massFlowKgPerS;
                dropPaAndSlope[1] = (friction * (2 * f + fSlope) + 2 * local) * size;
            } else {
                dropPaAndSlope[0] = Double.NaN;
                dropPaAndSlope[1] = Double.NaN;
            }
        }
    }

    private record Plus(Law law, double constant) implements Law {
        @Override
        public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
            law.evaluate(massFlowKgPerS, dropPaAndSlope);
            dropPaAndSlope[0] += constant;
        }
    }
}
