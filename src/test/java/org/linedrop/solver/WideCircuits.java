package org.linedrop.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.linedrop.hydraulics.Transition;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;
import org.linedrop.network.TestTees;

/**
 * Random circuits of everything at once, invented: 0.3 to 1e5 cSt, bores 0.5 to 100 mm, 1 kPa to 1 GPa, trees, loops, dead
 * ends, pumps, tees, and every device; the same seed gives the same circuit on every machine. By the seed over 3: draws on
 * a tree of open lines, devices anywhere without draws, devices anywhere with draws, of which some cannot be met. What
 * draws and fixed flows force through the tree of first lines stays within Re 1e8 and 1 GPa.
 */
final class WideCircuits {
    /** What a check needs to know of a device: {@code kind} as in {@link StateCheck}. */
    record Device(int branch, char kind, double set, double slope, Law open, int reference) {}

    /** A branch that is one bore. */
    record Bore(int branch, double boreM) {}

    private static final double GRAVITY = 9.80665;
    private static final double LEAST_REYNOLDS = 1e-3;
    private static final double MOST_REYNOLDS = 1e8;
    private static final double MOST_PRESSURE_PA = 1e9;
    private static final int LINED = 0;
    private static final int FREE = 1;

    final List<Device> devices = new ArrayList<>();
    final List<Bore> bores = new ArrayList<>();
    final Network network;
    final double dynamicViscosityPaS;
    final double viscosityCst;
    /** Lines and devices beyond those that a tree has. */
    final int extra;

    private final Random random;
    private final NetworkBuilder b = Network.builder();
    private final double density;
    private final double pressure;
    private final boolean wide;
    private final int kind;
    private int points;
    private int fixed;
    private double lastBore;
    /** What each point draws; empty at first, when only what the lines can take is wanted. */
    private final double[] draws;
    /** What is drawn or moved may go beyond {@link #MOST_REYNOLDS} and {@link #MOST_PRESSURE_PA}. */
    private final boolean beyond;

    private final double[] part;
    private final int[] parent;
    /** Of the line or device that joined each point first: flows at the least and the most Reynolds number or pressure. */
    private final double[] least;

    private final double[] largest;
    private double lastLeast;
    private double lastLargest;

    private WideCircuits(int seed, double[] draws, boolean beyond) {
        this.draws = draws;
        this.beyond = beyond;
        random = new Random(seed);
        kind = seed % 3;
        density = uniform(680, 1300);
        viscosityCst = logarithmic(0.3, 1e5);
        dynamicViscosityPaS = viscosityCst * 1e-6 * density;
        pressure = random.nextInt(10) == 0 ? logarithmic(1e7, 1e9) : logarithmic(1e3, 1e7);
        wide = random.nextInt(3) > 0;
        extra = random.nextInt(3) == 0 ? 0 : random.nextInt(8);
        points = 3 + random.nextInt(12);
        part = new double[points];
        parent = new int[points];
        least = new double[points];
        largest = new double[points];
        build();
        network = b.build();
    }

    static WideCircuits of(int seed) {
        return of(seed, false);
    }

    /** The same without bounds on what draws and fixed flows force through a line: Re 1e13, 1e17 Pa. */
    static WideCircuits beyond(int seed) {
        return of(seed, true);
    }

    private static WideCircuits of(int seed, boolean beyond) {
        WideCircuits withoutDraws = new WideCircuits(seed, new double[0], beyond);
        return new WideCircuits(seed, withoutDraws.fitting(), beyond);
    }

    /** Draws that are a part of what the circuit's pressure would drive there, within what the tree of lines can take. */
    private double[] fitting() {
        double[] most = reach(network);
        double[] fits = new double[points];
        double[] through = new double[points];
        double share = 1;
        for (int i = points - 1; i >= fixed; i--) {
            fits[i] = part[i] * most[i];
            if (!beyond && fits[i] != 0) {
                fits[i] = Math.copySign(Math.max(Math.abs(fits[i]), least[i]), fits[i]);
            }
            through[i] += Math.abs(fits[i]);
            through[parent[i]] += through[i];
            share = beyond ? 1 : Math.min(share, largest[i] / through[i]);
        }
        for (int i = 0; i < points; i++) {
            fits[i] *= share;
        }
        return fits;
    }

