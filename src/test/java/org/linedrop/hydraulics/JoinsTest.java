package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class JoinsTest {

    @Test
    void stepIsTheCubicBetweenItsEnds() {
        assertThat(Joins.step(-1)).isZero();
        assertThat(Joins.step(0.25)).isEqualTo(0.15625);
        assertThat(Joins.step(0.5)).isEqualTo(0.5);
        assertThat(Joins.step(0.75)).isEqualTo(0.84375);
        assertThat(Joins.step(2)).isEqualTo(1);
        assertThat(Joins.stepSlope(0.25)).isEqualTo(1.125);
        assertThat(Joins.stepSlope(0.5)).isEqualTo(1.5);
        assertThat(Joins.stepSlope(-0.1)).isZero();
        assertThat(Joins.stepSlope(1.1)).isZero();
    }

    /** A parabola between floor - half and floor + half, a quarter of half over the corner. */
    @Test
    void cornersAreRoundedByAParabola() {
        assertThat(Joins.roundedFloor(6, 10, 2)).isEqualTo(10);
        assertThat(Joins.roundedFloor(9, 10, 2)).isEqualTo(10.125);
        assertThat(Joins.roundedFloor(10, 10, 2)).isEqualTo(10.5);
        assertThat(Joins.roundedFloor(11, 10, 2)).isEqualTo(11.125);
        assertThat(Joins.roundedFloor(13, 10, 2)).isEqualTo(13);
        assertThat(Joins.roundedFloorSlope(7, 10, 2)).isZero();
        assertThat(Joins.roundedFloorSlope(9, 10, 2)).isEqualTo(0.25);
        assertThat(Joins.roundedFloorSlope(10, 10, 2)).isEqualTo(0.5);
        assertThat(Joins.roundedFloorSlope(13, 10, 2)).isEqualTo(1);
        assertThat(Joins.roundedCap(10, 10, 2)).isEqualTo(9.5);
        assertThat(Joins.roundedCap(11, 10, 2)).isEqualTo(9.875);
        assertThat(Joins.roundedCap(13, 10, 2)).isEqualTo(10);
        assertThat(Joins.roundedCap(7, 10, 2)).isEqualTo(7);
        assertThat(Joins.roundedCapSlope(11, 10, 2)).isEqualTo(0.25);
    }

    @Test
    void tablesAreStraightLinesWithHeldEnds() {
        double[] x = {1, 3, 4};
        double[] y = {10, 20, 0};
        assertThat(Joins.interpolate(x, y, 0)).isEqualTo(10);
        assertThat(Joins.interpolate(x, y, 1.5)).isEqualTo(12.5);
        assertThat(Joins.interpolate(x, y, 3)).isEqualTo(20);
        assertThat(Joins.interpolate(x, y, 3.25)).isEqualTo(15);
        assertThat(Joins.interpolate(x, y, 9)).isZero();
    }

    /** A law that is a Q + b Q^3 already is continued as itself. */
    @Test
    void continuationToZeroKeepsAnOddCubic() {
        double[] out = new double[2];
        Joins.continueToZero(1, 2, 28, 38, out); // 2 Q + 3 Q^3 at Q = 2
        assertThat(out).containsExactly(5, 11);
        Joins.continueToZero(-1, 2, 28, 38, out);
        assertThat(out).containsExactly(-5, 11);
        Joins.continueToZero(0, 2, 28, 38, out);
        assertThat(out).containsExactly(0, 2);
    }

    @Test
    void aLocalLossIsAddedToWhatStandsThere() {
        double[] alone = new double[2];
        LocalLoss.pressureDrop(1e-4, 0.008, 2, 500, 800, 1e-3, alone);
        double[] out = {7, 1e6};
        Joins.addLocal(1e-4, 0.008, 2, 500, 800, 1e-3, out);
        assertThat(out).containsExactly(alone[0] + 7, alone[1] + 1e6);
        LocalLoss.of(0.008, 2, 500, 800, 1e-3).addPressureDrop(1e-4, out);
        assertThat(out).containsExactly(new double[] {2 * alone[0] + 7, 2 * alone[1] + 1e6}, within(1e-9 * alone[1]));
        LocalLoss.of(0.008, 2, 500, 800, 1e-3).addPressureDrop(-1e-4, out);
        assertThat(out).containsExactly(new double[] {alone[0] + 7, 3 * alone[1] + 1e6}, within(1e-9 * alone[1]));
    }

    @Test
    void endsOfARangeAreInsideIt() {
        assertThat(Joins.within("x", 1, 1, 2, "")).isEqualTo(1);
        assertThat(Joins.within("x", 2, 1, 2, "")).isEqualTo(2);
        for (double bad : new double[] {0.9, 2.1, Double.NaN}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Joins.within("x", bad, 1, 2, "do this"))
                    .withMessage("x " + bad + " is outside the law: it must be from 1.0 to 2.0; do this");
        }
    }
}
