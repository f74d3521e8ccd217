package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class OrificeTest {
    private final double[] out = new double[2];

    /** ISO 5167-2, 5.4.1 twice: the loss ratio times the taps' difference (1 - b^4)/C^2 is the permanent loss. */
    @Test
    void permanentLossIsTheLossRatioOfTheDifferenceAtTheTaps() {
        for (double beta : new double[] {0, 0.2, 0.5, 0.75, 0.95}) {
            for (double c : new double[] {0.55, 0.6, 0.8, 1}) {
                double taps = (1 - Math.pow(beta, 4)) / (c * c);
                assertThat(Orifice.permanentK(beta, c)).isCloseTo(Orifice.lossRatio(beta, c) * taps, within(1e-12));
            }
        }
        assertThat(Orifice.permanentK(0.5, 0.6)).isCloseTo(1.912670, within(5e-7));
    }

    /** Turbulent part and creeping part of the drop are those of the two formulas it is made of. */
    @Test
    void dropIsPermanentLossAndCreepingTerm() {
        Orifice plate = Orifice.of(0.02, 0.01);
        double flow = 2e-4;
        double reynolds = Reynolds.of(flow, 0.01, 800, 1e-3);
        plate.dischargeCoefficient(reynolds, out);
        double k = Orifice.permanentK(0.5, out[0]) + 12 * Math.PI / reynolds;
        plate.pressureDrop(flow, 800, 1e-3, out);
        double drop = k * Reynolds.velocityHeadPa(flow, 0.01, 800);
        assertThat(out[0]).isCloseTo(drop, within(1e-12 * drop));
        // Sampson 1891: dp = 24 mu Q/d^3
        plate.pressureDrop(1e-15, 800, 1e-3, out);
        assertThat(out[0] / (24 * 1e-3 * 1e-15 / 1e-6)).isCloseTo(1, within(1e-6));
        plate.pressureDrop(0, 800, 1e-3, out);
        assertThat(out).containsExactly(new double[] {0, 24e3}, within(1e-9));
    }

    /** ISO 5167-2, 5.3.2.1: 0.011 (0.75 - b) (2.8 - D/25.4 mm) more in bores under 71.12 mm, nothing from there on. */
    @Test
    void smallBoresHaveTheirTerm() {
        assertThat(coefficient(0.0508, 0.5, 1e5) - coefficient(0.1016, 0.5, 1e5))
                .isCloseTo(0.011 * 0.25 * 0.8, within(1e-12));
        assertThat(coefficient(0.0254, 0.25, 1e5) - coefficient(0.1016, 0.25, 1e5))
                .isCloseTo(0.011 * 0.5 * 1.8, within(1e-12));
        assertThat(coefficient(0.0254, 0.9, 1e5)).isEqualTo(coefficient(0.1016, 0.9, 1e5));
    }

    /** Held under Re_D 5000, or 16000 b^2 where that is more; the corner is rounded over a tenth in ln Re. */
    @Test
    void heldBelowItsRange() {
        assertThat(coefficient(0.1, 0.5, 4500)).isEqualTo(coefficient(0.1, 0.5, 10));
        assertThat(coefficient(0.1, 0.5, 5500)).isLessThan(coefficient(0.1, 0.5, 4500) - 1e-5);
        assertThat(coefficient(0.1, 0.75, 8100)).isEqualTo(coefficient(0.1, 0.75, 10));
        assertThat(coefficient(0.1, 0.75, 9900)).isLessThan(coefficient(0.1, 0.75, 8100) - 1e-5);
    }

    private double coefficient(double boreM, double beta, double pipeReynolds) {
        Orifice.of(boreM, beta * boreM).dischargeCoefficient(pipeReynolds / beta, out);
        return out[0];
    }

    /** rho/2 (Q/(Cd A))^2 with Cd 0.8. */
    @Test
    void constantCoefficientIsTakenExactly() {
        double velocity = 1e-4 / (0.8 * Math.PI / 4 * 0.005 * 0.005);
        Orifice.constantCoefficient(1e-4, 0.005, 0.8, 750, out);
        assertThat(out[0]).isCloseTo(375 * velocity * velocity, within(1e-6));
        Orifice.constantCoefficient(-1e-4, 0.005, 0.8, 750, out);
        assertThat(out[0]).isCloseTo(-375 * velocity * velocity, within(1e-6));
        assertThat(out[1]).isCloseTo(2 * 375 * velocity * velocity / 1e-4, within(1e-2));
    }

    @Test
    void theHoleIsNarrowerThanTheBore() {
        for (double[] bad :
                new double[][] {{0.01, 0.01}, {0.01, 0.02}, {0.01, 0}, {0.01, Double.NaN}, {Double.NaN, 0.01}}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Orifice.of(bad[0], bad[1]))
                    .withMessageContaining("orifice of " + bad[1] + " m in a bore of " + bad[0] + " m");
        }
    }
}