    private void build() {
        fixed = 1 + random.nextInt(3);
        for (int i = 0; i < points; i++) {
            if (i < fixed) {
                b.fixedPoint(random.nextInt(3) == 0 ? 0 : pressure * uniform(-0.1, 1));
            } else {
                part[i] = kind == FREE || random.nextInt(3) > 0
                        ? 0
                        : logarithmic(1e-3, 2) * (random.nextInt(5) == 0 ? -1 : 1);
                b.freePoint(draws.length == 0 ? 0 : draws[i]);
            }
        }
        for (int i = 1; i < points; i++) {
            parent[i] = random.nextInt(i);
            join(parent[i], i, kind == LINED);
            least[i] = lastLeast;
            largest[i] = lastLargest;
        }
        for (int tees = random.nextInt(6) - 3; tees > 0; tees--) {
            tee();
        }
        for (int i = 0; i < extra; i++) {
            int from = random.nextInt(points);
            int to = random.nextInt(points);
            if (from != to) {
                join(from, to, false);
            }
        }
    }

    private static double[] reach(Network network) {
        double[] most = new double[network.pointCount()];
        for (int i = 0; i < most.length; i++) {
            most[i] = network.fixed(i) ? 1e3 : 0;
        }
        for (int round = 0; round < most.length; round++) {
            for (int b = 0; b < network.branchCount(); b++) {
                int from = network.from(b);
                int to = network.to(b);
                double flow = network.nominalFlowKgPerS(b);
                most[to] = Math.max(most[to], Math.min(most[from], flow));
                most[from] = Math.max(most[from], Math.min(most[to], flow));
            }
        }
        return most;
    }

    private void tee() {
        int centre = b.freePoint(0);
        int[] ports = {b.freePoint(0), b.freePoint(0), b.freePoint(0)};
        for (int port : ports) {
            line(random.nextInt(points), port);
        }
        double run = bore();
        b.junction(
                centre,
                ports,
                TestTees.of(run, run * uniform(0.5, 1), density, dynamicViscosityPaS, random.nextInt(2)));
    }

    private void join(int from, int to, boolean open) {
        int what = open ? 0 : random.nextInt(14);
        if (what < 6) {
            line(from, to);
            return;
        }
        double bore = bore();
        Law law = Prescribed.loss(uniform(0.3, 30), bore, density);
        bound(law, bore);
        double flow = flowAt(law, pressure);
        double typical = OneWay.secantSlope(law, flow);
        double set = pressure * uniform(0.02, 1);
        boolean ideal = random.nextBoolean();
        double slope = ideal ? 0 : pressure / flow * logarithmic(1e-3, 1);
        double stiff = slope > 0 ? slope : pressure / flow * 0.1;
        int reference = random.nextInt(3) == 0 ? random.nextInt(fixed) : -1;
        switch (what) {
            case 6, 7 -> device(from, to, 'c', 0, 0, law, -1, OneWay.check(law, typical));
            case 8, 9 -> {
                double s = from < fixed ? stiff : slope;
                device(from, to, 'r', set, s, law, reference, OneWay.relief(set, s, 0, law, typical));
            }
            case 10, 11 -> {
                double s = to < fixed ? stiff : slope;
                device(from, to, 'd', set, s, law, reference, OneWay.reducing(set, s, 0, law, typical));
            }
            case 12 -> {
                // a bypass that opens at a difference, or a pump that must not be passed backwards
                if (random.nextBoolean()) {
                    line(from, to);
                    device(from, to, 'r', set, stiff, law, to, OneWay.relief(set, stiff, 0, law, typical));
                } else {
                    Law pump = pump(flow);
                    device(from, to, 'p', 0, 0, pump, -1, OneWay.check(pump, typical));
                }
            }
            default -> {
                // a closed tap or a fixed-displacement pump; beside a line where draws need a way
                if (kind != FREE) {
                    line(from, to);
                }
                double moved = kind == FREE || random.nextInt(3) == 0 ? 0 : flow * random.nextDouble();
                moved = beyond ? moved : Math.min(moved, lastLargest);
                device(from, to, 'f', moved, 0, law, -1, new FixedFlow(moved, typical));
            }
        }
    }

