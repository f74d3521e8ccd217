package org.linedrop.network;

import java.util.List;

/** Laws passed by one and the same mass flow, one after the other, with a lift that does not depend on the flow. */
final class Series implements Law {
    private final Law[] terms;
    private final double liftPa;

    Series(List<Law> terms, double liftPa) {
        this.terms = terms.toArray(new Law[0]);
        this.liftPa = liftPa;
    }

    int size() {
        return terms.length;
    }

    Law term(int index) {
        return terms[index];
    }

    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        double drop = liftPa;
        double slope = 0;
        for (Law term : terms) {
            term.evaluate(massFlowKgPerS, dropPaAndSlope);
            drop += dropPaAndSlope[0];
            slope += dropPaAndSlope[1];
        }
        dropPaAndSlope[0] = drop;
        dropPaAndSlope[1] = slope;
    }
}
