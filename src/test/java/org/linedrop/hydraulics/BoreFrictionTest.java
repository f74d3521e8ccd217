package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BoreFrictionTest {
    private static final double BORE = 0.01;
    private static final double ROUGH = 1e-5;
    private static final Transition RULE = Transition.DEFAULT;

    private static BoreFriction of(
            double bore, double length, double roughness, Transition rule, double rho, double mu) {
        return BoreFriction.of(bore, length, roughness, rule, rho, mu);
    }

    /** The factor left by the first bore gives the second one, four times as long, exactly its own drop. */
    @Test
    void boresOfOneShapeShareTheirFactor() {
        BoreFriction first = of(BORE, 1, ROUGH, RULE, 800, 1e-3);
        BoreFriction second = of(BORE, 4, ROUGH, RULE, 800, 1e-3);
        double[] alone = new double[2];
        double[] slots = {9, 9, 9, 9, 9, 9};
        for (double flow : new double[] {3e-4, -3e-4, 2e-5}) {
            first.pressureDrop(flow, slots, 3, true);
            first.pressureDrop(flow, alone);
            assertThat(slots).startsWith(alone);
            assertThat(slots[2]).isEqualTo(9);
            assertThat(slots[5]).isEqualTo(9);
            second.pressureDrop(flow, slots, 3, false);
            second.pressureDrop(flow, alone);
            assertThat(slots).startsWith(alone);
        }
        assertThat(slots[3]).isNotEqualTo(9);
        assertThat(slots[4]).isNegative();
    }

    @Test
    void laminarFlowNeedsNoFactor() {
        double[] slots = {9, 9, 9, 9};
        of(BORE, 1, ROUGH, RULE, 800, 1e-3).pressureDrop(1e-6, slots, 2, true);
        // Hagen and Poiseuille: 128 mu L Q/(pi d^4)
        double perFlow = 128e-3 / (Math.PI * 1e-8);
        assertThat(slots[0]).isCloseTo(1e-6 * perFlow, within(1e-12 * perFlow));
        assertThat(slots[1]).isCloseTo(perFlow, within(1e-9 * perFlow));
        assertThat(slots).endsWith(9, 9);
    }

    @Test
    void whatSharesAFactorHasAllButTheLengthInCommon() {
        BoreFriction one = of(BORE, 1, ROUGH, RULE, 800, 1e-3);
        assertThat(one.sharesFactorWith(of(BORE, 7, ROUGH, RULE, 800, 1e-3))).isTrue();
        assertThat(one.sharesFactorWith(of(2 * BORE, 1, 2 * ROUGH, RULE, 800, 1e-3)))
                .isFalse();
        assertThat(one.sharesFactorWith(of(BORE, 1, 2 * ROUGH, RULE, 800, 1e-3)))
                .isFalse();
        assertThat(one.sharesFactorWith(of(BORE, 1, ROUGH, Transition.LATE, 800, 1e-3)))
                .isFalse();
        assertThat(one.sharesFactorWith(of(BORE, 1, ROUGH, RULE, 700, 1e-3))).isFalse();
        assertThat(one.sharesFactorWith(of(BORE, 1, ROUGH, RULE, 800, 2e-3))).isFalse();
    }
}
