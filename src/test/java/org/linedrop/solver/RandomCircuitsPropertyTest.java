package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.network.Network;
import org.linedrop.validation.Claims;

/** Random circuits solved twice, by the solver and by the independent reference. */
class RandomCircuitsPropertyTest {
    private static final int CIRCUITS = 500;

    /** What the two may differ by, over the largest flow and the pressure scale. */
    private static final double AGREEMENT = 1e-7;

    @Test
    void all500AgreeWithTheReference() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            assertThat(agrees(seed)).describedAs("seed %d converges", seed).isTrue();
        }
    }

    /** False when there is no answer to compare; fails when the two differ. */
    static boolean agrees(long seed) {
        Comparison c = compare(seed);
        if (c.solution.outcome() != Outcome.CONVERGED) {
            return false;
        }
        assertThat(c.flow).describedAs("flows of seed %d", seed).isLessThan(AGREEMENT);
        assertThat(c.pressure).describedAs("pressures of seed %d", seed).isLessThan(AGREEMENT);
        return true;
    }

    private record Comparison(Solution solution, double flow, double pressure) {}

    private static Comparison compare(long seed) {
        Network network = RandomCircuits.of(seed);
        Solution s = Solver.usual().solve(network);
        ReferenceSolver r = ReferenceSolver.solve(network);
        double flow = 0;
        for (int b = 0; b < network.branchCount(); b++) {
            flow = Math.max(flow, Math.abs(s.massFlowKgPerS(b) - r.flow[b]) / s.flowScaleKgPerS());
        }
        double pressure = 0;
        for (int i = 0; i < network.pointCount(); i++) {
            pressure = Math.max(pressure, Math.abs(s.totalPressurePa(i) - r.pressure[i]) / s.pressureScalePa());
        }
        return new Comparison(s, flow, pressure);
    }

    static List<String[]> claims() {
        double worst = 0;
        long where = 0;
        for (long seed = 0; seed < CIRCUITS; seed++) {
            Comparison c = compare(seed);
            double deviation = Math.max(c.flow, c.pressure);
            if (deviation > worst + 1e-10) {
                worst = deviation;
                where = seed;
            }
        }
        return List.<String[]>of(new String[] {
            "random circuits of 4 to 19 points with loops and pumps",
            "" + CIRCUITS,
            "`ReferenceSolver` of the tests: loop flows, convex content, dense QR",
            "computed",
            "1e-7 of the largest flow and of the pressure scale; the reference is good to some 1e-10",
            worst < 1e-10 ? "under 1e-10" : Claims.deviation(worst),
            worst < 1e-10 ? "none stands out" : "seed " + where
        });
    }
}
