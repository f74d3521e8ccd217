package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * A short bore between two other bores, such as the nipple of a hose end: contraction into it, friction along it,
 * expansion out of it, all on the bore of the nipple; a hose coefficient is {@code K/beta^4}.
 *
 * <p>Under 2.4 bores long the jet of the inlet edge does not reattach, which costs Idelchik's further
 * {@code tau (1 - A/A1)^0.375 (1 - A/A2)} with {@code tau = (2.4 - l/d) 10^-phi},
 * {@code phi = 0.25 + 0.535 (l/d)^8/(0.05 + (l/d)^7)}; the term is zero from 2.4 on, so that the law has no step. Where a
 * neighbour is narrower than the nipple, that end is a change of bore on the neighbour. No measured nipple of a crimped
 * or screwed hose end was found: the bore decides, and it goes in with the fourth power. One instance is one shape; it is
 * immutable.
 */
public final class Nipple {
    /** Nipple of a hose end. */
    public static final Formula FORMULA = new Formula(
            "short bore",
            "K = 0.5 (1 - b1^2)^0.75 + tau (1 - b1^2)^0.375 (1 - b2^2) + f l/d + (1 - b2^2)^2, + K1/Re",
            new Source("I. E. Idelchik, Handbook of Hydraulic Resistance", "diagram 4-15", Status.FROM_MEMORY),
            "sharp edges; 13 % against Weisbach's mouth orifices");

    /** Spread of a nipple of known bore. */
    static final Band BAND = Band.ratios(
            0.75,
            1.25,
            new Source(
                    "spread of published contractions (0.22 to 0.35 at area ratio 0.5) on its largest term",
                    "",
                    Status.DERIVED));

    /** Length over bore from which the jet has reattached. */
    public static final double REATTACHED = 2.4;

    private final double firstBoreM;
    private final double boreM;
    private final double lengthM;
    private final double secondBoreM;
    private final double forwardK;
    private final double backwardK;
    private final double k1;

    private Nipple(double firstBoreM, double boreM, double lengthM, double secondBoreM) {
        this.firstBoreM = firstBoreM;
        this.boreM = boreM;
        this.lengthM = lengthM;
        this.secondBoreM = secondBoreM;
        forwardK = turbulentK(firstBoreM, boreM, lengthM, secondBoreM);
        backwardK = turbulentK(secondBoreM, boreM, lengthM, firstBoreM);
        k1 = lowReynoldsTerm(firstBoreM, boreM, secondBoreM);
    }

    /**
     * A nipple of given shape, its coefficients computed once.
     *
     * @param firstBoreM  first neighbour's bore in m, over zero; infinite is a vessel
     * @param boreM       nipple bore in m, over zero and finite
     * @param lengthM     length of the nipple bore in m, not negative
     * @param secondBoreM second neighbour's bore in m, over zero; infinite is a vessel
     * @return the law of that shape
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static Nipple of(double firstBoreM, double boreM, double lengthM, double secondBoreM) {
        if (!(boreM > 0 && boreM < Double.POSITIVE_INFINITY && firstBoreM > 0 && secondBoreM > 0)) {
            throw new IllegalArgumentException("nipple of " + boreM + " m between bores of " + firstBoreM + " and "
                    + secondBoreM + " m: all three must be over zero and the nipple finite");
        }
        if (!(lengthM >= 0 && lengthM < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("nipple length " + lengthM + " m: it must be zero or more and finite");
        }
        return new Nipple(firstBoreM, boreM, lengthM, secondBoreM);
    }

    /**
     * Loss at high Reynolds number without friction along the bore.
     *
     * @param inletBoreM    bore upstream in m, at least the nipple bore; infinite is a vessel
     * @param boreM         nipple bore in m, over zero
     * @param lengthM       length of the nipple bore in m, not negative
     * @param outletBoreM   bore downstream in m, at least the nipple bore; infinite is a vessel
     * @return K on the nipple bore
     */
    public static double turbulentK(double inletBoreM, double boreM, double lengthM, double outletBoreM) {
        double inlet = Math.min(1, boreM / inletBoreM);
        double outlet = Math.min(1, boreM / outletBoreM);
        double jet = detachedJet(lengthM / boreM) * Math.pow(1 - inlet * inlet, 0.375) * (1 - outlet * outlet);
        return AreaChange.contractionK(inlet) + jet + AreaChange.expansionK(outlet);
    }

