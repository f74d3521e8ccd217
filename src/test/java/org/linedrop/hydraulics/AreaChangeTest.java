package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Values worked by hand from the formulas the class names. */
class AreaChangeTest {
    private static final Offset<Double> FIGURES = within(5e-6);

    @Test
    void suddenChangesOnTheSmallBore() {
        assertThat(AreaChange.expansionK(0.5)).isEqualTo(0.5625);
        assertThat(AreaChange.contractionK(0.5)).isCloseTo(0.402961, FIGURES);
        assertThat(AreaChange.k1(0.5)).isEqualTo(22.5);
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
