package org.linedrop.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.linedrop.Examples;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;

/** A circuit is self-contained: sent to another machine it gives the same bits. */
class CircuitSerialisesTest {
    @SuppressWarnings("unchecked")
    private static <T> T sent(T object) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(object);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (T) in.readObject();
        }
    }

    static java.util.List<String> examples() {
        return Examples.names();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void aCircuitComesBackEqualAndSolvesToTheSameBits(String example) throws Exception {
        Circuit circuit = Examples.circuit(example);
        Circuit back = sent(circuit);
        assertThat(back).isEqualTo(circuit);
        Result here = Result.of(circuit);
        Result there = Result.of(back);
        assertThat(there.rows()).isEqualTo(here.rows());
        assertThat(sent(here.rows().get(0))).isEqualTo(here.rows().get(0)).isInstanceOf(PartRow.class);
        for (String name : circuit.caseNames()) {
            assertThat(back.in(name)).isEqualTo(circuit.in(name));
        }
    }
}