    private void device(int from, int to, char kind, double set, double slope, Law open, int reference, DeviceLaw law) {
        devices.add(new Device(b.device(from, to, reference, law), kind, set, slope, open, reference));
    }

    private void line(int from, int to) {
        Law law = line();
        if (random.nextInt(3) == 0) {
            law = Prescribed.plus(law, density * GRAVITY * uniform(-2, 2));
        }
        boolean along = random.nextBoolean();
        int branch = b.branch(along ? from : to, along ? to : from, law);
        if (lastBore > 0) {
            bores.add(new Bore(branch, lastBore));
        }
    }

    /** Flows through a bore at the ends of the range. */
    private void bound(Law law, double bore) {
        double perReynolds = Math.PI / 4 * bore * dynamicViscosityPaS;
        lastLeast = LEAST_REYNOLDS * perReynolds;
        lastLargest = Math.min(MOST_REYNOLDS * perReynolds, flowAt(law, MOST_PRESSURE_PA));
    }

    private double bore() {
        return wide ? logarithmic(5e-4, 0.1) : logarithmic(3e-3, 25e-3);
    }

    private Law line() {
        double bore = bore();
        double length = logarithmic(0.05, 20);
        double k = random.nextInt(2) * uniform(0.1, 8);
        Transition[] rules = {Transition.DEFAULT, Transition.LATE, Transition.NEAR_JUMP};
        Law rough = Prescribed.roughBore(
                length,
                bore,
                random.nextInt(2) * uniform(0, 0.02) * bore,
                k,
                density,
                dynamicViscosityPaS,
                rules[random.nextInt(3)]);
        lastBore = bore;
        Law law = switch (random.nextInt(10)) {
            case 0 -> Prescribed.laminar(dynamicViscosityPaS, length, bore, k, density);
            case 1 -> Prescribed.constantFriction(uniform(0.01, 0.05), length, bore, k, density);
            case 2 -> Prescribed.loss(uniform(0.2, 30), bore, density);
            case 3 -> {
                lastBore = 0;
                yield pump(flowAt(rough, pressure));
            }
            default -> rough;
        };
        bound(law, bore);
        return law;
    }

    private Law pump(double runOutKgPerS) {
        double head = pressure * uniform(0.05, 1) / density / GRAVITY;
        double runOut = runOutKgPerS / density;
        if (random.nextBoolean()) {
            return PrescribedPump.polynomial(new double[] {head, 0, -head / (runOut * runOut)}, density, GRAVITY);
        }
        return PrescribedPump.table(
                new double[] {0, 0.3 * runOut, 0.6 * runOut, 0.8 * runOut, runOut},
                new double[] {head, uniform(0.9, 0.99) * head, 0.75 * head, uniform(0.3, 0.6) * head, 0},
                random.nextBoolean() ? PrescribedPump.Between.STRAIGHT : PrescribedPump.Between.MONOTONE_CUBIC,
                density,
                GRAVITY);
    }

    /** By halving, to a per cent or so. */
    private static double flowAt(Law law, double pressure) {
        double[] out = new double[Law.SLOTS];
        double low = -30;
        double high = 30;
        for (int i = 0; i < 14; i++) {
            double middle = 0.5 * (low + high);
            law.evaluate(StrictMath.exp(middle), out);
            double drop = out[0];
            law.evaluate(0, out);
            if (drop - out[0] < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return StrictMath.exp(0.5 * (low + high));
    }

    private double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double logarithmic(double low, double high) {
        return low * StrictMath.pow(high / low, random.nextDouble());
    }
}
