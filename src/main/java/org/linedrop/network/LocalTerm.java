package org.linedrop.network;

import org.linedrop.hydraulics.LocalLoss;

/**
 * A local loss as a law of mass flow.
 *
 * @param densityKgPerM3 density of the fluid in it
 * @param forward        the loss in forward flow
 * @param backward       the loss in backward flow
 */
record LocalTerm(double densityKgPerM3, LocalLoss forward, LocalLoss backward) implements Law {
    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        double flow = massFlowKgPerS / densityKgPerM3;
        (flow >= 0 ? forward : backward).pressureDrop(flow, dropPaAndSlope);
        dropPaAndSlope[1] /= densityKgPerM3;
    }
}
