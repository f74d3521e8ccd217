package org.linedrop.result;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.linedrop.circuit.Run;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.network.Trace;
import org.linedrop.solver.Outcome;
import org.linedrop.solver.Solution;

/** Puts names to what the solver says in numbers. */
final class SolveDetail {
    private SolveDetail() {}

    static String words(CircuitNetwork network, Solution solution) {
        if (solution.outcome() == Outcome.CONVERGED) {
            return "";
        }
        return solution.detail();
    }

    static List<String> pointNames(CircuitNetwork network, List<Integer> numbers) {
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
        return new ArrayList<>(names);
    }
}
