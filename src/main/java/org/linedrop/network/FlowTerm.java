package org.linedrop.network;

/** A law of volume flow as a law of mass flow, at the density of the part. */
record FlowTerm(double densityKgPerM3, Drop drop) implements Law {

    /** A pressure drop as the hydraulics package states it. */
    interface Drop {
        /**
         * Evaluates drop and slope.
         *
         * @param flowM3PerS    volume flow, any sign
         * @param valueAndSlope modified: Pa and Pa s/m3
         */
        void evaluate(double flowM3PerS, double[] valueAndSlope);
    }

    @Override
    public void evaluate(double massFlowKgPerS, double[] dropPaAndSlope) {
        drop.evaluate(massFlowKgPerS / densityKgPerM3, dropPaAndSlope);
        dropPaAndSlope[1] /= densityKgPerM3;
    }
}
