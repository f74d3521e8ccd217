package org.linedrop.benchmarks;

import java.util.Locale;
import org.linedrop.hydraulics.Transition;
import org.linedrop.io.CircuitFile;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;
import org.linedrop.solver.Workspace;

/** The looped circuit of 26 runs between 16 unknown points and two given pressures; invented. */
public final class Loops {
    /** Points a side. */
    public static final int SIDE = 4;
    /** Unknown points. */
    public static final int POINTS = SIDE * SIDE;
    /** Runs. */
    public static final int RUNS = 26;

    static final double TANK_PA = 3e5;
    private static final double SECOND_TANK_PA = 0.9 * TANK_PA;
    private static final double DENSITY = 998;
    private static final double VISCOSITY = 1.0e-3;

    /** What the runs are made of. */
    public enum Kind {
        /** One rough bore a run. */
        ONE_BORE,
        /** Hose and the nipples of its two ends, as a circuit file makes them: three bores a run. */
        HOSE_AND_NIPPLES,
        /** One rough bore a run, with a regulator, a relief valve and two check valves at work. */
        WITH_DEVICES
    }

    private Loops() {}

    /**
     * The network.
     *
     * @param kind  what its runs are made of
     * @param draws what the draws are multiplied by
     * @return the network
     */
    public static Network network(Kind kind, double draws) {
        return kind == Kind.HOSE_AND_NIPPLES
                ? CircuitNetwork.of(CircuitFile.read(file(draws), "loops.yaml"), CircuitNetwork.Setting.USUAL)
                        .network()
                : builder(kind, draws).build();
    }

    /**
     * The network before it is frozen, for kinds that no circuit file stands behind.
     *
     * @param kind  {@link Kind#ONE_BORE} or {@link Kind#WITH_DEVICES}
     * @param draws what the draws are multiplied by
     * @return its builder
     */
    public static NetworkBuilder builder(Kind kind, double draws) {
        NetworkBuilder b = Network.builder();
        for (int i = 0; i < POINTS; i++) {
            b.freePoint(draws * drawKgPerS(i));
        }
        for (int i = 0; i < POINTS; i++) {
            if (i % SIDE < SIDE - 1) {
                b.branch(i, i + 1, line(i));
            }
            if (i + SIDE < POINTS) {
                b.branch(i, i + SIDE, line(i + 5));
            }
        }
        int tank = b.fixedPoint(TANK_PA);
        int second = b.fixedPoint(SECOND_TANK_PA);
        if (kind == Kind.ONE_BORE) {
            b.branch(tank, 0, line(0));
            b.branch(second, POINTS - 1, line(1));
            return b;
        }
        int regulated = b.freePoint(0);
        int checked = b.freePoint(0);
        b.branch(regulated, 0, line(0));
        b.branch(checked, POINTS - 1, line(1));
        int back = b.fixedPoint(0);
        Law open = line(4);
        double typical = OneWay.secantSlope(open, 0.1);
        b.device(tank, regulated, -1, OneWay.reducing(0.8 * TANK_PA, 1e4, 0, open, typical));
        b.device(second, checked, -1, OneWay.check(open, typical));
        b.device(3, back, -1, OneWay.relief(0.7 * TANK_PA, 1e4, 0, open, typical));
        b.device(12, tank, -1, OneWay.check(open, typical));
        return b;
    }

    private static double drawKgPerS(int i) {
        return i % 3 == 0 ? 0.06 + 0.002 * i : 0;
    }

    private static Law line(int i) {
        return Prescribed.roughBore(
                lengthM(i), (8 + i % 4) * 1e-3, 1.5e-6, 0.5, DENSITY, VISCOSITY, Transition.DEFAULT);
    }

    private static double lengthM(int i) {
        return 0.5 + 0.05 * i;
    }

    private static String file(double draws) {
        StringBuilder text = new StringBuilder(4096);
        text.append("linedrop: 1\ntitle: Loops of hose (invented)\nservice: coolant\nfluid: water\n")
                .append("temperature: 20 C\npoints:\n  t0: {kind: held, pressure: 300 kPa}\n")
                .append("  t1: {kind: held, pressure: 270 kPa}\n");
        for (int i = 0; i < POINTS; i++) {
            double draw = 3600 * draws * drawKgPerS(i);
            text.append(
                    draw == 0
                            ? String.format(Locale.ROOT, "  p%d: {kind: joint}%n", i)
                            : String.format(Locale.ROOT, "  p%d: {kind: draw, takes: %.9f L/h}%n", i, draw));
        }
        text.append("runs:\n");
        for (int i = 0; i < POINTS; i++) {
            if (i % SIDE < SIDE - 1) {
                run(text, "p" + i, "p" + (i + 1), i);
            }
            if (i + SIDE < POINTS) {
                run(text, "p" + i, "p" + (i + SIDE), i + 5);
            }
        }
        run(text, "t0", "p0", 0);
        run(text, "t1", "p" + (POINTS - 1), 1);
        return text.toString();
    }

    private static void run(StringBuilder text, String from, String to, int i) {
        text.append(String.format(
                Locale.ROOT,
                "  %s to %s: {from: %s, to: %s, parts: [{hose: race PTFE -%d, length: %.2f m, ends: straight to straight}]}%n",
                from,
                to,
                from,
                to,
                i % 4 < 2 ? 8 : 10,
                lengthM(i)));
    }

    /**
     * Checks an answer: every law, every balance, and that the devices do what they are there for.
     *
     * @param network   what was solved
     * @param workspace holds the answer
     * @throws IllegalStateException naming what is off
     */
    public static void check(Network network, Workspace workspace) {
        Nets.check(network, workspace);
        int device = 0;
        int[] states = {DeviceLaw.IN_CONTROL, DeviceLaw.WIDE_OPEN, DeviceLaw.IN_CONTROL, DeviceLaw.SHUT};
        for (int b = 0; b < network.branchCount(); b++) {
            if (network.kind(b) == Network.Kind.DEVICE && workspace.state(b) != states[device++]) {
                throw new IllegalStateException("device at branch " + b + " is in state " + workspace.state(b));
            }
        }
    }
}
