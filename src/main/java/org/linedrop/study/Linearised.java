package org.linedrop.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Network;
import org.linedrop.result.Result;
import org.linedrop.solver.Adjoint;
import org.linedrop.solver.Options;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.solver.Solver;
import org.linedrop.solver.Workspace;

/** A circuit solved tightly, with what its outputs and equations do beside the solved state. */
final class Linearised {
    /** Twelve figures where rounding allows: a difference of two solves then keeps eight. */
    private static final Options TIGHT = new Options(200, 1e-12, 1e-12);

    /** Step of the state over its scale; outputs are at most of second order in it. */
    private static final double STEP = 1e-4;

    private final CircuitNetwork network;
    private final Solution solution;

    private Linearised(CircuitNetwork network, Solution solution) {
        this.network = network;
        this.solution = solution;
    }

    /** Solves from rest. */
    static Linearised of(Circuit circuit) {
        Linearised made = of(circuit, null);
        made.result().orThrow();
        return made;
    }

    /** Solves from another state; ask {@link #converged}. */
    static Linearised of(Circuit circuit, @Nullable Solution start) {
        CircuitNetwork network = CircuitNetwork.of(circuit, CircuitNetwork.Setting.USUAL);
        Workspace workspace = Workspace.of(network.network());
        if (Solver.of(TIGHT).solve(network.network(), start, workspace) != Outcome.CONVERGED) {
            Solver.usual().solve(network.network(), start, workspace);
        }
        return new Linearised(network, workspace.snapshot());
    }

    boolean converged() {
        return solution.outcome() == Outcome.CONVERGED;
    }

    Solution solution() {
        return solution;
    }

    Network network() {
        return network.network();
    }

    Result result() {
        return Result.of(network, solution);
    }

    /** The multipliers of each output: its slopes in the state by differences, then one transposed solve. */
    List<Adjoint> adjoints(List<Output> outputs) {
        Network numbers = network();
        double[][] byFlow = new double[outputs.size()][numbers.branchCount()];
        double[][] byPressure = new double[outputs.size()][numbers.pointCount()];
        double[] flows = flows();
        double[] pressures = pressures(numbers);
        for (int b = 0; b < flows.length; b++) {
            double step = STEP * Math.max(Math.abs(flows[b]), 1e-3 * solution.flowScaleKgPerS());
            slopes(outputs, flows, pressures, flows, b, step, byFlow);
        }
        for (int i = 0; i < pressures.length; i++) {
            if (!numbers.fixed(i)) {
                double step = STEP * solution.pressureScalePa();
                slopes(outputs, flows, pressures, pressures, i, step, byPressure);
            }
        }
        List<Adjoint> adjoints = new ArrayList<>();
        for (int o = 0; o < outputs.size(); o++) {
            adjoints.add(Adjoint.of(numbers, solution, byFlow[o], byPressure[o]));
        }
        return adjoints;
    }

    private void slopes(
            List<Output> outputs,
            double[] flows,
            double[] pressures,
            double[] moved,
            int at,
            double step,
            double[][] into) {
        double kept = moved[at];
        moved[at] = kept + step;
        Result raised = Result.of(network, solution.at(flows, pressures));
        moved[at] = kept - step;
        Result lowered = Result.of(network, solution.at(flows, pressures));
        moved[at] = kept;
        for (int o = 0; o < outputs.size(); o++) {
            into[o][at] = (outputs.get(o).of(raised) - outputs.get(o).of(lowered)) / (kept + step - (kept - step));
        }
    }

    /** The outputs of another network of the same shape in this state; given pressures are the other's. */
    Result seenIn(CircuitNetwork other) {
        return Result.of(other, solution.at(flows(), pressures(other.network())));
    }

    private double[] flows() {
        double[] flows = new double[solution.branchCount()];
        for (int b = 0; b < flows.length; b++) {
            flows[b] = solution.massFlowKgPerS(b);
        }
        return flows;
    }

    private double[] pressures(Network numbers) {
        double[] pressures = new double[solution.pointCount()];
        for (int i = 0; i < pressures.length; i++) {
            pressures[i] = numbers.fixed(i) ? numbers.fixedPressurePa(i) : solution.totalPressurePa(i);
        }
        return pressures;
    }
}
