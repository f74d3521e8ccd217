package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;

/** What ties points together in a state, and which pressures no fluid can have. */
class ChecksTest {
    private static final Law SQUARE = Prescribed.pressurePower(1e6, 2);

    /** tank - near, a device from near to far that watches air, far - end, air - low. */
    private static Network network() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(1e5);
        int near = b.freePoint(0);
        int far = b.freePoint(0);
        int end = b.freePoint(0);
        int air = b.freePoint(0);
        int low = b.fixedPoint(0);
        b.branch(tank, near, SQUARE);
        b.device(near, far, air, OneWay.relief(3e4, 2e5, 0.01, SQUARE, 5e4));
        b.branch(far, end, SQUARE);
        b.branch(air, end, SQUARE);
        b.branch(low, tank, SQUARE);
        return b.build();
    }

    private static boolean tied(Workspace w, int a, int b) {
        return Groups.find(w.group, a) == Groups.find(w.group, b);
    }

    private static Workspace active(double inlet, double outlet, double reference) {
        Network network = network();
        Workspace w = Workspace.of(network);
        w.bind(network);
        w.byInlet[0] = inlet;
        w.byOutlet[0] = outlet;
        w.byReference[0] = reference;
        Checks.joinActive(network, w);
        return w;
    }

    @Test
    void anOpenDeviceTiesItsTwoSides() {
        Workspace w = active(1, -1, 0);
        assertThat(tied(w, 1, 2)).isTrue();
        assertThat(tied(w, 0, 3)).isTrue();
        assertThat(tied(w, 4, 0)).isTrue();
    }

    @Test
    void aShutDeviceTiesNothing() {
        Workspace w = active(0, 0, 0);
        assertThat(tied(w, 1, 2)).isFalse();
        assertThat(tied(w, 2, 3)).isTrue();
        assertThat(tied(w, 2, 4)).isTrue();
        assertThat(tied(w, 0, 1)).isTrue();
        assertThat(tied(w, 0, 5)).as("given pressures are one").isTrue();
    }

    @Test
    void oneInControlTiesTheSideItHoldsToItsReference() {
        // the outlet follows the air, which hangs on the same end: nothing ties it to the tank
        Workspace outlet = active(0, 1, -1);
        assertThat(tied(outlet, 2, 4)).isTrue();
        assertThat(tied(outlet, 1, 2)).isFalse();
        // the inlet follows the air
        Workspace inlet = active(1, 0, -1);
        assertThat(tied(inlet, 1, 4)).isTrue();
        assertThat(tied(inlet, 0, 2)).as("through the air and its line").isTrue();
        // a setting over nothing is as good as a given pressure
        Workspace free = active(0, 1, 0);
        assertThat(tied(free, 2, 0)).isTrue();
        assertThat(tied(free, 4, 0)).isTrue();
        Workspace low = active(1, 0, 0);
        assertThat(tied(low, 1, 0)).isTrue();
        assertThat(tied(low, 2, 0)).isFalse();
    }

    @Test
    void aGivenPressureLeadsItsSet() {
        Workspace w = active(1, -1, 0);
        Network network = network();
        for (int i = 0; i < 6; i++) {
            assertThat(network.fixed(Groups.find(w.group, i))).isTrue();
        }
        int[] group = {0, 1, 2, 3, 4, 5};
        Checks.join(network, group, 1, 0);
        Checks.join(network, group, 2, 1);
        Checks.join(network, group, 3, 4);
        assertThat(Groups.find(group, 2)).isZero();
        assertThat(Groups.find(group, 1)).isZero();
        assertThat(Groups.find(group, 3)).isEqualTo(Groups.find(group, 4));
        assertThat(Groups.find(group, 4)).isIn(3, 4);
    }

    @Test
    void deviceThatCanOpenTieBeforeTheSolve() {
        Network network = network();
        int[] group = new int[6];
        Checks.joinRelated(network, group);
        for (int i = 0; i < 6; i++) {
            assertThat(network.fixed(Groups.find(group, i))).as("point %s", i).isTrue();
        }
        Workspace w = Workspace.of(network);
        w.bind(network);
        assertThat(Checks.before(network, w)).isNull();
        assertThat(w.checked).isTrue();
        // it is asked once
        w.refused = Outcome.CUT_OFF;
        assertThat(Checks.before(network, w)).isEqualTo(Outcome.CUT_OFF);
    }

    private static Workspace pressures(double ambient, double vapour, double... pressures) {
        NetworkBuilder b = Network.builder();
        if (ambient > 0) {
            b.ambient(ambient);
        }
        int tank = b.fixedPoint(0);
        for (int i = 1; i < pressures.length; i++) {
            b.branch(tank, b.freePoint(0.1), SQUARE);
        }
        b.vapour(1, vapour);
        Network network = b.build();
        Workspace w = Workspace.of(network);
        w.bind(network);
        System.arraycopy(pressures, 0, w.pressure, 0, pressures.length);
        Checks.after(network, w);
        return w;
    }

    private static Outcome outcome(Workspace w) {
        return w.notPhysicalPoint >= 0 ? Outcome.NOT_PHYSICAL : Outcome.CONVERGED;
    }

    @Test
    void noFluidPullsMoreThanAVacuum() {
        assertThat(outcome(pressures(1e5, 0, 0, -99_999, 5))).isEqualTo(Outcome.CONVERGED);
        assertThat(pressures(1e5, 0, 0, 5, -1e5).notPhysicalPoint)
                .as("at nothing at all")
                .isEqualTo(2);
        assertThat(pressures(1e5, 0, 0, -2e5, -1.5e5, -3e5, -2.5e5).notPhysicalPoint)
                .as("the worst")
                .isEqualTo(3);
        assertThat(outcome(pressures(0, 0, 0, -2e5, -3e5)))
                .as("no air is known of")
                .isEqualTo(Outcome.CONVERGED);
    }

    @Test
    void underItsVapourPressureAFluidBoils() {
        assertThat(outcome(pressures(1e5, 3e4, 0, -69_999, 0))).isEqualTo(Outcome.CONVERGED);
        assertThat(pressures(1e5, 3e4, 0, -70_001, 0).notPhysicalPoint).isEqualTo(1);
        // 40 kPa under its vapour pressure is worse than 35 kPa under a vacuum
        assertThat(pressures(1e5, 3e4, 0, -110e3, -135e3).notPhysicalPoint).isEqualTo(1);
        assertThat(pressures(1e5, 3e4, 0, -110e3, -145e3).notPhysicalPoint).isEqualTo(2);
    }
}
