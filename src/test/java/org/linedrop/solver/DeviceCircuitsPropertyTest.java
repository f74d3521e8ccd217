package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Circuits full of devices, whose answers are checked against what each state means; more in {@link CircuitSurvey}. */
class DeviceCircuitsPropertyTest {
    private static final int CIRCUITS = 5000;

    @Test
    void statesMeanWhatTheySay() {
        int continued = 0;
        List<Integer> steps = new ArrayList<>();
        for (int seed = 0; seed < CIRCUITS; seed++) {
            DeviceCircuits circuit = DeviceCircuits.of(seed);
            Solution s = Solver.usual().solve(circuit.network());
            assertThat(s.outcome()).describedAs("seed %d: %s", seed, s.detail()).isEqualTo(Outcome.CONVERGED);
            continued += s.continuations() > 0 ? 1 : 0;
            steps.add(s.iterations());
            circuit.check(s);
        }
        Collections.sort(steps);
        assertThat(steps.get(CIRCUITS / 2)).isLessThanOrEqualTo(9);
        assertThat(continued).describedAs("circuits that needed continuation").isLessThan(CIRCUITS / 100);
    }
}
