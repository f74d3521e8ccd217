package org.linedrop.fluid;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * The temperatures of a fluid.
 *
 * @param lowK         lower end of what it is meant for, K
 * @param highK        upper end, K
 * @param hardLowK     below this no state is given, K
 * @param hardHighK    above this no state is given, K
 * @param coldReason   why nothing is given below {@code hardLowK}
 * @param freezingK    where it freezes, NaN when unknown
 * @param boilsFromK   brake fluids: least boiling point when wet, K; else NaN
 * @param boilsDryFromK brake fluids: least boiling point when dry, K; else NaN
 */
record Range(
        double lowK,
        double highK,
        double hardLowK,
        double hardHighK,
        String coldReason,
        double freezingK,
        double boilsFromK,
        double boilsDryFromK)
        implements Serializable {
    private static final long serialVersionUID = 1;

    /** How far beyond its range a fluid is still evaluated, with a notice; our choice. */
    static final double MARGIN_K = 30;

    private static final String TOO_FAR = "further than " + Math.round(MARGIN_K) + " K outside";

    /** A range in C with the usual margin on both sides. */
    static Range celsius(double lowC, double highC) {
        double low = lowC + PropertyLaw.ZERO_C_K;
        double high = highC + PropertyLaw.ZERO_C_K;
        return new Range(
                low, high, low - MARGIN_K, high + MARGIN_K, TOO_FAR + " its range", Double.NaN, Double.NaN, Double.NaN);
    }

    /** The same fluid over other temperatures. */
    Range spanning(double lowC, double highC) {
        Range span = celsius(lowC, highC);
        return new Range(
                span.lowK,
                span.highK,
                span.hardLowK,
                span.hardHighK,
                span.coldReason,
                freezingK,
                boilsFromK,
                boilsDryFromK);
    }

    Range freezing(double freezingC) {
        return new Range(
                lowK,
                highK,
                hardLowK,
                hardHighK,
                coldReason,
                freezingC + PropertyLaw.ZERO_C_K,
                boilsFromK,
                boilsDryFromK);
    }

    Range boiling(double wetC, double dryC) {
        return new Range(
                lowK,
                highK,
                hardLowK,
                hardHighK,
                coldReason,
                freezingK,
                wetC + PropertyLaw.ZERO_C_K,
                dryC + PropertyLaw.ZERO_C_K);
    }

    /** No state below the lower end, for a reason of the fluid's own. */
    Range hardBelow(double lowestC, String reason) {
        double k = lowestC + PropertyLaw.ZERO_C_K;
        return new Range(Math.max(lowK, k), highK, k, hardHighK, reason, freezingK, boilsFromK, boilsDryFromK);
    }

    @Nullable String refusal(String name, double temperatureK) {
        if (temperatureK >= hardLowK && temperatureK <= hardHighK) {
            return null;
        }
        if (Double.isNaN(temperatureK)) {
            return name + " has no state at a temperature that is not a number; give one from " + span();
        }
        String reason = temperatureK < hardLowK ? coldReason : TOO_FAR;
        return name + " at " + Text.celsius(temperatureK) + ": no state is given (" + reason
                + "); it is meant for " + span()
                + ". Choose a temperature in that range, or give a measured table as a fluid of your own";
    }

    private String span() {
        return Text.celsius(lowK) + " to " + Text.celsius(highK);
    }
}
