package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** What a network refuses, with the figure that is wrong; the ends of each range are taken. */
class NetworkBuilderTest {
    private static final Law LAW = Prescribed.pressurePower(1e6, 2);
    private final NetworkBuilder b = Network.builder();
    private final int tank = b.fixedPoint(0);
    private final int end = b.freePoint(0.1);

    private static void refused(Runnable build, String message) {
        assertThatIllegalArgumentException().isThrownBy(build::run).withMessageContaining(message);
    }

    @Test
    void pointsAreFinite() {
        refused(() -> b.fixedPoint(Double.NaN), "point 2: given pressure must be finite, but is NaN Pa");
        refused(() -> b.freePoint(Double.POSITIVE_INFINITY), "point 2: draw must be finite, but is Infinity kg/s");
        assertThat(tank).isZero();
        assertThat(end).isEqualTo(1);
    }

    @Test
    void branchesJoinTwoPointsThereAre() {
        assertThat(b.branch(tank, end, LAW)).isZero();
        assertThat(b.branch(end, tank, LAW, 0, 0)).isEqualTo(1);
        refused(() -> b.branch(tank, 2, LAW), "there is no point 2; points are 0 to 1");
        refused(() -> b.branch(-1, end, LAW), "there is no point -1; points are 0 to 1");
        refused(() -> b.branch(end, end, LAW), "branch 2: both ends are point 1");
        refused(
                () -> b.branch(tank, end, LAW, 0.1, 1),
                "branch 2: the flows it can pass must span zero, but are 0.1 to");
        refused(() -> b.branch(tank, end, LAW, -1, -0.1), "must span zero, but are -1.0 to -0.1");
        refused(() -> b.branch(tank, end, LAW, Double.NaN, 1), "must span zero");
    }

    @Test
    void devicesHaveASlopeAndARange() {
        assertThat(b.device(tank, end, -1, new FixedFlow(0.2, 1e5))).isZero();
        assertThat(b.device(tank, end, 0, new FixedFlow(0.2, 1e5))).isEqualTo(1);
        refused(() -> b.device(tank, end, 2, new FixedFlow(0.2, 1e5)), "there is no point 2");
        refused(() -> b.device(tank, 7, -1, new FixedFlow(0.2, 1e5)), "there is no point 7");
        DeviceLaw flat = new DeviceLaw() {
            @Override
            public int evaluate(double flow, double in, double out, double reference, double[] slots) {
                return 0;
            }

            @Override
            public double wideOpenSlopePaPerKgPerS() {
                return 0;
            }

            @Override
            public double pressureScalePa() {
                return 1;
            }

            @Override
            public String stateWord(int state) {
                return "";
            }
        };
        refused(() -> b.device(tank, end, -1, flat), "a wide-open slope above 0");
    }

    @Test
    void pressuresOfAirAndVapourAreAbsolute() {
        b.branch(tank, end, LAW);
        Network vacuum = b.ambient(0).vapour(end, 0).build();
        assertThat(vacuum.ambientPa()).isZero();
        assertThat(vacuum.vapourPressurePa(end)).isZero();
        refused(() -> b.ambient(-1), "ambient pressure must be at least 0 Pa, but is -1.0");
        refused(() -> b.ambient(Double.POSITIVE_INFINITY), "but is Infinity");
        refused(() -> b.vapour(end, -1), "point 1: vapour pressure must be at least 0 Pa, but is -1.0");
        refused(() -> b.vapour(end, Double.POSITIVE_INFINITY), "but is Infinity");
        refused(() -> b.vapour(9, 1), "there is no point 9");
    }
}
