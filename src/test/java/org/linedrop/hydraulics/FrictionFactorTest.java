package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class FrictionFactorTest {
    private static final List<Transition> OFFERED = List.of(Transition.DEFAULT, Transition.LATE, Transition.NEAR_JUMP);
    private static final double[] ROUGHNESS = {0, 1e-5, 1e-3, 0.01, 0.05};

    private final double[] out = new double[2];

    private double factor(double reynolds, double roughness, Transition transition) {
        FrictionFactor.evaluate(reynolds, roughness, transition, out);
        return out[0];
    }

    @Test
    void branchesAreExactOutsideTheSpan() {
        assertThat(factor(1000, 0.01, Transition.DEFAULT)).isEqualTo(0.064);
        assertThat(factor(2000, 0.01, Transition.DEFAULT)).isEqualTo(0.032);
        assertThat(factor(3000, 0.001, Transition.DEFAULT)).isEqualTo(Colebrook.frictionFactor(3000, 0.001));
        assertThat(factor(2300, 0, Transition.NEAR_JUMP)).isEqualTo(64.0 / 2300);
        assertThat(factor(2301, 0, Transition.NEAR_JUMP)).isEqualTo(Colebrook.frictionFactor(2301, 0));
    }

    @Test
    void everyOfferedRuleIsContinuousAndRises() {
        for (Transition transition : OFFERED) {
            for (double roughness : ROUGHNESS) {
                for (double joint : new double[] {transition.fromReynolds(), transition.toReynolds()}) {
                    double below = factor(Math.nextDown(joint), roughness, transition);
                    double above = factor(Math.nextUp(joint), roughness, transition);
                    assertThat(above).isCloseTo(below, within(1e-12));
                }
                double previous = 0;
                for (double reynolds = 1500; reynolds < 5000; reynolds += 0.25) {
                    double loss = factor(reynolds, roughness, transition) * reynolds * reynolds;
                    assertThat(loss).isGreaterThan(previous);
                    previous = loss;
                }
            }
        }
    }

    @Test
    void slopeIsTheDerivativeAndContinuousForSmoothRules() {
        for (Transition transition : OFFERED) {
            for (double roughness : ROUGHNESS) {
                for (double reynolds : new double[] {1e-3, 500, 2100, 2300.4, 2600, 2950, 3500, 1e5, 1e8}) {
                    double step = reynolds > 2000 && reynolds < 4000 ? 0.05 : reynolds * 1e-3;
                    double slope = (factor(reynolds + step, roughness, transition)
                                    - factor(reynolds - step, roughness, transition))
                            / (2 * step);
                    factor(reynolds, roughness, transition);
                    assertThat(out[1]).isCloseTo(slope, within(Math.abs(slope) * 1e-5));
                }
                if (transition.shape() == Transition.Shape.SMOOTHSTEP) {
                    factor(transition.fromReynolds() + 1e-9, roughness, transition);
                    assertThat(out[1]).isCloseTo(-64 / Math.pow(transition.fromReynolds(), 2), within(1e-12));
                }
            }
        }
    }

    @Test
    void onlyTheSpanBlends() {
        assertThat(Transition.DEFAULT.blends(2500)).isTrue();
        assertThat(Transition.DEFAULT.blends(2000)).isFalse();
        assertThat(Transition.DEFAULT.blends(3000)).isFalse();
    }

    @Test
    void badArgumentsAreRefusedWithValueAndRange() {
        for (double bad : new double[] {0, -1, Double.NaN}) {
            assertThatThrownBy(() -> factor(bad, 0, Transition.DEFAULT))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("Reynolds number " + bad)
                    .hasMessageContaining("over zero");
        }
        for (double bad : new double[] {-1e-9, 1.1, Double.NaN}) {
            assertThatThrownBy(() -> factor(1e5, bad, Transition.DEFAULT))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("roughness over bore " + bad);
        }
        assertThatThrownBy(() -> new Transition(3000, 2000, Transition.Shape.SMOOTHSTEP))
                .hasMessageContaining("from Re 3000.0 to 2000.0");
    }
}
