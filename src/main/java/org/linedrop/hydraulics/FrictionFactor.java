package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Darcy friction factor of a straight round bore over every Reynolds number: 64/Re, a transition rule, Colebrook.
 *
 * <p>Outside the transition span both branches are exact. With the default span the factor has a continuous slope and
 * {@code f Re^2} rises strictly, so that flow and loss are one to one. Accuracy against measurements: 4 per cent
 * turbulent, 10 to 15 per cent in the span (up to 50 per cent where the flow happens to stay laminar). Validated in
 * {@code validation/losses} against Stanton and Pannell 1914, Senecal 1951 and others.
 */
public final class FrictionFactor {
    /** The laminar law. */
    public static final Formula LAMINAR = new Formula(
            "Hagen-Poiseuille",
            "f = 64/Re",
            new Source("exact for developed laminar flow of a Newtonian fluid", "", Status.DERIVED),
            "Re up to 2000");

    /** The blend between the laminar and the turbulent law. */
    public static final Formula BLEND = new Formula(
            "between 64/Re and Colebrook",
            "f = 64/Re + s (f_C - 64/Re), s = t^2 (3 - 2 t), t from 0 to 1 over the transition span of Re",
            new Source("chosen on the measurements of Stanton and Pannell 1914 and Senecal 1951", "", Status.DERIVED),
            "Re 2000 to 3000; 10 to 15 %, up to 50 % where the flow happens to stay laminar");

    private static final double LAMINAR_CONSTANT = 64;

    private FrictionFactor() {}

    /**
     * Friction factor and its slope.
     *
     * @param reynolds          Reynolds number, over zero and finite
     * @param relativeRoughness roughness over bore, 0 to 1 (see {@link Colebrook})
     * @param transition        rule between laminar and turbulent
     * @param valueAndSlope     modified: slot 0 the Darcy friction factor, slot 1 its derivative in the Reynolds number
     * @throws IllegalArgumentException when an argument is outside its range or NaN
     */
    public static void evaluate(
            double reynolds, double relativeRoughness, Transition transition, double[] valueAndSlope) {
        double from = transition.fromReynolds();
        double to = transition.toReynolds();
        if (reynolds <= from) {
            laminar(reynolds, valueAndSlope);
        } else if (transition.shape() == Transition.Shape.STRAIGHT_LINE && reynolds < to) {
            double low = LAMINAR_CONSTANT / from;
            double slope = (Colebrook.frictionFactor(to, relativeRoughness) - low) / (to - from);
            valueAndSlope[0] = low + slope * (reynolds - from);
            valueAndSlope[1] = slope;
        } else {
            Colebrook.evaluate(reynolds, relativeRoughness, valueAndSlope);
            if (reynolds < to) {
                blend(reynolds, transition, valueAndSlope);
            }
        }
    }

    /**
     * The laminar factor at any Reynolds number.
     *
     * @param reynolds      Reynolds number, over zero
     * @param valueAndSlope modified: slot 0 the Darcy friction factor, slot 1 its derivative in the Reynolds number
     * @throws IllegalArgumentException when the Reynolds number is not over zero
     */
    static void laminar(double reynolds, double[] valueAndSlope) {
        if (!(reynolds > 0)) {
            throw new IllegalArgumentException(
                    "Reynolds number " + reynolds + " is outside the friction law: it must be over zero");
        }
        double f = LAMINAR_CONSTANT / reynolds;
        valueAndSlope[0] = f;
        valueAndSlope[1] = -f / reynolds;
    }

    private static void blend(double reynolds, Transition transition, double[] valueAndSlope) {
        double width = transition.toReynolds() - transition.fromReynolds();
        double t = (reynolds - transition.fromReynolds()) / width;
        boolean smooth = transition.shape() == Transition.Shape.SMOOTHSTEP;
        double share = smooth ? t * t * (3 - 2 * t) : t;
        double shareSlope = (smooth ? 6 * t * (1 - t) : 1) / width;
        double laminar = LAMINAR_CONSTANT / reynolds;
        double turbulent = valueAndSlope[0];
        valueAndSlope[0] = laminar + share * (turbulent - laminar);
        valueAndSlope[1] =
                (1 - share) * (-laminar / reynolds) + share * valueAndSlope[1] + shareSlope * (turbulent - laminar);
    }
}
