package org.linedrop.solver;

import org.linedrop.network.DeviceLaw;
import org.linedrop.network.JunctionLaw;
import org.linedrop.network.Network;

/** Evaluates all equations at the state of a workspace: law rows in Pa, balance rows in kg/s. */
final class Residual {
    private Residual() {}

    /** Evaluates and returns the 2-norm, each row over the scale that {@link #freeze} took. */
    static double evaluate(Workspace w, Network network) {
        laws(w, network);
        balances(w, network);
        return norm(w);
    }

    /** The norm of what was evaluated last. */
    private static double norm(Workspace w) {
        double laws = 0;
        double most = 0;
        for (int b = 0; b < w.lawResidual.length; b++) {
            double r = w.lawResidual[b];
            double weighted = w.careful ? w.weight[b] * r : r;
            laws += weighted * weighted;
            most = Math.max(most, Math.abs(r));
        }
        w.largestLawResidual = most;
        double flows = 0;
        double off = 0;
        for (double r : w.imbalance) {
            flows += r * r;
            off = Math.max(off, Math.abs(r));
        }
        w.largestImbalance = off;
        w.norm = Math.sqrt(laws / (w.meritPressure * w.meritPressure) + flows / (w.meritFlow * w.meritFlow));
        return w.norm;
    }

    private static void laws(Workspace w, Network network) {
        double most = 0;
        w.largestFlowOff = 0;
        for (int b = 0; b < w.flow.length; b++) {
            if (network.kind(b) == Network.Kind.LAW) {
                network.law(b).evaluate(w.flow[b], w.two);
                w.lawResidual[b] = w.pressure[network.from(b)] - w.pressure[network.to(b)] - w.two[0];
                w.slope[b] = w.two[1];
                most = Math.max(most, Math.abs(w.two[0]));
            } else if (network.kind(b) == Network.Kind.DEVICE) {
                device(w, network, b);
            }
        }
        w.largestDrop = most;
        for (int j = 0; j < w.legFlow.length; j++) {
            junction(w, network, j);
        }
    }

    /** Evaluates devices and junctions alone. True when a device has another state than before. */
    static boolean border(Workspace w, Network network) {
        boolean changed = false;
        for (int b : w.borderBranch) {
            if (network.kind(b) == Network.Kind.DEVICE) {
                int before = w.state[b];
                device(w, network, b);
                changed |= w.state[b] != before;
            }
        }
        for (int j = 0; j < w.legFlow.length; j++) {
            junction(w, network, j);
        }
        return changed;
    }

    private static void device(Workspace w, Network network, int b) {
        int reference = network.reference(b);
        int k = w.borderOf[b];
        DeviceLaw device = network.device(b);
        double inlet = w.pressure[network.from(b)];
        double outlet = w.pressure[network.to(b)];
        double leak = w.leak > 0 ? w.leak / device.wideOpenSlopePaPerKgPerS() : 0;
        double flow = w.flow[b] - leak * (inlet - outlet);
        double at = reference < 0 ? 0 : w.pressure[reference];
        w.state[b] = w.rounding > 0
                ? device.evaluateRounded(flow, inlet, outlet, at, w.rounding, w.five)
                : device.evaluate(flow, inlet, outlet, at, w.five);
        if (w.five[2] == 0 && w.five[3] == 0) {
            w.largestFlowOff = Math.max(w.largestFlowOff, Math.abs(w.five[0] / w.five[1]));
        }
        w.lawResidual[b] = w.five[0];
        w.slope[b] = device.wideOpenSlopePaPerKgPerS();
        w.byFlow[k * w.borderBranch.length + k] = w.five[1];
        w.byInlet[k] = w.five[2] - leak * w.five[1];
        w.byOutlet[k] = w.five[3] + leak * w.five[1];
        w.byReference[k] = reference < 0 ? 0 : w.five[4];
    }

