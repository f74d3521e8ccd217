package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Trace;
import org.linedrop.solver.Cut;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** Says in names and trade units why a circuit was not solved. */
final class SolveDetail {
    private final CircuitNetwork network;
    private final Solution solution;

    private SolveDetail(CircuitNetwork network, Solution solution) {
        this.network = network;
        this.solution = solution;
    }

    static String words(CircuitNetwork network, Solution solution) {
        return new SolveDetail(network, solution).words();
    }

    private String words() {
        if (solution.outcome() == Outcome.CONVERGED) {
            return "";
        }
        Cut cut = solution.limitingCut();
        return switch (solution.outcome()) {
            case DEMAND_NOT_MET -> cut == null ? solution.detail() : demand(cut);
            case CUT_OFF ->
                "No way leads to " + points(solution.cutOffPoints())
                        + ". Look for a run that is missing or turned round, or a device that stays shut.";
            case NO_PRESSURE_REFERENCE ->
                "Nothing fixes the pressure at " + points(solution.pointsWithoutReference())
                        + ". Add a tank, an expansion tank with its cap, or a point of kind held.";
            case NOT_PHYSICAL -> notPhysical();
            default ->
                "The best state reached has an imbalance of "
                        + flow(solution.flowImbalance() * solution.flowScaleKgPerS())
                        + " after " + solution.iterations()
                        + " steps. This is a fault of ours: please report the circuit.";
        };
    }

    private String demand(Cut cut) {
        List<String> runs = new ArrayList<>();
        for (Trace.RunTrace run : network.runs()) {
            if (run.sections().stream().anyMatch(section -> cut.branches().contains(section.branch()))) {
                runs.add(run.id());
            }
        }
        String way = runs.isEmpty() ? "what leads there" : String.join(" and ", runs);
        return cut.inward()
                ? "What is drawn at " + points(cut.points()) + " needs " + flow(cut.neededKgPerS()) + ", but " + way
                        + " can pass at most " + flow(cut.passesKgPerS())
                        + ", however low the pressure there. A bigger pump or valve on that way, or less drawn."
                : "What is pressed into " + points(cut.points()) + ", " + flow(cut.neededKgPerS())
                        + ", has no way out for more than " + flow(cut.passesKgPerS()) + ".";
    }

    private String notPhysical() {
        int point = solution.notPhysicalPoint();
        double absolute = solution.totalPressurePa(point)
                + network.circuit().surroundings().ambientPa();
        return "The pressure at " + points(List.of(point)) + " would be "
                + Display.METRIC.text(absolute, Dimension.ABSOLUTE_PRESSURE)
                + ", under the vapour pressure of the fluid or under zero: this flow cannot get there.";
    }

    private String flow(double kgPerS) {
        Circuit circuit = network.circuit();
        double density = circuit.surroundings().fluidState().densityKgPerM3();
        return TradeUnits.of(circuit, Display.METRIC).text(kgPerS / density, Dimension.VOLUME_FLOW);
    }

    private String points(List<Integer> numbers) {
        TreeSet<String> names = new TreeSet<>();
        for (int i = 0; i < network.runs().size(); i++) {
            Trace.RunTrace trace = network.runs().get(i);
            Run run = network.circuit().runs().get(i);
            if (numbers.contains(trace.from())) {
                names.add(run.from().text());
            }
            if (numbers.contains(trace.to())) {
                names.add(run.to().text());
            }
        }
        return names.isEmpty() ? "a point inside" : String.join(", ", names);
    }
}
