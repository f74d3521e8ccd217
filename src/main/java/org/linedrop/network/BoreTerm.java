package org.linedrop.network;

import org.jspecify.annotations.Nullable;
import org.linedrop.hydraulics.BoreFriction;
import org.linedrop.hydraulics.LocalLoss;

/**
 * Friction along a bore, with what its edges cost, as a law of mass flow. Kept apart from other terms because parts of one
 * bore in a run can share the friction factor, which is most of the work.
 *
 * @param densityKgPerM3 density of the fluid in it
 * @param friction       friction along the bore
 * @param forward        what its edges cost in forward flow, null for nothing
 * @param backward       what they cost in backward flow, null for nothing
 */
record BoreTerm(
        double densityKgPerM3,
        BoreFriction friction,
        @Nullable LocalLoss forward,
        @Nullable LocalLoss backward) implements Law {

    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        double flow = massFlowKgPerS / densityKgPerM3;
        friction.pressureDrop(flow, dropPaAndSlope);
        finish(flow, dropPaAndSlope);
    }

    /** The same with the friction factor kept in, or taken from, two slots; see {@link BoreFriction}. */
    void evaluate(double massFlowKgPerS, double[] slots, int at, boolean first) {
        double flow = massFlowKgPerS / densityKgPerM3;
        friction.pressureDrop(flow, slots, at, first);
        finish(flow, slots);
    }

    private void finish(double flow, double[] dropPaAndSlope) {
        LocalLoss edges = flow >= 0 ? forward : backward;
        if (edges != null) {
            edges.addPressureDrop(flow, dropPaAndSlope);
        }
        dropPaAndSlope[1] /= densityKgPerM3;
    }

    boolean sharesFactorWith(BoreTerm other) {
        return densityKgPerM3 == other.densityKgPerM3 && friction.sharesFactorWith(other.friction);
    }
}
