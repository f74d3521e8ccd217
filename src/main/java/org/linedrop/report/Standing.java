package org.linedrop.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Service;
import org.linedrop.fact.Notice;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.RatingRow;
import org.linedrop.result.SolveStatus;
import org.linedrop.result.Verdict;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.CaseVerdict;

/** The order that cases and limits are worth reading in. */
final class Standing {
    private static final Comparator<CaseCheck> WORST_CASE = Comparator.comparing(Standing::solved)
            .thenComparing(Standing::verdict, Comparator.nullsLast(Comparator.naturalOrder()))
            .thenComparingDouble(each -> margin(each));
    private static final Comparator<LimitRow> WORST_LIMIT =
            Comparator.<LimitRow>comparingInt(row -> rank(row.verdict())).thenComparingDouble(each -> margin(each));

    private static final String SERVICES = Arrays.stream(Service.values())
            .map(Service::word)
            .filter(word -> !word.equals("injected fuel"))
            .collect(Collectors.joining(", "));

    private Standing() {}

    static boolean solved(CaseCheck check) {
        return SolveStatus.of(check.result().usual()).converged();
    }

    /** Brakes get quantities, never a verdict. */
    static boolean judged(Circuit circuit) {
        return circuit.service() != Service.BRAKE;
    }

    /** What the cases ask of each hose against what it is rated for; nothing of brakes. */
    static List<RatingRow> ratings(List<CaseCheck> cases) {
        if (!judged(cases.get(0).result().circuit())) {
            return List.of();
        }
        return RatingRow.of(cases.stream().map(CaseCheck::result).toList());
    }

    /** What was assumed; where no service is said, what that leaves out. */
    static List<Notice> assumptions(CaseCheck check) {
        List<Notice> all = new ArrayList<>(check.result().usual().assumptions());
        if (check.result().circuit().service() == null) {
            all.add(Notice.of(
                    "no-service",
                    "",
                    "no service is given, so no usual limits, rules of thumb and cautions of one are here: write service:"
                            + " injected fuel, or " + SERVICES,
                    Source.of("the circuit file", Status.GIVEN)));
        }
        return all;
    }

    /** The limits of a case as reports show them. */
    static List<LimitRow> limits(CaseResult result) {
        return judged(result.circuit())
                ? result.limits()
                : result.limits().stream().map(Standing::unjudged).toList();
    }

    private static LimitRow unjudged(LimitRow row) {
        double none = Double.NaN;
        String reason = "brakes are not for us to judge";
        return new LimitRow(
                row.limit(), Verdict.NOT_JUDGED, row.value(), row.bound(), row.unit(), none, none, none, reason, "");
    }

    /** The worst first; equals stay in the order of the file. */
    static List<CaseCheck> worstFirst(List<CaseCheck> cases) {
        List<CaseCheck> sorted = new ArrayList<>(cases);
        sorted.sort(WORST_CASE);
        return sorted;
    }

    /** The worst case leads, the others follow in the order of the file. */
    static List<CaseCheck> leading(List<CaseCheck> cases) {
        List<CaseCheck> order = new ArrayList<>(cases);
        CaseCheck worst = worstFirst(cases).get(0);
        order.remove(worst);
        order.add(0, worst);
        return order;
    }

    /** Whether a limit row is worse than another of the same limit. */
    static boolean worse(LimitRow row, LimitRow than) {
        return WORST_LIMIT.compare(row, than) < 0;
    }

    /** Oversized is no worse than adequate. */
    private static @Nullable CaseVerdict verdict(CaseCheck check) {
        return check.verdict() == CaseVerdict.OVERSIZED ? CaseVerdict.ADEQUATE : check.verdict();
    }

    private static int rank(Verdict verdict) {
        return switch (verdict) {
            case BROKEN -> 0;
            case UNSURE -> 1;
            case HOLDS -> 2;
            case NOT_JUDGED -> 3;
        };
    }

    private static double margin(CaseCheck check) {
        LimitRow decisive = check.decisive();
        return decisive == null ? Double.POSITIVE_INFINITY : margin(decisive);
    }

    private static double margin(LimitRow row) {
        double ratio = row.marginLow() / Math.max(Math.abs(row.bound()), 1e-9);
        return Double.isNaN(ratio) ? Double.POSITIVE_INFINITY : ratio;
    }
}
