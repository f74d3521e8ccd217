package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LocalLossTest {
    private static final double BORE = 0.0075;
    private static final double DENSITY = 760;
    private static final double VISCOSITY = 7e-4;

    private final double[] out = new double[2];

    @Test
    void isCoefficientTimesVelocityHead() {
        for (double flow : new double[] {1e-9, 6e-5, -6e-5, 1e-3}) {
            LocalLoss.pressureDrop(flow, BORE, 1.265, 1000, DENSITY, VISCOSITY, out);
            double drop = out[0];
            double slope = out[1];
            double reynolds = Reynolds.of(flow, BORE, DENSITY, VISCOSITY);
            LocalLoss.coefficient(reynolds, 1.265, 1000, out);
            double expected = out[0] * Reynolds.velocityHeadPa(flow, BORE, DENSITY) * Math.signum(flow);
            assertThat(drop).isCloseTo(expected, within(Math.abs(expected) * 1e-14));
            double step = flow * 1e-6;
            LocalLoss.pressureDrop(flow + step, BORE, 1.265, 1000, DENSITY, VISCOSITY, out);
            double above = out[0];
            LocalLoss.pressureDrop(flow - step, BORE, 1.265, 1000, DENSITY, VISCOSITY, out);
            assertThat(slope).isCloseTo((above - out[0]) / (2 * step), within(slope * 1e-8));
        }
    }

    @Test
    void slopeAtRestIsFiniteAndOnlyOfTheLowTerm() {
        LocalLoss.pressureDrop(0, BORE, 1.265, 1000, DENSITY, VISCOSITY, out);
        assertThat(out[0]).isZero();
        assertThat(out[1]).isCloseTo(500 * VISCOSITY / (BORE * Reynolds.areaM2(BORE)), within(1.0));
        LocalLoss.pressureDrop(0, BORE, 1.265, 0, DENSITY, VISCOSITY, out);
        assertThat(out[1]).isZero();
    }
}
