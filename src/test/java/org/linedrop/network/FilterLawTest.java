package org.linedrop.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.Result;

/** A filter's power law with property exponents: a mu Q + b rho Q^2 between its two ends. */
class FilterLawTest {
    private static double dropPa(String flow, String drop, String exponent) {
        return dropPa("engine oil 15W-50", flow, drop, exponent);
    }

    private static double dropPa(String fluid, String flow, String drop, String exponent) {
        Circuit circuit = CircuitFile.read(
                """
                linedrop: 1
                fluid: FLUID
                temperature: 40 C
                points:
                  a: {kind: held, pressure: 500 kPa}
                  b: {kind: draw, takes: FLOW}
                devices:
                  filter: {kind: filter, drop: DROP, exponent: EXPONENT}
                runs:
                  r: {from: a, to: b, parts: [{through: filter}]}
                """.replace("FLUID", fluid)
                        .replace("FLOW", flow)
                        .replace("DROP", drop)
                        .replace("EXPONENT", exponent),
                "");
        return Result.of(circuit).orThrow().device("filter").orElseThrow().dropPa();
    }

    @Test
    void atItsRatedPointItLosesItsRatedDrop() {
        // fuel needs no liquid beside it: the circuit's own is meant
        assertThat(dropPa("E10", "10 L/min", "20 kPa at 10 L/min", "1.3 x")).isCloseTo(20_000, within(1e-6));
    }

    @Test
    void aLaminarElementFollowsTheViscosity() {
        double thin = dropPa("10 L/min", "20 kPa at 10 L/min with 10 cSt", "1 x");
        double thick = dropPa("10 L/min", "20 kPa at 10 L/min with 20 cSt", "1 x");
        assertThat(thin).isCloseTo(2 * thick, within(1e-6));
        assertThat(dropPa("5 L/min", "20 kPa at 10 L/min with 10 cSt", "1 x")).isCloseTo(thin / 2, within(1e-6));
    }

    @Test
    void aTurbulentHousingDoesNot() {
        double thin = dropPa("10 L/min", "20 kPa at 10 L/min with 10 cSt", "2 x");
        assertThat(thin).isCloseTo(20_000, within(1e-6));
        assertThat(dropPa("5 L/min", "20 kPa at 10 L/min with 10 cSt", "2 x")).isCloseTo(thin / 4, within(1e-6));
    }
}
