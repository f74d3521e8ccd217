package org.linedrop.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.linedrop.io.CircuitFile;
import org.linedrop.study.FeedCheck;
import org.linedrop.units.Display;

/** Ratings over all cases: under or over a figure that somebody gave, or not judged. Hoses here are invented. */
class RatingOutputTest {
    private static final String FILE = """
            linedrop: 1
            service: %s
            fluid: %s
            temperature: 40 C
            this case: rest
            catalogue:
              hoses:
                blue race hose:
                  like: %s
                  sizes: -6
                  bore: 7.9 mm measured
                  %s
            points:
              a: {kind: held, pressure: 400 kPa}
              b: {kind: draw, takes: 60 L/h}
            runs:
              feed: {from: a, to: b, parts: [{hose: %s, length: 1 m, ends: straight to 90}]}
            cases:
              push: {a: {pressure: 900 kPa}}
              pull: {a: {pressure: -20 kPa}}
              hot: {temperature: 120 C}
            """;

    private static FeedCheck check(String rating, String hose) {
        String text = String.format(Locale.ROOT, FILE, "engine oil", "engine oil 15W-50", "race PTFE", rating, hose);
        return FeedCheck.of(CircuitFile.read(text, "oil.yaml"));
    }

    private static List<String> ratings(FeedCheck check, Display display) {
        List<String> lines = RatingTable.lines(Standing.ratings(check.cases()), display);
        return List.of(String.join("\n", lines).replaceAll("\n {20,}", " ").split("\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "working pressure: 140 bar from sheet | working pressure +push +899.9 kPa +under the figure you gave \\(140"
                        + " bar from sheet\\)",
                "working pressure: 8 bar from sheet | working pressure +push +899.9 kPa +OVER the figure you gave \\(8.0"
                        + " bar from sheet\\)",
                "working pressure: 140 bar guessed | working pressure +push +899.9 kPa +NOT JUDGED: no published working"
                        + " pressure here \\(140 bar guessed\\); read it off the hose",
                "roughness: 0.002 mm | working pressure +push +899.9 kPa +NOT JUDGED: no published working pressure here"
                        + " \\(172 bar guessed\\); read it off the hose",
                "vacuum: 20 inHg from sheet | vacuum +pull +43.46 kPa +under the figure you gave \\(68 kPa from sheet\\)",
                "highest temperature: 110 C from sheet | highest temperature +hot +120 C +OVER the figure you gave \\(110 C"
                        + " from sheet\\)",
                "lowest temperature: 50 C from sheet | lowest temperature +rest +40 C +UNDER the figure you gave \\(50 C"
                        + " from sheet\\)"
            })
    void eachRatingIsHeldAgainstTheMostThatAnyCaseAsks(String rating, String row) {
        assertThat(ratings(check(rating, "blue race hose -6"), Display.METRIC))
                .anySatisfy(line -> assertThat(line).matches("blue race hose -6 " + row));
    }

    @Test
    void neverHoldsAndNeverBreaksOnAFigureFromMemory() {
        FeedCheck check = check("roughness: 0.002 mm", "race PTFE -6");
        assertThat(String.join("\n", ratings(check, Display.US)))
                .contains("NOT JUDGED", "psi from memory")
                .doesNotContain("holds", "kPa", "bar");
        assertThat(check.cases()).allMatch(each -> each.result().holds());
    }

    @Test
    void brakeHoseIsNeverJudgedWhateverTheUserGives() {
        String text = String.format(
                        Locale.ROOT,
                        FILE,
                        "engine oil",
                        "engine oil 15W-50",
                        "brake hose",
                        "working pressure: 300 bar from sheet",
                        "blue race hose 1/8 in")
                .replace("sizes: -6", "sizes: 1/8 in")
                .replace("ends: straight to 90", "ends: none")
                .replace("7.9 mm", "3.2 mm")
                .replace("60 L/h", "1 L/h");
        FeedCheck check = FeedCheck.of(CircuitFile.read(text, "oil.yaml"));
        assertThat(ratings(check, Display.METRIC).stream().skip(1))
                .isNotEmpty()
                .allMatch(line ->
                        line.contains("NOT JUDGED: brake hose belongs to standards, law and licensed practice"));
    }

    @Test
    void allFormatsSayTheSame() {
        FeedCheck check = check("working pressure: 140 bar from sheet", "blue race hose -6");
        assertThat(TextReport.check(check, Display.METRIC))
                .contains("under the figure you gave (140 bar from sheet)")
                .contains(
                        "blue race hose -6: bore (measured), working pressure (from sheet) from oil.yaml; the rest as");
        assertThat(CsvReport.limits(check, Display.METRIC))
                .contains("push,blue race hose -6 working pressure,under the figure,")
                .contains("under the figure you gave (140 bar from sheet)");
        assertThat(JsonReport.text(check))
                .contains("\"hose\": \"blue race hose -6\"", "\"verdict\": \"under the figure\"", "\"rating\": 1.4E7");
    }
}
