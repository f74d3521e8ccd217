package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;

/** What holds of every network, added up here from flows, pressures and laws and not taken from the solver. */
class BalancePropertyTest {
    private static final int CIRCUITS = 500;

    private static Solution solved(Network network, long seed) {
        Solution s = Solver.usual().solve(network);
        assertThat(s.outcome()).as("seed %d: %s", seed, s.detail()).isEqualTo(Outcome.CONVERGED);
        return s;
    }

    @Test
    void massBalancesAtEveryFreePoint() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            Network network = RandomCircuits.of(seed);
            Solution s = solved(network, seed);
            double[] out = outflow(network, s);
            for (int i = 0; i < network.pointCount(); i++) {
                if (!network.fixed(i)) {
                    assertThat(out[i])
                            .as("seed %d, point %d", seed, i)
                            .isCloseTo(-network.drawKgPerS(i), within(1e-9 * s.flowScaleKgPerS()));
                }
            }
        }
    }

    /** What pumps and given pressures put in is what pipes and draws take out. */
    @Test
    void powerBalances() {
        double[] drop = new double[Law.SLOTS];
        for (long seed = 0; seed < CIRCUITS; seed++) {
            Network network = RandomCircuits.of(seed);
            Solution s = solved(network, seed);
            double[] out = outflow(network, s);
            double in = 0;
            double lost = 0;
            double size = 0;
            for (int i = 0; i < network.pointCount(); i++) {
                in += s.totalPressurePa(i) * out[i];
            }
            for (int b = 0; b < network.branchCount(); b++) {
                network.law(b).evaluate(s.massFlowKgPerS(b), drop);
                lost += drop[0] * s.massFlowKgPerS(b);
                size += s.pressureScalePa() * s.flowScaleKgPerS();
            }
            assertThat(in).as("seed %d", seed).isCloseTo(lost, within(1e-9 * size));
        }
    }

    private static double[] outflow(Network network, Solution s) {
        double[] out = new double[network.pointCount()];
        for (int b = 0; b < network.branchCount(); b++) {
            out[network.from(b)] += s.massFlowKgPerS(b);
            out[network.to(b)] -= s.massFlowKgPerS(b);
        }
        return out;
    }

    @Test
    void everyBranchTurnedRoundGivesFlowsOfOtherSign() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            Network network = RandomCircuits.of(seed);
            NetworkBuilder b = Network.builder();
            for (int i = 0; i < network.pointCount(); i++) {
                if (network.fixed(i)) {
                    b.fixedPoint(network.fixedPressurePa(i));
                } else {
                    b.freePoint(network.drawKgPerS(i));
                }
            }
            for (int k = 0; k < network.branchCount(); k++) {
                Law law = network.law(k);
                b.branch(network.to(k), network.from(k), (flow, two) -> {
                    law.evaluate(-flow, two);
                    two[0] = -two[0];
                });
            }
            Solution straight = solved(network, seed);
            Solution turned = solved(b.build(), seed);
            for (int k = 0; k < network.branchCount(); k++) {
                assertThat(turned.massFlowKgPerS(k))
                        .as("seed %d, branch %d", seed, k)
                        .isCloseTo(-straight.massFlowKgPerS(k), within(1e-7 * straight.flowScaleKgPerS()));
            }
            for (int i = 0; i < network.pointCount(); i++) {
                assertThat(turned.totalPressurePa(i))
                        .as("seed %d, point %d", seed, i)
                        .isCloseTo(straight.totalPressurePa(i), within(1e-7 * straight.pressureScalePa()));
            }
        }
    }

    /** Geometry times s at the same Reynolds numbers: flows times s, pressures over s squared. */
    @Test
    void similarCircuitsScale() {
        for (long seed = 0; seed < CIRCUITS; seed++) {
            double s = 0.25 + 4 * new Random(seed).nextDouble();
            Network one = pipes(seed, 1);
            Solution small = solved(one, seed);
            Solution large = solved(pipes(seed, s), seed);
            for (int b = 0; b < one.branchCount(); b++) {
                assertThat(large.massFlowKgPerS(b) / s)
                        .as("seed %d, branch %d", seed, b)
                        .isCloseTo(small.massFlowKgPerS(b), within(1e-8 * small.flowScaleKgPerS()));
            }
            for (int i = 0; i < one.pointCount(); i++) {
                assertThat(large.totalPressurePa(i) * s * s)
                        .as("seed %d, point %d", seed, i)
                        .isCloseTo(small.totalPressurePa(i), within(1e-8 * small.pressureScalePa()));
            }
        }
    }

    /** Rough pipes with losses, a given pressure and draws, each length times s. */
    private static Network pipes(long seed, double s) {
        Random random = new Random(seed);
        double viscosity = 5e-4 * Math.exp(6 * random.nextDouble());
        NetworkBuilder b = Network.builder();
        int points = 3 + random.nextInt(10);
        b.fixedPoint(3e5 / (s * s));
        for (int i = 1; i < points; i++) {
            b.freePoint(s * 0.05 * random.nextDouble());
            b.branch(random.nextInt(i), i, pipe(random, viscosity, s));
        }
        for (int i = 0; i < points / 2; i++) {
            int from = random.nextInt(points);
            int to = (from + 1 + random.nextInt(points - 1)) % points;
            b.branch(from, to, pipe(random, viscosity, s));
        }
        return b.build();
    }

    private static Law pipe(Random random, double viscosity, double s) {
        double bore = 5e-3 + 0.02 * random.nextDouble();
        double roughness = 0.01 * random.nextDouble() * bore;
        return Prescribed.colebrook(
                s * (0.1 + 3 * random.nextDouble()), s * bore, s * roughness, 5 * random.nextDouble(), 800, viscosity);
    }
}
