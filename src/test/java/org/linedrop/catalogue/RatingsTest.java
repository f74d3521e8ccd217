package org.linedrop.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;

/** Loads against ratings. */
class RatingsTest {
    private static final Catalogue ALL = Catalogue.standard();
    private static final double BAR = 1e5;
    private static final double C = 273.15;

    private static RatingResult only(HoseSize hose, double maxPa) {
        List<RatingResult> results = Ratings.check(hose, maxPa, Double.NaN, Double.NaN, Double.NaN);
        assertThat(results).hasSize(1);
        return results.get(0);
    }

    @Test
    void aStandardsFigureIsJudgedBothWays() {
        HoseSize hose = ALL.hose("MIL-H-8794 -6");
        assertThat(only(hose, 4 * BAR).verdict()).isEqualTo(RatingResult.Verdict.UNDER);
        assertThat(only(hose, 4 * BAR).text())
                .isEqualTo("MIL-H-8794 -6: working pressure 400 kPa is under the figure of FAA AC 43.13-1B (1998) "
                        + "(13790 kPa standard)");
        assertThat(only(hose, 138 * BAR).verdict()).isEqualTo(RatingResult.Verdict.OVER);
        assertThat(only(hose, 138 * BAR).text()).contains("is over the figure");
    }

    @Test
    void aFigureFromMemoryIsNotJudged() {
        RatingResult result = only(ALL.hose("race PTFE -6"), 4 * BAR);
        assertThat(result.verdict()).isEqualTo(RatingResult.Verdict.NOT_JUDGED);
        assertThat(result.text())
                .contains("race PTFE -6: not judged: no published working pressure here", "read it off the hose");
        assertThat(only(ALL.hose("race PTFE -6"), 400 * BAR).text()).contains("the load is past it");
        assertThat(only(ALL.hose("race PTFE -6"), 400 * BAR).verdict()).isEqualTo(RatingResult.Verdict.NOT_JUDGED);
    }

    @Test
    void noFigureIsNotJudged() {
        RatingResult result = only(ALL.hose("coolant hose 1-1/4 in"), BAR);
        assertThat(result.verdict()).isEqualTo(RatingResult.Verdict.NOT_JUDGED);
        assertThat(result.rating()).isNull();
    }

    @Test
    void brakeHoseIsNeverJudged() {
        assertThat(Ratings.check(ALL.hose("brake hose 1/8 in"), BAR, -1000, 250, 300))
                .hasSize(4)
                .allSatisfy(r -> assertThat(r.verdict()).isEqualTo(RatingResult.Verdict.NOT_JUDGED));
    }

    @Test
    void theUsersOwnFigureIsNamedSo() {
        Catalogue mine = ALL.with(new UserFamily(
                "blue race hose",
                "race PTFE",
                List.of(new UserFamily.Row(
                        "-6",
                        Figure.given(7.9e-3),
                        null,
                        null,
                        null,
                        null,
                        Figure.exact(140 * BAR, Source.of("user's file", Status.FROM_SHEET)),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null))));
        RatingResult result = only(mine.hose("blue race hose -6"), 4 * BAR);
        assertThat(result.verdict()).isEqualTo(RatingResult.Verdict.UNDER);
        assertThat(result.text()).endsWith("is under the figure you gave (14000 kPa from sheet)");
    }

    @Test
    void temperaturesAndVacuum() {
        HoseSize hose = ALL.hose("MIL-H-8794 -6");
        List<RatingResult> cold = Ratings.check(hose, Double.NaN, -20e3, -60 + C, 100 + C);
        assertThat(cold)
                .extracting(RatingResult::quantity)
                .containsExactly("vacuum", "highest temperature", "lowest temperature");
        assertThat(cold)
                .extracting(RatingResult::verdict)
                .containsExactly(RatingResult.Verdict.UNDER, RatingResult.Verdict.UNDER, RatingResult.Verdict.OVER);
        assertThat(cold.get(2).text()).contains("-60 C is under the figure");
        assertThat(Ratings.check(hose, Double.NaN, -100e3, Double.NaN, Double.NaN)
                        .get(0)
                        .verdict())
                .isEqualTo(RatingResult.Verdict.OVER);
        assertThat(Ratings.check(hose, Double.NaN, 5e3, Double.NaN, Double.NaN)).isEmpty();
    }

    @Test
    void bothMaximaTogetherAreNotJudged() {
        HoseSize hose = ALL.hose("MIL-H-8794 -6");
        assertThat(Ratings.check(hose, 130 * BAR, Double.NaN, Double.NaN, 115 + C))
                .extracting(RatingResult::quantity)
                .containsExactly("working pressure", "highest temperature", "pressure with temperature");
        assertThat(Ratings.check(hose, 130 * BAR, Double.NaN, Double.NaN, 60 + C))
                .hasSize(2);
        assertThat(Ratings.check(hose, 30 * BAR, Double.NaN, Double.NaN, 115 + C))
                .hasSize(2);
    }
}
