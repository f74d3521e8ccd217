package org.linedrop.solver;

/** How a solve ended. Only {@link #CONVERGED} is an answer; the others come with the best state reached. */
public enum Outcome {
    /** Balance, laws and last correction are inside their tolerances. */
    CONVERGED("converged"),
    /** No step lowered the residual any more, neither directly nor on the second attempt. */
    STALLED("stalled"),
    /** The allowed number of iterations was used up. */
    BUDGET_SPENT("budget spent"),
    /** Some points are tied to no given pressure; their pressures could be anything. */
    NO_PRESSURE_REFERENCE("no pressure reference"),
    /** Some draws have no way in, or some supplies no way out. */
    CUT_OFF("cut off"),
    /** The draws ask for more than pumps and valves on the way can pass, or less than they force through. */
    DEMAND_NOT_MET("demand not met"),
    /** The solution has an absolute pressure at or under the vapour pressure or zero. */
    NOT_PHYSICAL("not physical");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    /**
     * The words printed for this outcome.
     *
     * @return lower-case words, for example {@code demand not met}
     */
    public String word() {
        return word;
    }
}
