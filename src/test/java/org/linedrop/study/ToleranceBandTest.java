package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.CaseResult;
import org.linedrop.study.Uncertain.Kind;

class ToleranceBandTest {
    private static final Circuit FEED = Examples.circuit("fuel-feed-38.yaml");
    private static final BandQuestion FEW = new BandQuestion(List.of(FEED.caseName()), 128, 0.1, 0.25, 0.05);

    @Test
    void everyThreadCountGivesTheSameBits() {
        ToleranceBand one = ToleranceBand.of(FEED, FEW, 1, Progress.NONE);
        assertThat(ToleranceBand.of(FEED, FEW, 2, Progress.NONE)).isEqualTo(one);
        assertThat(ToleranceBand.of(FEED, FEW, 8, Progress.NONE)).isEqualTo(one);
    }

    @Test
    void theBandHoldsTheUsualFigureAndIsNamedAfterWhatSpreadsIt() {
        ToleranceBand band = ToleranceBand.of(FEED, FEW, 2, Progress.NONE);
        ToleranceBand.Row rail = band.rows().get(0);
        assertThat(rail.usual()).isEqualTo(CaseResult.of(FEED).limits().get(0).margin());
        assertThat(rail.low()).isLessThan(rail.median()).isLessThan(rail.usual());
        assertThat(rail.high()).isGreaterThan(rail.median()).isGreaterThan(rail.usual());
        assertThat(rail.unsolved()).isZero();
        assertThat(rail.causes()).isNotEmpty();
        assertThat(rail.causes().get(0).uncertain().kind())
                .as("the regulator holds the pressure before the feed: its pump cannot matter")
                .isNotEqualTo(Kind.PUMP);
        ToleranceBand.Row spare = band.rows().get(1);
        assertThat(spare.causes().get(0).uncertain().kind()).isEqualTo(Kind.PUMP);
        assertThat(spare.probability()).isEqualTo(1.0);
    }

    @Test
    void withNothingUncertainTheBandHasNoWidth() {
        Circuit known = FEED.with(List.of(org.linedrop.circuit.Change.of("feed", "hoses", "AS1946 -6")));
        List<Uncertain> found = Uncertainties.of(known, new BandQuestion(List.of(), 16, 0, 0, 0));
        assertThat(found).noneMatch(each -> each.kind() == Kind.FRICTION || each.kind() == Kind.PUMP);
        double[] usual = found.stream().mapToDouble(Uncertain::usual).toArray();
        assertThat(Uncertainties.solved(known, found, usual)
                        .margin(known.limits().get(0)))
                .isEqualTo(CaseResult.of(known).limits().get(0).margin());
    }

    @Test
    void aTriangleHasItsQuantilesWhereItsAreaSays() {
        Uncertain bore = new Uncertain(Kind.HOSE_BORE, "x", 2, 3, 6, "invented");
        assertThat(bore.at(0)).isEqualTo(2.0);
        assertThat(bore.at(1)).isEqualTo(6.0);
        assertThat(bore.at(0.25)).isCloseTo(3, within(1e-12)); // (3 - 2) / (6 - 2) of the area is under the usual value
        double x = bore.at(0.8);
        assertThat((6 - x) * (6 - x) / ((6 - 2) * (6 - 3))).isCloseTo(0.2, within(1e-12));
        Uncertain fluid = new Uncertain(Kind.FLUID, "", -1, 0, 1, "invented");
        assertThat(fluid.at(0.1)).isEqualTo(-1.0);
        assertThat(fluid.at(0.5)).isEqualTo(0.0);
        assertThat(fluid.at(0.9)).isEqualTo(1.0);
    }

    @Test
    void widthsOutsideTheirRangeAreSaid() {
        assertThatThrownBy(() -> new BandQuestion(List.of(), 512, Double.NaN, 0, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BandQuestion(List.of(), 3, 0, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("16");
    }
}
