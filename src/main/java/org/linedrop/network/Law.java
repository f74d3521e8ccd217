package org.linedrop.network;

/**
 * The law of a branch: the fall of total pressure from its first point to its second as a function of mass flow alone.
 * The drop rises strictly with flow; a pump is a law whose drop is negative. A constant part (lift, shut-off rise) is
 * allowed and is what the law gives at zero flow.
 *
 * <p>Implementations are immutable and may be used by any number of threads.
 */
public interface Law {
    /** Slots that let a run of parts with up to four bores work each friction factor out once. */
    int SLOTS = 10;

    /**
     * Evaluates drop and slope.
     *
     * @param massFlowKgPerS  mass flow, positive from the branch's first point to its second
     * @param dropPaAndSlope  modified: slot 0 becomes the drop in Pa, slot 1 its slope in Pa/(kg/s), not negative; at
     *                        least two slots. {@link #SLOTS} of them are faster and give the same result; what is left in
     *                        the others means nothing. Nothing is allocated.
     */
    void evaluate(double massFlowKgPerS, double[] dropPaAndSlope);
}
