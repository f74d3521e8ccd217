package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.network.Bores;
import org.linedrop.units.Display;

/** What a comparison of liners says, against its own figures and what is known of rubber and PTFE. */
class LinerSentencesTest {
    private static LinerComparison compare(String flow, String ends, int dash, String... families) {
        return LinerComparison.of(
                new LinerQuestion("E10", "40 C", flow, "1 m", ends, List.of(dash), List.of(families)));
    }

    private static String said(String flow, String ends, int dash, String... families) {
        return compare(flow, ends, dash, families).sentence(Display.METRIC);
    }

    /** All percentages of the sentence on shares, those given back or taken back negative. */
    private static int sumOfShares(String text) {
        String shares = text.substring(text.indexOf(": ") + 2, text.indexOf(". "));
        Matcher each = Pattern.compile("(gives |takes )?(-?\\d+) %").matcher(shares);
        int sum = 0;
        while (each.find()) {
            sum += (each.group(1) == null ? 1 : -1) * Integer.parseInt(each.group(2));
        }
        return sum;
    }

    @Test
    void aSmallerBoreLosesMoreAndASmootherWallGivesSomeBack() {
        String text = said("216 L/h", "none", 6, "race rubber", "race PTFE");
        assertThat(text)
                .startsWith("-6 race PTFE loses 1.4 times what -6 race rubber does here: 117 % of the difference is its"
                        + " bore; its smoother wall gives 17 % of it back. To match race rubber -6 you need race PTFE -8"
                        + " (");
        assertThat(sumOfShares(text)).isEqualTo(100);
    }

    @Test
    void theSmootherLinerOfTheSameBoreLosesLessByItsWall() {
        // both 5/16 in; PTFE is the smoother
        String text = said("216 L/h", "none", 6, "MIL-H-8794", "AS1946");
        assertThat(text)
                .startsWith("-6 AS1946 loses 0.9 times what -6 MIL-H-8794 does here: 0 % of the difference is its bore,"
                        + " 100 % its smoother wall. To match MIL-H-8794 -6 you need AS1946 -6 (1.78 kPa against 1.92"
                        + " kPa). Both hoses have the same bore within 0.1 mm at this dash");
        // the other way round it is the rougher one, and loses more
        assertThat(said("216 L/h", "none", 6, "AS1946", "MIL-H-8794"))
                .startsWith("-6 MIL-H-8794 loses 1.1 times what -6 AS1946 does here: 0 % of the difference is its bore,"
                        + " 100 % its rougher wall. To match AS1946 -6 you need MIL-H-8794 -8 (");
    }

    @Test
    void widerEndsMayMoreThanMakeUpForARougherWall() {
        String text = said("216 L/h", "straight to straight", 6, "AS1946", "MIL-H-8794");
        assertThat(text)
                .startsWith("-6 MIL-H-8794 loses 0.9 times what -6 AS1946 does here: 0 % of the difference is its hose"
                        + " bore, 168 % its hose-end bores; its rougher wall takes 68 % of it back.");
        assertThat(sumOfShares(text)).isEqualTo(100);
        assertThat(said("216 L/h", "straight to straight", 6, "MIL-H-8794", "AS1946"))
                .contains("168 % its hose-end bores; its smoother wall gives 68 % of it back.");
    }

    @Test
    void aConvolutedHoseIsRoughAndWide() {
        String text = said("216 L/h", "none", 6, "race rubber", "convoluted PTFE");
        assertThat(text).contains(" times what -6 race rubber does here: -", " % its rougher wall. To match");
        assertThat(sumOfShares(text)).isEqualTo(100);
    }

    @Test
    void ratiosNearOneAreSaidAsFigures() {
        LinerComparison answer = compare("2160 L/h", "none", 16, "race rubber", "race PTFE");
        assertThat(answer.rows().get(1).ratioToFirst()).isBetween(0.95, 1.0);
        assertThat(answer.sentence(Display.METRIC))
                .startsWith("-16 race PTFE loses about what race rubber -16 does here: 0.77 kPa against 0.81 kPa. To"
                        + " match race rubber -16 you need race PTFE -16 (0.77 kPa against 0.81 kPa).")
                .doesNotContain("% of the difference");
        assertThat(answer.sentence(Display.US)).contains("0.112 psi against 0.117 psi. ");
    }

