package org.linedrop.solver;

import org.jspecify.annotations.Nullable;
import org.linedrop.network.Network;

/** What can be said of a network without solving it, and of a solution once it stands. */
final class Checks {
    private Checks() {}

    /** Flow first, then pressure: null when a solve makes sense. Made once for a network that is solved again. */
    static @Nullable Outcome before(Network network, Workspace w) {
        if (!w.checked) {
            w.refused = refusal(network, w);
            w.checked = true;
        }
        return w.refused;
    }

    private static @Nullable Outcome refusal(Network network, Workspace w) {
        if (!w.flowCheck.feasible(network)) {
            return w.flowCheck.cutOff(network) ? Outcome.CUT_OFF : Outcome.DEMAND_NOT_MET;
        }
        joinRelated(network, w.group);
        for (int i = 0; i < w.group.length; i++) {
            if (!network.fixed(Groups.find(w.group, i))) {
                return Outcome.NO_PRESSURE_REFERENCE;
            }
        }
        return null;
    }

    /** Puts points in one set whose pressures are tied to each other in some state; given pressures lead their set. */
    static void joinRelated(Network network, int[] group) {
        start(network, group);
        for (int b = 0; b < network.branchCount(); b++) {
            if (network.kind(b) != Network.Kind.DEVICE || network.device(b).relatesPressures()) {
                join(network, group, network.from(b), network.to(b));
            }
        }
    }

    /**
     * The same for the pieces active in the state last evaluated: a shut device ties nothing, one in control ties the
     * side it holds to its reference.
     */
    static void joinActive(Network network, Workspace w) {
        int root = start(network, w.group);
        for (int b = 0; b < network.branchCount(); b++) {
            int k = network.kind(b) == Network.Kind.DEVICE ? w.borderOf[b] : -1;
            boolean inlet = k < 0 || w.byInlet[k] != 0;
            boolean outlet = k < 0 || w.byOutlet[k] != 0;
            if (inlet && outlet) {
                join(network, w.group, network.from(b), network.to(b));
            } else if (inlet || outlet) {
                int held = inlet ? network.from(b) : network.to(b);
                int reference = network.reference(b);
                int other = reference >= 0 && w.byReference[k] != 0 ? reference : root;
                if (other >= 0) {
                    join(network, w.group, held, other);
                }
            }
        }
        for (int i = 0; w.slack.on && root >= 0 && i < w.group.length; i++) {
            if (w.slack.slope(i) != 0) {
                join(network, w.group, i, root);
            }
        }
    }

    private static int start(Network network, int[] group) {
        int root = -1;
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
            if (network.fixed(i)) {
                root = root < 0 ? i : root;
                group[i] = root;
            }
        }
        return root;
    }

    /** Makes one set of two; a given pressure leads it. */
    static void join(Network network, int[] group, int a, int b) {
        lead(network, group, Groups.find(group, a), Groups.find(group, b));
    }

    private static void lead(Network network, int[] group, int i, int j) {
        if (network.fixed(j)) {
            group[i] = j;
        } else {
            group[j] = i;
        }
    }

    /** Looks for the point furthest under its vapour pressure, or under a vacuum. */
    static Outcome after(Network network, Workspace w) {
        double worst = 0;
        for (int i = 0; i < w.pressure.length; i++) {
            double vapour = network.vapourPressurePa(i);
            double over = w.pressure[i] + network.ambientPa() - (vapour > 0 ? vapour : 0);
            // without an ambient pressure this is NaN and nothing is checked
            if (over <= worst) {
                worst = over;
                w.notPhysicalPoint = i;
            }
        }
        return w.notPhysicalPoint >= 0 ? Outcome.NOT_PHYSICAL : Outcome.CONVERGED;
    }
}
