package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;

/**
 * Whether flows can meet the draws, against all cuts of a small network: they can when no set of points without a given
 * pressure needs more than can come in over what has to go out, nor gets more than can leave (A. J. Hoffman, Proc. Symp.
 * Appl. Math. 10 (1960) 113-127).
 */
class FlowCheckTest {
    private static final Law LINE = Prescribed.pressurePower(1e6, 2);

    /** How much more a set of points needs than can get in, or gets than can get out; the larger of the two. */
    private static double lacks(Network network, boolean[] inside) {
        double needed = 0;
        for (int i = 0; i < inside.length; i++) {
            needed += inside[i] ? network.drawKgPerS(i) : 0;
        }
        double least = 0;
        double most = 0;
        for (int b = 0; b < network.branchCount(); b++) {
            boolean from = inside[network.from(b)];
            boolean to = inside[network.to(b)];
            if (from != to) {
                least += to ? network.leastFlowKgPerS(b) : -network.mostFlowKgPerS(b);
                most += to ? network.mostFlowKgPerS(b) : -network.leastFlowKgPerS(b);
            }
        }
        return Math.max(needed - most, least - needed);
    }

    private static double worst(Network network) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int set = 1; set < 1 << network.pointCount(); set++) {
            boolean[] inside = new boolean[network.pointCount()];
            boolean free = true;
            for (int i = 0; i < inside.length; i++) {
                inside[i] = (set >> i & 1) == 1;
                free &= !(inside[i] && network.fixed(i));
            }
            worst = free ? Math.max(worst, lacks(network, inside)) : worst;
        }
        return worst;
    }

    /** Draws and limits in tenths, so that sums meet exactly. */
    private static Network random(Random random) {
        NetworkBuilder b = Network.builder();
        int points = 3 + random.nextInt(5);
        List<Integer> all = new ArrayList<>();
        all.add(b.fixedPoint(1e5));
        if (random.nextInt(3) == 0) {
            all.add(b.fixedPoint(2e5));
        }
        while (all.size() < points) {
            all.add(b.freePoint((random.nextInt(9) - 4) / 10.0));
        }
        int branches = points - 1 + random.nextInt(4);
        for (int k = 0; k < branches; k++) {
            int from = k < points - 1 ? k + 1 : random.nextInt(points);
            int to = random.nextInt(points);
            if (from == to) {
                continue;
            }
            if (random.nextBoolean()) {
                int other = from;
                from = to;
                to = other;
            }
            switch (random.nextInt(5)) {
                case 0 -> b.branch(all.get(from), all.get(to), LINE);
                case 1 -> b.device(all.get(from), all.get(to), -1, new FixedFlow((1 + random.nextInt(4)) / 10.0, 1e5));
                case 2 -> b.branch(all.get(from), all.get(to), LINE, 0, (1 + random.nextInt(6)) / 10.0);
                case 3 ->
                    b.branch(all.get(from), all.get(to), LINE, -random.nextInt(4) / 10.0, random.nextInt(6) / 10.0);
                default -> b.branch(all.get(from), all.get(to), LINE, -0.1 - random.nextInt(4) / 10.0, 0);
            }
        }
        return b.build();
    }

    @Test
    void itAgreesWithAllCutsOfThreeThousandSmallNetworks() {
        Random random = new Random(11);
        int met = 0;
        int cutOff = 0;
        int outward = 0;
        for (int i = 0; i < 3000; i++) {
            Network network = random(random);
            FlowCheck check = new FlowCheck(network);
            boolean feasible = check.feasible(network);
            assertThat(feasible).as("network %s", i).isEqualTo(worst(network) <= 1e-9);
            if (feasible) {
                met++;
                assertThat(check.cut(network)).isNull();
                continue;
            }
            Cut cut = check.cut(network);
            boolean[] inside = new boolean[network.pointCount()];
            cut.points().forEach(point -> inside[point] = true);
            assertThat(cut.points()).as("network %s", i).isNotEmpty().noneMatch(network::fixed);
            assertThat(lacks(network, inside))
                    .as("the cut named lacks what it says, network %s", i)
                    .isCloseTo(cut.neededKgPerS() - cut.passesKgPerS(), within(1e-9))
                    .isPositive();
            List<Integer> across = new ArrayList<>();
            for (int b = 0; b < network.branchCount(); b++) {
                if (inside[network.from(b)] != inside[network.to(b)]) {
                    across.add(b);
                }
            }
            assertThat(cut.branches()).isEqualTo(across);
            boolean nothing = across.stream().allMatch(b -> {
                boolean in = inside[network.to(b)] == cut.inward();
                return (in ? network.mostFlowKgPerS(b) : -network.leastFlowKgPerS(b)) == 0;
            });
            assertThat(check.cutOff(network)).as("network %s", i).isEqualTo(nothing);
            cutOff += nothing ? 1 : 0;
            outward += cut.inward() ? 0 : 1;
        }
        // neither side of any question is rare
        assertThat(met).isBetween(300, 2700);
        assertThat(cutOff).isGreaterThan(30);
        assertThat(outward).isGreaterThan(300);
    }

    @Test
    void oneCheckServesManyDraws() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int rail = b.freePoint(0.3);
        b.branch(tank, rail, LINE, 0, 0.2);
        Network little = b.build();
        FlowCheck check = new FlowCheck(little);
        assertThat(check.feasible(little)).isFalse();
        assertThat(check.cut(little).neededKgPerS()).isCloseTo(0.3, within(1e-15));
        NetworkBuilder wider = Network.builder();
        wider.fixedPoint(0);
        wider.freePoint(0.3);
        wider.branch(tank, rail, LINE, 0, 0.4);
        assertThat(check.feasible(wider.build())).isTrue();
        assertThat(check.cut(little)).isNull();
    }

    @Test
    void aShortfallOfRoundingIsNone() {
        for (double over : new double[] {0, 1e-11, 1e-3}) {
            NetworkBuilder b = Network.builder();
            int tank = b.fixedPoint(0);
            int rail = b.freePoint(0.3 + over);
            b.branch(tank, rail, LINE, 0, 0.1);
            b.branch(tank, rail, LINE, 0, 0.2);
            Network network = b.build();
            assertThat(new FlowCheck(network).feasible(network))
                    .as("0.3 + %s", over)
                    .isEqualTo(over < 1e-3);
        }
    }
}
