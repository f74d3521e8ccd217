package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Place;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;

/** Tries values of one key over its range and closes in on every place where holding begins or ends. */
final class HowFarSearch {
    /** Trials on each side of the present value. */
    private static final int TRIALS = 24;

    /** A trial is so much larger than the one before, where the value is a size: 24 of them reach 200 times as far. */
    private static final double GROWTH = 1.25;

    private static final double RELATIVE = 1e-10;

    /** A score that does not come nearer to zero than this at its sign change jumps over it. */
    private static final double JUMP = 1e-6;

    private final HowFar.Question question;
    private final Knob knob;
    private final Judge usual;
    private final Judge everyBore;

    HowFarSearch(Circuit circuit, HowFar.Question question) {
        this.question = question;
        List<String> cases = question.caseNames();
        Circuit moved = cases.size() == 1 ? circuit.in(cases.get(0)) : circuit;
        this.knob = Knob.of(moved, question.path());
        Target target = question.target().isEmpty() ? null : Target.read(moved, question.target());
        this.usual = new Judge(moved, knob, cases, target, false);
        this.everyBore = new Judge(moved, knob, cases, target, true);
        if (target == null && !usual.judgesAnything()) {
            throw new ProblemsException(List.of(new Problem(
                    new Place(circuit.words().file(), 0, 0, ""),
                    "limits",
                    "",
                    "no limit can be judged, so nothing says how far is too far",
                    "Give the file a limit, or ask for a target: --target \"rail pressure 375 kPa\"")));
        }
    }

    HowFar search() {
        List<HowFar.Trial> trials = new ArrayList<>();
        for (double value : values()) {
            trials.add(usual.trial(value));
        }
        HowFar.Trial now = usual.trial(knob.si());
        List<HowFar.Edge> edges = new ArrayList<>();
        for (int i = 1; i < trials.size(); i++) {
            if (trials.get(i).holds() != trials.get(i - 1).holds()) {
                edge(trials.get(i - 1), trials.get(i), trials, edges);
            }
        }
        boolean target = !question.target().isEmpty();
        return new HowFar(
                question,
                knob,
                trials.get(0).si(),
                trials.get(trials.size() - 1).si(),
                target ? Math.abs(now.score()) < JUMP : now.holds(),
                edges,
                target ? List.of() : stretches(trials, edges),
                best(trials, target),
                notes());
    }

    /** Trials from the lowest to the highest value, the present one among them. */
    private List<Double> values() {
        Set<Double> values = new LinkedHashSet<>();
        values.add(knob.si());
        for (int side : new int[] {-1, 1}) {
            for (int i = 1; i <= TRIALS; i++) {
                double value = beside(side * i);
                boolean inside = value >= knob.least() && value <= knob.most();
                double end = side < 0 ? knob.least() : knob.most();
                values.add(inside ? value : end);
                if (!inside) {
                    break;
                }
            }
        }
        List<Double> sorted = new ArrayList<>(values);
        sorted.removeIf(value -> !Double.isFinite(value));
        sorted.sort(Comparator.naturalOrder());
        return sorted;
    }

    private double beside(int steps) {
        double now = knob.si();
        return switch (knob.dimension()) {
            case TEMPERATURE -> now + 6 * steps;
            case GAUGE_PRESSURE -> now + steps * Math.max(0.08 * Math.abs(now), 3000);
            case LENGTH -> {
                if (knob.key().equals("altitude")) {
                    yield now + 250 * steps;
                }
                boolean place = knob.least() < 0 || now <= 0; // heights and distances count from anywhere
                yield place ? now + 0.15 * steps : now * Math.pow(GROWTH, steps);
            }
            default -> now > 0 ? now * Math.pow(GROWTH, steps) : now + steps * 0.04;
        };
    }

