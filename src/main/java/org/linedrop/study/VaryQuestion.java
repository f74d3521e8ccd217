package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.linedrop.circuit.Circuit;
import org.linedrop.units.Dimension;

/**
 * One or two keys over a range each, in some cases: a list of variants with numbers from 0, the last key running
 * fastest.
 *
 * @param axes  one or two keys with their values
 * @param cases names of cases, each varied for itself
 */
public record VaryQuestion(List<Axis> axes, List<String> cases) implements Serializable {
    /** More variants than these want to be split up by the asker. */
    private static final int MOST = 10_000_000;

    /** Copies the lists and counts. */
    public VaryQuestion {
        axes = List.copyOf(axes);
        cases = List.copyOf(cases);
        if (axes.isEmpty() || axes.size() > 2) {
            throw new IllegalArgumentException("one or two keys can be varied, not " + axes.size());
        }
        if (axes.size() == 2 && axes.get(0).path().equals(axes.get(1).path())) {
            throw new IllegalArgumentException(
                    "the two keys are both " + axes.get(0).path() + ". Name another, or leave the second out");
        }
        double count = cases.size();
        for (Axis axis : axes) {
            count *= axis.values().size();
        }
        if (!(count >= 1 && count <= MOST)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%.0f variants are asked for; 1 to %d can be. Take fewer steps", count, MOST));
        }
    }

    /**
     * A key with its values.
     *
     * @param path      as {@link Knob#path()} names it
     * @param dimension of its values
     * @param values    in SI
     */
    public record Axis(String path, Dimension dimension, List<Double> values) implements Serializable {
        /** Copies the values. */
        public Axis {
            values = List.copyOf(values);
        }

        /**
         * A key in equal steps.
         *
         * @param circuit the circuit
         * @param path    path of the key
         * @param from    first value, SI
         * @param to      last value, SI; may be below the first
         * @param steps   how many values, at least 2; 1 where both ends are equal
         * @return the axis
         * @throws org.linedrop.fact.ProblemsException when there is no such key
         * @throws IllegalArgumentException            when an end is outside the key's range, or the steps are too few
         */
        public static Axis of(Circuit circuit, String path, double from, double to, int steps) {
            Knob knob = Knob.of(circuit, path);
            knob.to(from); // says what is allowed
            knob.to(to);
            if (!(steps >= 2 || (steps == 1 && from == to))) {
                throw new IllegalArgumentException(
                        "steps of " + path + " must be at least 2, but is " + steps + ": both ends count as one");
            }
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < steps; i++) {
                values.add(i == steps - 1 ? to : from + i * ((to - from) / (steps - 1)));
            }
            return new Axis(knob.path(), knob.dimension(), values);
        }
    }

    /**
     * How many variants there are.
     *
     * @return at least 1
     */
    public int count() {
        int count = cases.size();
        for (Axis axis : axes) {
            count *= axis.values().size();
        }
        return count;
    }

    /** The values of one variant, in the order of the axes. */
    List<Double> values(int number) {
        List<Double> values = new ArrayList<>();
        int rest = number;
        for (int i = axes.size() - 1; i >= 0; i--) {
            List<Double> of = axes.get(i).values();
            values.add(0, of.get(rest % of.size()));
            rest /= of.size();
        }
        return values;
    }

    /** The place of one variant's case among the cases. */
    int caseOf(int number) {
        return number / (count() / cases.size());
    }
}
