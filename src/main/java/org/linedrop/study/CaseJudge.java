package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.fluid.Band;
import org.linedrop.network.Bores;
import org.linedrop.network.CircuitNetwork;
import org.linedrop.result.CaseResult;
import org.linedrop.result.LimitRow;
import org.linedrop.result.PartRow;
import org.linedrop.result.Result;
import org.linedrop.result.Verdict;
import org.linedrop.solver.Outcome;

/** Judges one case: as built, with lines that lose nothing, with every run one dash smaller. */
final class CaseJudge {
    private static final CircuitNetwork.Setting LOSSLESS =
            new CircuitNetwork.Setting(Bores.USUAL, Band.USUAL, true, false);
    private static final CircuitNetwork.Setting LOSSLESS_AND_LEVEL =
            new CircuitNetwork.Setting(Bores.USUAL, Band.USUAL, true, true);
    /** How many sizes up a single part is tried in before several parts are changed at once. */
    private static final int MOST_SIZES_UP = 2;

    private final Circuit circuit;
    private final CaseResult result;

    private CaseJudge(Circuit circuit) {
        this.circuit = circuit;
        this.result = CaseResult.of(circuit);
    }

    static CaseCheck check(Circuit circuit) {
        return new CaseJudge(circuit).check();
    }

    private CaseCheck check() {
        LimitRow decisive = decisive();
        if (result.outcome() != Outcome.CONVERGED || circuit.service() == Service.BRAKE || decisive == null) {
            return new CaseCheck(result, null, decisive, null, null, null);
        }
        Result lossless = Result.of(circuit, LOSSLESS);
        CaseCheck.Culprit culprit = culprit(decisive);
        CaseVerdict verdict = verdict(lossless);
        boolean wantsMending = verdict == CaseVerdict.UNDERSIZED || verdict == CaseVerdict.UNSURE;
        CaseCheck.Mend mend = wantsMending ? mend(decisive) : null;
        return new CaseCheck(result, verdict, decisive, culprit, lossless, mend);
    }

    /** The limit with the smallest margin over its bound, broken ones first; null when none can be judged. */
    private @Nullable LimitRow decisive() {
        return result.limits().stream()
                .filter(row -> row.verdict() != Verdict.NOT_JUDGED)
                .min(Comparator.comparingDouble(row -> row.margin() / Math.max(Math.abs(row.bound()), 1e-9)))
                .orElse(null);
    }

    private CaseVerdict verdict(Result lossless) {
        if (result.usual().boilingAtPump().isPresent()) {
            return CaseVerdict.SHORT_AT_THE_INLET;
        }
        List<LimitRow> broken = result.limits().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .toList();
        if (!broken.isEmpty()) {
            if (holds(lossless, broken)) {
                return CaseVerdict.UNDERSIZED;
            }
            return holds(Result.of(circuit, LOSSLESS_AND_LEVEL), broken) ? CaseVerdict.STARVED : CaseVerdict.PUMP_SHORT;
        }
        if (result.limits().stream().anyMatch(row -> row.verdict() == Verdict.UNSURE)) {
            return CaseVerdict.UNSURE;
        }
        if (result.limits().stream().anyMatch(row -> row.verdict() == Verdict.NOT_JUDGED)) {
            return CaseVerdict.ADEQUATE; // too much is not said where a limit could not be judged
        }
        List<Change> smaller = Sizes.smallerEverywhere(circuit);
        return !smaller.isEmpty() && CaseResult.of(circuit.with(smaller)).holds()
                ? CaseVerdict.OVERSIZED
                : CaseVerdict.ADEQUATE;
    }

    private static boolean holds(Result other, List<LimitRow> limits) {
        return other.outcome() == Outcome.CONVERGED && limits.stream().allMatch(row -> other.margin(row.limit()) >= 0);
    }

