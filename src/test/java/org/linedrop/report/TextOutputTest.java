package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

class TextOutputTest {
    private static final FeedCheck FEED = Golden.example("fuel-feed-516.yaml");

    @Test
    void checkOfTheOldLine() {
        Golden.same("fuel-feed-516.check.txt", TextReport.check(FEED, Display.METRIC));
    }

    @Test
    void solveOfTheOldLine() {
        Circuit feed = FEED.cases().get(0).result().circuit();
        FeedCheck solved = FeedCheck.withoutDraws(feed, feed.caseNames());
        Golden.same("fuel-feed-516.solve.txt", TextReport.solve(solved, Display.METRIC));
    }

    @Test
    void checkInUsUnits() {
        Golden.same("fuel-feed-516.check.us.txt", TextReport.check(FEED, Display.US));
    }

    @Test
    void longNamesDoNotBreakTheColumns() {
        Golden.same("long-names.check.txt", TextReport.check(Golden.own("long-names.yaml"), Display.METRIC));
    }

    @Test
    void caseNotSolvedHasNoFigures() {
        String text = TextReport.check(Golden.own("too-much.yaml"), Display.METRIC);
        Golden.same("too-much.check.txt", text);
        assertThat(text)
                .startsWith("NOT SOLVED: at too much")
                .contains("case too much (3 of 3): not solved, so there are no figures")
                .contains("case more (2 of 3)"); // the worst of the solved ones is shown
    }

    @Test
    void aWarningThatDiffersInItsFiguresAloneIsSaidOnce() throws IOException {
        Circuit feed = CircuitFile.read(Path.of("src/main/resources/org/linedrop/cli/new-feed.yaml"));
        String text = TextReport.check(FeedCheck.withoutDraws(feed, feed.caseNames()), Display.METRIC)
                .replaceAll("\\s+", " ");
        assertThat(text.split("it may boil here", -1)).hasSize(2);
        assertThat(text)
                .contains("supply entry, supply 1, spill 1.1, spill exit (case hot idle): 100.4 kPa absolute")
                .contains("it may boil here (the worst of these)");
    }

    @Test
    void oilIsByTheMinuteInTextAndByTheHourInCsv() {
        FeedCheck oil = Golden.example("gearbox-cooler.yaml");
        assertThat(TextReport.solve(oil, Display.METRIC)).contains(" L/min").doesNotContain("L/h");
        assertThat(TextReport.solve(oil, Display.US)).contains(" US gal/min").doesNotContain("US gal/h");
        assertThat(CsvReport.rows(oil, Display.METRIC)).contains("flow L/h").doesNotContain("L/min");
        assertThat(TextReport.solve(Golden.example("fuel-feed-38.yaml"), Display.METRIC))
                .contains(" L/h")
                .doesNotContain("L/min");
    }

    @Test
    void brakesGetNoVerdict() {
        String text = TextReport.check(Golden.own("brake.yaml"), Display.METRIC);
        assertThat(text)
                .contains("Volume, flow and swell only")
                .doesNotContain("verdict", "holds", "ADEQUATE", "BROKEN", "UNSURE", "OVERSIZED");
    }

    @ParameterizedTest
    @ValueSource(strings = {"fuel-feed-516.yaml", "fuel-feed-38.yaml", "carburettor-feed.yaml", "twin-rails.yaml"})
    void fitsThePageAndEndsWithTheSafetyLines(String example) {
        FeedCheck check = Golden.example(example);
        for (Display display : List.of(Display.METRIC, Display.US)) {
            for (String text : List.of(TextReport.check(check, display), TextReport.solve(check, display))) {
                assertThat(text.lines())
                        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(120));
                assertThat(text.lines()).allSatisfy(line -> assertThat(line).doesNotEndWith(" "));
                assertThat(text)
                        .endsWith(String.join("\n", Safety.lines()) + "\n")
                        .doesNotContain("NaN", "Infinity");
                assertThat(text).contains("With the engine stopped or rolled over the fuel pump must stop");
            }
        }
    }

    @Test
    void sameTextForSeveralPartsIsOneLineNamingThem() {
        assertThat(TextReport.check(FEED, Display.METRIC))
                .containsOnlyOnce("hose taken as straight;")
                .contains("- supply 2, supply 4, feed 1, feed 6: hose taken as straight;");
    }
}
