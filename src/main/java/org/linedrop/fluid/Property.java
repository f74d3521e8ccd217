package org.linedrop.fluid;

import java.io.Serializable;
import org.linedrop.fact.Source;

/**
 * One property of a fluid: its usual law, the two ends of its class, and how it is known.
 *
 * @param kind          which property; viscosity is always dynamic here
 * @param usual         the usual value
 * @param low           low end of the class
 * @param high          high end of the class
 * @param lowK          lower end of the range the source covers, K
 * @param highK         upper end, K
 * @param source        where it comes from
 * @param grade         how far to trust it
 * @param expectedError expected error and class spread in words
 */
record Property(
        PropertyKind kind,
        PropertyLaw usual,
        PropertyLaw low,
        PropertyLaw high,
        double lowK,
        double highK,
        Source source,
        Grade grade,
        String expectedError)
        implements Serializable {
    private static final long serialVersionUID = 1;

    /** A property nobody knows. */
    static Property unknown(PropertyKind kind, String why, Source source) {
        PropertyLaw none = new SimpleLaws.Constant(Double.NaN);
        return new Property(kind, none, none, none, Double.NaN, Double.NaN, source, Grade.C, why);
    }

    /** A property with a band of fixed ratios. */
    static Property of(
            PropertyKind kind,
            PropertyLaw law,
            double lowC,
            double highC,
            Source source,
            Grade grade,
            double lowRatio,
            double highRatio,
            String expectedError) {
        return new Property(
                kind,
                law,
                new Combinations.Scaled(law, lowRatio),
                new Combinations.Scaled(law, highRatio),
                lowC + PropertyLaw.ZERO_C_K,
                highC + PropertyLaw.ZERO_C_K,
                source,
                grade,
                expectedError);
    }

    /** The same knowledge with other band ends. */
    Property between(PropertyLaw lowEnd, PropertyLaw highEnd) {
        return new Property(kind, usual, lowEnd, highEnd, lowK, highK, source, grade, expectedError);
    }

    boolean known() {
        return !(usual instanceof SimpleLaws.Constant constant && Double.isNaN(constant.value()));
    }

    /** Value at a temperature at one end of the class; thin means little viscosity and much vapour pressure. */
    double at(double temperatureK, Band band) {
        boolean takesLow = kind == PropertyKind.DYNAMIC_VISCOSITY ? band == Band.THIN : band == Band.THICK;
        boolean banded = kind == PropertyKind.DYNAMIC_VISCOSITY || kind == PropertyKind.VAPOUR_PRESSURE;
        if (band == Band.USUAL || !banded) {
            return usual.at(temperatureK);
        }
        return (takesLow ? low : high).at(temperatureK);
    }

    /** The report row: band ratios at 20 C or the nearest end of the range. */
    PropertyInfo info() {
        double t = Math.min(Math.max(PropertyLaw.ZERO_C_K + 20, lowK), highK);
        double value = usual.at(t);
        return new PropertyInfo(kind, lowK, highK, source, grade, expectedError, low.at(t) / value, high.at(t) / value);
    }
}
