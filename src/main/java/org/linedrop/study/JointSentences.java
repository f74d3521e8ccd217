package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.linedrop.circuit.Service;
import org.linedrop.result.LimitRow;
import org.linedrop.solver.Outcome;
import org.linedrop.units.Display;

/** The sentences of several cases, each thing said once. */
final class JointSentences {
    private JointSentences() {}

    static List<FeedCheck.Said> of(List<CaseCheck> cases, Display display) {
        List<FeedCheck.Said> said = new ArrayList<>();
        List<CaseCheck> holding = new ArrayList<>();
        List<CaseCheck> told = new ArrayList<>();
        List<CaseCheck> quiet = new ArrayList<>();
        for (CaseCheck each : cases) {
            if (each.result().circuit().service() == Service.BRAKE && solved(each)) {
                quiet.add(each);
            } else if (holds(each)) {
                holding.add(each);
            } else {
                CaseCheck before = told.stream()
                        .filter(other -> alike(other, each))
                        .findFirst()
                        .orElse(null);
                said.add(new FeedCheck.Said(
                        before == null ? Sentences.of(each, display) : Sentences.too(each, before, display),
                        List.of(each)));
                told.add(each);
            }
        }
        if (!quiet.isEmpty()) {
            said.add(new FeedCheck.Said(Sentences.quantitiesOnly(quiet, cases.size()), quiet));
        }
        if (!holding.isEmpty()) {
            said.add(new FeedCheck.Said(
                    holding.size() == 1
                            ? Sentences.of(holding.get(0), display)
                            : Sentences.together(
                                    nearestFirst(holding),
                                    holding,
                                    holding.size() == cases.size() ? "in every case" : where(holding),
                                    display),
                    holding));
        }
        return said;
    }

    private static boolean solved(CaseCheck check) {
        return check.result().outcome() == Outcome.CONVERGED;
    }

    private static boolean holds(CaseCheck check) {
        return solved(check)
                && check.decisive() != null
                && (check.verdict() == CaseVerdict.ADEQUATE || check.verdict() == CaseVerdict.OVERSIZED);
    }

    /** Whether two cases fall short of the same limit and the same change mends both. */
    private static boolean alike(CaseCheck first, CaseCheck second) {
        LimitRow one = first.decisive();
        LimitRow other = second.decisive();
        return first.verdict() == CaseVerdict.UNDERSIZED
                && second.verdict() == CaseVerdict.UNDERSIZED
                && one != null
                && other != null
                && one.limit().equals(other.limit())
                && first.mend() != null
                && second.mend() != null
                && first.mend().words().equals(second.mend().words());
    }

    /** The case whose nearest limit is nearest, as a share of its bound. */
    private static CaseCheck nearestFirst(List<CaseCheck> holding) {
        return holding.stream()
                .min(Comparator.comparingDouble(JointSentences::share))
                .orElseThrow();
    }

    private static double share(CaseCheck check) {
        LimitRow row = check.decisive();
        double share = row == null ? Double.NaN : row.marginLow() / Math.max(Math.abs(row.bound()), 1e-9);
        return Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
    }

    /** {@code in cases launch, low volts and hot idle}. */
    private static String where(List<CaseCheck> cases) {
        List<String> names = cases.stream().map(CaseCheck::caseName).toList();
        return "in cases " + String.join(", ", names.subList(0, names.size() - 1)) + " and "
                + names.get(names.size() - 1);
    }
}
