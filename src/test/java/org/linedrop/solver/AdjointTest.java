package org.linedrop.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.network.Law;
import org.linedrop.network.Network;
import org.linedrop.network.NetworkBuilder;
import org.linedrop.network.OneWay;
import org.linedrop.network.Prescribed;
import org.linedrop.network.PrescribedPump;

/** Derivatives by one transposed solve against four-point differences of whole solves. */
class AdjointTest {
    private static final Solver TIGHT = Solver.of(new Options(200, 1e-12, 1e-12));

    /** A return-type feed: pump, filter, rail with a draw, bypass regulator over a tee-like junction, return. */
    static NetworkBuilder feed(double length, double set, double draw, double tank, double pump) {
        NetworkBuilder b = Network.builder();
        int supply = b.fixedPoint(tank);
        int delivery = b.freePoint(0);
        int joint = b.freePoint(0);
        int rail = b.freePoint(draw);
        int back = b.freePoint(0);
        int left = b.freePoint(0);
        b.branch(
                supply,
                delivery,
                PrescribedPump.polynomial(new double[] {pump, 0, -pump / (1.2e-4 * 1.2e-4)}, 740, 9.81));
        b.branch(delivery, joint, Prescribed.colebrook(length, 7.9e-3, 1.5e-6, 4, 740, 5e-4));
        b.branch(joint, rail, Prescribed.colebrook(1, 7.9e-3, 1.5e-6, 2, 740, 5e-4));
        b.branch(joint, left, Prescribed.colebrook(0.5, 6e-3, 1.5e-6, 2, 740, 5e-4));
        b.branch(left, rail, Prescribed.colebrook(0.8, 6e-3, 1.5e-6, 2, 740, 5e-4));
        Law open = Prescribed.pressurePower(2e6, 2);
        b.device(rail, back, supply, OneWay.relief(set, 5e5, 0, open, OneWay.secantSlope(open, 0.05)));
        b.branch(back, supply, Prescribed.colebrook(2.5, 6e-3, 1.5e-6, 3, 740, 5e-4));
        return b;
    }

    static Stream<Arguments> parameters() {
        return Stream.of(
                Arguments.of("length", (DoubleFunction<NetworkBuilder>) v -> feed(v, 3e5, 0.02, 0, 80), 2.0),
                Arguments.of("set pressure", (DoubleFunction<NetworkBuilder>) v -> feed(2, v, 0.02, 0, 80), 3e5),
                Arguments.of("draw", (DoubleFunction<NetworkBuilder>) v -> feed(2, 3e5, v, 0, 80), 0.02),
                Arguments.of("tank pressure", (DoubleFunction<NetworkBuilder>) v -> feed(2, 3e5, 0.02, v, 80), 3000.0),
                Arguments.of("shut-off head", (DoubleFunction<NetworkBuilder>) v -> feed(2, 3e5, 0.02, 0, v), 80.0),
                // starved: the regulator is wide open against a small set pressure
                Arguments.of(
                        "length, wide open", (DoubleFunction<NetworkBuilder>) v -> feed(v, 1e4, 0.02, 0, 80), 2.0));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("parameters")
    void matchesDifferencesOfSolves(String name, DoubleFunction<NetworkBuilder> of, double at) {
        Network base = of.apply(at).build();
        Solution s = TIGHT.solve(base);
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        double[] flows = new double[base.branchCount()];
        double[] pressures = new double[base.pointCount()];
        flows[6] = 2e6;
        flows[3] = -1e6;
        pressures[3] = 1;
        pressures[4] = -0.3;
        double h = 1e-3 * at;
        double wanted = (8 * (output(of, at + h, flows, pressures) - output(of, at - h, flows, pressures))
                        - (output(of, at + 2 * h, flows, pressures) - output(of, at - 2 * h, flows, pressures)))
                / (12 * h);
        Adjoint adjoint = Adjoint.of(base, s, flows, pressures);
        double small = 1e-5 * at;
        double got =
                adjoint.derivative(base.refilled(of.apply(at + small)), base.refilled(of.apply(at - small)), small);
        assertThat(got).isCloseTo(wanted, within(1e-6 * Math.abs(wanted)));
        assertThat(Math.abs(wanted)).isGreaterThan(0);
    }

    private static double output(DoubleFunction<NetworkBuilder> of, double at, double[] flows, double[] pressures) {
        Network n = of.apply(at).build();
        Solution s = TIGHT.solve(n);
        assertThat(s.outcome()).isEqualTo(Outcome.CONVERGED);
        double sum = 0;
        for (int b = 0; b < flows.length; b++) {
            sum += flows[b] * s.massFlowKgPerS(b);
        }
        for (int i = 0; i < pressures.length; i++) {
            // a given pressure is no output
            sum += n.fixed(i) ? 0 : pressures[i] * s.totalPressurePa(i);
        }
        return sum;
    }

    @Test
    void needsASolution() {
        NetworkBuilder b = Network.builder();
        b.freePoint(1);
        Network n = b.build();
        Solution s = Solver.usual().solve(n);
        assertThatThrownBy(() -> Adjoint.of(n, s, new double[0], new double[1]))
                .hasMessage("sensitivities need a converged solution, but this one is: cut off");
    }
}
