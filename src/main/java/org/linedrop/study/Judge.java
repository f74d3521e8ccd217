package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.Service;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.Result;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;

/** Scores values of one key: the least margin of every limit in every case, or the distance from a target. */
final class Judge {
    /** What the margins of states are measured by: an atmosphere. */
    private static final double LOST_STATE_PA = 1e5;

    /** Scores that are apart by less of themselves are one. */
    private static final double ALIKE = 1e-3;

    private static final int MOST_EVALUATIONS = 80;
    private static final int ORDER = 5;

    private final Circuit circuit;
    private final Knob knob;
    private final List<String> cases;
    private final @Nullable Target target;
    private final boolean everyBore;
    /** Limits that can be judged at the present value, by case. */
    private final Map<String, Set<String>> judged = new LinkedHashMap<>();

    /** A value between two trials that could not be scored. */
    static final class NotFinite extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotFinite() {
            super("no score there", null, false, false);
        }
    }

    Judge(Circuit circuit, Knob knob, List<String> cases, @Nullable Target target, boolean everyBore) {
        this.circuit = circuit;
        this.knob = knob;
        this.cases = cases;
        this.target = target;
        this.everyBore = everyBore;
        for (String name : cases) {
            Set<String> ids = new LinkedHashSet<>();
            Result now = Result.of(inCase(circuit, name));
            boolean judge = circuit.service() != Service.BRAKE;
            for (Limit limit : now.circuit().limits()) {
                if (judge && !Double.isNaN(now.margin(limit))) {
                    ids.add(limit.id());
                }
            }
            judged.put(name, ids);
        }
    }

    boolean judgesAnything() {
        return judged.values().stream().anyMatch(ids -> !ids.isEmpty());
    }

    /** With one case the key is moved in it; with several the file's own value is. */
    private Circuit inCase(Circuit moved, String name) {
        return cases.size() == 1 ? moved : moved.in(name);
    }

    /** Cases that say the key themselves, so that the file's value does not count in them. */
    List<String> casesWithTheirOwn() {
        List<String> own = new ArrayList<>();
        double other = knob.si() < knob.most()
                ? Math.min(knob.most(), knob.si() + 1e-3 * Math.max(1e-3, Math.abs(knob.si())))
                : Math.max(knob.least(), knob.si() - 1e-3 * Math.max(1e-3, Math.abs(knob.si())));
        try {
            Circuit moved = knob.in(circuit, other);
            for (String name : cases) {
                Circuit was = inCase(circuit, name);
                Circuit is = inCase(moved, name);
                if (!knob.key().equals("table")
                        && Knob.of(was, knob.path()).si()
                                == Knob.of(is, knob.path()).si()) {
                    own.add(name);
                }
            }
        } catch (ProblemsException notAlike) {
            return own; // a case without the key at all
        }
        return own;
    }

    /** Where the score passes zero between two trials; NaN where it is not smooth enough to be found that way. */
    double root(HowFar.Trial low, HowFar.Trial high, double relative, AllowedSolution side) {
        double size = Math.max(Math.abs(low.si()), Math.abs(high.si()));
        try {
            double root = new BracketingNthOrderBrentSolver(relative, relative * size, 0, ORDER)
                    .solve(MOST_EVALUATIONS, this::finite, low.si(), high.si(), side);
            return trial(root).holds() == (side == AllowedSolution.ABOVE_SIDE) ? root : Double.NaN;
        } catch (TooManyEvaluationsException | MathIllegalArgumentException | NotFinite notSmooth) {
            return Double.NaN;
        }
    }

    /** Halves what lies between a value that holds and one that does not, until they are one for any reader. */
    HowFar.Trial[] halved(HowFar.Trial inside, HowFar.Trial outside, double relative) {
        HowFar.Trial in = inside;
        HowFar.Trial out = outside;
        double size = Math.max(Math.abs(in.si()), Math.abs(out.si()));
        while (Math.abs(in.si() - out.si()) > 4 * relative * size) {
            double middle = (in.si() + out.si()) / 2;
            HowFar.Trial between = trial(middle);
            if (between.holds()) {
                in = between;
            } else {
                out = between;
            }
        }
        return new HowFar.Trial[] {in, out};
    }

    /** The score for a root finder, which cannot stand a gap. */
    private double finite(double value) {
        double score = trial(value).score();
        if (!Double.isFinite(score)) {
            throw new NotFinite();
        }
        return score;
    }

    HowFar.Trial trial(double value) {
        HowFar.Trial worst = null;
        for (String name : cases) {
            HowFar.Trial here = trial(value, name);
            if (worst == null || here.score() < worst.score() || Double.isNaN(here.score())) {
                worst = here;
            }
            if (Double.isNaN(worst.score())) {
                return worst;
            }
        }
        if (worst == null) {
            throw new IllegalStateException("a question has at least one case");
        }
        return worst;
    }

    private HowFar.Trial trial(double value, String name) {
        Circuit moved;
        try {
            moved = inCase(knob.in(circuit, value), name);
        } catch (ProblemsException refused) {
            return refused(value, name, refused.problems().get(0).message());
        }
        if (target != null) {
            Result result = Result.of(moved);
            if (result.outcome() != Outcome.CONVERGED) {
                return notSolved(value, name, result);
            }
            double over = target.over(result);
            return Double.isNaN(over)
                    ? refused(value, name, target.output().id() + " has no value")
                    : new HowFar.Trial(
                            value,
                            over / target.scale(),
                            name,
                            target.words(),
                            target.output().of(result),
                            "");
        }
        return everyBore ? overBores(value, name, moved) : usual(value, name, moved);
    }

    private HowFar.Trial usual(double value, String name, Circuit moved) {
        Result result = Result.of(moved);
        if (result.outcome() != Outcome.CONVERGED) {
            return notSolved(value, name, result);
        }
        if (result.boilingAtPump().isPresent()) {
            return refused(value, name, result.boilingAtPump().get().text());
        }
        Set<String> known = judged.getOrDefault(name, Set.of());
        HowFar.Trial worst = new HowFar.Trial(value, Double.POSITIVE_INFINITY, name, "", Double.NaN, "");
        for (Limit limit : moved.limits()) {
            double margin = result.margin(limit);
            boolean state = limit.bound().kind() == LimitText.Kind.STATE;
            if (Double.isNaN(margin) && state && known.contains(limit.id())) {
                margin = -LOST_STATE_PA; // it has left its state and no figure says by how much
            }
            if (Double.isNaN(margin)) {
                if (known.contains(limit.id())) {
                    return refused(value, name, limit.id() + " cannot be judged there");
                }
                continue;
            }
            double reached = result.value(limit);
            double bound = state ? LOST_STATE_PA : limit.bound().nearest(reached);
            double score = margin / Math.max(Math.abs(bound), 1e-9);
            if (clearlyUnder(score, worst)) {
                worst = new HowFar.Trial(value, score, name, limit.id(), reached, "");
            }
        }
        return worst;
    }

    private HowFar.Trial overBores(double value, String name, Circuit moved) {
        CaseResult result = CaseResult.of(moved);
        if (result.outcome() != Outcome.CONVERGED) {
            return notSolved(value, name, result.usual());
        }
        Set<String> known = judged.getOrDefault(name, Set.of());
        HowFar.Trial worst = new HowFar.Trial(value, Double.POSITIVE_INFINITY, name, "", Double.NaN, "");
        for (LimitRow row : result.limits()) {
            if (row.verdict() == Verdict.NOT_JUDGED) {
                if (known.contains(row.limit().id())) {
                    return refused(value, name, row.limit().id() + " cannot be judged there");
                }
                continue;
            }
            double margin = Double.isNaN(row.marginLow())
                    ? row.verdict() == Verdict.HOLDS ? 0 : -LOST_STATE_PA
                    : row.marginLow();
            double bound = row.ofState() ? LOST_STATE_PA : row.bound();
            double score = margin / Math.max(Math.abs(bound), 1e-9);
            if (clearlyUnder(score, worst)) {
                worst = new HowFar.Trial(value, score, name, row.limit().id(), row.value(), "");
            }
        }
        return worst;
    }

    /** Of limits that are one but for rounding the first of the file decides, so that the words do not hang on a bit. */
    private static boolean clearlyUnder(double score, HowFar.Trial worst) {
        return !(score >= worst.score() - ALIKE * Math.abs(worst.score()));
    }

    private static HowFar.Trial notSolved(double value, String name, Result result) {
        return refused(value, name, result.outcome().word() + ": " + result.detail());
    }

    private static HowFar.Trial refused(double value, String name, String why) {
        return new HowFar.Trial(value, Double.NaN, name, "", Double.NaN, why);
    }
}
