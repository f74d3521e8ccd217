package org.linedrop.solver;

import org.jspecify.annotations.Nullable;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Network;

/** What can be said of a network without solving it, and of a solution once it stands. */
final class Checks {
    private Checks() {}

    /** Flow first, then pressure: null when a solve makes sense. */
    static @Nullable Outcome before(Network network, Workspace w) {
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
        join(network, group, null);
    }

    /** Puts points in one set whose pressures are tied to each other in the states reached. */
    static void joinOpen(Network network, int[] group, int[] state) {
        join(network, group, state);
    }

    private static void join(Network network, int[] group, int @Nullable [] state) {
        int root = -1;
        for (int i = 0; i < group.length; i++) {
            group[i] = i;
            if (network.fixed(i)) {
                root = root < 0 ? i : root;
                group[i] = root;
            }
        }
        for (int b = 0; b < network.branchCount(); b++) {
            boolean device = network.kind(b) == Network.Kind.DEVICE;
            boolean shut = device && state != null && state[b] == DeviceLaw.SHUT;
            if (!device || (network.device(b).relatesPressures() && !shut)) {
                lead(network, group, Groups.find(group, network.from(b)), Groups.find(group, network.to(b)));
            }
        }
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
