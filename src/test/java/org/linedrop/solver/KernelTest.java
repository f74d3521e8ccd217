package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;
import org.linedrop.network.JunctionLaw;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/** The kernel's promises: nothing carried over, answers that serialise, any structure. */
class KernelTest {
    /** A grid fed at one corner, with draws and a check valve from the far corner to the feed. */
    static NetworkBuilder grid(int side, double scale) {
        return grid(side, scale, true);
    }

    private static NetworkBuilder grid(int side, double scale, boolean device) {
        NetworkBuilder b = Network.builder();
        for (int i = 0; i < side * side; i++) {
            if (i == 0) {
                b.fixedPoint(3e5);
            } else {
                b.freePoint(i % 7 == 0 ? 0.01 : 0);
            }
        }
        for (int i = 0; i < side * side; i++) {
            if (i % side < side - 1) {
                b.branch(i, i + 1, Prescribed.pressurePower(scale * (1e5 + 1e4 * (i % 11)), 2));
            }
            if (i / side < side - 1) {
                b.branch(i, i + side, Prescribed.laminar(1e-3, 1, 4e-3 + 1e-4 * (i % 5), 3, 1000));
            }
        }
        Law open = Prescribed.pressurePower(1e6, 2);
        if (device) {
            b.device(side * side - 1, 0, -1, OneWay.check(open, 1e5));
        }
        return b;
    }

    @Test
    void nothingIsCarriedOver() {
        Network a = grid(6, 1).build();
        Network b = a.refilled(grid(6, 40));
        Solution fresh = Solver.usual().solve(b);
        Workspace w = Workspace.of(a);
        Solver.usual().solve(a, null, w);
        Solver.of(new Options(1, 1e-9, 1e-9)).solve(b, Solver.usual().solve(a), w);
        Solver.usual().solve(b, null, w);
        Solution used = w.snapshot();
        for (int i = 0; i < b.branchCount(); i++) {
            assertThat(used.massFlowKgPerS(i)).isEqualTo(fresh.massFlowKgPerS(i));
        }
        for (int i = 0; i < b.pointCount(); i++) {
            assertThat(used.totalPressurePa(i)).isEqualTo(fresh.totalPressurePa(i));
        }
        assertThat(used.history()).isEqualTo(fresh.history());
    }

    @Test
    void warmStartTakesFewerSteps() {
        Network a = grid(6, 1).build();
        Solution base = Solver.usual().solve(a);
        Workspace w = Workspace.of(a);
        Solver.usual().solve(a.refilled(grid(6, 1.01)), base, w);
        assertThat(w.iterations()).isLessThan(base.iterations());
        Solver.usual().solve(a, base, w);
        assertThat(w.iterations()).isLessThanOrEqualTo(2);
    }

    @Test
    void bigGrid() {
        Solution s = Solver.usual().solve(grid(60, 1, false).build());
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.iterations()).isLessThanOrEqualTo(9);
        Solution valve = Solver.usual().solve(grid(30, 1).build());
        assertThat(valve.outcome()).describedAs(valve.detail()).isEqualTo(Outcome.CONVERGED);
    }

    @Test
    void solutionSerialises() throws IOException, ClassNotFoundException {
        Solution s = Solver.usual().solve(grid(4, 1).build());
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(s);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Solution back = (Solution) in.readObject();
            assertThat(back.outcome()).isEqualTo(s.outcome());
            assertThat(back.massFlowKgPerS(3)).isEqualTo(s.massFlowKgPerS(3));
            assertThat(back.history()).isEqualTo(s.history());
        }
    }

    @Test
    void workspaceOfAnotherStructureIsRefused() {
        Network a = grid(4, 1).build();
        Workspace w = Workspace.of(a);
        assertThatThrownBy(() -> Solver.usual().solve(grid(5, 1).build(), null, w))
                .hasMessageContaining("made for another structure");
        assertThatThrownBy(w::snapshot).hasMessageContaining("nothing was solved");
        assertThatThrownBy(() -> a.refilled(grid(5, 1))).hasMessageContaining("same points, branches and kinds");
        assertThatThrownBy(() ->
                        Solver.usual().solve(a, Solver.usual().solve(grid(5, 1).build()), w))
                .hasMessageContaining("the start has 25 points");
    }

    /** Three legs whose losses feel each other's flows: drop i = k (q_i |q_i| + 0.5 q_i (q_j + q_k)), invented. */
    record Coupled(double k) implements JunctionLaw {
        @Override
        public int legs() {
            return 3;
        }

        @Override
        public int evaluate(double[] q, double[] drop, double[] slope) {
            for (int i = 0; i < 3; i++) {
                double others = q[(i + 1) % 3] + q[(i + 2) % 3];
                drop[i] = k * (q[i] * Math.abs(q[i]) + 0.5 * q[i] * others);
                for (int j = 0; j < 3; j++) {
                    slope[3 * i + j] = k * (i == j ? 2 * Math.abs(q[i]) + 0.5 * others : 0.5 * q[i]);
                }
            }
            return q[0] > 0 ? 1 : 2;
        }

        @Override
        public double typicalSlopePaPerKgPerS() {
            return k * 0.05;
        }

        @Override
        public String stateWord(int state) {
            return state == 1 ? "dividing" : "combining";
        }
    }

    @Test
    void junctionLegsAreSolvedTogether() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(2e5);
        int run = b.freePoint(0);
        int side = b.freePoint(0);
        int inlet = b.freePoint(0);
        int centre = b.freePoint(0);
        int low = b.fixedPoint(0);
        int lower = b.fixedPoint(-3e4);
        b.branch(tank, inlet, Prescribed.pressurePower(1e6, 2));
        int leg = b.junction(centre, new int[] {inlet, run, side}, new Coupled(4e5));
        b.branch(run, low, Prescribed.pressurePower(2e6, 1.75));
        b.branch(side, lower, Prescribed.pressurePower(3e6, 2));
        Network n = b.build();
        Solution s = Solver.usual().solve(n);
        assertThat(s.outcome()).describedAs(s.detail()).isEqualTo(Outcome.CONVERGED);
        assertThat(s.iterations()).isLessThanOrEqualTo(12);
        double[] q = {s.massFlowKgPerS(leg), s.massFlowKgPerS(leg + 1), s.massFlowKgPerS(leg + 2)};
        assertThat(q[0] + q[1] + q[2]).isCloseTo(0, within(1e-12));
        int[] ports = {inlet, run, side};
        double[] drop = new double[3];
        new Coupled(4e5).evaluate(q, drop, new double[9]);
        for (int i = 0; i < 3; i++) {
            assertThat(s.totalPressurePa(ports[i]) - s.totalPressurePa(centre)).isCloseTo(drop[i], within(1e-4));
        }
        assertThat(n.junction(0).stateWord(s.state(leg))).isEqualTo("dividing");
    }
}
