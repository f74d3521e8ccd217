package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Scales of networks whose flows and pressures are known at once: square laws 1e6 Q^2 and 1e5 Q^2. */
class ScalesTest {
    private static final Law MILLION = Prescribed.pressurePower(1e6, 2);
    private static final Law TENTH = Prescribed.pressurePower(1e5, 2);

    private static Scales of(NetworkBuilder builder) {
        return new Scales(builder.build());
    }

    @Test
    void givenPressuresDriveTheFlow() {
        NetworkBuilder b = Network.builder();
        int high = b.fixedPoint(3e5);
        b.branch(high, b.fixedPoint(1e5), MILLION);
        b.branch(high, b.freePoint(0.1), TENTH);
        Scales scales = of(b);
        assertThat(scales.pressurePa).isEqualTo(2e5);
        assertThat(scales.nominalPa).isEqualTo(2e5);
        double flow = Math.sqrt(0.2);
        assertThat(scales.flowKgPerS[0]).isCloseTo(flow, within(0.01 * flow));
        assertThat(scales.flowKgPerS[1]).isCloseTo(Math.sqrt(2), within(0.01 * Math.sqrt(2)));
        assertThat(scales.slopePaPerKgPerS[0]).isCloseTo(2e5 / flow, within(0.01 * 2e5 / flow));
        assertThat(scales.leastFlowKgPerS).isEqualTo(scales.flowKgPerS[0]);
    }

    /** Nothing but draws: the drop of all of them through the easiest branch, and a flow that 1 Pa drives. */
    @Test
    void drawsAloneSetAPressure() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        b.branch(tank, b.freePoint(0.1), MILLION);
        b.branch(tank, b.freePoint(-0.04), TENTH);
        Scales scales = of(b);
        assertThat(scales.pressurePa).isEqualTo(1);
        assertThat(scales.nominalPa).isCloseTo(1e5 * 0.14 * 0.14, within(1e-6));
        assertThat(scales.flowKgPerS[1]).isCloseTo(0.14, within(0.0014));
        assertThat(scales.leastFlowKgPerS).isCloseTo(1e-3, within(1e-5));
    }

    @Test
    void aRiseAtRestIsAGivenPressure() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        b.branch(tank, b.freePoint(0.1), Prescribed.plus(MILLION, -5e4));
        Scales scales = of(b);
        assertThat(scales.pressurePa).isEqualTo(5e4);
        assertThat(scales.nominalPa).isEqualTo(5e4);
        // over what the branch has at rest
        assertThat(scales.flowKgPerS[0]).isCloseTo(Math.sqrt(0.05), within(0.01 * Math.sqrt(0.05)));
    }

    @Test
    void devicesHaveTheirOwnPressureAndSlope() {
        NetworkBuilder b = Network.builder();
        int tank = b.fixedPoint(0);
        b.device(b.freePoint(-0.2), tank, -1, OneWay.relief(3e5, 0, 0, MILLION, 4e4));
        Scales scales = of(b);
        assertThat(scales.pressurePa).isEqualTo(3e5);
        assertThat(scales.flowKgPerS[0]).isEqualTo(7.5);
        assertThat(scales.slopePaPerKgPerS[0]).isEqualTo(4e4);
        assertThat(scales.leastFlowKgPerS).isEqualTo(0.2);
    }

    /** A law that flow does not change passes any flow; without a drop one pascal is taken. */
    @Test
    void flatLawsHaveNoFlow() {
        NetworkBuilder b = Network.builder();
        b.branch(b.fixedPoint(0), b.freePoint(0.1), Prescribed.constant(0));
        Scales scales = of(b);
        assertThat(scales.nominalPa).isEqualTo(1);
        assertThat(scales.flowKgPerS[0]).isInfinite();
        assertThat(scales.slopePaPerKgPerS[0]).isZero();
        assertThat(scales.leastFlowKgPerS).isEqualTo(0.1);
    }
}
