package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.Result;
import org.linedrop.units.Display;

class BottleneckTest {
    private static final Circuit FEED = Examples.circuit("fuel-feed-516.yaml");

    @Test
    void thingsAddUpToWhatIsLost() {
        for (String name : List.of("fuel-feed-516.yaml", "carburettor-feed.yaml", "y-block.yaml")) {
            Bottleneck answer = Bottleneck.of(Examples.circuit(name));
            double sum = answer.things().stream()
                    .mapToDouble(Bottleneck.Thing::lossPa)
                    .sum();
            assertThat(sum).as(name).isCloseTo(answer.plumbingPa() + answer.devicesPa(), within(1e-6 * sum));
            assertThat(answer.lostPa())
                    .isCloseTo(answer.plumbingPa() + answer.devicesPa() + answer.liftPa(), within(1e-6 * sum));
            for (int i = 1; i < answer.things().size(); i++) {
                assertThat(answer.things().get(i).lossPa())
                        .isLessThanOrEqualTo(answer.things().get(i - 1).lossPa());
            }
        }
    }

    @Test
    void lossOnTheWayIsTheDifferenceOfTotalPressures() {
        Bottleneck answer = Bottleneck.of(FEED);
        Result result = answer.check().result().usual();
        double rail = result.point("rail").orElseThrow().totalPressurePa();
        assertThat(answer.lostPa()).isCloseTo(400_000 - rail, within(1e-3));
    }

    @Test
    void theOldHardLineIsTheBottleneckAndItsNextSizeWasSolved() {
        Bottleneck answer = Bottleneck.of(FEED);
        Bottleneck.Thing first = answer.things().get(0);
        assertThat(first.place()).isEqualTo("feed 4");
        assertThat(first.share()).isBetween(0.7, 0.85);
        Sizes.Step step = Sizes.larger(
                        FEED.catalogue(),
                        FEED.runs().get(1),
                        FEED.runs().get(1).parts().get(3),
                        1)
                .orElseThrow();
        double then =
                Result.of(FEED.with(step.changes())).point("rail").orElseThrow().staticPressurePa();
        double now = Result.of(FEED).point("rail").orElseThrow().staticPressurePa();
        assertThat(first.then()).isEqualTo(then);
        assertThat(first.gives()).isEqualTo(then - now);
        assertThat(first.holds()).isTrue();
        assertThat(answer.things())
                .filteredOn(thing -> thing.with().equals("old hard line"))
                .extracting(Bottleneck.Thing::place)
                .containsExactly("feed 3+5");
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("full load: 36.6 kPa lost on the way to the rail: ")
                .contains("Old hard line, 3.90 m (feed 4) takes 77 % of what plumbing and devices lose.")
                .contains("which holds");
    }

    @Test
    void aMeasuredBoreIsNotWorthMeasuring() {
        Bottleneck before = Bottleneck.of(FEED);
        assertThat(before.measures().get(0).words()).isEqualTo("hose-end bore of race PTFE -6");
        assertThat(before.measures().get(0).count()).isEqualTo(4);
        Circuit gauged = FEED.with(List.of(
                Change.of("feed 1", "end bore", "6.4 mm measured"),
                Change.of("feed 6", "end bore", "6.4 mm measured")));
        Bottleneck after = Bottleneck.of(gauged);
        assertThat(after.measures().get(0).words()).isEqualTo("bore of race PTFE -6");
        assertThat(after.measures())
                .filteredOn(measure -> measure.words().startsWith("hose-end"))
                .allSatisfy(measure -> assertThat(measure.decides()).isZero());
    }

    @Test
    void aTenthOfAMillimetreIsWhatASolveSays() {
        Bottleneck.Measure ends = Bottleneck.of(FEED).measures().get(0);
        double now = Knob.of(FEED, "feed 1.end bore").si();
        double sum = 0;
        for (double step : new double[] {1e-5, -1e-5}) {
            Circuit moved = FEED.with(List.of(
                    Knob.of(FEED, "feed 1.end bore").to(now + step),
                    Knob.of(FEED, "feed 6.end bore").to(now + step)));
            sum += Math.signum(step)
                    * Result.of(moved).point("rail").orElseThrow().staticPressurePa();
        }
        assertThat(ends.gives()).isCloseTo(sum / 2e-5 * 1e-4, within(1e-3 * ends.gives()));
    }

    @Test
    void liftIsNamedWhereItTakesMost() {
        Circuit launch = Examples.circuit("carburettor-feed.yaml").in("launch");
        assertThat(Bottleneck.of(launch).sentence(Display.METRIC))
                .contains("Height and acceleration take most, and no hose gives that back");
    }
}
