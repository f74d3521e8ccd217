package org.linedrop.network;

import org.linedrop.fact.Explanation;

/**
 * One law of a row together with the account it gives of itself, so that none can be put in without saying what it is.
 *
 * @param law     the law the solver uses
 * @param account how its drop comes about
 */
public record Term(Law law, Account account) {

    /** How a law's drop comes about. */
    @FunctionalInterface
    public interface Account {
        /**
         * The steps at a flow; their drops add up to that of the law.
         *
         * @param massFlowKgPerS mass flow, positive in the sense of the run
         * @return the steps with the bore they refer to
         */
        Explanation.Group at(double massFlowKgPerS);
    }

    /**
     * Drop of the law.
     *
     * @param massFlowKgPerS mass flow, positive in the sense of the run
     * @return Pa, with the sign of the flow
     */
    public double dropPa(double massFlowKgPerS) {
        double[] dropAndSlope = new double[2];
        law.evaluate(massFlowKgPerS, dropAndSlope);
        return dropAndSlope[0];
    }

    Term times(double factor) {
        return new Term(new Scaled(law, factor), flow -> account.at(flow).times(factor));
    }
}
