package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;

/**
 * The random circuits of the property tests, a hundred thousand of each kind; not part of the usual run:
 * {@code mvn -Pquick,random test}, other counts with {@code -Drandom.circuits=}. Prints what became of them.
 */
class CircuitSurvey {
    private static final int CIRCUITS = Integer.getInteger("random.circuits", 100_000);
    /** Outcomes that say no more than that the solver gave up: these circuits all have an answer. */
    private static final Set<Outcome> GIVEN_UP = EnumSet.of(Outcome.STALLED, Outcome.BUDGET_SPENT);
    /** Circuits that the reference, which is slow, solves too. */
    private static final int COMPARED = 1000;

    /** Of the first 100,000 seeds, those the solver gives up: an open fault. */
    private static final int KNOWN_WITHOUT_DEVICES = 32;

    private static final int KNOWN_WITH_DEVICES = 62;

    @Test
    void pipesAndPumps() {
        List<Integer> givenUp = survey("pipes and pumps", seed -> Solver.usual().solve(RandomCircuits.of(seed)));
        assertThat(givenUp).hasSizeLessThanOrEqualTo(allowed(KNOWN_WITHOUT_DEVICES));
    }

    @Test
    void devices() {
        List<Integer> givenUp = survey("devices", seed -> {
            DeviceCircuits circuit = DeviceCircuits.of(seed);
            Solution solution = Solver.usual().solve(circuit.network());
            if (solution.outcome() == Outcome.CONVERGED) {
                circuit.check(solution);
            }
            return solution;
        });
        assertThat(givenUp).hasSizeLessThanOrEqualTo(allowed(KNOWN_WITH_DEVICES));
    }

    @Test
    void referenceAgrees() {
        int compared = 0;
        for (int seed = 0; compared < COMPARED; seed++) {
            if (RandomCircuitsPropertyTest.agrees(seed)) {
                compared++;
            }
        }
        System.out.println(compared + " circuits agree with the reference");
    }

    /** The whole count for a whole run; a longer one may have its share more. */
    private static int allowed(int known) {
        return (int) Math.ceil(known * Math.max(1, CIRCUITS / 100_000.0));
    }

    private static List<Integer> survey(String what, IntFunction<Solution> solve) {
        int converged = 0;
        int continued = 0;
        int most = 0;
        List<Integer> givenUp = new ArrayList<>();
        for (int seed = 0; seed < CIRCUITS; seed++) {
            Solution solution = solve.apply(seed);
            converged += solution.outcome() == Outcome.CONVERGED ? 1 : 0;
            continued += solution.continuations() > 0 ? 1 : 0;
            most = Math.max(most, solution.iterations());
            if (GIVEN_UP.contains(solution.outcome())) {
                givenUp.add(seed);
            }
        }
        System.out.println(what + ": " + CIRCUITS + " circuits, " + converged + " converged, "
                + (CIRCUITS - converged - givenUp.size()) + " named a reason, " + givenUp.size() + " given up "
                + givenUp + "; " + continued + " needed continuation, most steps " + most);
        return givenUp;
    }
}
