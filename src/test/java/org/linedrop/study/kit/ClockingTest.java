package org.linedrop.study.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.catalogue.Bench;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.EndSize;
import org.linedrop.circuit.Position;

/** E18 by hand: near end at 6 o'clock, looking along the hose, counter-clockwise to the far end. */
class ClockingTest {
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final EndSize BENT = CATALOGUE.end(CATALOGUE.hose("race PTFE -6"), "swept", 90);

    private static Clocking of(List<Position> places) {
        return Clocking.along(places, BENT, BENT, Bench.standard().clockingToleranceRad(0.5));
    }

    private static double degrees(Clocking clocking) {
        return Math.toDegrees(clocking.angleRad());
    }

    /** Ahead along x; left is y, up is z. A clock face seen looking ahead: left is 9, up is 12, right is 3. */
    @ParameterizedTest
    @CsvSource({"0, -1, 0", "-1, 0, 90", "0, 1, 180", "1, 0, 270", "-1, -1, 45", "1, -1, 315"})
    void straightHose(double left, double up, double degrees) {
        Clocking clocking = of(List.of(
                new Position(0, 0, -0.1),
                new Position(0, 0, 0),
                new Position(0.5, 0, 0),
                new Position(0.5, 0.1 * left, 0.1 * up)));
        assertThat(degrees(clocking)).isCloseTo(degrees, within(1e-9));
        assertThat(clocking.missing()).isEmpty();
        assertThat(clocking.remark()).isEmpty();
    }

    @Test
    void sameFromEitherEnd() {
        Random random = new Random(20_251_125);
        for (int n = 0; n < 500; n++) {
            List<Position> places = new ArrayList<>();
            for (int i = 0; i < 4 + random.nextInt(3); i++) {
                places.add(new Position(random.nextDouble(), random.nextDouble(), random.nextDouble()));
            }
            List<Position> back = new ArrayList<>(places);
            java.util.Collections.reverse(back);
            Clocking there = of(places);
            assertThat(degrees(of(back))).isCloseTo(degrees(there), within(1e-6));
        }
    }

    /** A hose that only bends in the plane of its ends keeps them in it: pointing the same way, or opposite. */
    @Test
    void bentHoseIsNotTwisted() {
        // from the port down, ahead, round a corner to the left, the far end down again
        assertThat(degrees(of(List.of(
                        new Position(0, 0, -0.1),
                        new Position(0, 0, 0),
                        new Position(0.5, 0, 0),
                        new Position(0.5, 0.5, 0),
                        new Position(0.5, 0.5, -0.1)))))
                .isCloseTo(0, within(1e-9));
        // the same, far end up
        assertThat(degrees(of(List.of(
                        new Position(0, 0, -0.1),
                        new Position(0, 0, 0),
                        new Position(0.5, 0, 0),
                        new Position(0.5, 0.5, 0),
                        new Position(0.5, 0.5, 0.1)))))
                .isCloseTo(180, within(1e-9));
        // near end down, hose ahead then up: what hung down at the start looks ahead at the end
        assertThat(degrees(of(List.of(
                        new Position(0, 0, -0.1),
                        new Position(0, 0, 0),
                        new Position(0.5, 0, 0),
                        new Position(0.5, 0, 0.5),
                        new Position(0.6, 0, 0.5)))))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void saysWhatIsMissing() {
        Position port = new Position(0, 0, 0);
        assertThat(of(List.of(port, new Position(1, 0, 0))).missing())
                .contains("no way-points at its two bent ends", "write via:");
        assertThat(of(List.of(port, port, new Position(1, 0, 0), new Position(1, 0, 1)))
                        .missing())
                .contains("two of its places are the same");
        assertThat(of(List.of(port, new Position(0.1, 0, 0), new Position(0.6, 0, 0), new Position(0.6, 0, -0.1)))
                        .missing())
                .contains("run straight on");
    }

    @Test
    void saysWhereTheEndIsAnother() {
        Clocking clocking = of(List.of(
                new Position(-0.1, 0, -0.1),
                new Position(0, 0, 0),
                new Position(0.5, 0, 0),
                new Position(0.5, 0, -0.1)));
        assertThat(degrees(clocking)).isCloseTo(0, within(1e-9));
        assertThat(clocking.remark()).contains("turn by 45 degrees where the end 90 swept sits");
    }

    @Test
    void toleranceGrowsWithLength() {
        assertThat(Math.toDegrees(Bench.standard().clockingToleranceRad(0.60).value()))
                .isCloseTo(3, within(1e-12));
        assertThat(Math.toDegrees(Bench.standard().clockingToleranceRad(0.62).value()))
                .isCloseTo(5, within(1e-12));
    }
}
