package org.linedrop.fluid;

import java.io.Serializable;
import org.linedrop.fact.Source;

/**
 * What is known about one property of one fluid, for reports.
 *
 * @param kind          which property
 * @param lowK          lower end of the range its source covers, K; NaN when unknown
 * @param highK         upper end, K; NaN when unknown
 * @param source        where it comes from, with its status
 * @param grade         how far to trust it
 * @param expectedError expected error and spread of the class, in words; empty when unknown
 * @param lowRatio      at 20 C (or the end of the range nearest to it): the low end of the band over the usual value
 * @param highRatio     the high end of the band over the usual value at the same temperature
 */
public record PropertyInfo(
        PropertyKind kind,
        double lowK,
        double highK,
        Source source,
        Grade grade,
        String expectedError,
        double lowRatio,
        double highRatio)
        implements Serializable {

    /**
     * Whether anything is known of the property.
     *
     * @return false for a property whose value is NaN
     */
    public boolean known() {
        return Double.isFinite(lowRatio);
    }
}
