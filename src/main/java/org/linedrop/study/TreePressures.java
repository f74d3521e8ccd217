package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Demand;
import org.linedrop.circuit.Draw;
import org.linedrop.circuit.Held;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Point;
import org.linedrop.circuit.Port;
import org.linedrop.circuit.Pump;
import org.linedrop.circuit.Resistance;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Tank;
import org.linedrop.circuit.Through;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import org.linedrop.study.SizeOptions.Option;

/**
 * Delivered pressures of a tree with fixed draws. There the flows do not depend on any size, so what each run loses is
 * its own affair and the margin of a set is the sum of what single changes do: exact, and solved for each single change.
 * Of anything else nothing is said here: in a loop a wider run robs another.
 */
final class TreePressures {
    /** What a sum may be wrong by before a set is ruled out: far over what a solve leaves, far under any gauge. */
    private static final double SLACK_PA = 10;

    /**
     * One limit in one case.
     *
     * @param base   margin with the first option of every run
     * @param change what each option of each run does to it
     */
    private record Margins(double base, List<double[]> change) {}

    private final List<Margins> margins = new ArrayList<>();

    private TreePressures() {}

    /** Solves every single change. */
    static TreePressures of(List<Circuit> cases, List<List<Option>> options) {
        TreePressures made = new TreePressures();
        for (Circuit inCase : cases) {
            List<Limit> limits = limits(inCase);
            if (!limits.isEmpty()) {
                made.add(inCase, limits, options);
            }
        }
        return made;
    }

    private void add(Circuit inCase, List<Limit> limits, List<List<Option>> options) {
        List<Option> first = options.stream().map(list -> list.get(0)).toList();
        double[] base = margins(inCase, limits, first);
        List<List<double[]>> changes = new ArrayList<>();
        limits.forEach(limit -> changes.add(new ArrayList<>()));
        for (int run = 0; run < options.size(); run++) {
            int count = options.get(run).size();
            double[][] ofLimit = new double[limits.size()][count];
            for (int option = 1; option < count; option++) {
                List<Option> set = new ArrayList<>(first);
                set.set(run, options.get(run).get(option));
                double[] changed = margins(inCase, limits, set);
                for (int i = 0; i < limits.size(); i++) {
                    ofLimit[i][option] = changed[i] - base[i];
                }
            }
            for (int i = 0; i < limits.size(); i++) {
                changes.get(i).add(ofLimit[i]);
            }
        }
        for (int i = 0; i < limits.size(); i++) {
            margins.add(new Margins(base[i], changes.get(i)));
        }
    }

    /** NaN for what has no answer: nothing is ruled out by it. */
    private static double[] margins(Circuit inCase, List<Limit> limits, List<Option> set) {
        double[] margins = new double[limits.size()];
        java.util.Arrays.fill(margins, Double.NaN);
        try {
            Optional<Circuit> changed = SizeTrial.changed(inCase, set);
            Result result = changed.map(Result::of).orElse(null);
            if (result != null && result.outcome() == Outcome.CONVERGED) {
                for (int i = 0; i < margins.length; i++) {
                    margins[i] = result.margin(limits.get(i));
                }
            }
        } catch (ProblemsException notThere) {
            return margins;
        }
        return margins;
    }

    /** Whether a set is sure to break one of these limits at usual bores. */
    boolean breaks(int[] set) {
        for (Margins each : margins) {
            double sum = each.base();
            for (int run = 0; run < set.length; run++) {
                sum += each.change().get(run)[set[run]];
            }
            if (sum < -SLACK_PA) {
                return true;
            }
        }
        return false;
    }

    /** Least pressures of points of trees with fixed draws. */
    private static List<Limit> limits(Circuit circuit) {
        Map<String, String> tree = new LinkedHashMap<>();
        List<String> notTrees = new ArrayList<>();
        int number = 0;
        for (Run run : circuit.runs()) {
            number++;
            String from = root(tree, node(circuit, run.from(), number + " from"));
            String to = root(tree, node(circuit, run.to(), number + " to"));
            if (from.equals(to)) {
                notTrees.add(from); // a loop
            } else {
                tree.put(to, from);
            }
        }
        number = 0;
        Map<String, Integer> sources = new LinkedHashMap<>();
        for (Run run : circuit.runs()) {
            number++;
            for (String end :
                    List.of(node(circuit, run.from(), number + " from"), node(circuit, run.to(), number + " to"))) {
                if (end.startsWith("fixed ")) {
                    sources.merge(root(tree, end), 1, Integer::sum);
                }
            }
            boolean other = run.parts().stream()
                    .anyMatch(part -> part instanceof Through through
                            && !(circuit.device(through.device()).orElse(null) instanceof Resistance
                                    || circuit.device(through.device()).orElse(null) instanceof Pump));
            if (other || !fixedDraw(circuit, run.from()) || !fixedDraw(circuit, run.to())) {
                notTrees.add(node(circuit, run.from(), number + " from"));
            }
        }
        List<String> not = notTrees.stream().map(node -> root(tree, node)).toList();
        return circuit.limits().stream()
                .filter(limit -> limit.quantity().equals("pressure")
                        && Double.isInfinite(limit.bound().high())
                        && !Double.isInfinite(limit.bound().low())
                        && circuit.point(limit.subject()).isPresent())
                .filter(limit -> {
                    String root = root(tree, limit.subject());
                    return sources.getOrDefault(root, 0) == 1 && !not.contains(root);
                })
                .toList();
    }

    private static boolean fixedDraw(Circuit circuit, Port port) {
        Point point = circuit.point(port.element()).orElse(null);
        return point != null && !(point instanceof Draw draw && draw.takes() instanceof Demand.AtPressure);
    }

    /** A point that keeps its pressure ends a tree: each run that comes to it comes to an end of its own. */
    private static String node(Circuit circuit, Port port, String end) {
        Point point = circuit.point(port.element()).orElse(null);
        return point instanceof Tank || point instanceof Held ? "fixed " + end : port.element();
    }

    private static String root(Map<String, String> tree, String node) {
        String at = node;
        while (tree.get(at) != null) {
            at = tree.get(at);
        }
        return at;
    }
}