    /** Closes in on a change between two trials; where a target is not passed but leapt over it is not met. */
    private void edge(HowFar.Trial low, HowFar.Trial high, List<HowFar.Trial> trials, List<HowFar.Edge> edges) {
        boolean target = !question.target().isEmpty();
        HowFar.Trial in = low.holds() ? low : high;
        HowFar.Trial out = low.holds() ? high : low;
        if (!Double.isNaN(out.score())) {
            double root = usual.root(low, high, RELATIVE, AllowedSolution.ABOVE_SIDE);
            in = Double.isNaN(root) ? in : usual.trial(root);
            double other =
                    Double.isNaN(root) ? Double.NaN : usual.root(low, high, RELATIVE, AllowedSolution.BELOW_SIDE);
            out = Double.isNaN(other) ? out : usual.trial(other);
        }
        HowFar.Trial[] bracket = usual.halved(in, out, RELATIVE);
        in = bracket[0];
        out = bracket[1];
        boolean jumps = Math.abs(out.score()) > JUMP && Math.abs(in.score()) > JUMP;
        HowFar.Kind kind = Double.isNaN(out.score())
                ? HowFar.Kind.REFUSED
                : jumps || Math.abs(out.score()) > JUMP ? HowFar.Kind.JUMP : HowFar.Kind.ROOT;
        if (target && kind != HowFar.Kind.ROOT) {
            return;
        }
        boolean below = low.holds();
        double least = target ? Double.NaN : least(trials, in, below);
        edges.add(new HowFar.Edge(in.si(), out.si(), below, kind, out, least));
    }

    /** The edge over all bores that are sold: further inside, or nowhere. */
    private double least(List<HowFar.Trial> trials, HowFar.Trial edge, boolean below) {
        HowFar.Trial atEdge = everyBore.trial(edge.si());
        if (atEdge.holds()) {
            return edge.si();
        }
        HowFar.Trial out = atEdge;
        List<HowFar.Trial> inward = new ArrayList<>(trials);
        inward.sort(Comparator.comparingDouble(trial -> below ? -trial.si() : trial.si()));
        for (HowFar.Trial trial : inward) {
            boolean inside = below ? trial.si() < edge.si() : trial.si() > edge.si();
            if (!inside) {
                continue;
            }
            if (!trial.holds()) {
                return Double.NaN;
            }
            HowFar.Trial all = everyBore.trial(trial.si());
            if (all.holds() && !Double.isNaN(out.score())) {
                return everyBore.root(
                        all.si() < out.si() ? all : out,
                        all.si() < out.si() ? out : all,
                        RELATIVE,
                        AllowedSolution.ABOVE_SIDE);
            }
            out = all;
        }
        return Double.NaN;
    }

    private static List<HowFar.Stretch> stretches(List<HowFar.Trial> trials, List<HowFar.Edge> edges) {
        List<HowFar.Stretch> stretches = new ArrayList<>();
        HowFar.Edge begin = null;
        boolean holds = trials.get(0).holds();
        double from = trials.get(0).si();
        for (HowFar.Edge edge : edges) {
            if (edge.holdsBelow()) {
                stretches.add(new HowFar.Stretch(begin, edge, from, edge.inside()));
                holds = false;
            } else {
                begin = edge;
                from = edge.inside();
                holds = true;
            }
        }
        if (holds) {
            stretches.add(new HowFar.Stretch(
                    begin, null, from, trials.get(trials.size() - 1).si()));
        }
        return stretches;
    }

    private static HowFar.Trial best(List<HowFar.Trial> trials, boolean target) {
        HowFar.Trial best = trials.get(0);
        for (HowFar.Trial trial : trials) {
            double score = target ? -Math.abs(trial.score()) : trial.score();
            double sofar = target ? -Math.abs(best.score()) : best.score();
            if (score > sofar || (Double.isNaN(sofar) && !Double.isNaN(score))) {
                best = trial;
            }
        }
        return best;
    }

    private List<String> notes() {
        List<String> fixed = usual.casesWithTheirOwn();
        return fixed.isEmpty()
                ? List.of()
                : List.of("Not moved in " + String.join(", ", fixed) + ": the case gives " + knob.path()
                        + " a value of its own. Ask with --case.");
    }
}
