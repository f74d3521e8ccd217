package org.linedrop.report;

import org.jspecify.annotations.Nullable;
import org.linedrop.fluid.Band;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.FluidState;
import org.linedrop.fluid.PropertyInfo;
import org.linedrop.fluid.PropertyKind;

/**
 * A fluid at one temperature, for lists.
 *
 * @param fluid        the fluid
 * @param temperatureK temperature, K
 * @param usual        its usual state; null where it has none
 * @param thin         the thin end of its class; null where it has none
 * @param thick        the thick end of its class; null where it has none
 */
record FluidLine(
        Fluid fluid,
        double temperatureK,
        @Nullable FluidState usual,
        @Nullable FluidState thin,
        @Nullable FluidState thick) {

    static FluidLine of(Fluid fluid, double temperatureK) {
        return fluid.refusal(temperatureK) != null
                ? new FluidLine(fluid, temperatureK, null, null, null)
                : new FluidLine(
                        fluid,
                        temperatureK,
                        fluid.at(temperatureK),
                        fluid.at(temperatureK, Band.THIN),
                        fluid.at(temperatureK, Band.THICK));
    }

    /** What is known of one of its properties. */
    PropertyInfo info(PropertyKind kind) {
        return fluid.properties().stream()
                .filter(info -> info.kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
