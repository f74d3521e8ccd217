package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;

/**
 * How much every output of a circuit changes with every key that holds a number: one adjoint solve for each output, and
 * the central difference of the equations at the solved state for each key.
 *
 * @param circuit the circuit, in its case
 * @param outputs what is read off
 * @param values  value of each output in SI
 * @param rows    one for each key that something depends on, in the order of the file
 */
public record Sensitivities(Circuit circuit, List<Output> outputs, List<Double> values, List<Row> rows) {

    /** Copies the lists. */
    public Sensitivities {
        outputs = List.copyOf(outputs);
        values = List.copyOf(values);
        rows = List.copyOf(rows);
    }

    /**
     * One key.
     *
     * @param knob   the key with its value
     * @param slopes its effect on each output, in their order
     */
    public record Row(Knob knob, List<Slope> slopes) implements Serializable {
        /** Copies the slopes. */
        public Row {
            slopes = List.copyOf(slopes);
        }
    }

    /**
     * A derivative in SI. Away from joints of laws, states of devices and ends of the key's range left and right are one
     * number.
     *
     * @param left  downwards of the value; NaN where the key or the circuit does not go there
     * @param right upwards of it; NaN likewise
     */
    public record Slope(double left, double right) implements Serializable {
        static final Slope NONE = new Slope(Double.NaN, Double.NaN);

        static Slope both(double value) {
            return new Slope(value, value);
        }

        /**
         * Whether left and right are not the same.
         *
         * @return true at a joint, and at an end of the key's range
         */
        public boolean isJoint() {
            return !(left == right);
        }

        /**
         * One number for both.
         *
         * @return their mean at a joint; the one that is known at an end; NaN when none is
         */
        public double value() {
            return left == right || Double.isNaN(right) ? left : Double.isNaN(left) ? right : (left + right) / 2;
        }
    }

    /**
     * Computes them all.
     *
     * @param circuit a circuit, in the case that is meant
     * @return the sensitivities
     * @throws IllegalStateException when the circuit does not converge
     */
    public static Sensitivities of(Circuit circuit) {
        return of(circuit, Knob.all(circuit));
    }

    /**
     * Computes those to some keys.
     *
     * @param circuit a circuit, in the case that is meant
     * @param knobs   keys of it
     * @return the sensitivities
     * @throws IllegalStateException when the circuit does not converge
     */
    public static Sensitivities of(Circuit circuit, List<Knob> knobs) {
        Linearised here = Linearised.of(circuit);
        List<Output> outputs = Output.all(here.result());
        Slopes slopes = new Slopes(circuit, here, outputs);
        List<Row> rows = new ArrayList<>();
        for (Knob knob : knobs) {
            row(slopes, knob).ifPresent(rows::add);
        }
        return new Sensitivities(
                circuit,
                outputs,
                outputs.stream().map(output -> output.of(here.result())).toList(),
                rows);
    }

    private static Optional<Row> row(Slopes slopes, Knob knob) {
        try {
            Row row = new Row(knob, slopes.of(knob));
            boolean moves = row.slopes().stream().anyMatch(slope -> Math.abs(slope.value()) > 0);
            return moves ? Optional.of(row) : Optional.empty();
        } catch (ProblemsException noNeighbour) {
            return Optional.empty(); // a key that no neighbouring value is allowed for has no slope
        }
    }

    /**
     * The row of a key.
     *
     * @param path its path
     * @return the row; empty when nothing depends on the key
     */
    public Optional<Row> row(String path) {
        return rows.stream().filter(row -> row.knob().path().equals(path)).findFirst();
    }

    /**
     * One derivative.
     *
     * @param output name of the output
     * @param path   path of the key
     * @return SI of the output over SI of the key; 0 when the output does not depend on it
     * @throws IllegalArgumentException when there is no such output
     */
    public Slope slope(String output, String path) {
        for (int i = 0; i < outputs.size(); i++) {
            if (outputs.get(i).id().equals(output)) {
                int at = i;
                return row(path).map(row -> row.slopes().get(at)).orElse(Slope.both(0));
            }
        }
        throw new IllegalArgumentException("no output \"" + output + "\"; outputs are "
                + String.join(", ", outputs.stream().map(Output::id).toList()));
    }
}
