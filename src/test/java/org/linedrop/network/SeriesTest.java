package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.linedrop.hydraulics.BoreFriction;
import org.linedrop.hydraulics.LocalLoss;
import org.linedrop.hydraulics.Nipple;
import org.linedrop.hydraulics.Transition;

/** Parts in a row, and the sharing of friction factors: the same bits as term by term. */
class SeriesTest {
    private static final double DENSITY = 740;
    private static final double VISCOSITY = 4.5e-4;
    private static final double ROUGHNESS_M = 1.5e-6;

    private static BoreTerm bore(double boreM, double lengthM) {
        return new BoreTerm(
                DENSITY,
                BoreFriction.of(boreM, lengthM, ROUGHNESS_M, Transition.DEFAULT, DENSITY, VISCOSITY),
                LocalLoss.of(boreM, 0.7, 300, DENSITY, VISCOSITY),
                LocalLoss.of(boreM, 0.4, 300, DENSITY, VISCOSITY));
    }

    @Test
    void sharedFactorsChangeNoBit() {
        Random random = new Random(12);
        double[] bores = {6.35e-3, 7.94e-3, 10.3e-3, 5e-3, 12e-3, 4e-3, 15e-3};
        double[] two = new double[2];
        double[] many = new double[Law.SLOTS];
        for (int i = 0; i < 300; i++) {
            List<Law> terms = new ArrayList<>();
            int parts = 1 + random.nextInt(20);
            int kinds = 1 + random.nextInt(bores.length);
            for (int k = 0; k < parts; k++) {
                terms.add(
                        random.nextInt(5) == 0
                                ? Prescribed.pressurePower(1e7, 2)
                                : bore(bores[random.nextInt(kinds)], 0.1 + random.nextDouble()));
            }
            Series series = new Series(terms, 120);
            for (int k = 0; k < 40; k++) {
                double flow = (random.nextBoolean() ? 1 : -1) * 1e-5 * Math.pow(10, 4.5 * random.nextDouble());
                series.evaluate(flow, two);
                series.evaluate(flow, many);
                double drop = 120;
                double slope = 0;
                double[] one = new double[2];
                for (Law term : terms) {
                    term.evaluate(flow, one);
                    drop += one[0];
                    slope += one[1];
                }
                assertThat(two).containsExactly(drop, slope);
                assertThat(many[0]).isEqualTo(drop);
                assertThat(many[1]).isEqualTo(slope);
            }
        }
    }

    @Test
    void oneTermOfAnotherFluidSharesNothing() {
        BoreTerm cold = new BoreTerm(
                DENSITY, BoreFriction.of(8e-3, 1, ROUGHNESS_M, Transition.DEFAULT, DENSITY, 2 * VISCOSITY), null, null);
        assertThat(cold.sharesFactorWith(bore(8e-3, 2))).isFalse();
        assertThat(bore(8e-3, 1).sharesFactorWith(bore(8e-3, 2))).isTrue();
        assertThat(bore(8e-3, 1).sharesFactorWith(bore(8.1e-3, 1))).isFalse();
    }

    /** A nipple as a term of a run is the law of the nipple, bit for bit. */
    @Test
    void nippleIsThatOfHydraulics() {
        Nipple shape = Nipple.of(7.94e-3, 6.35e-3, 22e-3, 8.7e-3);
        BoreTerm term = new BoreTerm(
                DENSITY,
                shape.friction(ROUGHNESS_M, Transition.DEFAULT, DENSITY, VISCOSITY),
                shape.edges(true, DENSITY, VISCOSITY),
                shape.edges(false, DENSITY, VISCOSITY));
        double[] expected = new double[2];
        double[] out = new double[2];
        for (double flow = -0.2; flow < 0.2; flow += 0.0013) {
            shape.pressureDrop(flow / DENSITY, ROUGHNESS_M, Transition.DEFAULT, DENSITY, VISCOSITY, expected);
            term.evaluate(flow, out);
            assertThat(out).containsExactly(expected[0], expected[1] / DENSITY);
        }
        assertThat(shape.hasNarrowNeighbour()).isFalse();
        assertThat(Nipple.of(6e-3, 6.35e-3, 22e-3, 8.7e-3).hasNarrowNeighbour()).isTrue();
    }
}
