package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

class FlowPathTest {
    static List<String> examples() {
        return Examples.names();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyRunIsPassedAndPressureJoinsFromRowToRow(String example) {
        Result result = Result.of(Examples.circuit(example)).orThrow();
        Set<String> passed = new LinkedHashSet<>();
        for (FlowPath path : FlowPath.of(result)) {
            double last = Double.NaN;
            for (FlowPath.Leg leg : path.legs()) {
                passed.add(leg.run());
                boolean device = result.circuit().device(leg.from()).isPresent();
                for (FlowPath.Row met : leg.rows()) {
                    if (device && met == leg.rows().get(0) && !Double.isNaN(last)) {
                        // what stands between two runs takes something, and gives nothing
                        assertThat(met.pressureInPa()).isLessThanOrEqualTo(last + 1e-3);
                    } else if (!Double.isNaN(last)) {
                        assertThat(met.pressureInPa()).isCloseTo(last, within(1e-3));
                    }
                    double lift = met.row().liftDropPa() * (met.backward() ? -1 : 1);
                    assertThat(met.lossPa() + lift).isCloseTo(met.dropPa(), within(1e-6));
                    last = met.pressureOutPa();
                }
            }
        }
        assertThat(passed)
                .containsAll(result.circuit().runs().stream()
                        .filter(run -> !run.parts().isEmpty())
                        .map(Run::id)
                        .toList());
    }

    @Test
    void aForkMakesTwoWaysFromTheSameStart() {
        List<FlowPath> paths = FlowPath.of(Result.of(Examples.circuit("twin-rails.yaml")));
        assertThat(paths.stream().map(FlowPath::places))
                .containsExactly(
                        List.of("regulator", "split", "left rail"), List.of("regulator", "split", "right rail"));
    }

    @Test
    void aRunAgainstItsSenseIsMetFromItsEnd() {
        Circuit feed = Examples.circuit("first-feed.yaml");
        Circuit turned = feed.with(List.of(Change.of("feed", "from", "rail"), Change.of("feed", "to", "regulator")));
        FlowPath there = FlowPath.of(Result.of(feed).orThrow()).get(0);
        FlowPath back = FlowPath.of(Result.of(turned).orThrow()).get(0);
        assertThat(back.places()).isEqualTo(there.places()).containsExactly("regulator", "rail");
        assertThat(back.legs().get(0).rows()).allMatch(FlowPath.Row::backward);
        assertThat(back.legs().get(0).rows().get(0).pressureInPa()).isCloseTo(300_000, within(1.0));
        assertThat(back.legs().get(0).rows())
                .allSatisfy(met -> assertThat(met.lossPa()).isPositive());
    }

    @ParameterizedTest
    @MethodSource("examples")
    void partsLoseWhatTheirRowsLose(String example) {
        Result result = Result.of(Examples.circuit(example)).orThrow();
        List<PartLoss> losses = PartLoss.of(result);
        double rows = 0;
        for (PartRow row : result.rows()) {
            boolean line = losses.stream()
                    .anyMatch(loss -> loss.line()
                            && loss.run().equals(row.run())
                            && loss.part().equals(row.part()));
            rows += line ? Math.abs(row.frictionDropPa() + row.localDropPa()) : 0;
        }
        double parts = 0;
        double shares = 0;
        int counted = 0;
        for (PartLoss loss : losses) {
            parts += loss.line() ? loss.lossPa() : 0;
            shares += loss.line() ? loss.share() : 0;
            counted += loss.rows().size();
        }
        assertThat(parts).isCloseTo(rows, within(1e-9 * rows)); // sums in another order
        assertThat(shares).isCloseTo(1, within(1e-12));
        assertThat(counted).isEqualTo(result.rows().size());
    }
}