    /** Idelchik's tau. */
    static double detachedJet(double lengthOverBore) {
        if (lengthOverBore >= REATTACHED) {
            return 0;
        }
        double seventh = Math.pow(lengthOverBore, 7);
        double phi = 0.25 + 0.535 * seventh * lengthOverBore / (0.05 + seventh);
        return (REATTACHED - lengthOverBore) * Math.pow(10, -phi);
    }

    /**
     * Total-pressure drop from the first neighbour bore through the nipple to the second, by flow direction.
     *
     * @param flowM3PerS          volume flow in m3/s, positive from the first neighbour to the second
     * @param roughnessM          roughness of the nipple bore in m, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public void pressureDrop(
            double flowM3PerS,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double k = flowM3PerS >= 0 ? forwardK : backwardK;
        BoreFriction.pressureDrop(
                flowM3PerS, boreM, lengthM, roughnessM, transition, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        Joins.addLocal(flowM3PerS, boreM, k, k1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        narrow(flowM3PerS, firstBoreM, boreM, secondBoreM, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
    }

    /**
     * Whether a neighbour is narrower than the nipple, so that the change of bore there is on the neighbour.
     *
     * @return false for what a nipple usually is
     */
    public boolean hasNarrowNeighbour() {
        return firstBoreM < boreM || secondBoreM < boreM;
    }

    /**
     * Friction along the nipple with a fluid in it: the first part of {@link #pressureDrop}.
     *
     * @param roughnessM          roughness of the nipple bore in m, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return its law
     */
    public BoreFriction friction(
            double roughnessM, Transition transition, double densityKgPerM3, double dynamicViscosityPaS) {
        return BoreFriction.of(boreM, lengthM, roughnessM, transition, densityKgPerM3, dynamicViscosityPaS);
    }

    /**
     * What the edges of the nipple cost with a fluid in it: the other part of {@link #pressureDrop} when no neighbour is
     * narrower.
     *
     * @param forward             true for flow over zero
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @return its law
     */
    public LocalLoss edges(boolean forward, double densityKgPerM3, double dynamicViscosityPaS) {
        return LocalLoss.of(boreM, forward ? forwardK : backwardK, k1, densityKgPerM3, dynamicViscosityPaS);
    }

    /**
     * The same without an instance: the coefficients are computed at every call.
     *
     * @param flowM3PerS          volume flow in m3/s, positive from the first neighbour to the second
     * @param firstBoreM          first neighbour's bore in m, over zero; infinite is a vessel
     * @param boreM               nipple bore in m, over zero and finite
     * @param lengthM             length of the nipple bore in m, not negative
     * @param secondBoreM         second neighbour's bore in m, over zero; infinite is a vessel
     * @param roughnessM          roughness of the nipple bore in m, 0 to the bore
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double firstBoreM,
            double boreM,
            double lengthM,
            double secondBoreM,
            double roughnessM,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        boolean forward = flowM3PerS >= 0;
        double inlet = forward ? firstBoreM : secondBoreM;
        double outlet = forward ? secondBoreM : firstBoreM;
        double k = turbulentK(inlet, boreM, lengthM, outlet);
        double k1 = lowReynoldsTerm(firstBoreM, boreM, secondBoreM);
        BoreFriction.pressureDrop(
                flowM3PerS, boreM, lengthM, roughnessM, transition, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        Joins.addLocal(flowM3PerS, boreM, k, k1, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
        narrow(flowM3PerS, firstBoreM, boreM, secondBoreM, densityKgPerM3, dynamicViscosityPaS, valueAndSlope);
    }

    private static double lowReynoldsTerm(double firstBoreM, double boreM, double secondBoreM) {
        return AreaChange.k1(Math.min(1, boreM / firstBoreM)) + AreaChange.k1(Math.min(1, boreM / secondBoreM));
    }

    /** Adds what neighbours narrower than the nipple cost: there the change of bore is on the neighbour. */
    private static void narrow(
            double flow,
            double firstBoreM,
            double boreM,
            double secondBoreM,
            double density,
            double viscosity,
            double[] out) {
        boolean forward = flow >= 0;
        if (firstBoreM < boreM) {
            narrow(flow, firstBoreM, forward, boreM, density, viscosity, out);
        }
        if (secondBoreM < boreM) {
            narrow(flow, secondBoreM, !forward, boreM, density, viscosity, out);
        }
    }

    private static void narrow(
            double flow,
            double neighbourM,
            boolean widens,
            double boreM,
            double density,
            double viscosity,
            double[] out) {
        double beta = neighbourM / boreM;
        double k = widens ? AreaChange.expansionK(beta) : AreaChange.contractionK(beta);
        Joins.addLocal(flow, neighbourM, k, AreaChange.k1(beta), density, viscosity, out);
    }
}
