package org.linedrop.solver;

import org.linedrop.network.Network;

/**
 * Another attempt from rest where the direct way failed. The symmetric part is factorised without subtractions, so that no
 * pair of branches is too far apart. Steps go just past the kink that stops them, so that the next one is solved with the
 * piece behind it (J. Katzenelson, Bell Syst. Tech. J. 44 (1965) 1605-1620, for pieces that are linear). Devices get leaks
 * that are taken away in stages: with them no region loses its reference and no piece is singular. Draws give way far
 * beyond all given pressures, so that there always is an answer, which tells when they cannot be met.
 */
final class SecondAttempt {
    /** Steps of the second attempt within which the norm has to be halved before some are let go. */
    private static final int SHORT_PATIENCE = 6;
    /** From one leak to the next, as long as that goes well. */
    private static final double RATIO = 0.1;
    /** Where leaks so close to each other do not lead on, none will. */
    private static final double MOST_RATIO = 0.9;
    /** Where devices with so large a leak cannot be solved, no larger one helps. */
    private static final double MOST_LEAK = 1e3;
    /** After this leak, over the wide-open conductance of the device, none is tried. */
    private static final double LEAST_LEAK = 1e-6;
    /** Leaks under this drown in the rounding of the border. */
    private static final double NO_LEAK = 1e-10;
    /** Pressure beyond the given ones at which draws give way, over the pressure scale: first, last, and from one to the next. */
    private static final double FIRST_LIMIT = 100;

    private static final double LAST_LIMIT = 1e9;
    private static final double WIDER = 1000;
    /**
     * What kinks are rounded by at a leak of 1, over the pressure scale; it falls with the square of the leak, so that what
     * floats behind shut devices is off by less at each stage.
     */
    private static final double ROUNDING = 1e4;
    /** Steps in which a stage has to arrive. */
    private static final int STAGE_STEPS = 30;
    /** The same where kinks are rounded: curves take longer. */
    private static final int ROUNDED_STEPS = 50;

    private SecondAttempt() {}

    /** Solves, or keeps the better of two states by the residual of the laws themselves. */
    static Outcome run(Network network, Workspace w, Options options) {
        double direct = Residual.evaluate(w, network);
        System.arraycopy(w.flow, 0, w.bestFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.bestPressure, 0, w.pressure.length);
        w.continuations++;
        w.careful = true;
        boolean devices = hasDevices(network);
        int most = devices ? w.iterations + STAGE_STEPS : options.maxIterations();
        Outcome outcome = surelyFromRest(network, w, options, most);
        if (outcome != Outcome.CONVERGED && devices) {
            outcome = givingWay(network, w, options);
        }
        if (outcome == Outcome.STALLED && devices) {
            outcome = stages(network, w, options);
        }
        leak(network, w, 0);
        w.careful = false;
        w.slack.on = false;
        if (w.proved || outcome == Outcome.CONVERGED) {
            Residual.evaluate(w, network);
            return outcome;
        }
        if (!(Residual.evaluate(w, network) <= direct)) {
            Newton.back(network, w, w.bestFlow, w.bestPressure);
        }
        return w.iterations < options.maxIterations() ? Outcome.STALLED : Outcome.BUDGET_SPENT;
    }

    /**
     * With draws that give way beyond a limit, which is widened until none has to: then that is the answer. Or until it is
     * proved that some must.
     */
    private static Outcome givingWay(Network network, Workspace w, Options options) {
        boolean warm = false;
        for (double beyond = FIRST_LIMIT; beyond <= LAST_LIMIT; beyond *= WIDER) {
            // where nothing is forced nothing can give way, and once is enough
            if (beyond > FIRST_LIMIT && w.slack.largestKgPerS == 0) {
                break;
            }
            w.slack.limit(network, beyond * network.pressureScalePa());
            leak(network, w, 0);
            int most = w.iterations + STAGE_STEPS;
            Outcome outcome = warm ? surely(network, w, options, most) : surelyFromRest(network, w, options, most);
            if (outcome != Outcome.CONVERGED) {
                outcome = stages(network, w, options);
            }
            warm = outcome == Outcome.CONVERGED;
            if (warm && !w.slack.gives()) {
                return outcome;
            }
            if (warm && w.slack.proves(network, options)) {
                w.proved = true;
                return w.slack.cutOff() ? Outcome.CUT_OFF : Outcome.DEMAND_NOT_MET;
            }
        }
        w.slack.on = false;
        return Outcome.STALLED;
    }

