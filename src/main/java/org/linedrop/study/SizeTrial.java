package org.linedrop.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.RatingRow;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;
import org.linedrop.study.SizeAnswer.Decisive;
import org.linedrop.study.SizeOptions.Option;

/** Tries sets of sizes in every case. */
final class SizeTrial {
    private final List<Circuit> cases;
    private final Map<List<Option>, Tried> known = new LinkedHashMap<>();
    private int solved;

    SizeTrial(Circuit circuit) {
        cases = circuit.caseNames().stream().map(circuit::in).toList();
    }

    /**
     * A set that was tried.
     *
     * @param holds    whether every limit holds in every case at all bores sold, and no hose is over a rating
     * @param decisive the limit that breaks, or the one with the least margin; null without limits
     * @param why      why it does not hold, where it is no limit
     */
    record Tried(boolean holds, @Nullable Decisive decisive, String why) {}

    List<Circuit> cases() {
        return cases;
    }

    int solved() {
        return solved;
    }

    /** A circuit in its case with some runs in another size; empty when one of them cannot be made there. */
    static Optional<Circuit> changed(Circuit inCase, List<Option> set) {
        List<Change> changes = new ArrayList<>();
        for (Option option : set) {
            Optional<Change> change = option.change(inCase);
            if (change.isPresent()) {
                changes.add(change.get());
            } else if (!option.asWritten()) {
                return Optional.empty();
            }
        }
        return Optional.of(changes.isEmpty() ? inCase : inCase.with(changes));
    }

    Tried of(List<Option> set) {
        Tried before = known.get(set);
        if (before == null) {
            before = tried(set);
            known.put(set, before);
            solved++;
        }
        return before;
    }

    private Tried tried(List<Option> set) {
        List<CaseResult> results = new ArrayList<>();
        Decisive decisive = null;
        for (Circuit inCase : cases) {
            CaseResult result;
            try {
                Optional<Circuit> changed = changed(inCase, set);
                if (changed.isEmpty()) {
                    return new Tried(false, null, "not to be made in case " + inCase.caseName());
                }
                result = CaseResult.of(changed.get());
            } catch (ProblemsException wrong) {
                return new Tried(false, null, wrong.problems().get(0).message());
            }
            if (result.outcome() != Outcome.CONVERGED) {
                return new Tried(
                        false,
                        null,
                        "case " + inCase.caseName() + " has no answer: "
                                + result.outcome().word());
            }
            decisive = nearer(decisive, inCase.caseName(), result.limits());
            if (!result.holds()) {
                String why = result.usual().boilingAtPump().isPresent()
                        ? "the fluid boils on its way into a pump in case " + inCase.caseName()
                        : "";
                return new Tried(false, why.isEmpty() ? broken(inCase.caseName(), result.limits()) : null, why);
            }
            results.add(result);
        }
        for (RatingRow row : RatingRow.of(results)) {
            if (row.rating().verdict() == RatingResult.Verdict.OVER) {
                return new Tried(false, null, row.rating().text());
            }
        }
        return new Tried(true, decisive, "");
    }

    /** The limit that breaks most, of those that do. */
    private static @Nullable Decisive broken(String name, List<LimitRow> rows) {
        return nearer(
                null,
                name,
                rows.stream()
                        .filter(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.UNSURE)
                        .toList());
    }

    private static @Nullable Decisive nearer(@Nullable Decisive so, String name, List<LimitRow> rows) {
        Decisive nearest = so;
        for (LimitRow row : rows) {
            if (row.verdict() != Verdict.NOT_JUDGED && (nearest == null || ratio(row) < ratio(nearest.limit()))) {
                nearest = new Decisive(name, row);
            }
        }
        return nearest;
    }

    private static double ratio(LimitRow row) {
        return row.marginLow() / Math.max(Math.abs(row.bound()), 1e-9);
    }
}
