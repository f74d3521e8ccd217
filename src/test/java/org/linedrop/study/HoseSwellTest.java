package org.linedrop.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.Examples;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.result.Result;

class HoseSwellTest {
    private static final double CM3_PER_FT = 1e-6 / 0.3048;
    private static final double PSI = 6894.757293168362;

    private static List<HoseSwell> at(String pressure) {
        Circuit brakes = Examples.circuit("brakes.yaml")
                .with(List.of(
                        Change.of("master", "pressure", pressure),
                        Change.of("left caliper", "takes", "0.001 mL/s"),
                        Change.of("right caliper", "takes", "0.001 mL/s")));
        return HoseSwell.of(Result.of(brakes).orThrow());
    }

    /** Rows of the standard for 1/8 in hose: 0.66 and 0.33 cm3/ft at 1000 psi, 0.79 and 0.42 at 1500 psi. */
    @Test
    void betweenTheRowsSwellFollowsAStraightLine() {
        for (double psi : new double[] {1100, 1250, 1400}) {
            HoseSwell left = at(psi + " psi").get(0);
            double share = (left.pressurePa() / PSI - 1000) / 500;
            assertThat(left.regularM3())
                    .isCloseTo(0.45 * CM3_PER_FT * (0.66 + share * 0.13), within(1e-6 * left.regularM3()));
            assertThat(left.lowExpansionM3())
                    .isCloseTo(0.45 * CM3_PER_FT * (0.33 + share * 0.09), within(1e-6 * left.lowExpansionM3()));
        }
    }

    @Test
    void underTheRowsTheirFirstFigureStandsAndPastThemNothingIsSaid() {
        assertThat(at("600 psi").get(0).regularM3()).isCloseTo(0.45 * CM3_PER_FT * 0.66, within(1e-12));
        assertThat(at("1700 psi").get(0).regularM3()).isNaN();
        assertThat(at("600 psi")).hasSize(2);
    }

    @Test
    void onlyBrakesSwell() {
        assertThat(HoseSwell.of(Result.of(Examples.circuit("first-feed.yaml")))).isEmpty();
    }
}
