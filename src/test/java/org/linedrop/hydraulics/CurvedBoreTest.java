package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CurvedBoreTest {
    private final double[] out = new double[2];

    private double factor(double reynolds, double radiusRatio) {
        CurvedBore.frictionFactor(reynolds, 0, radiusRatio, Transition.DEFAULT, out);
        return out[0];
    }

    /** 20000 (r/R)^0.32: 8408 at R/r 15, held in tighter bends; never under 2000. */
    @Test
    void criticalReynoldsNumberIsHeldAtBothEnds() {
        assertThat(CurvedBore.criticalReynolds(15)).isCloseTo(8408, within(1.0));
        assertThat(CurvedBore.criticalReynolds(3)).isEqualTo(CurvedBore.criticalReynolds(15));
        assertThat(CurvedBore.criticalReynolds(100)).isCloseTo(4581.7, within(0.5));
        assertThat(CurvedBore.criticalReynolds(2500)).isEqualTo(2000);
    }

    /** Laminar, R/r 16 at Re 4000: De 1000, White's ratio there from his formula, on 64/Re. */
    @Test
    void laminarIsWhitesRatioOfTheStraightBore() {
        double w = Math.pow(11.6 / 1000, 0.45);
        double white = 1 / (1 - Math.pow(1 - w, 1 / 0.45));
        assertThat(factor(4000, 16)).isCloseTo(64.0 / 4000 * white, within(1e-12));
    }

    /** Turbulent, R/r 20 at Re 40000: X 100, Ito's ratio from his formula, on Colebrook. */
    @Test
    void turbulentIsItosRatioOfColebrook() {
        double ito = (0.304 + 0.029 * Math.pow(100, 0.25)) / 0.3164;
        assertThat(factor(40_000, 20)).isCloseTo(Colebrook.frictionFactor(40_000, 0) * ito, within(1e-12));
    }

    @Test
    void wideTurnsAreStraight() {
        assertThat(factor(50_000, 2000)).isEqualTo(Colebrook.frictionFactor(50_000, 0));
        assertThat(factor(50_000, Double.POSITIVE_INFINITY)).isEqualTo(Colebrook.frictionFactor(50_000, 0));
        // half way back in the smoothstep from 860 to 2000: the mean of the two laws, Ito's held in its own range
        CurvedBore.turbulentRatio(50_000, 1430, out);
        double ratio = out[0];
        assertThat(factor(50_000, 1430))
                .isCloseTo(Colebrook.frictionFactor(50_000, 0) * (1 + ratio) / 2, within(1e-12));
    }

    @Test
    void dropIsFactorTimesLengthInBores() {
        double flow = 2e-4;
        double reynolds = Reynolds.of(flow, 0.01, 800, 1e-3);
        CurvedBore.pressureDrop(flow, 0.01, 3, 0.1, 0, Transition.DEFAULT, 800, 1e-3, out);
        double drop = out[0];
        double expected = factor(reynolds, 20) * 300 * Reynolds.velocityHeadPa(flow, 0.01, 800);
        assertThat(drop).isCloseTo(expected, within(1e-9 * expected));
        // under Re 11.6 no bend is felt, nor at R/r 2000
        double slow = flow * 11 / reynolds;
        double[] straight = new double[2];
        CurvedBore.pressureDrop(slow, 0.01, 3, 0.1, 0, Transition.DEFAULT, 800, 1e-3, out);
        BoreFriction.pressureDrop(slow, 0.01, 3, 0, Transition.DEFAULT, 800, 1e-3, straight);
        assertThat(out).containsExactly(straight);
        CurvedBore.pressureDrop(flow, 0.01, 3, 10, 0, Transition.DEFAULT, 800, 1e-3, out);
        BoreFriction.pressureDrop(flow, 0.01, 3, 0, Transition.DEFAULT, 800, 1e-3, straight);
        assertThat(out).containsExactly(straight);
    }

    @Test
    void aBendIsWiderThanItsBore() {
        for (double bad : new double[] {1, 0.5, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> factor(1000, bad))
                    .withMessageContaining("bend radius over bore radius " + bad);
        }
    }
}
