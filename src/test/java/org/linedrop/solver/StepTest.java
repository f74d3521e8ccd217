package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/**
 * The step itself, not where steps end: a Newton step lowers every residual in proportion to the part of it that is
 * taken, whatever the state. Steps that are a little wrong arrive too, only later.
 */
class StepTest {
    private static final Law SQUARE = Prescribed.pressurePower(1e6, 2);
    private static final Law OPEN = Prescribed.pressurePower(1e6, 2);

    /** A loop, a junction of three legs, a relief valve that watches a third point, a check valve and draws. */
    private static Network network() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(2e5);
        int inlet = b.freePoint(0);
        int centre = b.freePoint(0);
        int run = b.freePoint(0.01);
        int side = b.freePoint(-0.02);
        int air = b.freePoint(0);
        int low = b.fixedPoint(1e4);
        b.branch(tank, inlet, Prescribed.pressurePower(1e6, 2));
        b.junction(centre, new int[] {inlet, run, side}, new KernelTest.Coupled(4e5));
        b.branch(run, side, Prescribed.pressurePower(2e6, 1.75));
        b.device(run, low, air, OneWay.relief(3e4, 2e5, 0.01, OPEN, 5e4));
        b.branch(air, low, Prescribed.laminar(1e-3, 1, 5e-3, 0, 1000));
        b.device(side, air, -1, OneWay.check(OPEN, 5e4));
        b.branch(run, low, Prescribed.plus(Prescribed.pressurePower(3e6, 2), 500));
        return b.build();
    }

    private static Workspace at(Network network, Random random) {
        Workspace w = Workspace.of(network);
        w.bind(network);
        for (int b = 0; b < w.flow.length; b++) {
            w.flow[b] = 0.02 + 0.2 * random.nextDouble();
        }
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = network.fixed(i) ? network.fixedPressurePa(i) : 2e5 * random.nextDouble();
        }
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        return w;
    }

    @Test
    void everyResidualFallsInProportion() {
        Network network = network();
        Random random = new Random(20);
        int checked = 0;
        for (int i = 0; i < 60; i++) {
            Workspace w = at(network, random);
            double[] laws = w.lawResidual.clone();
            double[] balances = w.imbalance.clone();
            int[] states = w.state.clone();
            if (!w.step.factor(network, false)) {
                continue;
            }
            w.step.solve(network);
            double most = 0;
            for (double step : w.flowStep) {
                most = Math.max(most, Math.abs(step));
            }
            double part = 1e-7 / Math.max(1, most);
            for (int b = 0; b < w.flow.length; b++) {
                w.flow[b] += part * w.flowStep[b];
            }
            for (int k = 0; k < w.pressure.length; k++) {
                w.pressure[k] += part * w.pressureStep[k];
                assertThat(network.fixed(k) && w.pressureStep[k] != 0).isFalse();
            }
            Residual.evaluate(w, network);
            boolean floating = w.state[5] == states[5] && w.state[7] == states[7];
            if (!floating) {
                continue; // over a kink between two pieces
            }
            checked++;
            for (int b = 0; b < laws.length; b++) {
                assertThat((w.lawResidual[b] - laws[b]) / part)
                        .as("law %s of state %s", b, i)
                        .isCloseTo(-laws[b], within(1e-4 * Math.max(1e4, Math.abs(laws[b])) + 1e-10 / part));
            }
            for (int k = 0; k < balances.length; k++) {
                assertThat((w.imbalance[k] - balances[k]) / part).isCloseTo(-balances[k], within(1e-5));
            }
        }
        assertThat(checked).isGreaterThan(30);
    }

    /** The first step of all: linear branches at their nominal slopes over what they have at rest, devices wide open. */
    @Test
    void fromRestEveryBranchIsLinear() {
        Network network = network();
        Workspace w = Workspace.of(network);
        w.bind(network);
        for (int i = 0; i < w.pressure.length; i++) {
            w.pressure[i] = network.fixed(i) ? network.fixedPressurePa(i) : 7e4 + 1e4 * i;
        }
        Residual.evaluate(w, network);
        Residual.scale(w, network);
        assertThat(w.step.fromRest(network)).isTrue();
        double[] imbalance = new double[network.pointCount()];
        for (int b = 0; b < network.branchCount(); b++) {
            int from = network.from(b);
            int to = network.to(b);
            double across = w.pressure[from] + w.pressureStep[from] - w.pressure[to] - w.pressureStep[to];
            double atRest = 0;
            if (network.kind(b) == Network.Kind.LAW) {
                network.law(b).evaluate(0, w.two);
                atRest = w.two[0];
            }
            assertThat(across - atRest)
                    .as("branch %s", b)
                    .isCloseTo(network.nominalSlopePaPerKgPerS(b) * w.flowStep[b], within(1e-6));
            imbalance[from] += w.flowStep[b];
            imbalance[to] -= w.flowStep[b];
        }
        for (int i = 0; i < imbalance.length; i++) {
            if (!network.fixed(i)) {
                assertThat(imbalance[i]).isCloseTo(-network.drawKgPerS(i), within(1e-9));
            }
        }
    }

    /** With the lines still linear, the devices of a start are on the laws of their pieces and every point balances. */
    @Test
    void settledDevicesAreOnTheirLaws() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(3e5);
        int held = b.freePoint(0);
        int far = b.freePoint(0.02);
        int air = b.fixedPoint(0);
        b.branch(held, far, Prescribed.pressurePower(1e6, 2));
        b.branch(far, air, Prescribed.pressurePower(2e6, 2));
        int regulator = b.device(tank, held, -1, OneWay.reducing(1e5, 1e4, 0, OPEN, 5e4));
        int check = b.device(far, tank, -1, OneWay.check(OPEN, 5e4));
        int relief = b.device(far, air, -1, OneWay.relief(3e4, 2e4, 0, OPEN, 5e4));
        Network network = b.build();
        Workspace w = Workspace.of(network);
        w.bind(network);
        Solver.atRest(network, w);
        assertThat(Solver.fromRest(network, w)).isTrue();
        Residual.evaluate(w, network);
        assertThat(w.state[regulator]).isEqualTo(DeviceLaw.IN_CONTROL);
        assertThat(w.state[check]).isEqualTo(DeviceLaw.SHUT);
        assertThat(w.state[relief]).isEqualTo(DeviceLaw.IN_CONTROL);
        for (int device : new int[] {regulator, check, relief}) {
            assertThat(w.lawResidual[device]).isCloseTo(0, within(1e-6));
        }
        for (int line = 0; line < 2; line++) {
            assertThat(w.pressure[network.from(line)] - w.pressure[network.to(line)])
                    .isCloseTo(network.nominalSlopePaPerKgPerS(line) * w.flow[line], within(1e-6));
        }
        assertThat(w.largestImbalance).isCloseTo(0, within(1e-12));
    }

    /** A law that no flow changes starts with a thousandth of the scales' ratio. */
    @Test
    void fromRestFlatLawsHaveASlope() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(5e4);
        int joint = b.freePoint(0.1);
        b.branch(tank, joint, Prescribed.constant(0));
        b.branch(joint, b.fixedPoint(0), SQUARE);
        Network network = b.build();
        Workspace w = Workspace.of(network);
        w.bind(network);
        w.pressure[tank] = 5e4;
        Residual.evaluate(w, network);
        Residual.scale(w, network);
        assertThat(w.step.fromRest(network)).isTrue();
        double across = w.pressure[tank] - w.pressure[joint] - w.pressureStep[joint];
        assertThat(across)
                .isCloseTo(w.flowStep[0] * 1e-3 * network.pressureScalePa() / network.flowScaleKgPerS(), within(1e-6));
    }

    /**
     * 40 kPa over 1e6 Q^2: nominal slope 2e5. Off its law by F a branch has at least half of that times sqrt(F/40 kPa),
     * but only in a far step.
     */
    @Test
    void farStepsHaveAFloorUnderTheirSlope() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(4e4), b.fixedPoint(0), SQUARE);
        Network network = b.build();
        double nominal = network.nominalSlopePaPerKgPerS(0);
        assertThat(nominal).isCloseTo(2e5, within(2e3));
        assertThat(step(network, 0, true)).isCloseTo(4e4 / (0.5 * nominal), within(1e-12));
        assertThat(step(network, 0.02, true)).isCloseTo(39_600 / (0.5 * nominal * Math.sqrt(0.99)), within(1e-12));
        assertThat(step(network, 0.02, false)).isCloseTo(0.99, within(1e-12));
        // steeper than its floor, and steeper than nominal
        assertThat(step(network, 0.06, true)).isCloseTo(36_400 / 1.2e5, within(1e-12));
        assertThat(step(network, 0.15, true)).isCloseTo(17_500 / 3e5, within(1e-12));
        assertThat(step(network, 0, false)).isCloseTo(4e4 / (1e-9 * nominal), within(1e-3));
    }

    private static double step(Network network, double flow, boolean far) {
        Workspace w = Workspace.of(network);
        w.bind(network);
        w.flow[0] = flow;
        w.pressure[0] = 4e4;
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        assertThat(w.step.factor(network, far)).isTrue();
        w.step.solve(network);
        return w.flowStep[0];
    }

    @Test
    void normsAndScalesByHand() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(4e4);
        b.branch(tank, b.fixedPoint(0), SQUARE);
        b.branch(tank, b.freePoint(0.01), SQUARE);
        Network network = b.build();
        Workspace w = Workspace.of(network);
        w.bind(network);
        w.pressure[0] = 4e4;
        w.pressure[2] = 4e4;
        w.flow[0] = 0.3;
        w.flow[1] = 0.05;
        Residual.evaluate(w, network);
        Residual.freeze(w, network);
        // 40 - 90 kPa on the first branch, 0 - 2.5 kPa on the second; 0.05 for 0.01 kg/s at the point
        assertThat(w.largestLawResidual).isCloseTo(5e4, within(1e-9));
        assertThat(w.largestImbalance).isCloseTo(0.04, within(1e-15));
        assertThat(w.largestDrop).isCloseTo(9e4, within(1e-9));
        assertThat(w.pressureScale).isCloseTo(9e4, within(1e-9));
        assertThat(w.flowScale).isEqualTo(0.3);
        double laws = (5e4 * 5e4 + 2500.0 * 2500) / (9e4 * 9e4);
        assertThat(w.norm).isCloseTo(Math.sqrt(laws + 0.04 * 0.04 / 0.09), within(1e-12));
        Solution state = w.snapshot();
        assertThat(state.flowImbalance()).isCloseTo(0.04 / 0.3, within(1e-12));
        assertThat(state.lawResidual()).isCloseTo(5 / 9.0, within(1e-12));
        assertThat(state.continuations()).isZero();
        assertThat(Residual.within(w, new Options(1, 0.134, 0.556))).isTrue();
        assertThat(Residual.within(w, new Options(1, 0.133, 0.556))).isFalse();
        assertThat(Residual.within(w, new Options(1, 0.134, 0.555))).isFalse();
        // a small flow leaves the scales of the network
        w.flow[0] = 0.1;
        w.flow[1] = 0.01;
        Residual.evaluate(w, network);
        Residual.scale(w, network);
        assertThat(w.pressureScale).isEqualTo(4e4);
        assertThat(w.flowScale).isEqualTo(network.flowScaleKgPerS());
    }

    /** Whatever flows are put on the branches, those of the tree make every point balance. */
    @Test
    void theTreeBalancesEveryPoint() {
        Supplier<Network> loops = () -> {
            NetworkBuilder b = Network.builder();
            int tank = b.fixedPoint(1e5);
            int[] points = new int[8];
            for (int i = 0; i < 8; i++) {
                points[i] = b.freePoint(0.01 * (i - 2));
            }
            for (int i = 0; i < 8; i++) {
                b.branch(points[i], points[(i + 1) % 8], SQUARE);
                b.branch(points[(i + 3) % 8], points[i], SQUARE);
            }
            b.branch(points[3], tank, SQUARE);
            b.branch(tank, points[6], SQUARE);
            return b.build();
        };
        Network network = loops.get();
        Random random = new Random(4);
        Workspace w = Workspace.of(network);
        w.bind(network);
        for (int i = 0; i < 20; i++) {
            for (int b = 0; b < w.flow.length; b++) {
                w.flow[b] = random.nextDouble() - 0.5;
            }
            double[] before = w.flow.clone();
            w.tree.balance(network, w);
            Residual.evaluate(w, network);
            assertThat(w.largestImbalance).isLessThan(1e-14);
            int kept = 0;
            for (int b = 0; b < before.length; b++) {
                kept += before[b] == w.flow[b] ? 1 : 0;
            }
            // eight points, eight branches of the tree; all others keep their flow
            assertThat(kept).isEqualTo(before.length - 8);
        }
    }

    /** A ring is opened at its narrowest branch, or at a device however wide, so that rounding goes where it is least. */
    @Test
    void theTreeLeavesOutTheNarrowest() {
        Random random = new Random(8);
        for (int i = 0; i < 60; i++) {
            int size = 3 + random.nextInt(8);
            int device = i % 2 == 0 ? -1 : random.nextInt(size);
            NetworkBuilder b = Network.builder();
            b.fixedPoint(1e5);
            for (int k = 1; k < size; k++) {
                b.freePoint(0);
            }
            int left = 0;
            double most = 0;
            for (int k = 0; k < size; k++) {
                double resistance = Math.pow(10, 4 + 4 * random.nextDouble());
                if (k == device) {
                    b.device(k, (k + 1) % size, -1, OneWay.check(OPEN, 1));
                } else {
                    b.branch(k, (k + 1) % size, Prescribed.pressurePower(resistance, 2));
                }
                if (resistance > most) {
                    most = resistance;
                    left = k;
                }
            }
            left = device >= 0 ? device : left;
            Network network = b.build();
            Workspace w = Workspace.of(network);
            w.bind(network);
            w.flow[left] = 0.7;
            w.tree.balance(network, w);
            for (int k = 0; k < size; k++) {
                assertThat(w.flow[k]).as("ring %s, branch %s of %s", i, k, left).isCloseTo(0.7, within(1e-12));
            }
        }
    }

    /** A supply that reaches the draw through a limited branch first and the tank with what is left. */
    @Test
    void suppliesMeetDrawsThroughLimitedBranches() {
        for (double supply : new double[] {0.3, 0.4}) {
            NetworkBuilder b = Network.builder();
            int tank = b.fixedPoint(0);
            int source = b.freePoint(-supply);
            int sink = b.freePoint(0.3);
            int first = b.branch(source, sink, SQUARE, 0, 0.5);
            int second = b.device(sink, tank, -1, OneWay.check(OPEN, 5e4));
            Solution s = Solver.usual().solve(b.build());
            assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
            assertThat(s.massFlowKgPerS(first)).isCloseTo(supply, within(1e-9));
            assertThat(s.massFlowKgPerS(second)).isCloseTo(supply - 0.3, within(1e-9));
        }
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        int source = b.freePoint(-0.6);
        int sink = b.freePoint(0.3);
        b.branch(source, sink, SQUARE, 0, 0.5);
        b.device(sink, tank, -1, OneWay.check(OPEN, 5e4));
        Solution s = Solver.usual().solve(b.build());
        assertThat(s.outcome()).isEqualTo(Outcome.DEMAND_NOT_MET);
        assertThat(s.limitingCut()).isNotNull();
        assertThat(s.limitingCut().points()).containsExactly(source);
        assertThat(s.limitingCut().inward()).isFalse();
        assertThat(s.limitingCut().neededKgPerS()).isCloseTo(0.6, within(1e-12));
        assertThat(s.limitingCut().passesKgPerS()).isCloseTo(0.5, within(1e-12));
    }
}
