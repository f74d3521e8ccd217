package org.linedrop.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.linedrop.network.FixedFlow;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/**
 * Random circuits full of check valves, relief valves, bypass and reducing regulators: the same seed gives the same
 * circuit on every machine. Even seeds have draws and every point tied to a given pressure by open lines, odd ones
 * have no draws and devices anywhere.
 */
final class DeviceCircuits {
    private final Random random;
    private final List<WideCircuits.Device> devices = new ArrayList<>();
    private final int seed;
    private final Network network;

    private DeviceCircuits(int seed) {
        this.seed = seed;
        random = new Random(seed);
        network = circuit(seed % 2 == 0);
    }

    static DeviceCircuits of(int seed) {
        return new DeviceCircuits(seed);
    }

    Network network() {
        return network;
    }

    /** Holds that each state means what it says, written out here without the residual of the devices. */
    void check(Solution solution) {
        for (WideCircuits.Device d : devices) {
            StateCheck.check(network, d, solution, seed);
        }
    }

    private Network circuit(boolean draws) {
        NetworkBuilder b = Network.builder();
        int points = 4 + random.nextInt(12);
        int fixed = 1 + random.nextInt(3);
        for (int i = 0; i < points; i++) {
            if (i < fixed) {
                b.fixedPoint(100e3 * random.nextInt(6));
            } else {
                b.freePoint(draws && random.nextInt(3) == 0 ? 0.03 * random.nextDouble() : 0);
            }
        }
        for (int i = 1; i < points; i++) {
            if (draws) {
                b.branch(random.nextInt(i), i, line());
            } else {
                add(b, random.nextInt(i), i, fixed, false);
            }
        }
        int extra = 1 + random.nextInt(points);
        for (int i = 0; i < extra; i++) {
            int from = random.nextInt(points);
            int to = random.nextInt(points);
            if (from != to) {
                add(b, from, to, fixed, draws);
            }
        }
        return b.build();
    }

    private void add(NetworkBuilder b, int from, int to, int fixed, boolean forced) {
        double open = 1e6 * Math.exp(6 * random.nextDouble());
        Law law = Prescribed.pressurePower(open, 2);
        double typical = OneWay.secantSlope(law, 0.02);
        double set = 50e3 + 350e3 * random.nextDouble();
        int kind = random.nextInt(7);
        // an ideal valve that holds a given pressure would hold nothing
        boolean holdsGiven = kind == 1 && from < fixed || kind == 2 && to < fixed;
        double slope = random.nextBoolean() && !holdsGiven ? 0 : 1e5 * Math.exp(4 * random.nextDouble());
        int reference = random.nextInt(3) == 0 ? random.nextInt(fixed) : -1;
        switch (kind) {
            case 0 ->
                devices.add(new WideCircuits.Device(
                        b.device(from, to, -1, OneWay.check(law, typical)), 'c', 0, 0, law, -1));
            case 1 ->
                devices.add(new WideCircuits.Device(
                        b.device(from, to, reference, OneWay.relief(set, slope, 0, law, typical)),
                        'r',
                        set,
                        slope,
                        law,
                        reference));
            case 2 ->
                devices.add(new WideCircuits.Device(
                        b.device(from, to, reference, OneWay.reducing(set, slope, 0, law, typical)),
                        'd',
                        set,
                        slope,
                        law,
                        reference));
            case 3 -> {
                if (forced) {
                    b.device(from, to, -1, new FixedFlow(0.02 * random.nextDouble(), typical));
                }
                b.branch(from, to, law);
            }
            default -> b.branch(from, to, line());
        }
    }

    private Law line() {
        return random.nextBoolean()
                ? Prescribed.pressurePower(1e6 * Math.exp(6 * random.nextDouble()), 2)
                : Prescribed.colebrook(2, 8e-3, 0, 2, 750, 5e-4);
    }
}
