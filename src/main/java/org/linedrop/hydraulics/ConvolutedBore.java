package org.linedrop.hydraulics;

import org.linedrop.fact.Formula;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/**
 * Friction of a convoluted or wound bore.
 *
 * <p>Best is a measured multiplier on the smooth bore. Without one: Hawthorne and von Helms treat each convolution as a
 * sudden expansion by 0.219 pitches of radius, {@code f = (D/S) (1 - (D/(D + 0.438 S))^2)^2} on the inside diameter, at
 * every Reynolds number and depth. It is an upper bound for deep convolutions; shallow ribs cost 4 to 5 times a smooth
 * bore. The laminar 64/Re is added so that the law passes through zero with a slope. Accuracy: 50 per cent.
 */
public final class ConvolutedBore {
    /** Hawthorne and von Helms' bound. */
    public static final Formula FORMULA = new Formula(
            "convoluted bore",
            "f = 64/Re + (D/S) (1 - (D/(D + 0.438 S))^2)^2",
            new Source(
                    "W. R. Hawthorne, H. C. von Helms, Product Engineering 34, 1963 (as quoted by others)",
                    "",
                    Status.FROM_MEMORY),
            "deep convolutions, upper bound; 50 %");

    /** A bound above, smooth bore times 2 below. */
    public static final Band BAND = Band.ratios(
            0.35,
            1.2,
            new Source(
                    "shallow ribs 4 to 5 times smooth in one measured tube, 'about twice' by trade statement",
                    "",
                    Status.COMMON_PRACTICE));

    /** Pitch over bore where none is known: f is then 0.12, some 4 to 6 times a smooth bore. From memory. */
    public static final double USUAL_PITCH_OVER_BORE = 0.2;

    /** Sand roughness over rib height that reproduces one measured tube with shallow ribs. */
    static final double RIB_ROUGHNESS = 3;

    private ConvolutedBore() {}

    /**
     * Hawthorne and von Helms' factor.
     *
     * @param boreM  inside (crest) diameter in m, over zero
     * @param pitchM distance of the convolutions in m, over zero
     * @return the Darcy factor of the convolutions
     */
    public static double frictionFactor(double boreM, double pitchM) {
        double beta = boreM / (boreM + 0.438 * pitchM);
        return AreaChange.expansionK(beta) * boreM / pitchM;
    }

    /**
     * Pressure drop of a convoluted bore.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               inside (crest) diameter in m, over zero
     * @param pitchM              distance of the convolutions in m, over zero
     * @param lengthM             length in m, not negative
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void pressureDrop(
            double flowM3PerS,
            double boreM,
            double pitchM,
            double lengthM,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        double lengthOverBore = lengthM / boreM;
        LocalLoss.pressureDrop(
                flowM3PerS,
                boreM,
                frictionFactor(boreM, pitchM) * lengthOverBore,
                64 * lengthOverBore,
                densityKgPerM3,
                dynamicViscosityPaS,
                valueAndSlope);
    }

    /**
     * Pressure drop of a bore with a measured multiplier on the smooth one.
     *
     * @param flowM3PerS          volume flow in m3/s, any sign
     * @param boreM               inside diameter in m, over zero
     * @param lengthM             length in m, not negative
     * @param multiplier          loss over that of a smooth straight bore, over zero
     * @param transition          rule between laminar and turbulent
     * @param densityKgPerM3      density in kg/m3, over zero
     * @param dynamicViscosityPaS dynamic viscosity in Pa s, over zero
     * @param valueAndSlope       modified: slot 0 the drop in Pa with the sign of the flow, slot 1 its derivative in the
     *                            flow, Pa s/m3
     */
    public static void multipliedDrop(
            double flowM3PerS,
            double boreM,
            double lengthM,
            double multiplier,
            Transition transition,
            double densityKgPerM3,
            double dynamicViscosityPaS,
            double[] valueAndSlope) {
        BoreFriction.pressureDrop(
                flowM3PerS,
                boreM,
                lengthM * multiplier,
                0,
                transition,
                densityKgPerM3,
                dynamicViscosityPaS,
                valueAndSlope);
    }
}
