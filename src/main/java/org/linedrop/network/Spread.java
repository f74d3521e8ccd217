package org.linedrop.network;

/**
 * A bore along which equal shares leave: the drop from its inlet to its outlet as a function of the flow that comes in. The
 * taps divide it into stretches of one over their number, with half a stretch before the first and behind the last.
 *
 * @param whole      friction of the whole length at one flow
 * @param takenKgPerS what leaves along it in all
 * @param taps       how many taps, at least 1
 */
record Spread(Law whole, double takenKgPerS, int taps) implements Law {
    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        double drop = 0;
        double slope = 0;
        for (int i = 0; i <= taps; i++) {
            double part = i == 0 || i == taps ? 0.5 / taps : 1.0 / taps;
            whole.evaluate(massFlowKgPerS - takenKgPerS * i / taps, dropPaAndSlope);
            drop += part * dropPaAndSlope[0];
            slope += part * dropPaAndSlope[1];
        }
        dropPaAndSlope[0] = drop;
        dropPaAndSlope[1] = slope;
    }
}
