package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;

/**
 * Holds that a reason for not solving is true, without what the solver found it by. That a region cannot get what it
 * draws: it is held at ever lower pressures instead of drawing, and the rest of the circuit is solved, which flow comes in
 * by then. Flow into a region rises as its pressure falls, so that what comes in far under all given pressures is
 * the most that ever can. (The other way about for what it is fed.) That a way is missing: a walk along the branches.
 */
final class ReasonCheck {
    /** How far the region is held from all given pressures, over the pressure scale. */
    private static final double[] FAR = {30, 1e3};

    /** End of the word where the circuit with the region held was not solved either. */
    static final String NOT_SHOWN = ", not shown";

    private ReasonCheck() {}

    /** Fails when the reason is not true; the word says by what it was checked, or that it could not be. */
    static String check(Network network, Solution s, int seed) {
        String what = "seed " + seed + ": " + s.detail();
        if (s.outcome() == Outcome.NO_PRESSURE_REFERENCE) {
            withoutReference(network, s, what);
            return "no pressure reference, by a walk";
        }
        assertThat(s.outcome()).as(what).isIn(Outcome.CUT_OFF, Outcome.DEMAND_NOT_MET);
        Cut cut = s.limitingCut();
        assertThat(cut).as(what).isNotNull();
        Set<Integer> region = new HashSet<>(cut.points());
        assertThat(region).as(what).isNotEmpty().noneMatch(network::fixed);
        if (s.outcome() == Outcome.CUT_OFF && noWay(network, region, cut.inward())) {
            return "cut off, by a walk";
        }
        boolean proved = false;
        for (double far : FAR) {
            proved |= falls(network, region, cut.inward(), far, what);
        }
        return s.outcome().word() + (proved ? ", by the largest flow" : NOT_SHOWN);
    }

    /** From the points named along every branch that ties pressures: no given pressure; from all others there is one. */
    private static void withoutReference(Network network, Solution s, String what) {
        List<Integer> named = s.pointsWithoutReference();
        assertThat(named).as(what).isNotEmpty();
        for (int i = 0; i < network.pointCount(); i++) {
            assertThat(meetsGiven(network, i)).as(what).isEqualTo(!named.contains(i));
        }
    }

    private static boolean meetsGiven(Network network, int start) {
        Set<Integer> seen = new HashSet<>(Set.of(start));
        ArrayDeque<Integer> next = new ArrayDeque<>(seen);
        while (!next.isEmpty()) {
            int i = next.remove();
            if (network.fixed(i)) {
                return true;
            }
            for (int b = 0; b < network.branchCount(); b++) {
                boolean here = network.from(b) == i || network.to(b) == i;
                if (here
                        && (network.kind(b) != Network.Kind.DEVICE
                                || network.device(b).relatesPressures())) {
                    int other = network.from(b) == i ? network.to(b) : network.from(b);
                    if (seen.add(other)) {
                        next.add(other);
                    }
                }
            }
        }
        return false;
    }

    /** Backwards from the region along all that could bring flow (or forwards what could take it): nothing comes from outside. */
    private static boolean noWay(Network network, Set<Integer> region, boolean inward) {
        double forced = 0;
        for (int i : region) {
            forced += inward ? network.drawKgPerS(i) : -network.drawKgPerS(i);
        }
        for (int b = 0; b < network.branchCount(); b++) {
            boolean from = region.contains(network.from(b));
            boolean to = region.contains(network.to(b));
            if (from == to) {
                continue;
            }
            double most = to == inward ? network.mostFlowKgPerS(b) : -network.leastFlowKgPerS(b);
            if (most > 0) {
                return false;
            }
            forced -= most;
        }
        return forced > 0;
    }

    private static boolean falls(Network network, Set<Integer> region, boolean inward, double far, String what) {
        double needed = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < network.pointCount(); i++) {
            if (region.contains(i)) {
                needed += inward ? network.drawKgPerS(i) : -network.drawKgPerS(i);
            } else if (network.fixed(i)) {
                low = Math.min(low, network.fixedPressurePa(i));
                high = Math.max(high, network.fixedPressurePa(i));
            }
        }
        double away = far * network.pressureScalePa();
        double held = inward ? low - away : high + away;
        double generous = inward ? high + away : low - away;
        Set<Integer> others = new HashSet<>();
        for (int round = 0; round < network.pointCount(); round++) {
            List<Integer> across = new ArrayList<>();
            List<Integer> numbers = new ArrayList<>();
            int[] at = new int[network.pointCount()];
            Solution s = Solver.usual().solve(held(network, region, held, others, generous, at, across, numbers));
            if (s.outcome() == Outcome.CONVERGED) {
                double passes = 0;
                for (int k = 0; k < across.size(); k++) {
                    boolean to = region.contains(network.to(across.get(k)));
                    double flow = s.massFlowKgPerS(numbers.get(k));
                    passes += to == inward ? flow : -flow;
                }
                if (others.isEmpty()) {
                    assertThat(passes).as(what).isLessThan(needed);
                }
                // with others held where they help most, too much proves nothing
                return passes < needed;
            }
            if (s.limitingCut() == null) {
                return false;
            }
            for (int i = 0; i < at.length; i++) {
                if (!network.fixed(i) && s.limitingCut().points().contains(at[i])) {
                    others.add(i);
                }
            }
        }
        return false;
    }

    /**
     * The circuit with a region held. Where another cannot have what it draws either, it is held where it helps most.
     *
     * @param at modified: new number of each point
     */
    private static Network held(
            Network network,
            Set<Integer> region,
            double pressure,
            Set<Integer> others,
            double generous,
            int[] at,
            List<Integer> across,
            List<Integer> numbers) {
        NetworkBuilder b = Network.builder();
        int one = b.fixedPoint(pressure);
        for (int i = 0; i < at.length; i++) {
            if (region.contains(i)) {
                at[i] = one;
            } else if (network.fixed(i) || others.contains(i)) {
                at[i] = b.fixedPoint(network.fixed(i) ? network.fixedPressurePa(i) : generous);
            } else {
                at[i] = b.freePoint(network.drawKgPerS(i));
            }
        }
        for (int k = 0; k < network.branchCount(); k++) {
            int from = at[network.from(k)];
            int to = at[network.to(k)];
            if (network.kind(k) == Network.Kind.LEG) {
                int junction = network.junctionOf(k);
                int legs = network.junction(junction).legs();
                if (k != network.firstLeg(junction) || from == to) {
                    continue;
                }
                int[] ports = new int[legs];
                for (int leg = 0; leg < legs; leg++) {
                    ports[leg] = at[network.from(k + leg)];
                    assertThat(ports[leg]).isNotEqualTo(one);
                }
                b.junction(to, ports, network.junction(junction));
                continue;
            }
            if (from == to) {
                continue;
            }
            int reference = network.reference(k) < 0 ? -1 : at[network.reference(k)];
            int number = network.kind(k) == Network.Kind.LAW
                    ? b.branch(from, to, network.law(k))
                    : b.device(from, to, reference, network.device(k));
            if (from == one || to == one) {
                across.add(k);
                numbers.add(number);
            }
        }
        return b.build();
    }
}
