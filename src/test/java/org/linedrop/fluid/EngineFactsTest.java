package org.linedrop.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Engine facts hang together: ratios of fuels, efficiencies, derived blends. */
class EngineFactsTest {

    @Test
    void efficienciesLieWhereEnginesLie() {
        for (String family : Fluids.families()) {
            EngineFacts.combustion(family).ifPresent(c -> {
                for (EngineFacts.FuelPerWork f : EngineFacts.fuelPerWork(family)) {
                    double efficiency = 1
                            / (f.fuelPerWorkKgPerJ().value()
                                    * c.lowerHeatingValueJPerKg().value());
                    assertThat(efficiency).as(family + " " + f.context()).isBetween(0.19, 0.45);
                }
            });
        }
        assertThat(EngineFacts.fuelPerWork("petrol E0")).hasSize(4);
        assertThat(EngineFacts.combustion("air")).isEmpty();
        assertThat(EngineFacts.fuelPerWork("air")).isEmpty();
    }

    /** 300 kW at 335 g/kWh is 100.4 kg/h (worked example). */
    @Test
    void fuelPerWorkIsInSi() {
        double kgPerJ =
                EngineFacts.fuelPerWork("petrol E0").get(0).fuelPerWorkKgPerJ().high();
        assertThat(300e3 * kgPerJ * 3600).isCloseTo(100.5, within(0.1));
    }

    /** E85 and E10 follow from petrol and ethanol by the masses of 83 and 10 % by volume. */
    @Test
    void blendsFollowFromTheirComponents() {
        check("E85", 0.83, 0.01);
        check("petrol E10", 0.10, 0.01);
    }

    private static void check(String family, double share, double tolerance) {
        double t = 288.7;
        double petrol = (1 - share) * Fluids.find("petrol summer").at(t).densityKgPerM3();
        double ethanol = share * Fluids.find("ethanol").at(t).densityKgPerM3();
        double mass = ethanol / (petrol + ethanol);
        EngineFacts.Combustion blend = EngineFacts.combustion(family).orElseThrow();
        EngineFacts.Combustion e0 = EngineFacts.combustion("petrol E0").orElseThrow();
        EngineFacts.Combustion e100 = EngineFacts.combustion("ethanol").orElseThrow();
        double heat = (1 - mass) * e0.lowerHeatingValueJPerKg().value()
                + mass * e100.lowerHeatingValueJPerKg().value();
        double ratio = (1 - mass) * e0.stoichiometricRatio().value()
                + mass * e100.stoichiometricRatio().value();
        assertThat(blend.lowerHeatingValueJPerKg().value() / heat).isCloseTo(1, within(tolerance));
        assertThat(blend.stoichiometricRatio().value() / ratio).isCloseTo(1, within(tolerance));
    }
}
