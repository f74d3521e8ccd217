package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * One size of one hose family. All figures are SI with band and source; what nobody published is null.
 *
 * @param family            short trade name, for example {@code race PTFE}
 * @param dash              dash number as a positive whole number; for hose sized by inch its nominal sixteenths of an
 *                          inch
 * @param sizeText          the size as it is written: {@code -6} or {@code 5/16 in}
 * @param liner             lining in words
 * @param boreM             inside diameter, m; low is the smallest sold, high the largest
 * @param roughnessM        wall roughness, m
 * @param outsideDiameterM  outside diameter, m
 * @param minBendRadiusM    least bend radius, m
 * @param workingPressurePa highest working pressure, Pa gauge
 * @param proofPressurePa   proof pressure, Pa gauge
 * @param burstPressurePa   least burst pressure, Pa gauge
 * @param vacuumPa          largest vacuum, Pa below the pressure outside, positive
 * @param minTemperatureK   lowest temperature, K
 * @param maxTemperatureK   highest temperature, K
 * @param massKgPerM        mass, kg/m
 * @param convoluted        true when the bore is wound or convoluted; the roughness is then that of the wall only
 * @param neverJudged       true for brake hose: quantities only, its ratings are never judged
 */
public record HoseSize(
        String family,
        int dash,
        String sizeText,
        String liner,
        Figure boreM,
        Figure roughnessM,
        @Nullable Figure outsideDiameterM,
        @Nullable Figure minBendRadiusM,
        @Nullable Figure workingPressurePa,
        @Nullable Figure proofPressurePa,
        @Nullable Figure burstPressurePa,
        @Nullable Figure vacuumPa,
        @Nullable Figure minTemperatureK,
        @Nullable Figure maxTemperatureK,
        @Nullable Figure massKgPerM,
        boolean convoluted,
        boolean neverJudged)
        implements Serializable {

    /**
     * Family and size as the circuit file writes them.
     *
     * @return for example {@code race PTFE -6}
     */
    public String name() {
        return family + " " + sizeText;
    }

    /**
     * The same hose with a bore that somebody measured or read.
     *
     * @param bore inside diameter, m
     * @return a copy with that bore
     */
    public HoseSize withBore(Figure bore) {
        return new HoseSize(
                family,
                dash,
                sizeText,
                liner,
                bore,
                roughnessM,
                outsideDiameterM,
                minBendRadiusM,
                workingPressurePa,
                proofPressurePa,
                burstPressurePa,
                vacuumPa,
                minTemperatureK,
                maxTemperatureK,
                massKgPerM,
                convoluted,
                neverJudged);
    }
}
