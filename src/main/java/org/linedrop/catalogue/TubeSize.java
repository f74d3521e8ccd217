package org.linedrop.catalogue;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Figure;

/**
 * A hard line by material, outside diameter and wall.
 *
 * @param material            material name of the tube table
 * @param outsideDiameterM    outside diameter, m
 * @param wallM               wall thickness, m
 * @param dash                sixteenths of an inch of its outside diameter, the dash number of its nut; 0 when that is
 *                            no whole number
 * @param boreM               inside diameter, m: outside diameter less two walls
 * @param roughnessM          wall roughness, m
 * @param leastBoreBentM      least bore left after bending and flaring, m, where published
 * @param allowablePressurePa allowable pressure, Pa gauge, where published
 */
public record TubeSize(
        String material,
        double outsideDiameterM,
        double wallM,
        int dash,
        Figure boreM,
        Figure roughnessM,
        @Nullable Figure leastBoreBentM,
        @Nullable Figure allowablePressurePa)
        implements Serializable {}
