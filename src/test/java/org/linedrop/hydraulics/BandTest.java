package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.fact.Source;

class BandTest {
    private static final Source SOURCE = MitreElbow.BAND.source();

    @Test
    void liesAboutTheCoefficientWhateverItsSign() {
        Band band = new Band(0.5, 2, 0.3, SOURCE);
        assertThat(band.low(4)).isEqualTo(1.7);
        assertThat(band.high(4)).isEqualTo(8.3);
        assertThat(band.low(-4)).isEqualTo(-8.3);
        assertThat(band.high(-4)).isCloseTo(-1.7, within(1e-15));
        assertThat(Band.ratios(0.5, 2, SOURCE).low(4)).isEqualTo(2);
    }

    @Test
    void holdsTheCoefficientItself() {
        assertThat(new Band(1, 1, 0, SOURCE).high(3)).isEqualTo(3);
        assertThat(new Band(0, 1, 0, SOURCE).low(3)).isZero();
        double[][] bad = {{-0.1, 2, 0}, {1.1, 2, 0}, {0.5, 0.9, 0}, {0.5, 2, -1}, {Double.NaN, 2, 0}, {0, 2, Double.NaN}
        };
        for (double[] b : bad) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> new Band(b[0], b[1], b[2], SOURCE))
                    .withMessageContaining("but is " + b[0] + ", " + b[1] + ", " + b[2]);
        }
    }
}
