package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.fact.ProblemsException;
import org.linedrop.network.Bores;
import org.linedrop.units.Display;

class LinerComparisonTest {
    private static LinerQuestion question(List<Integer> dashes, String... families) {
        return new LinerQuestion("E85 summer", "40 C", "216 L/h", "1 m", "straight to 90", dashes, List.of(families));
    }

    @Test
    void everyRowIsTheMadeUpHoseItself() {
        LinerQuestion question = question(List.of(6, 8), "race rubber", "race PTFE");
        LinerComparison answer = LinerComparison.of(question);
        assertThat(answer.rows()).hasSize(4);
        for (LinerComparison.Row row : answer.rows()) {
            double made = LinerComparison.madeUpPa(question, row.size(), Bores.USUAL);
            assertThat(row.madeUpPa().value()).isCloseTo(made, within(1e-9 * made));
            assertThat(row.hoseDropPa() + row.endsDropPa()).isCloseTo(made, within(1e-9 * made));
            assertThat(row.madeUpPa().low()).isLessThan(made);
            assertThat(row.madeUpPa().high()).isGreaterThan(made);
        }
    }

    @Test
    void flowAtEqualDropLosesWhatTheFirstLoses() {
        LinerQuestion question = question(List.of(6), "race rubber", "race PTFE");
        LinerComparison answer = LinerComparison.of(question);
        LinerComparison.Row first = answer.rows().get(0);
        LinerComparison.Row other = answer.rows().get(1);
        LinerQuestion again = new LinerQuestion(
                question.fluid(),
                question.temperature(),
                other.equalDropM3PerS() + " m3/s",
                question.length(),
                question.ends(),
                question.dashes(),
                question.families());
        double lost = LinerComparison.madeUpPa(again, other.size(), Bores.USUAL);
        assertThat(lost)
                .isCloseTo(
                        first.madeUpPa().value(), within(1e-6 * first.madeUpPa().value()));
    }

    @Test
    void bothWaysRoundTheRatiosAreInverse() {
        double one = LinerComparison.of(question(List.of(8), "race rubber", "race PTFE"))
                .rows()
                .get(1)
                .ratioToFirst();
        double other = LinerComparison.of(question(List.of(8), "race PTFE", "race rubber"))
                .rows()
                .get(1)
                .ratioToFirst();
        assertThat(one * other).isCloseTo(1, within(1e-12));
    }

    @Test
    void tubeSizeRubberAndTubeSizePtfeHaveOneBore() {
        LinerComparison answer = LinerComparison.of(question(List.of(4, 6, 8, 10, 12), "MIL-H-8794", "AS1946"));
        for (int dash : List.of(4, 6, 8, 10, 12)) {
            double rubber =
                    answer.row("MIL-H-8794", dash).orElseThrow().size().boreM().value();
            double ptfe =
                    answer.row("AS1946", dash).orElseThrow().size().boreM().value();
            assertThat(ptfe).as("-%d", dash).isCloseTo(rubber, within(0.1e-3));
        }
        assertThat(answer.sentence(Display.METRIC)).contains("the same bore within 0.1 mm");
    }

    @Test
    void memoryIsSaidToBeMemory() {
        assertThat(LinerComparison.of(question(List.of(6), "race rubber", "race PTFE"))
                        .sentence(Display.METRIC))
                .startsWith("-6 race PTFE loses 1.6 times what -6 race rubber does here")
                .contains("from memory", "measure the hose", "the liners marked \"no\" are out anyway");
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 10, 12, 16, 20})
    void everySizeFromFourToTwentyIsAnswered(int dash) {
        LinerComparison answer = LinerComparison.of(new LinerQuestion(
                "engine oil 15W-50",
                "110 C",
                "40 L/min",
                "2 m",
                "45 to 90",
                List.of(dash),
                LinerQuestion.USUAL_FAMILIES));
        assertThat(answer.rows().size() + answer.missing().size()).isEqualTo(LinerQuestion.USUAL_FAMILIES.size());
        assertThat(answer.rows()).isNotEmpty();
        assertThat(answer.sentence(Display.US)).isNotEmpty();
    }

    @Test
    void whatCannotBeReadIsSaid() {
        assertThatExceptionOfType(CatalogueException.class)
                .isThrownBy(() -> LinerComparison.of(question(List.of(6), "race rubbre", "race PTFE")));
        assertThatExceptionOfType(ProblemsException.class)
                .isThrownBy(() -> LinerComparison.of(new LinerQuestion(
                        "E85 summer", "40", "216 L/h", "1 m", "none", List.of(6), List.of("race PTFE"))));
    }
}
