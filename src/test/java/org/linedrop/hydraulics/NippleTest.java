package org.linedrop.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class NippleTest {
    private static final double VESSEL = Double.POSITIVE_INFINITY;
    private final double[] out = new double[2];
    private final double[] parts = new double[2];

    @Test
    void onlyANarrowerBoreIsANarrowNeighbour() {
        assertThat(Nipple.of(0.01, 0.008, 0.02, 0.012).hasNarrowNeighbour()).isFalse();
        assertThat(Nipple.of(0.008, 0.008, 0.02, 0.008).hasNarrowNeighbour()).isFalse();
        assertThat(Nipple.of(0.007, 0.008, 0.02, 0.012).hasNarrowNeighbour()).isTrue();
        assertThat(Nipple.of(0.01, 0.008, 0.02, 0.007).hasNarrowNeighbour()).isTrue();
    }

    /** Friction and edges asked for one by one are the whole, both ways, where no neighbour is narrower. */
    @Test
    void frictionAndEdgesAreTheWhole() {
        Nipple nipple = Nipple.of(0.01, 0.008, 0.02, 0.012);
        for (double flow : new double[] {2e-4, -2e-4}) {
            nipple.pressureDrop(flow, 1e-6, Transition.DEFAULT, 800, 1e-3, out);
            nipple.friction(1e-6, Transition.DEFAULT, 800, 1e-3).pressureDrop(flow, parts);
            nipple.edges(flow > 0, 800, 1e-3).addPressureDrop(flow, parts);
            assertThat(parts).containsExactly(out, within(1e-9 * Math.abs(out[1])));
        }
    }

    /** A narrower neighbour pays its expansion into the nipple, or its contraction out of it, on its own bore. */
    @Test
    void narrowerNeighboursAreChangesOfBore() {
        for (double flow : new double[] {2e-4, -2e-4}) {
            for (boolean first : new boolean[] {true, false}) {
                Nipple narrow = first ? Nipple.of(0.006, 0.008, 0.02, 0.012) : Nipple.of(0.012, 0.008, 0.02, 0.006);
                narrow.pressureDrop(flow, 0, Transition.DEFAULT, 800, 1e-3, out);
                // the same without the step
                (first ? Nipple.of(0.008, 0.008, 0.02, 0.012) : Nipple.of(0.012, 0.008, 0.02, 0.008))
                        .pressureDrop(flow, 0, Transition.DEFAULT, 800, 1e-3, parts);
                double rest = parts[0];
                if (first) {
                    AreaChange.pressureDrop(flow, 0.006, 0.008, 800, 1e-3, parts);
                } else {
                    AreaChange.pressureDrop(flow, 0.008, 0.006, 800, 1e-3, parts);
                }
                assertThat(out[0]).isCloseTo(rest + parts[0], within(1e-9 * Math.abs(out[0])));
            }
        }
    }

    /** Idelchik's thick orifice: (2.4 - l) 10^-phi at l 1 with phi 0.25 + 0.535/1.05; nothing from 2.4 bores on. */
    @Test
    void jetReattachesAtTwoAndAHalfBores() {
        assertThat(Nipple.detachedJet(0)).isCloseTo(2.4 * Math.pow(10, -0.25), within(1e-12));
        assertThat(Nipple.detachedJet(1)).isCloseTo(1.4 * Math.pow(10, -0.25 - 0.535 / 1.05), within(1e-12));
        double seventh = Math.pow(0.8, 7);
        assertThat(Nipple.detachedJet(0.8))
                .isCloseTo(1.6 * Math.pow(10, -0.25 - 0.535 * 0.8 * seventh / (0.05 + seventh)), within(1e-12));
        assertThat(Nipple.detachedJet(2.4)).isZero();
        assertThat(Nipple.detachedJet(5)).isZero();
    }

    @Test
    void shapesThatAreNone() {
        assertThat(Nipple.of(VESSEL, 0.008, 0, VESSEL)).isNotNull();
        for (double[] bad : new double[][] {
            {0.01, 0, 0.02, 0.01},
            {0.01, VESSEL, 0.02, 0.01},
            {0, 0.008, 0.02, 0.01},
            {0.01, 0.008, 0.02, 0},
            {0.01, 0.008, -1, 0.01},
            {0.01, 0.008, VESSEL, 0.01},
            {0.01, 0.008, Double.NaN, 0.01}
        }) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Nipple.of(bad[0], bad[1], bad[2], bad[3]))
                    .withMessageContaining("nipple");
        }
        assertThat(Restrictor.of(0.01, 0.01, 0, 0.01)).isNotNull();
        for (double[] bad : new double[][] {
            {0.01, 0, 0.02, 0.01}, {0.01, 0.02, 0.02, 0.03}, {0.03, 0.02, 0.02, 0.01},
            {0.01, 0.008, -1, 0.01}, {0.01, 0.008, VESSEL, 0.01}, {0.01, 0.008, Double.NaN, 0.01}
        }) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Restrictor.of(bad[0], bad[1], bad[2], bad[3]))
                    .withMessageContaining("restrictor");
        }
    }

    /** Two points on a straight line through rest, and on a parabola, are the ends of what can be fitted. */
    @Test
    void ratedPointsFromLinearToSquare() {
        RatedLoss.fit(1e-4, 1000, 2e-4, 2000, 800, 1e-3, out);
        assertThat(out[0]).isCloseTo(1000 / 1e-4 / 1e-3, within(1.0));
        RatedLoss.fit(1e-4, 1000, 2e-4, 4000, 800, 1e-3, out);
        assertThat(out[1]).isCloseTo(1000 / 1e-8 / 800, within(1.0));
        for (double[] bad : new double[][] {
            {0, 1000, 2e-4, 3000},
            {1e-4, 0, 2e-4, 3000},
            {1e-4, 1000, 1e-4, 1000},
            {1e-4, 1000, 2e-4, 1990},
            {1e-4, 1000, 2e-4, 4010}
        }) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> RatedLoss.fit(bad[0], bad[1], bad[2], bad[3], 800, 1e-3, out))
                    .withMessageContaining("rated points");
        }
    }
}
