package org.linedrop.catalogue;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A hose family of the user's own: columns, like a sheet. What a row leaves out comes from the family named in
 * {@code like}.
 *
 * @param name its name in the circuit file
 * @param like the catalogue family it resembles
 * @param rows its sizes
 */
public record UserFamily(String name, String like, List<Row> rows) implements Serializable {

    /** Copies the list. */
    public UserFamily {
        rows = List.copyOf(rows);
    }

    /**
     * One size. Null figures are taken from the same size of the family named in {@code like}; strength ratings taken
     * so count as guessed, because nobody rated this hose, and are never judged.
     *
     * @param size              size as written, {@code -6} or {@code 5/16 in}
     * @param boreM             inside diameter, m
     * @param endBoreM          nipple bore of its ends, m
     * @param roughnessM        wall roughness, m
     * @param outsideDiameterM  outside diameter, m
     * @param minBendRadiusM    least bend radius, m
     * @param workingPressurePa highest working pressure, Pa gauge
     * @param proofPressurePa   proof pressure, Pa gauge
     * @param burstPressurePa   least burst pressure, Pa gauge
     * @param vacuumPa          largest vacuum, Pa below outside, positive
     * @param minTemperatureK   lowest temperature, K
     * @param maxTemperatureK   highest temperature, K
     * @param massKgPerM        mass, kg/m
     */
    public record Row(
            String size,
            @Nullable Figure boreM,
            @Nullable Figure endBoreM,
            @Nullable Figure roughnessM,
            @Nullable Figure outsideDiameterM,
            @Nullable Figure minBendRadiusM,
            @Nullable Figure workingPressurePa,
            @Nullable Figure proofPressurePa,
            @Nullable Figure burstPressurePa,
            @Nullable Figure vacuumPa,
            @Nullable Figure minTemperatureK,
            @Nullable Figure maxTemperatureK,
            @Nullable Figure massKgPerM)
            implements Serializable {}
}
