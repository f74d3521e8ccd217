package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Some circuits of everything at once; many more, those with tees and draws behind devices too, in {@link CircuitSurvey}. */
class WideCircuitsPropertyTest {
    private static final int CIRCUITS = 3000;
    /** What is left of an open fault; see {@link CircuitSurvey}. */
    private static final int KNOWN_GIVEN_UP = 4;

    private static final int KNOWN_NOT_SHOWN = 0;

    @Test
    void statesMeanWhatTheySay() {
        int givenUp = 0;
        int named = 0;
        int shown = 0;
        for (int seed = 0; seed < CIRCUITS; seed++) {
            WideCircuits circuit = WideCircuits.of(seed);
            Solution s = Solver.usual().solve(circuit.network);
            if (s.outcome() == Outcome.CONVERGED) {
                for (WideCircuits.Device device : circuit.devices) {
                    StateCheck.check(circuit.network, device, s, seed);
                }
            } else if (s.outcome() != Outcome.STALLED && s.outcome() != Outcome.BUDGET_SPENT) {
                shown += ReasonCheck.check(circuit.network, s, seed).endsWith(ReasonCheck.NOT_SHOWN) ? 0 : 1;
                named++;
            } else {
                givenUp++;
            }
        }
        assertThat(givenUp).isLessThanOrEqualTo(KNOWN_GIVEN_UP);
        assertThat(named - shown).isLessThanOrEqualTo(KNOWN_NOT_SHOWN);
    }
}
