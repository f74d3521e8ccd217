package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Source;

/**
 * Advice of the trade. It never breaks anything.
 *
 * @param topic velocity, fuel, oil, coolant, brake, assembly, length, routing, sizing or design
 * @param rule  the advice in words
 * @param low   lower figure in {@code unit}, null when none
 * @param high  upper figure in {@code unit}, null when none
 * @param unit  SI unit of the figures, {@code dash} for dash numbers (negative as written), empty when there are none
 * @param source who says so, remarks in its locator
 */
public record RuleOfThumb(
        String topic,
        String rule,
        @Nullable Double low,
        @Nullable Double high,
        String unit,
        Source source) implements Serializable {}