    @Test
    void theMatchIsTheFirstSizeThatLosesNoMore() {
        LinerComparison answer = compare("216 L/h", "straight to straight", 6, "race rubber", "race PTFE");
        double asked = answer.rows().get(0).madeUpPa().value();
        HoseSize eight = Catalogue.standard().hose("race PTFE -8");
        assertThat(LinerComparison.madeUpPa(answer.question(), eight, Bores.USUAL))
                .isLessThan(asked);
        assertThat(answer.rows().get(1).madeUpPa().value()).isGreaterThan(1.02 * asked);
        assertThat(answer.sentence(Display.METRIC)).contains(" To match race rubber -6 you need race PTFE -8 (");
        // the largest PTFE hose has smaller ends than the largest rubber one
        assertThat(said("2160 L/h", "straight to straight", 20, "race rubber", "race PTFE"))
                .contains(" No size of race PTFE here loses as little as race rubber -20.");
    }

    @Test
    void onlyAnotherLinerIsWorthASentence() {
        assertThat(said("216 L/h", "none", 6, "race rubber", "MIL-H-8794"))
                .isEqualTo("Nothing of another liner to compare with.");
        assertThat(said("216 L/h", "none", 6, "AS1946", "convoluted PTFE"))
                .isEqualTo("Nothing of another liner to compare with.");
        assertThat(said("216 L/h", "none", 7, "race rubber", "race PTFE"))
                .isEqualTo("None of these families is made in these sizes.");
        LinerComparison third = compare("216 L/h", "none", 6, "race rubber", "MIL-H-8794", "race PTFE");
        assertThat(third.sentence(Display.METRIC)).startsWith("-6 race PTFE loses 1.4 times what -6 race rubber");
        assertThat(third.missing()).isEmpty();
        assertThat(compare("216 L/h", "none", 7, "race rubber", "race PTFE").missing())
                .containsExactly("race rubber -7", "race PTFE -7");
    }

    @Test
    void doubtsAreSaidWhereThereAreSome() {
        String memory = "Bores marked ? are from memory";
        assertThat(said("216 L/h", "none", 6, "race rubber", "race PTFE"))
                .contains(memory)
                .doesNotContain("the same bore", "are out anyway");
        // both bores printed
        LinerComparison published = compare("216 L/h", "none", 6, "100R5", "100R14 tube-size");
        assertThat(published.rows())
                .allSatisfy(row ->
                        assertThat(row.size().boreM().status().doubtful()).isFalse());
        assertThat(published.sentence(Display.METRIC)).doesNotContain(memory);
        LinerComparison mixed = compare("216 L/h", "none", 6, "100R5", "race PTFE");
        assertThat(mixed.sentence(Display.METRIC)).contains(memory);
    }

    @Test
    void hoseAndEndsAreGivenApart() {
        LinerComparison bare = compare("216 L/h", "none", 6, "race rubber");
        assertThat(bare.rows().get(0).endsDropPa()).isZero();
        assertThat(bare.rows().get(0).ratioToFirst()).isEqualTo(1);
        assertThat(bare.rows().get(0).flowM3PerS()).isCloseTo(216 / 3.6e6, within(1e-12));
        double bore = bare.rows().get(0).size().boreM().value();
        assertThat(bare.rows().get(0).velocityMPerS())
                .isCloseTo(216 / 3.6e6 / (Math.PI / 4 * bore * bore), within(1e-9));
        LinerComparison made = compare("216 L/h", "straight to straight", 6, "race rubber");
        assertThat(made.rows().get(0).endsDropPa()).isPositive();
        assertThat(made.rows().get(0).hoseDropPa()).isCloseTo(bare.rows().get(0).hoseDropPa(), within(1e-9));
    }
}
