package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.HoseSize;

class EndCostsTest {
    private static final List<HoseSize> SIX = List.of(Catalogue.standard().hose("race PTFE -6"));
    private static final EndCosts.Flow FUEL = new EndCosts.Flow("E85 summer", "40 C", "216 L/h");

    private static EndCosts.Row row(EndCosts costs, String end) {
        return costs.rows().stream()
                .filter(row -> row.text().equals(end))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aForgedTurnCostsSeveralTimesASweptOne() {
        EndCosts costs = EndCosts.of(SIX, FUEL);
        double straight = row(costs, "straight").dropPa();
        double swept = row(costs, "90").dropPa() - straight;
        double forged = row(costs, "90 forged").dropPa() - straight;
        assertThat(forged / swept).isBetween(3.0, 5.0);
    }

    @Test
    void theEquivalentLengthIsNoFixedNumber() {
        EndCosts oil = EndCosts.of(SIX, new EndCosts.Flow("engine oil 15W-50", "20 C", "2 L/min"));
        EndCosts.Row inFuel = row(EndCosts.of(SIX, FUEL), "90");
        EndCosts.Row inOil = row(oil, "90");
        assertThat(inOil.equivalentM()).isLessThan(0.6 * inFuel.equivalentM());
    }

    @Test
    void theBandHoldsTheLoss() {
        for (EndCosts.Row row : EndCosts.of(SIX, FUEL).rows()) {
            assertThat(row.dropLowPa()).as(row.text()).isLessThan(row.dropPa());
            assertThat(row.dropHighPa()).as(row.text()).isGreaterThan(row.dropPa());
        }
    }

    @Test
    void twiceTheFlowOfATurbulentEndCostsNearlyFourTimes() {
        double one = row(EndCosts.of(SIX, FUEL), "90 forged").dropPa();
        double two = row(EndCosts.of(SIX, new EndCosts.Flow("E85 summer", "40 C", "432 L/h")), "90 forged")
                .dropPa();
        assertThat(two / one).isCloseTo(3.9, within(0.1));
    }
}
