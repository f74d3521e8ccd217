package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Some circuits of everything at once; many more, those with tees and draws behind devices too, in {@link CircuitSurvey}. */
class WideCircuitsPropertyTest {
    private static final int CIRCUITS = 3000;
    private static final int DRAWS_BEHIND_DEVICES = 2;

    @Test
    void statesMeanWhatTheySay() {
        for (int seed = 0; seed < CIRCUITS; seed++) {
            WideCircuits circuit = WideCircuits.of(seed);
            Solution s = Solver.usual().solve(circuit.network);
            if (s.outcome() == Outcome.CONVERGED) {
                for (WideCircuits.Device device : circuit.devices) {
                    StateCheck.check(circuit.network, device, s, seed);
                }
            } else if (seed % 3 != DRAWS_BEHIND_DEVICES && circuit.network.junctionCount() == 0) {
                // only closed taps and fixed flows all round leave a point without a reference
                assertThat(s.outcome()).as("seed %d: %s", seed, s.detail()).isEqualTo(Outcome.NO_PRESSURE_REFERENCE);
                assertThat(circuit.devices).as("seed %d", seed).anyMatch(device -> device.kind() == 'f');
            }
        }
    }
}