    /**
     * Takes the leaks away, more slowly where a stage does not arrive soon. Without any the equations may have no single
     * slope; then the answer with the least of them counts if it is one without them too.
     */
    private static Outcome stages(Network network, Workspace w, Options options) {
        int steps = w.slack.on ? ROUNDED_STEPS : STAGE_STEPS;
        double ratio = RATIO;
        double least = LEAST_LEAK;
        double leak = 1;
        leak(network, w, leak);
        Outcome outcome = surelyFromRest(network, w, options, w.iterations + steps);
        while (outcome != Outcome.CONVERGED && leak < MOST_LEAK && w.iterations < options.maxIterations()) {
            leak /= RATIO;
            leak(network, w, leak);
            outcome = surelyFromRest(network, w, options, w.iterations + steps);
        }
        while (outcome == Outcome.CONVERGED && leak > 0) {
            System.arraycopy(w.flow, 0, w.stageFlow, 0, w.flow.length);
            System.arraycopy(w.pressure, 0, w.stagePressure, 0, w.pressure.length);
            double next = leak * ratio >= least ? leak * ratio : 0;
            leak(network, w, next);
            outcome = surely(network, w, options, w.iterations + steps);
            if (outcome == Outcome.CONVERGED) {
                leak = next;
                ratio = Math.max(RATIO, ratio * ratio);
            } else if (w.iterations < options.maxIterations() && ratio < MOST_RATIO) {
                Newton.back(network, w, w.stageFlow, w.stagePressure);
                if (next > 0) {
                    ratio = Math.sqrt(ratio);
                } else if (least > NO_LEAK) {
                    least *= RATIO;
                } else {
                    return Residual.within(w, options) ? Outcome.CONVERGED : outcome;
                }
                outcome = Outcome.CONVERGED;
            }
        }
        return outcome;
    }

    /** Sets the leaks, and the rounding of kinks where draws may give way. */
    private static void leak(Network network, Workspace w, double leak) {
        w.leak = leak;
        w.rounding = w.slack.on ? leak * leak * ROUNDING * network.pressureScalePa() : 0;
    }

    private static Outcome surelyFromRest(Network network, Workspace w, Options options, int most) {
        Solver.atRest(network, w);
        return Solver.fromRest(network, w) ? surely(network, w, options, most) : Outcome.STALLED;
    }

    private static boolean hasDevices(Network network) {
        for (int b = 0; b < network.branchCount(); b++) {
            if (network.kind(b) == Network.Kind.DEVICE) {
                return true;
            }
        }
        return false;
    }

    /** Runs surer steps from the present state, until they lead nowhere or too many were taken. */
    private static Outcome surely(Network network, Workspace w, Options options, int most) {
        Newton.begin(network, w);
        while (w.iterations < Math.min(most, options.maxIterations())) {
            double part = Newton.crawls(w, SHORT_PATIENCE) ? letGo(network, w, options) : surer(network, w, options);
            if (part == Newton.FAILED) {
                part = letGo(network, w, options);
                if (part != 1) {
                    return Outcome.STALLED;
                }
            }
            if (Newton.arrived(network, w, options, part)) {
                return Outcome.CONVERGED;
            }
        }
        return Outcome.BUDGET_SPENT;
    }

    /**
     * Takes up to {@link Newton#WATCHED_STEPS} true steps in full: along a narrow bent valley the norm would only let short ones
     * pass, while the full ones are over the next rise and down in three or four. They must halve the norm, else the
     * state before them is restored.
     *
     * @return 1 when they did
     */
    private static double letGo(Network network, Workspace w, Options options) {
        double goal = 0.5 * w.norm;
        System.arraycopy(w.flow, 0, w.watchedFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.watchedPressure, 0, w.pressure.length);
        for (int i = 0; i < Newton.WATCHED_STEPS && w.iterations < options.maxIterations(); i++) {
            if (!Newton.solveStep(network, w, false)) {
                break;
            }
            Advance.keep(w);
            Advance.move(network, w, 1);
            if (!Double.isFinite(Residual.evaluate(w, network))) {
                break;
            }
            if (w.norm <= goal) {
                Newton.mark(w);
                return 1;
            }
        }
        Newton.back(network, w, w.watchedFlow, w.watchedPressure);
        Newton.mark(w);
        return 0;
    }

    /** The true step, and where it is not taken in full the far one too: the one that lowers the norm more. */
    private static double surer(Network network, Workspace w, Options options) {
        double near = Newton.step(network, w, options, false);
        if (near == 1) {
            return near;
        }
        double norm = w.norm;
        double correction = w.correction;
        System.arraycopy(w.flow, 0, w.nearFlow, 0, w.flow.length);
        System.arraycopy(w.pressure, 0, w.nearPressure, 0, w.pressure.length);
        if (near > 0) {
            Advance.restore(network, w);
        }
        double far = Newton.step(network, w, options, true);
        if (near > 0 && !(far > 0 && w.norm < norm)) {
            Newton.back(network, w, w.nearFlow, w.nearPressure);
            w.correction = correction;
            return near;
        }
        return far > 0 ? far : Newton.FAILED;
    }
}
