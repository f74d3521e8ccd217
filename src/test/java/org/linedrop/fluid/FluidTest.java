package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.linedrop.fact.Notice;

/** States and what is said about them. */
class FluidTest {

    private static List<String> texts(String fluid, double celsius) {
        return Fluids.find(fluid).notices(celsius + 273.15).stream()
                .map(Notice::text)
                .toList();
    }

    @Test
    void aPropertyOutsideItsRangeSaysByHowMuch() {
        List<Notice> notices = Fluids.find("petrol summer").notices(273.15 + 65);
        Notice vapour = notices.stream()
                .filter(n -> n.id().equals("fluid-range-vapour-pressure"))
                .findFirst()
                .orElseThrow();
        assertThat(vapour.text())
                .isEqualTo("vapour pressure of petrol summer is used at 65 C, 15 K above its range (0 C to 50 C):"
                        + " extrapolated");
        assertThat(vapour.value()).isEqualTo(338.15);
        assertThat(vapour.limit()).isCloseTo(323.15, within(1e-9));
        assertThat(vapour.unit()).isEqualTo("K");
        assertThat(texts("engine oil 5W-30", -12))
                .contains("dynamic viscosity of engine oil 5W-30 is used at -12 C, 12 K below its range (0 C to 150 C):"
                        + " extrapolated");
        assertThat(texts("water", 20)).isEmpty();
        assertThat(Fluids.find("petrol summer").flowNotices(293.15)).isEmpty();
        assertThat(Fluids.find("petrol summer").notices(293.15))
                .extracting(Notice::id)
                .containsExactly("fluid-grade-bulk-modulus");
    }

    @Test
    void figuresFromMemorySaySo() {
        assertThat(texts("brake fluid DOT 4", 20)).anyMatch(t -> t.contains("from memory or estimated (grade C)"));
        assertThat(texts("ethylene glycol 10 %", 20)).anyMatch(t -> t.contains("grade C"));
        assertThat(Fluids.find("ethylene glycol 10 %").grade()).isEqualTo(Grade.C);
        assertThat(Fluids.find("ethylene glycol 50 %").properties().get(1).grade())
                .isEqualTo(Grade.A);
        assertThat(Fluids.find("E85 summer").grade()).isEqualTo(Grade.C);
        assertThat(texts("E85 summer", 40))
                .anyMatch(t -> t.contains("E85 summer is taken as 83 % ethanol; pump E85 holds 51 to 83 %"));
        assertThat(texts("ethanol 74 %", 40)).contains("the other 26 % is taken as petrol summer");
    }

    @Test
    void freezingAndBoilingAreSaid() {
        assertThat(texts("water", -5)).contains("water freezes at 0 C; -5 C is 5 K below that");
        assertThat(texts("propylene glycol 30 %", -16)).anyMatch(t -> t.startsWith("propylene glycol 30 % freezes at"));
        assertThat(texts("brake fluid DOT 4", 160))
                .contains("brake fluid DOT 4 may boil: 160 C is above the 155 C its class must reach when wet");
        assertThat(texts("brake fluid DOT 3", 170)).anyMatch(t -> t.contains("wet"));
        assertThat(Fluids.find("brake fluid DOT 4").at(293.15).vapourPressurePa())
                .isNaN();
    }

    @Test
    void farOutsideNoStateIsGiven() {
        Fluid water = Fluids.find("water");
        assertThatThrownBy(() -> water.at(273.15 + 300))
                .isInstanceOf(FluidRangeException.class)
                .hasMessageContaining(
                        "water at 300 C: no state is given (further than 30 K outside); it is meant for 0 C"
                                + " to 130 C. Choose a temperature in that range");
        assertThatThrownBy(() -> water.at(Double.NaN)).isInstanceOf(FluidRangeException.class);
        assertThatThrownBy(() -> water.at(0)).isInstanceOf(FluidRangeException.class);
        assertThat(water.refusal(293.15)).isNull();
    }

    /** Every state that is given outside the range is still finite and positive. */
    @Test
    void theMarginIsSafe() {
        for (Fluid fluid : Fluids.all()) {
            for (double t = fluid.lowestK() - 40; t <= fluid.highestK() + 40; t += 1) {
                if (fluid.refusal(t) != null) {
                    continue;
                }
                for (Band band : Band.values()) {
                    FluidState s = fluid.at(t, band);
                    for (PropertyKind kind : PropertyKind.values()) {
                        double value = FluidCases.value(s, kind);
                        assertThat(Double.isNaN(value) || (value >= 0 && value < 1e12))
                                .as(fluid.name() + " " + kind + " " + t + " " + value)
                                .isTrue();
                    }
                    assertThat(s.bulkModulusPa() > 0).as(fluid.name() + t).isTrue();
                }
            }
        }
    }

    @Test
    void kinematicViscosityIsDynamicOverDensity() {
        FluidState s = new FluidState(300, 800, 4e-3, 1, 1, 1);
        assertThat(s.kinematicViscosityM2PerS()).isCloseTo(5e-6, within(1e-20));
    }

    @Test
    void classBandsAreThoseOfTheStandards() {
        double diesel = Fluids.find("diesel EN 590").at(313.15, Band.THICK).kinematicViscosityM2PerS();
        assertThat(diesel).isCloseTo(4.5e-6, within(1e-12));
        Fluid e85 = Fluids.find("E85 winter");
        assertThat(e85.at(310.95, Band.THIN).vapourPressurePa()).isCloseTo(15 * 6894.757, within(1.0));
        assertThat(e85.at(310.95, Band.THICK).vapourPressurePa()).isCloseTo(9.5 * 6894.757, within(1.0));
    }

    /** The words under which linings are judged; checked against the compatibility table where it is at hand. */
    @Test
    void familiesAreWordsOfTheCompatibilityTable() {
        List<String> words = List.of(
                "petrol E0",
                "petrol E10",
                "E85",
                "ethanol",
                "methanol",
                "diesel",
                "engine oil (mineral/synthetic)",
                "gear oil / ATF",
                "mineral hydraulic / power-steering oil",
                "brake fluid DOT 3/4/5.1 (glycol ether)",
                "brake fluid DOT 5 (silicone)",
                "water-glycol coolant",
                "air");
        for (Fluid fluid : Fluids.all()) {
            assertThat(words).as(fluid.name()).contains(fluid.family());
        }
        assertThat(Fluids.families()).containsExactlyInAnyOrderElementsOf(words);
    }
}
