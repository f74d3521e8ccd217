package org.linedrop.study;

import org.linedrop.circuit.Circuit;
import org.linedrop.io.CircuitFile;

/** Circuits for tests by hand: an invented liquid of round figures, so that losses are closed forms. */
final class Bench {
    private static final String HEAD = """
            linedrop: 1
            fluid: bench liquid
            temperature: 20 C
            fluids:
              bench liquid: {density: 800 kg/m3, viscosity: 10 cSt}
            """;

    private Bench() {}

    /** A circuit of the bench liquid from its points, runs and whatever else it has. */
    static Circuit read(String rest, String name) {
        return CircuitFile.read(HEAD + rest, name);
    }
}
