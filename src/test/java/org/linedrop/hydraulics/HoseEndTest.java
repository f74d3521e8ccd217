package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * One swept 90-degree -6 hose end, worked by hand: E85 of 764 kg/m3 and 0.93 mm2/s, 216 L/h, hose 7.94 mm, nipple 6.35 mm
 * and 22 mm long, fitting 7.54 mm, R/D 1.5.
 */
class HoseEndTest {
    private static final double DENSITY = 764;
    private static final double VISCOSITY = 764 * 0.93e-6;
    private static final double FLOW = 6e-5;
    private static final double HOSE = 0.00794;
    private static final double NIPPLE = 0.00635;
    private static final double LENGTH = 0.022;
    private static final double FITTING = 0.00754;

    private final double[] out = new double[2];

    @Test
    void nippleTermsAreThoseOfTheHandbook() {
        double head = Reynolds.velocityHeadPa(FLOW, NIPPLE, DENSITY);
        assertThat(head).isCloseTo(1371, within(1.0));
        assertThat(AreaChange.contractionK(NIPPLE / HOSE)).isCloseTo(0.233, within(5e-4));
        assertThat(AreaChange.expansionK(NIPPLE / FITTING)).isCloseTo(0.085, within(5e-4));
        BoreFriction.pressureDrop(FLOW, NIPPLE, LENGTH, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
        assertThat(out[0]).isCloseTo(137, within(0.5));
        Nipple.pressureDrop(FLOW, HOSE, NIPPLE, LENGTH, FITTING, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
        // 319 + 137 + 116 Pa, and 2 Pa of the low-Re term
        assertThat(out[0]).isCloseTo(574, within(1.0));
    }

    @Test
    void instanceAndFunctionAgree() {
        for (double first : new double[] {0.5 * NIPPLE, NIPPLE, HOSE, Double.POSITIVE_INFINITY}) {
            Nipple nipple = Nipple.of(first, NIPPLE, LENGTH, FITTING);
            for (double flow : new double[] {-1e-3, -1e-6, 0, 3e-5}) {
                nipple.pressureDrop(flow, 1e-6, Transition.DEFAULT, DENSITY, VISCOSITY, out);
                double drop = out[0];
                double slope = out[1];
                Nipple.pressureDrop(
                        flow, first, NIPPLE, LENGTH, FITTING, 1e-6, Transition.DEFAULT, DENSITY, VISCOSITY, out);
                assertThat(out).containsExactly(drop, slope);
            }
        }
        assertThatThrownBy(() -> Nipple.of(HOSE, -1, LENGTH, FITTING)).hasMessageContaining("nipple of -1.0 m");
        assertThatThrownBy(() -> Nipple.of(HOSE, NIPPLE, -1, FITTING)).hasMessageContaining("nipple length -1.0 m");
    }

    @Test
    void elbowTermsAreThoseOfTheHandbook() {
        double reynolds = Reynolds.of(FLOW, FITTING, DENSITY, VISCOSITY);
        assertThat(reynolds).isCloseTo(10900, within(50.0));
        SweptBend bend = SweptBend.of(Math.PI / 2, 1.5);
        bend.excess(reynolds, out);
        assertThat(out[0]).isCloseTo(0.238, within(5e-4));
        assertThat(bend.arcOverBore()).isCloseTo(2.356, within(1e-3));
        assertThat(bend.k1()).isEqualTo(800);
        bend.pressureDrop(FLOW, FITTING, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
        assertThat(out[0]).isCloseTo(164 + 49 + 51, within(1.0));
        double forged = MitreElbow.turbulentK(Math.PI / 2) + MitreElbow.k1(Math.PI / 2) / reynolds;
        assertThat(forged).isCloseTo(1.36, within(0.005));
    }

    /** The nipple bore decides: referred to the hose it is 0.38, 1.06, 2.6 and 6.5 for f 0.024 and l = 3 d. */
    @Test
    void nippleReferredToTheHoseGrowsWithTheFourthPower() {
        double[] beta = {0.9, 0.8, 0.7, 0.6};
        double[] expected = {0.38, 1.06, 2.6, 6.5};
        double[] lastDigit = {0.01, 0.01, 0.1, 0.1};
        for (int i = 0; i < beta.length; i++) {
            double turbulent = Nipple.turbulentK(1, beta[i], 3 * beta[i], 1);
            double onHose = (turbulent + 0.024 * 3) / Math.pow(beta[i], 4);
            assertThat(onHose).isCloseTo(expected[i], within(0.5 * lastDigit[i]));
        }
    }

    @Test
    void shortNippleCostsMoreThanALongOne() {
        double shortK = Nipple.turbulentK(HOSE, NIPPLE, 0.5 * NIPPLE, HOSE);
        double longK = Nipple.turbulentK(HOSE, NIPPLE, 3 * NIPPLE, HOSE);
        assertThat(shortK).isGreaterThan(1.5 * longK);
        // as a plate without length it agrees with Idelchik's thin orifice, at a quarter of the area
        assertThat(Nipple.turbulentK(2, 1, 0, 2) * 16 / Orifice.idelchikK(0.25)).isBetween(0.97, 1.03);
    }

    @Test
    void nippleWiderThanItsNeighbourIsAChangeOfBoreOnTheNeighbour() {
        Nipple.pressureDrop(FLOW, NIPPLE, HOSE, 0, HOSE, 0, Transition.DEFAULT, DENSITY, VISCOSITY, out);
        double drop = out[0];
        AreaChange.pressureDrop(FLOW, NIPPLE, HOSE, DENSITY, VISCOSITY, out);
        assertThat(drop).isCloseTo(out[0], within(1e-9 * drop));
    }
}
