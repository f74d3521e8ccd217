package org.linedrop.network;

/**
 * An element with a bypass beside it that opens at a drop: the flow through both as one law. Over the opening drop d0 the
 * flow is m = x + (e(x) - d0)/s with x what the element e still passes and s the slope of the bypass.
 *
 * @param element  law of the element, strictly rising
 * @param opensPa  drop at which the bypass opens, above 0
 * @param slope    rise of the drop with the flow through the bypass, Pa/(kg/s), above 0
 */
record Bypassed(Law element, double opensPa, double slope) implements Law {
    private static final int MOST_STEPS = 60;

    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        element.evaluate(massFlowKgPerS, dropPaAndSlope);
        if (!(dropPaAndSlope[0] > opensPa)) {
            return;
        }
        // the excess is convex and rising in x, so that steps from above come down on the root and never pass it
        double x = massFlowKgPerS;
        for (int i = 0; i < MOST_STEPS; i++) {
            element.evaluate(x, dropPaAndSlope);
            double excess = x + (dropPaAndSlope[0] - opensPa) / slope - massFlowKgPerS;
            double next = x - excess / (1 + dropPaAndSlope[1] / slope);
            if (!(next < x)) {
                break;
            }
            x = next;
        }
        element.evaluate(x, dropPaAndSlope);
        // through the bypass rather than the element: exact in the flow even where the element is steep
        double elementSlope = dropPaAndSlope[1];
        dropPaAndSlope[0] = opensPa + slope * (massFlowKgPerS - x);
        dropPaAndSlope[1] = elementSlope * slope / (elementSlope + slope);
    }
}
