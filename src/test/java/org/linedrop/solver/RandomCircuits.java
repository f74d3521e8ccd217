package org.linedrop.solver;

import java.util.Random;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;

/** Random circuits of vehicle size: the same seed gives the same circuit on every machine. */
final class RandomCircuits {
    private static final double GRAVITY = 9.80665;
    /** Fluids as density kg/m3 and dynamic viscosity Pa s: water hot and cold, petrol, warm and cold oil; invented. */
    private static final double[][] FLUIDS = {{998, 1.0e-3}, {965, 3.2e-4}, {740, 5e-4}, {850, 1.2e-2}, {880, 0.3}};

    private final Random random;
    private final double density;
    private final double viscosity;
    private final boolean wide;

    private RandomCircuits(long seed) {
        random = new Random(seed);
        double[] fluid = FLUIDS[random.nextInt(FLUIDS.length)];
        density = fluid[0];
        viscosity = fluid[1];
        // one in four mixes bores from 0.5 to 100 mm, the rest 3 to 25 mm
        wide = random.nextInt(4) == 0;
    }

    /** A connected circuit with 1 to 3 given pressures, draws, loops, and pumps here and there. */
    static Network of(long seed) {
        return new RandomCircuits(seed).build();
    }

    private Network build() {
        NetworkBuilder b = Network.builder();
        int points = 4 + random.nextInt(16);
        int fixed = 1 + random.nextInt(3);
        for (int i = 0; i < points; i++) {
            if (i < fixed) {
                b.fixedPoint(random.nextInt(3) == 0 ? 0 : uniform(-2e4, 3e5));
            } else {
                b.freePoint(random.nextInt(2) == 0 ? 0 : uniform(-0.01, 0.04));
            }
        }
        for (int i = 1; i < points; i++) {
            add(b, random.nextInt(i), i);
        }
        int extra = random.nextInt(points);
        for (int i = 0; i < extra; i++) {
            int from = random.nextInt(points);
            int to = random.nextInt(points);
            if (from != to) {
                add(b, from, to);
            }
        }
        return b.build();
    }

    private void add(NetworkBuilder b, int from, int to) {
        Law law = law();
        if (random.nextInt(3) == 0) {
            law = Prescribed.plus(law, density * GRAVITY * uniform(-1, 1));
        }
        if (random.nextBoolean()) {
            b.branch(from, to, law);
        } else {
            b.branch(to, from, law);
        }
    }

    private Law law() {
        double bore = wide ? logarithmic(5e-4, 0.1) : logarithmic(3e-3, 25e-3);
        double length = logarithmic(0.05, 6);
        double k = random.nextInt(2) * uniform(0.1, 8);
        switch (random.nextInt(10)) {
            case 0:
                return Prescribed.laminar(viscosity, length, bore, k, density);
            case 1:
                return Prescribed.constantFriction(uniform(0.01, 0.05), length, bore, k, density);
            case 2:
                double[] exponents = {1, 1.5, 1.75, 1.852, 2};
                return Prescribed.pressurePower(logarithmic(1e5, 1e9), exponents[random.nextInt(exponents.length)]);
            case 3:
                return pump();
            case 4:
                return Prescribed.loss(uniform(0.2, 30), bore, density);
            default:
                return Prescribed.colebrook(
                        length, bore, random.nextInt(2) * uniform(0, 0.02) * bore, k, density, viscosity);
        }
    }

    private Law pump() {
        double shutOff = logarithmic(1, 40);
        double runOut = logarithmic(3e-5, 2e-3);
        if (random.nextBoolean()) {
            return PrescribedPump.polynomial(new double[] {shutOff, 0, -shutOff / (runOut * runOut)}, density, GRAVITY);
        }
        double[] flow = {0, 0.3 * runOut, 0.6 * runOut, 0.8 * runOut, runOut};
        double[] head = {shutOff, uniform(0.9, 0.99) * shutOff, 0.75 * shutOff, uniform(0.3, 0.6) * shutOff, 0};
        return PrescribedPump.table(
                flow,
                head,
                random.nextBoolean() ? PrescribedPump.Between.STRAIGHT : PrescribedPump.Between.MONOTONE_CUBIC,
                density,
                GRAVITY);
    }

    private double uniform(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private double logarithmic(double low, double high) {
        return low * StrictMath.pow(high / low, random.nextDouble());
    }
}
