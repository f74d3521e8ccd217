package org.linedrop.network;

/** A law times a positive factor. */
record Scaled(Law law, double factor) implements Law {
    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        law.evaluate(massFlowKgPerS, dropPaAndSlope);
        dropPaAndSlope[0] *= factor;
        dropPaAndSlope[1] *= factor;
    }
}
