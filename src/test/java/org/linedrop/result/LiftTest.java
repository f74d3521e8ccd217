package org.linedrop.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Surroundings;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;

/** Where on a run the height is lost: shared by length between places that are known. */
class LiftTest {
    private static final String RUN = """
            linedrop: 1
            fluid: water
            temperature: 20 C
            points:
              a: {kind: held, pressure: 300 kPa, height: 0.2 m}
              b: {kind: draw, takes: 10 L/min, height: 1.0 m, ahead: 2 m}
            devices:
              filter: {kind: filter, drop: 6 kPa at 10 L/minPLACE}
            runs:
              line:
                from: a
                to: bVIA
                parts:
                  - {law: constant f, f: 0.02 x, bore: 10 mm, length: 1 mONE}
                  - {law: constant f, f: 0.02 x, bore: 10 mm, length: 2 mTWO}
                  - {through: filterDEVICE}
                  - {law: constant f, f: 0.02 x, bore: 10 mm, length: 1 mFOUR}
            """;

    private static String text(String place, String via, String one, String two, String device, String four) {
        return RUN.replace("PLACE", place)
                .replace("VIA", via.isEmpty() ? "" : "\n    via: [" + via + "]")
                .replace("ONE", one)
                .replace("TWO", two)
                .replace("DEVICE", device)
                .replace("FOUR", four);
    }

    private static Circuit circuit(String text) {
        return CircuitFile.read(text, "line.yaml");
    }

    /** What each part is lifted by, in metres of water. */
    private static double[] lifts(String text) {
        Result result = Result.of(circuit(text)).orThrow();
        double density = circuit(text).surroundings().fluid().at(293.15).densityKgPerM3();
        return IntStream.rangeClosed(1, 4)
                .mapToDouble(part -> result.rows().stream()
                                .filter(row ->
                                        row.row().equals("" + part) || row.row().startsWith(part + "."))
                                .mapToDouble(PartRow::liftDropPa)
                                .sum()
                        / density
                        / Surroundings.STANDARD_GRAVITY_M_PER_S2)
                .toArray();
    }

    @Test
    void withoutWordsItIsSharedByLength() {
        assertThat(lifts(text("", "", "", "", "", ""))).containsExactly(new double[] {0.2, 0.4, 0, 0.2}, within(1e-12));
    }

    @Test
    void aPartThatSaysItsEndTakesWhatIsUpToThere() {
        assertThat(lifts(text("", "", ", ends at height: 0.5 m", "", "", "")))
                .containsExactly(new double[] {0.3, 0.5 * 2 / 3, 0, 0.5 / 3}, within(1e-12));
        assertThat(lifts(text("", "", ", ends at height: 0.2 m", ", ends at height: 1.4 m", "", "")))
                .containsExactly(new double[] {0, 1.2, 0, -0.4}, within(1e-12));
    }

    @Test
    void aDeviceWithItsOwnPlaceTakesPart() {
        String place = ", height: 0.6 m, ahead: 0.5 m";
        assertThat(lifts(text(place, "", "", "", "", "")))
                .containsExactly(new double[] {0.4 / 3, 0.8 / 3, 0, 0.4}, within(1e-12));
        assertThat(lifts(text(place, "", ", ends at height: 0.5 m", "", ", ends at height: 0.7 m", "")))
                .containsExactly(new double[] {0.3, 0.1, 0.1, 0.3}, within(1e-12));
    }

    @Test
    void aDeviceAmongWayPointsSitsWhereTheWayIsShortest() {
        String via = "{height: 0.2 m, ahead: 1 m}, {height: 1.0 m, ahead: 1 m}";
        double[] lifts = lifts(text(", height: 0.4 m, ahead: 1 m", via, "", "", "", ""));
        // 3 m of tube go 1.0 m along the floor and 0.2 m up, the last metre 0.6 m up and 1 m along
        assertThat(lifts).containsExactly(new double[] {0, 0.2, 0, 0.6}, within(1e-12));
        assertThat(circuit(text(", height: 0.4 m", via, "", "", "", "")).assumptions())
                .extracting(Notice::text)
                .contains("taken to sit between those way-points of line that make the way shortest");
    }

    @Test
    void aDeviceThatComesFirstLosesNoHeight() {
        String first = text(", height: 0.9 m", "", "", "", "", "")
                .replace("      - {through: filter}\n", "")
                .replace("    parts:\n", "    parts:\n      - {through: filter}\n");
        double[] lifts = lifts(first);
        assertThat(IntStream.range(0, 4).mapToDouble(i -> lifts[i]).sum()).isCloseTo(0.8, within(1e-12));
    }

    static List<Long> seeds() {
        return List.of(1L, 2L, 3L, 4L, 5L, 6L, 7L, 8L);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void howeverItIsSharedItIsTheHeightBetweenTheEnds(long seed) {
        Random random = new Random(seed);
        String place = random.nextBoolean() ? ", height: " + random.nextInt(1500) + " mm" : "";
        boolean via = random.nextBoolean();
        StringBuilder points = new StringBuilder();
        for (int i = 0; via && i <= random.nextInt(3); i++) {
            points.append(i == 0 ? "" : ", ")
                    .append("{ahead: ")
                    .append(random.nextInt(2000))
                    .append(" mm, height: ")
                    .append(random.nextInt(1500))
                    .append(" mm}");
        }
        String one = via ? "" : ", ends at height: " + random.nextInt(1500) + " mm";
        double[] lifts = lifts(text(place, points.toString(), one, "", "", ""));
        assertThat(IntStream.range(0, 4).mapToDouble(i -> lifts[i]).sum()).isCloseTo(0.8, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ends at height: 0.5 m | FOUR | line.yaml:17  line 4: the last part ends where the run does: the height of"
                        + " b is its height. Leave out ends at height",
                "ends at height: 0.7 m | TWO | line.yaml:15  line 2: it ends at 0.7 m, where filter sits at 0.6 m. Leave"
                        + " out one of the two heights",
                "ends at height: 500 m | ONE | line.yaml:14  line 1: ends at height \"500 m\" is more than 10 m. Heights"
                        + " are from one datum in the vehicle. If it is so, write 500 m really"
            })
    void whatDoesNotFitIsSaid(String words, String where, String message) {
        String text = RUN.replace("PLACE", ", height: 0.6 m").replace(where, ", " + words);
        assertThat(problems(text)).containsExactly(message);
    }

    private static List<String> problems(String text) {
        String rest = text.replaceAll("VIA|ONE|TWO|DEVICE|FOUR|PLACE", "");
        return catchThrowableOfType(ProblemsException.class, () -> circuit(rest)).problems().stream()
                .map(Problem::line)
                .toList();
    }

    @Test
    void wayPointsAndEndHeightsDoNotGoTogether() {
        assertThat(problems(text("", "{height: 0.5 m}", ", ends at height: 0.5 m", "", "", "")))
                .containsExactly(
                        "line.yaml:13  line: both via and ends at height say how this run climbs, and not how the"
                                + " two fit together. Keep one: via for places the run passes, ends at height for the ends of parts");
    }

    @Test
    void withoutHeightsThereIsNone() {
        String flat =
                RUN.replaceAll(", height: [0-9.]+ m(, ahead: 2 m)?", "").replace("ONE", ", ends at height: 0.5 m");
        assertThat(problems(flat))
                .containsExactly(
                        "line.yaml:14  line 1: ends at height is given, and the points have no height. Give all"
                                + " points their height, from the same datum");
    }
}
