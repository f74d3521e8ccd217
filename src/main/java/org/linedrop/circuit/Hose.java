package org.linedrop.circuit;

import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.EndSize;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.fact.Figure;

/**
 * A made-up hose: a length of hose with its two ends, which are of its own family and dash by construction.
 *
 * @param id           its name, or run and line number
 * @param size         the catalogue row of the hose, with a measured bore in place of the catalogue's where one was given
 * @param lengthM      overall length, seat to seat; taken whole as hose bore
 * @param fromEnd      the end at the side of the run's start, or null for a bare piece
 * @param toEnd        the end at the other side, or null for a bare piece
 * @param bends        how it lies, or null for straight
 * @param lossFactor   its loss over that of a smooth straight bore, measured, or null
 * @param temperatureK its own temperature, or null
 */
public record Hose(
        String id,
        HoseSize size,
        Figure lengthM,
        @Nullable EndSize fromEnd,
        @Nullable EndSize toEnd,
        @Nullable Route bends,
        @Nullable Figure lossFactor,
        @Nullable Figure temperatureK)
        implements Part {
    @Override
    public <R> R accept(Visitor<R> visitor) {
        return visitor.hose(this);
    }
}
