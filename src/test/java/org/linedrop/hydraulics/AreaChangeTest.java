package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Values worked by hand from the formulas the class names. */
class AreaChangeTest {
    private static final Offset<Double> FIGURES = within(5e-6);
    private static final double RADIAN = Math.PI / 180;

    @Test
    void wideningConesFollowGibsonThenBorda() {
        // 3.5 tan(3.75 deg)^1.22, held below 7.5 degrees
        assertThat(AreaChange.coneUpK(0, 7.5 * RADIAN)).isCloseTo(0.12598, within(5e-5));
        assertThat(AreaChange.coneUpK(0, 2 * RADIAN)).isEqualTo(AreaChange.coneUpK(0, 7.5 * RADIAN));
        // 3.5 tan(17.5 deg)^1.22 = 0.8561 at 35 degrees, a straight line from there to 1 at 50
        assertThat(AreaChange.coneUpK(0, 35 * RADIAN)).isCloseTo(0.8561, within(5e-5));
        assertThat(AreaChange.coneUpK(0, 42.5 * RADIAN)).isCloseTo(0.92803, within(5e-5));
        assertThat(AreaChange.coneUpK(0, 38 * RADIAN)).isCloseTo(0.88486, within(5e-5));
        assertThat(AreaChange.coneUpK(0.5, 50 * RADIAN)).isCloseTo(0.5625, FIGURES);
        assertThat(AreaChange.coneUpK(0.5, Math.PI)).isEqualTo(0.5625);
    }

    @Test
    void narrowingConesTakeTheSmallerForm() {
        assertThat(AreaChange.coneDownK(0.5, 60 * RADIAN)).isCloseTo(0.265165, FIGURES); // 0.5 sqrt(0.5) 0.75
        assertThat(AreaChange.coneDownK(0.5, 20 * RADIAN)).isCloseTo(0.104189, FIGURES); // 0.8 sin(10 deg) 0.75
        assertThat(AreaChange.coneDownK(1, 60 * RADIAN)).isZero();
    }

    @Test
    void suddenChangesOnTheSmallBore() {
        assertThat(AreaChange.expansionK(0.5)).isEqualTo(0.5625);
        assertThat(AreaChange.contractionK(0.5)).isCloseTo(0.402961, FIGURES);
        assertThat(AreaChange.k1(0.5)).isEqualTo(22.5);
        // 2 - 8/3 b^2 + 2/3 b^4: nothing is lost where nothing changes
        assertThat(AreaChange.laminarExpansionK(1)).isCloseTo(0, within(1e-15));
        assertThat(AreaChange.laminarExpansionK(0.5)).isCloseTo(1.375, within(1e-15));
    }

    /** Out of 10 into 20 mm is an expansion forwards and a contraction backwards, on the 10 mm. */
    @Test
    void directionChoosesTheLaw() {
        double head = Reynolds.velocityHeadPa(1e-3, 0.01, 800);
        double[] out = new double[2];
        AreaChange.pressureDrop(1e-3, 0.01, 0.02, 800, 0, out);
        assertThat(out[0]).isCloseTo(0.5625 * head, within(1e-9 * head));
        AreaChange.pressureDrop(-1e-3, 0.01, 0.02, 800, 0, out);
        assertThat(out[0]).isCloseTo(-0.402961 * head, within(5e-6 * head));
        AreaChange.pressureDrop(1e-3, 0.02, 0.01, 800, 0, out);
        assertThat(out[0]).isCloseTo(0.402961 * head, within(5e-6 * head));
        AreaChange.pressureDrop(-1e-3, 0.02, 0.01, 800, 0, out);
        assertThat(out[0]).isCloseTo(-0.5625 * head, within(1e-9 * head));
    }
}
