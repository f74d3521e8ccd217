package org.linedrop.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Status;

/**
 * Compares loads with the ratings of a hose. A figure from memory, a guess or brake hose is never judged, and the
 * highest pressure and the highest temperature are not held to be allowed together.
 */
@Inner
public final class Ratings {
    /** Over this share of a rated pressure, and within this of a rated temperature, both are called used up; ours. */
    private static final double PRESSURE_USED_UP = 0.9;

    private static final double TEMPERATURE_LEFT_K = 10;

    private static final double KPA = 1e3;
    private static final double ZERO_CELSIUS_K = 273.15;

    private Ratings() {}

    /**
     * Judges one hose over all cases.
     *
     * @param hose              the hose
     * @param maxPressurePa     highest static pressure in it, Pa gauge; NaN when not known
     * @param minPressurePa     lowest static pressure in it, Pa gauge; NaN when not known
     * @param minTemperatureK   lowest temperature, K; NaN when not known
     * @param maxTemperatureK   highest temperature, K; NaN when not known
     * @return one result per load that is known; vacuum only when the lowest pressure is below the pressure outside
     */
    public static List<RatingResult> check(
            HoseSize hose, double maxPressurePa, double minPressurePa, double minTemperatureK, double maxTemperatureK) {
        List<RatingResult> results = new ArrayList<>();
        RatingResult pressure = null;
        if (!Double.isNaN(maxPressurePa)) {
            pressure = atMost(hose, "working pressure", maxPressurePa, hose.workingPressurePa());
            results.add(pressure);
        }
        if (minPressurePa < 0) {
            results.add(atMost(hose, "vacuum", -minPressurePa, hose.vacuumPa()));
        }
        RatingResult hot = null;
        if (!Double.isNaN(maxTemperatureK)) {
            hot = atMost(hose, "highest temperature", maxTemperatureK, hose.maxTemperatureK());
            results.add(hot);
        }
        if (!Double.isNaN(minTemperatureK)) {
            results.add(atLeast(hose, minTemperatureK, hose.minTemperatureK()));
        }
        if (pressure != null && hot != null) {
            together(hose, pressure, hot, results);
        }
        return List.copyOf(results);
    }

    private static RatingResult atMost(HoseSize hose, String quantity, double value, @Nullable Figure rating) {
        return judged(hose, quantity, value, rating, rating != null && value <= rating.low());
    }

    private static RatingResult atLeast(HoseSize hose, double value, @Nullable Figure rating) {
        return judged(hose, "lowest temperature", value, rating, rating != null && value >= rating.high());
    }

    private static RatingResult judged(
            HoseSize hose, String quantity, double value, @Nullable Figure rating, boolean inside) {
        String name = hose.name();
        if (hose.neverJudged()) {
            return new RatingResult(
                    name,
                    quantity,
                    RatingResult.Verdict.NOT_JUDGED,
                    value,
                    rating,
                    name + ": not judged: brake hose belongs to standards, law and licensed practice");
        }
        if (rating == null) {
            return new RatingResult(
                    name,
                    quantity,
                    RatingResult.Verdict.NOT_JUDGED,
                    value,
                    null,
                    name + ": not judged: no " + quantity + " is known here; read it off the hose");
        }
        if (rating.status().doubtful()) {
            return new RatingResult(
                    name,
                    quantity,
                    RatingResult.Verdict.NOT_JUDGED,
                    value,
                    rating,
                    name + ": not judged: no published " + quantity + " here ("
                            + shown(quantity, rating.value()) + " is "
                            + rating.status().word() + (inside ? "" : ", and the load is past it")
                            + "); read it off the hose");
        }
        RatingResult.Verdict verdict = inside ? RatingResult.Verdict.UNDER : RatingResult.Verdict.OVER;
        String side = inside == quantity.equals("lowest temperature") ? "over" : "under";
        boolean yours = rating.status() == Status.FROM_SHEET
                || rating.status() == Status.GIVEN
                || rating.status() == Status.MEASURED;
        String whose = yours
                ? "the figure you gave"
                : "the figure of " + rating.source().title();
        return new RatingResult(
                name,
                quantity,
                verdict,
                value,
                rating,
                name + ": " + quantity + " " + shown(quantity, value) + " is " + side + " " + whose + " ("
                        + shown(quantity, rating.value()) + " "
                        + rating.status().word() + ")");
    }

    /** Adds a caution where pressure and temperature both use up what two separate ratings allow. */
    private static void together(HoseSize hose, RatingResult pressure, RatingResult hot, List<RatingResult> results) {
        Figure most = pressure.rating();
        Figure hottest = hot.rating();
        boolean bothUnder =
                pressure.verdict() == RatingResult.Verdict.UNDER && hot.verdict() == RatingResult.Verdict.UNDER;
        if (bothUnder
                && most != null
                && hottest != null
                && pressure.value() >= PRESSURE_USED_UP * most.low()
                && hot.value() >= hottest.low() - TEMPERATURE_LEFT_K) {
            results.add(new RatingResult(
                    hose.name(),
                    "pressure with temperature",
                    RatingResult.Verdict.NOT_JUDGED,
                    pressure.value(),
                    most,
                    hose.name() + ": not judged: highest pressure and highest temperature are not rated together ("
                            + shown("working pressure", pressure.value()) + " at "
                            + shown("highest temperature", hot.value()) + ")"));
        }
    }

    private static String shown(String quantity, double value) {
        return quantity.endsWith("temperature")
                ? String.format(Locale.ROOT, "%.0f C", value - ZERO_CELSIUS_K)
                : String.format(Locale.ROOT, "%.0f kPa", value / KPA);
    }
}