    /** The hose or tube that loses most on the way to the limit's subject. */
    private CaseCheck.@Nullable Culprit culprit(LimitRow decisive) {
        Map<String, Double> losses = new LinkedHashMap<>();
        double all = 0;
        for (PartRow row : Way.to(result.usual(), decisive.limit().subject())) {
            if (!row.kind().equals("pump")) {
                double loss = row.frictionDropPa() + row.localDropPa();
                all += loss + row.liftDropPa();
                losses.merge(row.part(), loss, Double::sum);
            }
        }
        double total = all;
        return losses.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .filter(most -> most.getValue() > 0)
                .map(most -> new CaseCheck.Culprit(most.getKey(), words(most.getKey()), most.getValue(), total))
                .orElse(null);
    }

    /** A part as a sentence names it: its own name with its place, or its place alone. */
    private String words(String part) {
        for (Run run : circuit.runs()) {
            for (int i = 0; i < run.parts().size(); i++) {
                String place = run.id() + " " + (i + 1);
                if (run.parts().get(i).id().equals(part) && !part.equals(place)) {
                    return "the " + part + " (" + place + ")";
                }
            }
        }
        return part;
    }

    /**
     * The smallest change that was solved and holds at usual bores: one part one size up, the one that loses most first,
     * then two sizes up, then more and more parts one size up.
     */
    private CaseCheck.@Nullable Mend mend(LimitRow decisive) {
        List<PartRow> way = Way.to(result.usual(), decisive.limit().subject());
        List<Candidate> candidates = new ArrayList<>();
        for (Run run : circuit.runs()) {
            for (Part part : run.parts()) {
                double loss = loss(way, part);
                if (Sizes.changeable(part) && loss > 0) {
                    candidates.add(new Candidate(run, part, loss));
                }
            }
        }
        candidates.sort(Comparator.comparingDouble(candidate -> -candidate.lossPa()));
        for (int up = 1; up <= MOST_SIZES_UP; up++) {
            for (Candidate candidate : candidates) {
                Optional<CaseCheck.Mend> found = Sizes.larger(
                                circuit.catalogue(), candidate.run(), candidate.part(), up)
                        .flatMap(step -> tried(step.changes(), words(step.part()) + " in " + step.words(), decisive));
                if (found.isPresent()) {
                    return found.get();
                }
            }
        }
        return mendTogether(candidates, decisive);
    }

    /** A hose or tube that could be changed. */
    private record Candidate(Run run, Part part, double lossPa) {}

    private CaseCheck.@Nullable Mend mendTogether(List<Candidate> candidates, LimitRow decisive) {
        List<Change> together = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Optional<Sizes.Step> step = Sizes.larger(circuit.catalogue(), candidate.run(), candidate.part(), 1);
            if (step.isPresent()) {
                together.addAll(step.get().changes());
                words.add(words(candidate.part().id()) + " in " + step.get().words());
                Optional<CaseCheck.Mend> found =
                        words.size() < 2 ? Optional.empty() : tried(together, String.join("; ", words), decisive);
                if (found.isPresent()) {
                    return found.get();
                }
            }
        }
        return null;
    }

    private static double loss(List<PartRow> way, Part part) {
        return way.stream()
                .filter(row -> row.part().equals(part.id()))
                .mapToDouble(row -> row.frictionDropPa() + row.localDropPa())
                .sum();
    }

    private Optional<CaseCheck.Mend> tried(List<Change> changes, String words, LimitRow decisive) {
        CaseResult changed = CaseResult.of(circuit.with(changes));
        boolean holds = changed.outcome() == Outcome.CONVERGED
                && changed.limits().stream().allMatch(row -> row.verdict() == Verdict.NOT_JUDGED || row.margin() >= 0);
        return holds
                ? changed.limits().stream()
                        .filter(row -> row.limit().equals(decisive.limit()))
                        .findFirst()
                        .map(row -> new CaseCheck.Mend(changes, words, changed, row))
                : Optional.empty();
    }
}
