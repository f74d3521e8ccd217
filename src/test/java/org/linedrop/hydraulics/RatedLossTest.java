package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

class RatedLossTest {
    private final double[] out = new double[2];

    @Test
    void twoPointsAreMetAndTravelWithTheFluid() {
        double[] ab = new double[2];
        RatedLoss.fit(1e-4, 10e3, 3e-4, 54e3, 850, 0.012, ab);
        RatedLoss.pressureDrop(1e-4, ab[0], ab[1], 850, 0.012, out);
        assertThat(out[0]).isCloseTo(10e3, within(1e-6));
        RatedLoss.pressureDrop(3e-4, ab[0], ab[1], 850, 0.012, out);
        assertThat(out[0]).isCloseTo(54e3, within(1e-6));
        double viscous = ab[0] * 0.012 * 1e-4;
        RatedLoss.pressureDrop(1e-4, ab[0], ab[1], 850, 0.12, out);
        assertThat(out[0]).isCloseTo(10e3 + 9 * viscous, within(1e-6));
    }

    @Test
    void pointsThatNoFlowLawCanMeetAreRefused() {
        double[] ab = new double[2];
        assertThatThrownBy(() -> RatedLoss.fit(1e-4, 10e3, 3e-4, 29e3, 850, 0.012, ab))
                .hasMessageContaining("check the points");
        assertThatThrownBy(() -> RatedLoss.fit(1e-4, 10e3, 3e-4, 91e3, 850, 0.012, ab))
                .hasMessageContaining("91000.0 Pa at 3.0E-4 m3/s");
        assertThatThrownBy(() -> RatedLoss.fit(1e-4, Double.NaN, 3e-4, 29e3, 850, 0.012, ab))
                .isInstanceOf(IllegalArgumentException.class);
        RatedLoss.fit(1e-4, 10e3, 3e-4, 90e3, 850, 0.012, ab); // a pure square is allowed
        assertThat(ab[0]).isCloseTo(0, within(1e-3));
        RatedLoss.fit(1e-4, 10e3, 3e-4, 30e3, 850, 0.012, ab); // and a straight line
        assertThat(ab[1]).isCloseTo(0, within(1e-3));
    }

    @Test
    void onePointScalesWithThePropertiesOfItsFactor() {
        RatedLoss.powerDrop(2e-4, 1e-4, 5e3, 1.75, 2, 1.1, out);
        double expected = 5e3 * Math.pow(2, 1.75) * Math.pow(2, 0.25) * Math.pow(1.1, 0.75);
        assertThat(out[0]).isCloseTo(expected, within(1e-9 * expected));
        assertThat(out[1]).isCloseTo(1.75 * expected / 2e-4, within(1e-3));
        RatedLoss.powerDrop(-2e-4, 1e-4, 5e3, 1.75, 2, 1.1, out);
        assertThat(out[0]).isCloseTo(-expected, within(1e-9 * expected));
        RatedLoss.powerDrop(0, 1e-4, 5e3, 1, 1, 1, out);
        assertThat(out[1]).isEqualTo(5e3 / 1e-4);
    }

    @Test
    void valveSizesAgreeWithTheirDefinitions() {
        double bore = 0.012;
        double five = FlowCoefficient.lossCoefficient(5, bore);
        LocalLoss.pressureDrop(5.0 / 3600, bore, five, 0, 1000, 1e-3, out); // Kv 5 passes 5 m3/h of water at 1 bar
        assertThat(out[0]).isCloseTo(1e5, within(1e-6));
        assertThat(out[1]).isCloseTo(2 * 1e5 * 3600 / 5, within(1e-3));
        double gallon = 3.785411784e-3 / 60;
        double one = FlowCoefficient.lossCoefficient(FlowCoefficient.KV_PER_CV, bore);
        LocalLoss.pressureDrop(gallon, bore, one, 0, 1000, 1e-3, out); // Cv 1 passes 1 gpm at 1 psi
        assertThat(out[0]).isCloseTo(6894.757293168, within(1e-6));
    }

    @Test
    void bandsHoldTheirValue() {
        for (Band band : new Band[] {
            SweptBend.BAND,
            SweptBend.BAND_TIGHT_RETURN,
            MitreElbow.BAND,
            AreaChange.CONTRACTION_BAND,
            Nipple.BAND,
            Orifice.BAND,
            Restrictor.BAND,
            ConvolutedBore.BAND,
            RatedLoss.ONE_POINT_BAND,
            Tee.BAND
        }) {
            for (double k : new double[] {-0.9, 0, 1.3}) {
                assertThat(k).isBetween(band.low(k), band.high(k));
            }
        }
        for (FittingLoss fitting : FittingLoss.values()) {
            assertThat(fitting.turbulentK()).isBetween(fitting.bandLow(), fitting.bandHigh());
            assertThat(fitting.source().title()).isNotBlank();
        }
        Source source = Source.of("test", Status.DERIVED);
        assertThatThrownBy(() -> Band.ratios(1.1, 1.2, source)).hasMessageContaining("low ratio");
        assertThatThrownBy(() -> new Band(1, 1, Double.NaN, source)).isInstanceOf(IllegalArgumentException.class);
    }
}
