package org.linedrop.study.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Position;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

class HosePathTest {
    private static final List<Position> CORNER =
            List.of(new Position(0, 0, 0), new Position(0.5, 0, 0), new Position(0.5, 0.3, 0));

    @Test
    void bendsCutTheirCorners() {
        assertThat(HosePath.lengthM(CORNER, Double.NaN)).isCloseTo(0.8, within(1e-12));
        // E17: a quarter of 2 pi R in place of two tangents of R
        double arc = 90.0 / 360 * 2 * Math.PI * 0.15;
        assertThat(HosePath.lengthM(CORNER, 0.15)).isCloseTo(0.8 - 2 * 0.15 + arc, within(1e-12));
    }

    @Test
    void wayPointsLeaveRoomForARadius() {
        // a right angle takes its radius off both legs
        assertThat(HosePath.roomM(CORNER)).isCloseTo(0.3, within(1e-12));
        // two corners share the leg between them
        assertThat(HosePath.roomM(List.of(
                        new Position(0, 0, 0),
                        new Position(0.5, 0, 0),
                        new Position(0.5, 0.3, 0),
                        new Position(1, 0.3, 0))))
                .isCloseTo(0.15, within(1e-12));
        assertThat(HosePath.roomM(CORNER.subList(0, 2))).isInfinite();
    }

    @Test
    void roomUnderTheLeastIsTooTight() {
        Figure least = Figure.exact(0.140, Source.of("a standard", Status.STANDARD));
        BendCheck check = BendCheck.of(null, 0.10, least);
        assertThat(check.verdict()).isEqualTo(BendCheck.Verdict.TOO_TIGHT);
        assertThat(check.ofRoute()).isTrue();
        assertThat(BendCheck.of(0.15, Double.POSITIVE_INFINITY, least).verdict())
                .isEqualTo(BendCheck.Verdict.NOT_UNDER);
        assertThat(BendCheck.of(0.15, 0.10, least).radiusM()).isEqualTo(0.10);
        assertThat(BendCheck.of(null, Double.POSITIVE_INFINITY, least).verdict())
                .isEqualTo(BendCheck.Verdict.STRAIGHT);
        assertThat(BendCheck.of(null, Double.NaN, least).verdict()).isEqualTo(BendCheck.Verdict.TAKEN_AS_STRAIGHT);
        assertThat(BendCheck.of(0.15, Double.NaN, least).verdict()).isEqualTo(BendCheck.Verdict.NOT_UNDER);
        assertThat(BendCheck.of(Double.NaN, Double.POSITIVE_INFINITY, least).verdict())
                .isEqualTo(BendCheck.Verdict.RADIUS_NOT_GIVEN);
        assertThat(BendCheck.of(0.15, Double.POSITIVE_INFINITY, null).verdict()).isEqualTo(BendCheck.Verdict.NO_LEAST);
        Figure memory = Figure.exact(0.140, Source.of("memory", Status.FROM_MEMORY));
        assertThat(BendCheck.of(0.15, Double.POSITIVE_INFINITY, memory).verdict())
                .isEqualTo(BendCheck.Verdict.NOT_JUDGED);
        assertThat(BendCheck.of(0.10, Double.POSITIVE_INFINITY, memory).verdict())
                .isEqualTo(BendCheck.Verdict.NOT_JUDGED_UNDER);
    }
}
