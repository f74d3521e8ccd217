package org.linedrop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Network;
import org.linedrop.result.Result;
import org.linedrop.solver.Adjoint;
import org.linedrop.units.Dimension;

/** Derivatives of the outputs of one solved circuit in its keys. */
final class Slopes {
    /** Step of a key over its size: a four-point difference errs by its fourth power, and rounding by 1e-10 over it. */
    private static final double STEP = 1e-4;

    /** Left and right slopes further apart than this share of them are a joint: curvature gives a hundredth of it. */
    private static final double JOINT = 0.02;

    /** Figures that differences of two tight solves are good for, over the largest output of its kind. */
    private static final double NOISE = 1e-10;

    private final Circuit circuit;
    private final Linearised here;
    private final List<Output> outputs;
    private final List<Adjoint> adjoints;
    private final double[] values;

    Slopes(Circuit circuit, Linearised here, List<Output> outputs) {
        this.circuit = circuit;
        this.here = here;
        this.outputs = outputs;
        this.adjoints = here.adjoints(outputs);
        this.values = read(here.result());
    }

    /** One slope for each output. */
    List<Sensitivities.Slope> of(Knob knob) {
        double step = STEP * size(knob);
        boolean down = knob.si() - 2 * step >= knob.least();
        boolean up = knob.si() + 2 * step <= knob.most();
        if (!down && !up) {
            return outputs.stream().map(output -> Sensitivities.Slope.NONE).toList();
        }
        double[] slope = beside(here, adjoints, knob, knob.si(), step, down, up);
        Linearised below = down ? solved(knob, knob.si() - step) : null;
        Linearised above = up ? solved(knob, knob.si() + step) : null;
        double[] left = below == null ? unknown() : differences(below, -step);
        double[] right = above == null ? unknown() : differences(above, step);
        double[] leftAtJoint = null;
        double[] rightAtJoint = null;
        List<Sensitivities.Slope> slopes = new ArrayList<>();
        for (int o = 0; o < values.length; o++) {
            double apart = Math.abs(left[o] - right[o]);
            double noise = NOISE * scale(o) / step;
            if (below != null
                    && above != null
                    && apart > JOINT * Math.max(Math.abs(left[o]), Math.abs(right[o])) + noise) {
                leftAtJoint = leftAtJoint == null ? around(below, knob, knob.si() - step, step) : leftAtJoint;
                rightAtJoint = rightAtJoint == null ? around(above, knob, knob.si() + step, step) : rightAtJoint;
                slopes.add(new Sensitivities.Slope(leftAtJoint[o], rightAtJoint[o]));
            } else {
                slopes.add(new Sensitivities.Slope(
                        below == null ? Double.NaN : slope[o], above == null ? Double.NaN : slope[o]));
            }
        }
        return slopes;
    }

    /** The size that a step of a key is measured by. */
    private static double size(Knob knob) {
        double size = Math.abs(knob.si());
        return switch (knob.dimension()) {
            case TEMPERATURE -> 100;
            case LENGTH -> knob.key().equals("altitude") ? Math.max(size, 1000) : size > 0 ? size : 0.1;
            case GAUGE_PRESSURE, PRESSURE_DIFFERENCE -> Math.max(size, 1e3);
            case RATIO -> size > 0 ? size : 0.1;
            case ACCELERATION -> Math.max(size, 1);
            default -> size > 0 ? size : 1e-3 * (knob.dimension() == Dimension.VOLUME_FLOW ? 1e-3 : 1);
        };
    }

    private double scale(int output) {
        double largest = Math.abs(values[output]);
        if (outputs.get(output).dimension() == Dimension.GAUGE_PRESSURE
                || outputs.get(output).dimension() == Dimension.PRESSURE_DIFFERENCE) {
            largest = Math.max(largest, here.solution().pressureScalePa());
        }
        return largest;
    }

    private double[] unknown() {
        double[] none = new double[values.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    private double[] differences(Linearised other, double step) {
        double[] slopes = read(other.result());
        for (int o = 0; o < slopes.length; o++) {
            slopes[o] = (slopes[o] - values[o]) / step;
        }
        return slopes;
    }

    private double[] read(Result result) {
        return outputs.stream().mapToDouble(output -> output.of(result)).toArray();
    }

    /** The circuit solved at another value; null where that is not possible. */
    private @Nullable Linearised solved(Knob knob, double si) {
        try {
            Linearised made = Linearised.of(knob.in(circuit, si), here.solution());
            return made.converged() ? made : null;
        } catch (ProblemsException outside) {
            return null;
        }
    }

    /** Slopes at a neighbouring state, on its own side of the joint. */
    private double[] around(Linearised there, Knob knob, double si, double step) {
        return beside(there, there.adjoints(outputs), knob, si, step / 4, true, true);
    }

    private double[] beside(
            Linearised at, List<Adjoint> multipliers, Knob knob, double si, double step, boolean down, boolean up) {
        double[] slopes = new double[values.length];
        if (down && up) {
            double[] near = difference(at, multipliers, knob, si + step, si - step);
            double[] far = difference(at, multipliers, knob, si + 2 * step, si - 2 * step);
            for (int o = 0; o < slopes.length; o++) {
                slopes[o] = (4 * near[o] - far[o]) / 3;
            }
        } else {
            double side = up ? step : -step;
            double[] near = difference(at, multipliers, knob, si + side, si);
            double[] far = difference(at, multipliers, knob, si + 2 * side, si);
            for (int o = 0; o < slopes.length; o++) {
                slopes[o] = 2 * near[o] - far[o];
            }
        }
        return slopes;
    }

    /** Slope of each output between two values of a key: what it reads in the same state, less what the state moves. */
    private double[] difference(Linearised at, List<Adjoint> multipliers, Knob knob, double high, double low) {
        CircuitNetwork raised = network(knob, high);
        CircuitNetwork lowered = network(knob, low);
        Result seenHigh = at.seenIn(raised);
        Result seenLow = at.seenIn(lowered);
        double[] slopes = new double[outputs.size()];
        for (int o = 0; o < slopes.length; o++) {
            Network a = raised.network();
            Network b = lowered.network();
            double read = outputs.get(o).of(seenHigh) - outputs.get(o).of(seenLow);
            slopes[o] =
                    (read - (multipliers.get(o).weighted(a) - multipliers.get(o).weighted(b))) / (high - low);
        }
        return slopes;
    }

    private CircuitNetwork network(Knob knob, double si) {
        return CircuitNetwork.of(knob.in(circuit, si), CircuitNetwork.Setting.USUAL);
    }
}
