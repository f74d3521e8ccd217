package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rows of the tables that elbows, fittings and ends are taken from, and what lies between and beyond their rows. */
class CoefficientsTest {
    private static final double RADIAN = Math.PI / 180;

    @Test
    void mitresBetweenAndBeyondTheTable() {
        assertThat(MitreElbow.turbulentK(75 * RADIAN)).isCloseTo((0.684 + 1.265) / 2, within(1e-12));
        assertThat(MitreElbow.turbulentK(90 * RADIAN)).isEqualTo(1.265);
        // over 90 degrees by Weisbach: 2.29855 at 135, 0.9846 at 90
        assertThat(MitreElbow.turbulentK(135 * RADIAN)).isCloseTo(1.265 * 2.29855 / 0.9846, within(1e-4));
        assertThat(MitreElbow.turbulentK(Math.PI)).isCloseTo(1.265 * 2.9927 / 0.9846, within(1e-4));
        assertThat(MitreElbow.k1(67.5 * RADIAN)).isCloseTo(750, within(1e-9));
        assertThat(MitreElbow.k1(Math.PI)).isEqualTo(1000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MitreElbow.turbulentK(3.2))
                .withMessageContaining("elbow angle in rad 3.2");
    }

    @Test
    void threeConstantsAtOneAndTwoInches() {
        assertThat(ThreeK.ELBOW_90_THREADED.k1()).isEqualTo(800);
        assertThat(ThreeK.ELBOW_90_THREADED.turbulentK(0.0254)).isCloseTo(0.7, within(1e-12)); // 0.14 (1 + 4)
        assertThat(ThreeK.ELBOW_90_THREADED.turbulentK(0.0508)).isCloseTo(0.59486, within(5e-6)); // 2^0.3 = 1.231144
    }

    @Test
    void fittingsKeepTheirBand() {
        for (FittingLoss kind : FittingLoss.values()) {
            assertThat(kind.bandLow()).isLessThan(kind.turbulentK());
            assertThat(kind.bandHigh()).isGreaterThan(kind.turbulentK());
            assertThat(kind.k1()).isBetween(200.0, 2000.0);
            assertThat(kind.source().title()).isNotBlank();
        }
        assertThat(FittingLoss.BANJO.bandLow()).isEqualTo(3);
        assertThat(FittingLoss.BANJO.bandHigh()).isEqualTo(6);
        assertThat(FittingLoss.BANJO.k1()).isEqualTo(1000);
    }

    /** Hooper 1981 has K1 160 for a pipe entrance; the two directions share it. */
    @Test
    void endsOfAPipe() {
        assertThat(PipeEnd.k1()).isEqualTo(160);
        double[] in = new double[2];
        double[] back = new double[2];
        double head = Reynolds.velocityHeadPa(1e-3, 0.01, 800);
        PipeEnd.pressureDrop(1e-3, 0.01, 0.5, 1, 800, 0, in);
        PipeEnd.pressureDrop(-1e-3, 0.01, 0.5, 1, 800, 0, back);
        assertThat(in[0]).isCloseTo(0.5 * head, within(1e-9 * head));
        assertThat(back[0]).isCloseTo(-head, within(1e-9 * head));
        double reynolds = Reynolds.of(1e-3, 0.01, 800, 0.01);
        PipeEnd.pressureDrop(1e-3, 0.01, 0.5, 1, 800, 0.01, in);
        assertThat(in[0]).isCloseTo((0.5 + 160 / reynolds) * head, within(1e-9 * head));
    }

    /** Hawthorne and von Helms: each convolution a sudden expansion, b = D/(D + 0.438 s), f = (1 - b^2)^2 D/s. */
    @Test
    void convolutedBoreIsARowOfExpansions() {
        assertThat(ConvolutedBore.frictionFactor(0.01, 0.01)).isCloseTo(0.266673, within(5e-6));
        assertThat(ConvolutedBore.frictionFactor(0.01, 0.005)).isCloseTo(0.213902, within(5e-6));
    }

    @Test
    void transitionsHaveALowerAndAnUpperEnd() {
        assertThat(new Transition(1, 2, Transition.Shape.SMOOTHSTEP).blends(1.5))
                .isTrue();
        double[][] bad = {
            {0, 2000}, {-1, 2000}, {2000, 2000}, {2000, Double.POSITIVE_INFINITY}, {Double.NaN, 1}, {1, Double.NaN}
        };
        for (double[] b : bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Transition(b[0], b[1], Transition.Shape.SMOOTHSTEP))
                    .withMessageContaining("from Re " + b[0] + " to " + b[1]);
        }
    }
}
