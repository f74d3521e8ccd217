package org.linedrop.network;

/**
 * The law of a junction whose legs lose pressure by each other's flows, such as a tee: the drop of each leg from its
 * port to the junction's centre as a function of all leg flows at once.
 *
 * <p>Derivatives are true ones in all flows; the solver keeps the leg flows as unknowns of a dense border and never lags
 * them.
 */
public interface JunctionLaw {

    /**
     * Number of legs.
     *
     * @return two or more; three for a tee
     */
    int legs();

    /**
     * Evaluates the drops of all legs.
     *
     * @param massFlowKgPerS mass flow of each leg, positive from port to centre; not modified
     * @param dropPa         modified: fall of total pressure from each port to the centre, in Pa
     * @param slope          modified: derivative of drop i in flow j at {@code i * legs() + j}, in Pa/(kg/s)
     * @return the flow pattern or state, for the report
     */
    int evaluate(double[] massFlowKgPerS, double[] dropPa, double[] slope);

    /**
     * Slope of a leg that stands in for the junction in the symmetric part of the Newton matrix.
     *
     * @return slope in Pa/(kg/s), above zero
     */
    double typicalSlopePaPerKgPerS();

    /**
     * The leg that carries the whole flow, from which the losses of the others count.
     *
     * @param state a value returned by {@code evaluate}
     * @return number of the leg
     */
    default int commonLeg(int state) {
        return 0;
    }

    /**
     * The word for a flow pattern or state.
     *
     * @param state a value returned by {@code evaluate}
     * @return lower-case words
     */
    String stateWord(int state);
}
