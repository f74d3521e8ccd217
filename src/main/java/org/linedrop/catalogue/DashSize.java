package org.linedrop.catalogue;

import java.io.Serializable;
import java.util.List;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;

/**
 * What goes with one dash number.
 *
 * @param dash             dash number, positive: sixteenths of an inch of tube outside diameter
 * @param tubeText         tube outside diameter as the trade writes it, for example {@code 3/8}
 * @param tubeM            tube outside diameter, m
 * @param thread           thread of the 37-degree flare, diameter and turns
 * @param threadForm       the same with its form
 * @param threadMajorM     outside diameter of that thread, m
 * @param nutHexM          width across the flats of the tube nut, m
 * @param bossThread       thread of the O-ring boss with its form
 * @param bossRing         AS568 number of its O-ring
 * @param bossSource       where thread and ring of the boss are from
 * @param usualTaperPipe   taper pipe size it is usually paired with, empty when none
 * @param taperPipePairs   taper pipe sizes it is sold with
 * @param taperPipeSource  where the pairs are from
 */
public record DashSize(
        int dash,
        String tubeText,
        Figure tubeM,
        String thread,
        String threadForm,
        Figure threadMajorM,
        Figure nutHexM,
        String bossThread,
        String bossRing,
        Source bossSource,
        String usualTaperPipe,
        List<String> taperPipePairs,
        Source taperPipeSource)
        implements Serializable {

    /** Copies the list. */
    public DashSize {
        taperPipePairs = List.copyOf(taperPipePairs);
    }
}
