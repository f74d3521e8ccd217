package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;

import org.linedrop.network.DeviceLaw;
import org.linedrop.network.Law;
import org.linedrop.network.Network;

/**
 * Holds that the state of a device means what it says, written out without the residual of the devices. Kinds: check valve
 * and pump with one ({@code c}, {@code p}), relief valve or bypass regulator ({@code r}), dead-head regulator ({@code d}),
 * fixed flow ({@code f}, its set value is the flow).
 */
final class StateCheck {
    private StateCheck() {}

    static void check(Network network, WideCircuits.Device d, Solution s, int seed) {
        double q = s.massFlowKgPerS(d.branch());
        double in = s.totalPressurePa(network.from(d.branch()));
        double out = s.totalPressurePa(network.to(d.branch()));
        double reference = d.reference() < 0 ? 0 : s.totalPressurePa(d.reference());
        double slack = 2e-9 * s.pressureScalePa();
        double flowSlack = 2e-9 * s.flowScaleKgPerS();
        if (d.kind() == 'f') {
            assertThat(Math.abs(q - d.set())).as("seed %d %s", seed, d).isLessThanOrEqualTo(flowSlack);
            return;
        }
        double[] open = new double[Law.SLOTS];
        d.open().evaluate(Math.max(0, q), open);
        double spare = in - out - open[0];
        double control = switch (d.kind()) {
            case 'r' -> in - reference - d.set() - d.slope() * q;
            case 'd' -> d.set() + reference - out - d.slope() * q;
            default -> Double.POSITIVE_INFINITY;
        };
        String what = "seed " + seed + " " + d + " q " + q + " spare " + spare + " control " + control;
        assertThat(q).as(what).isGreaterThanOrEqualTo(-flowSlack);
        switch (s.state(d.branch())) {
            case DeviceLaw.SHUT -> {
                assertThat(Math.abs(q)).as(what).isLessThanOrEqualTo(flowSlack);
                assertThat(Math.min(spare, control)).as(what).isLessThanOrEqualTo(slack);
            }
            case DeviceLaw.IN_CONTROL -> {
                assertThat(Math.abs(control)).as(what).isLessThanOrEqualTo(slack);
                assertThat(spare).as(what).isGreaterThanOrEqualTo(-slack);
            }
            default -> {
                assertThat(Math.abs(spare)).as(what).isLessThanOrEqualTo(slack);
                assertThat(control).as(what).isGreaterThanOrEqualTo(-slack);
            }
        }
    }
}
