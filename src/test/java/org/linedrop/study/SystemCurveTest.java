package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.Result;

class SystemCurveTest {
    private static final Circuit FEED = Examples.circuit("fuel-feed-516.yaml");

    private static double at(SystemCurve curve, double flow) {
        List<SystemCurve.Place> places = curve.places();
        for (int i = 1; i < places.size(); i++) {
            SystemCurve.Place b = places.get(i);
            if (b.flowM3PerS() >= flow) {
                SystemCurve.Place a = places.get(i - 1);
                double share = (flow - a.flowM3PerS()) / (b.flowM3PerS() - a.flowM3PerS());
                return a.risePa() + share * (b.risePa() - a.risePa());
            }
        }
        throw new AssertionError("flow beyond the curve");
    }

    @Test
    void meetsThePumpWhereItWasSolved() {
        Result result = Result.of(FEED).orThrow();
        SystemCurve curve = SystemCurve.of(result).get(0);
        double solved = result.device("pump").orElseThrow().figure("risePa").orElseThrow();
        assertThat(curve.risePa()).isEqualTo(solved);
        // between two of 32 places the curve is nearly straight
        assertThat(at(curve, curve.flowM3PerS())).isCloseTo(solved, within(2e-4 * solved));
    }

    @Test
    void withoutFlowItIsPressureAndHeightAlone() {
        SystemCurve curve = SystemCurve.of(Result.of(FEED).orThrow()).get(0);
        SystemCurve.Place first = curve.places().get(0);
        assertThat(first.flowM3PerS()).isZero();
        // 400 kPa kept at the regulator, which is level with the outlet, less 80 mm of fuel in the tank
        double density = Result.of(FEED).rows().get(0).massFlowKgPerS()
                / Result.of(FEED).rows().get(0).flowM3PerS();
        assertThat(first.risePa()).isCloseTo(400_000 - density * 9.80665 * 0.080, within(1.0));
    }

    @Test
    void aStrongerPumpRunsOnTheSameCurve() {
        // the same line with another pump: its solved place must lie on the curve that was drawn for the first
        SystemCurve curve = SystemCurve.of(Result.of(FEED).orThrow()).get(0);
        Result weaker = Result.of(FEED.with(List.of(Change.of("pump", "runs at", "12.0 V"))))
                .orThrow();
        double flow = weaker.device("pump").orElseThrow().flowM3PerS();
        double rise = weaker.device("pump").orElseThrow().figure("risePa").orElseThrow();
        assertThat(flow).isLessThan(0.9 * curve.flowM3PerS());
        assertThat(at(curve, flow)).isCloseTo(rise, within(2e-4 * rise)); // straight between two places
    }

    @Test
    void risesWithFlow() {
        for (String example : List.of(
                "fuel-feed-516.yaml",
                "fuel-feed-38.yaml",
                "carburettor-feed.yaml",
                "return-style.yaml",
                "front-radiator.yaml")) {
            for (SystemCurve curve : SystemCurve.of(Result.of(Examples.circuit(example)))) {
                for (int i = 1; i < curve.places().size(); i++) {
                    assertThat(curve.places().get(i).risePa())
                            .isGreaterThan(curve.places().get(i - 1).risePa());
                }
            }
        }
    }

    @Test
    void aClosedLoopAsksForNothingWithoutFlow() {
        Result result = Result.of(Examples.circuit("front-radiator.yaml")).orThrow();
        SystemCurve curve = SystemCurve.of(result).get(0);
        FlowPath loop = FlowPath.of(result, "block");
        assertThat(loop.places().get(0))
                .isEqualTo(loop.places().get(loop.places().size() - 1));
        // heights cancel around a loop of one density
        assertThat(curve.places().get(0).risePa()).isCloseTo(0, within(1e-3 * curve.risePa()));
    }

    @Test
    void circuitsWithoutPumpHaveNone() {
        assertThat(SystemCurve.of(Result.of(Examples.circuit("first-feed.yaml"))))
                .isEmpty();
    }
}
