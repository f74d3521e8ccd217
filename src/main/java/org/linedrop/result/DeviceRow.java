package org.linedrop.result;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * What one device does.
 *
 * @param id                    its name
 * @param kind                  pump, filter ...
 * @param state                 a few words: {@code on its table}, {@code clean} ...
 * @param massFlowKgPerS        through it, positive in the sense of its run
 * @param flowM3PerS            the same by volume
 * @param inletPressurePa       static gauge pressure at its inlet
 * @param outletPressurePa      static gauge pressure at its outlet
 * @param dropPa                total pressure lost across it; a pump's rise is negative
 * @param figures               what else is worth printing
 */
public record DeviceRow(
        String id,
        String kind,
        String state,
        double massFlowKgPerS,
        double flowM3PerS,
        double inletPressurePa,
        double outletPressurePa,
        double dropPa,
        List<Fact> figures)
        implements Serializable {

    /** Copies the list. */
    public DeviceRow {
        figures = List.copyOf(figures);
    }

    /**
     * One of its figures.
     *
     * @param key its name
     * @return the figure, if it is known
     */
    public Optional<Double> figure(String key) {
        return figures.stream()
                .filter(fact -> fact.key().equals(key) && !Double.isNaN(fact.value()))
                .map(Fact::value)
                .findFirst();
    }

    /**
     * A named figure of a device.
     *
     * @param key   name with its SI unit, as JSON prints it, for example {@code spareFlowRatio}
     * @param value its value in SI
     */
    public record Fact(String key, double value) implements Serializable {}
}
