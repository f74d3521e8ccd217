package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Fits of straight lines, whose answer and error are known. */
class ShareFitTest {
    @Test
    void oneUnknownSeenTwice() {
        // readings 3 and 3.2 of 10 x, each with an error of one: x is 0.31 with an error of 1 / sqrt(10^2 + 10^2)
        ShareFit fit = ShareFit.of(x -> new double[] {10 * x[0] - 3, 10 * x[0] - 3.2}, new double[] {0.8}, 2);
        assertThat(fit.shares[0]).isCloseTo(0.31, within(1e-6));
        assertThat(fit.deviations[0]).isCloseTo(1 / Math.sqrt(200), within(1e-6));
        assertThat(fit.misfit).isCloseTo(2 * 0.1 * 0.1, within(1e-6));
    }

    @Test
    void twoUnknownsSeenApart() {
        ShareFit fit = ShareFit.of(
                x -> new double[] {4 * (x[0] - 0.25), 20 * (x[1] - 0.75), 4 * (x[0] - 0.25)},
                new double[] {0.5, 0.5},
                3);
        assertThat(fit.shares[0]).isCloseTo(0.25, within(1e-6));
        assertThat(fit.shares[1]).isCloseTo(0.75, within(1e-6));
        assertThat(fit.deviations[0]).isCloseTo(1 / Math.sqrt(32), within(1e-6));
        assertThat(fit.deviations[1]).isCloseTo(1 / 20.0, within(1e-6));
        assertThat(fit.misfit).isCloseTo(0, within(1e-9));
    }

    @Test
    void unknownsSeenAsOneHaveNoErrors() {
        ShareFit fit =
                ShareFit.of(x -> new double[] {x[0] + x[1] - 0.7, 2 * (x[0] + x[1]) - 1.4}, new double[] {0.5, 0.5}, 2);
        assertThat(fit.shares[0] + fit.shares[1]).isCloseTo(0.7, within(1e-5));
        assertThat(fit.deviations).containsExactly(Double.NaN, Double.NaN);
    }

    @Test
    void sharesStayBetweenNoneAndAll() {
        assertThat(ShareFit.of(x -> new double[] {10 * (x[0] + 0.5)}, new double[] {0.5}, 1).shares[0])
                .isZero();
        ShareFit all = ShareFit.of(x -> new double[] {10 * (x[0] - 1.5)}, new double[] {0.5}, 1);
        assertThat(all.shares[0]).isEqualTo(1);
        assertThat(all.misfit).isCloseTo(25, within(1e-6));
        // at the upper end slopes are taken downwards: above it there is nothing
        ShareFit edge = ShareFit.of(x -> new double[] {x[0] > 1 ? 1e6 : 10 * (x[0] - 0.9)}, new double[] {1.0}, 1);
        assertThat(edge.shares[0]).isCloseTo(0.9, within(1e-6));
    }

    @Test
    void whatCannotBeFittedKeepsItsStart() {
        int[] calls = {0};
        ShareFit fit = ShareFit.of(
                x -> new double[] {1 + (calls[0]++ % 7) * 0.1 + Math.sin(1e5 * x[0])}, new double[] {0.5}, 1);
        assertThat(fit.shares[0]).isBetween(0.0, 1.0);
        assertThat(ShareFit.misfit(new double[] {3, -4})).isEqualTo(25);
        assertThat(ShareFit.misfit(new double[0])).isZero();
    }
}