    private static void junction(Workspace w, Network network, int j) {
        JunctionLaw law = network.junction(j);
        int first = network.firstLeg(j);
        int legs = w.legFlow[j].length;
        for (int i = 0; i < legs; i++) {
            w.legFlow[j][i] = w.flow[first + i];
        }
        int pattern = law.evaluate(w.legFlow[j], w.legDrop[j], w.legSlope[j]);
        for (int i = 0; i < legs; i++) {
            int b = first + i;
            int k = w.borderOf[b];
            w.state[b] = pattern;
            w.lawResidual[b] = w.pressure[network.from(b)] - w.pressure[network.to(b)] - w.legDrop[j][i];
            w.slope[b] = law.typicalSlopePaPerKgPerS();
            w.largestDrop = Math.max(w.largestDrop, Math.abs(w.legDrop[j][i]));
            w.byInlet[k] = 1;
            w.byOutlet[k] = -1;
            for (int l = 0; l < legs; l++) {
                w.byFlow[k * w.borderBranch.length + w.borderOf[first + l]] = -w.legSlope[j][i * legs + l];
            }
        }
    }

    private static void balances(Workspace w, Network network) {
        for (int i = 0; i < w.imbalance.length; i++) {
            w.imbalance[i] = w.slack.drawKgPerS(network, i);
        }
        for (int b = 0; b < w.flow.length; b++) {
            w.imbalance[network.from(b)] += w.flow[b];
            w.imbalance[network.to(b)] -= w.flow[b];
        }
        for (int i = 0; i < w.imbalance.length; i++) {
            if (network.fixed(i)) {
                w.imbalance[i] = 0;
            }
        }
    }

    /**
     * How the square of the law rows changes along the step last solved, at the state last evaluated; balance rows stay
     * as they are. Under zero the norm falls from here on.
     */
    static double rise(Workspace w, Network network) {
        double sum = 0;
        for (int b = 0; b < w.flow.length; b++) {
            int k = w.borderOf[b];
            double inlet = w.pressureStep[network.from(b)];
            double outlet = w.pressureStep[network.to(b)];
            sum += w.weight[b]
                    * w.weight[b]
                    * w.lawResidual[b]
                    * (k < 0 ? inlet - outlet - w.slope[b] * w.flowStep[b] : rowStep(w, network, k, inlet, outlet));
        }
        return sum;
    }

    private static double rowStep(Workspace w, Network network, int k, double inlet, double outlet) {
        int border = w.borderBranch.length;
        int reference = network.reference(w.borderBranch[k]);
        double sum = w.byInlet[k] * inlet + w.byOutlet[k] * outlet;
        sum += reference < 0 ? 0 : w.byReference[k] * w.pressureStep[reference];
        for (int l = 0; l < border; l++) {
            sum += w.byFlow[k * border + l] * w.flowStep[w.borderBranch[l]];
        }
        return sum;
    }

    /** Sets the scales for the state just evaluated. */
    static void scale(Workspace w, Network network) {
        double flow = network.flowScaleKgPerS();
        for (double m : w.flow) {
            flow = Math.max(flow, Math.abs(m));
        }
        w.flowScale = w.slack.on ? Math.max(flow, w.slack.largestKgPerS) : flow;
        // a network fed by draws alone has no given pressure: the drops it makes are the scale then
        w.pressureScale = Math.max(network.pressureScalePa(), w.largestDrop);
    }

    /**
     * Takes the present scales for the norm. They stay for one run of steps: with scales that move along, steps that each
     * lower the norm can go round in a circle (one random circuit of valves in a thousand did).
     */
    static void freeze(Workspace w, Network network) {
        scale(w, network);
        w.meritPressure = w.pressureScale;
        w.meritFlow = w.flowScale;
        if (w.careful) {
            weigh(w, network);
        }
        norm(w);
    }

    /**
     * The row of a shut device is its flow times a slope of the device. Where that slope is small for the scales, a flow
     * through it would hardly be felt: such rows count for more.
     */
    private static void weigh(Workspace w, Network network) {
        for (int b = 0; b < w.weight.length; b++) {
            w.weight[b] = network.kind(b) == Network.Kind.DEVICE
                    ? Math.max(
                            1, w.meritPressure / w.meritFlow / network.device(b).wideOpenSlopePaPerKgPerS())
                    : 1;
        }
    }

    /** Whether balance, laws and flows of devices that are shut or pass one flow are inside their tolerances. */
    static boolean within(Workspace w, Options options) {
        return w.largestFlowOff <= options.flowTolerance() * w.flowScale
                && w.largestImbalance <= options.flowTolerance() * w.flowScale
                && w.largestLawResidual <= options.pressureTolerance() * w.pressureScale;
    }
}
