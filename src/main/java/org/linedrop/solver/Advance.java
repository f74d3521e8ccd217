package org.linedrop.solver;

import org.linedrop.network.Network;

/** How much of a step is taken: as much as lowers the norm. */
final class Advance {
    private static final double ARMIJO = 1e-4;
    private static final int MOST_HALVINGS = 30;
    /** A device that opens from rest by a square law takes the root of the smallest part that can be told from none. */
    private static final int MOST_CAREFUL_HALVINGS = 60;
    /** Parts from this one down are looked at more closely on the second attempt. */
    private static final double SHORT = 0.25;
    /** Halvings of the span in which the norm stops falling; leaves rounding. */
    private static final int SEARCH_STEPS = 50;

    private Advance() {}

    /**
     * Takes the step last solved, halved as often as needed; when no part of it helps, the old state is restored.
     *
     * @return the part taken, 0 when none
     */
    static double along(Network network, Workspace w, Options options) {
        keep(w);
        double before = w.norm;
        boolean good = Residual.within(w, options);
        int most = w.careful ? MOST_CAREFUL_HALVINGS : MOST_HALVINGS;
        double part = 1;
        for (int i = 0; i <= most; i++) {
            move(network, w, part);
            double after = Residual.evaluate(w, network);
            // inside the tolerances the residual is rounding, which no step can be asked to lower
            if (after <= (1 - ARMIJO * part) * before || (good && i == 0 && Residual.within(w, options))) {
                return w.careful && part <= SHORT ? passJust(network, w, part, before) : part;
            }
            part /= 2;
        }
        restore(network, w);
        return 0;
    }

    /**
     * Goes to where the norm stops falling along the step, and by a rounding error further: when that is a kink, the next
     * step is solved with the piece behind it. Halved parts stay before the kink and come ever closer to it instead.
     */
    private static double passJust(Network network, Workspace w, double part, double before) {
        double low = 0;
        double high = 2 * part;
        for (int i = 0; i < SEARCH_STEPS; i++) {
            double middle = 0.5 * (low + high);
            move(network, w, middle);
            if (Residual.evaluate(w, network) <= before && Residual.rise(w, network) < 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double taken = high;
        move(network, w, high);
        if (!(Residual.evaluate(w, network) <= (1 - ARMIJO * high) * before)) {
            taken = part;
            move(network, w, part);
            Residual.evaluate(w, network);
        }
        return taken;
    }

    static void keep(Workspace w) {
        System.arraycopy(w.flow, 0, w.oldFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.oldPressure, 0, w.pressure.length);
    }

    static void restore(Network network, Workspace w) {
        System.arraycopy(w.oldFlow, 0, w.flow, 0, w.flow.length);
        System.arraycopy(w.oldPressure, 0, w.pressure, 0, w.pressure.length);
        Residual.evaluate(w, network);
    }

    /** By how much the flow that changed most changed since {@link #keep}. */
    static double moved(Workspace w) {
        double most = 0;
        for (int b = 0; b < w.flow.length; b++) {
            most = Math.max(most, Math.abs(w.flow[b] - w.oldFlow[b]));
        }
        return most;
    }

    static void move(Network network, Workspace w, double part) {
        for (int b = 0; b < w.flow.length; b++) {
            w.flow[b] = w.oldFlow[b] + part * w.flowStep[b];
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = w.oldPressure[i] + part * w.pressureStep[i];
        }
        w.tree.balance(network, w);
    }
}
