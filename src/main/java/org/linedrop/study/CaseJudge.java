package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.OneWayValve;
import org.linedrop.circuit.Part;
import org.linedrop.circuit.Regulator;
import org.linedrop.circuit.Run;
import org.linedrop.circuit.Service;
import org.linedrop.fact.ProblemsException;
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
    private static final String WIDE_OPEN = "wide open";
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
        LimitRow nearest = nearest(result.limits().stream()
                .filter(row -> row.verdict() != Verdict.NOT_JUDGED)
                .toList());
        if (result.outcome() != Outcome.CONVERGED || circuit.service() == Service.BRAKE || nearest == null) {
            return judged(null, nearest, null, null, null);
        }
        Result lossless = Result.of(circuit, LOSSLESS);
        if (result.usual().boilingAtPump().isPresent() && uncontrolled().isEmpty()) {
            return judged(CaseVerdict.SHORT_AT_THE_INLET, nearest, culprit(way(nearest)), lossless, null);
        }
        List<LimitRow> broken = result.limits().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .sorted(Comparator.comparingDouble(CaseJudge::closeness))
                .toList();
        if (!broken.isEmpty()) {
            return broken(broken, lossless);
        }
        List<LimitRow> unsure = result.limits().stream()
                .filter(row -> row.verdict() == Verdict.UNSURE)
                .toList();
        if (!unsure.isEmpty()) {
            LimitRow decisive = Objects.requireNonNull(nearest(unsure));
            List<PartRow> way = way(decisive);
            CaseCheck.Mend mend = decisive.margin() < 0 ? mend(decisive, way) : null;
            return new CaseCheck(
                    result, CaseVerdict.UNSURE, decisive, culprit(way), lossless, mend, measure(decisive, way), null);
        }
        return judged(whenAllHolds(), nearest, culprit(way(nearest)), lossless, null);
    }

    /** A case with nothing to measure; largest draws are looked for elsewhere. */
    private CaseCheck judged(
            @Nullable CaseVerdict verdict,
            @Nullable LimitRow decisive,
            CaseCheck.@Nullable Culprit culprit,
            @Nullable Result lossless,
            CaseCheck.@Nullable Mend mend) {
        return new CaseCheck(result, verdict, decisive, culprit, lossless, mend, null, null);
    }

    /** What one would measure first. */
    private Bottleneck.@Nullable Measure measure(LimitRow decisive, List<PartRow> way) {
        return decisive.ofState()
                ? null
                : new Measures(circuit, Output.of(decisive.limit()), way)
                        .find().stream()
                                .findFirst()
                                .filter(measure -> measure.decides() > 0)
                                .orElse(null);
    }

    /** The first of the verdicts that broken limits ask for, with the limit that asks for it. */
    private CaseCheck broken(List<LimitRow> broken, Result lossless) {
        CaseCheck first = null;
        for (LimitRow row : broken) {
            CaseCheck check = broken(row, lossless);
            CaseVerdict verdict = Objects.requireNonNull(check.verdict());
            if (first == null || verdict.compareTo(Objects.requireNonNull(first.verdict())) < 0) {
                first = check;
            }
        }
        return Objects.requireNonNull(first);
    }

    private CaseCheck broken(LimitRow row, Result lossless) {
        Optional<LimitRow> uncontrolled =
                uncontrolled().filter(other -> other.limit().equals(row.limit()));
        List<PartRow> way =
                uncontrolled.isPresent() ? Way.after(result.usual(), row.limit().subject()) : way(row);
        boolean byLines = holds(lossless, row);
        if (uncontrolled.isPresent()) {
            CaseVerdict verdict = byLines ? CaseVerdict.RETURN_LIMITED : CaseVerdict.OUT_OF_CONTROL;
            return judged(verdict, row, culprit(way), lossless, byLines ? mend(row, way) : null);
        }
        // in a loop with legs side by side lines without loss say little: a change that was solved and holds says it
        CaseCheck.Mend mend = mend(row, way);
        if (byLines || mend != null) {
            return judged(CaseVerdict.UNDERSIZED, row, culprit(way), lossless, mend);
        }
        return judged(notByLines(row), row, culprit(way), lossless, null);
    }

    /** What is to blame where no line is. */
    private CaseVerdict notByLines(LimitRow row) {
        boolean over = row.value() > row.bound();
        if (row.limit().quantity().startsWith("inlet")
                && over == row.limit().quantity().equals("inlet vacuum")) {
            return CaseVerdict.SHORT_AT_THE_INLET;
        }
        if (holds(Result.of(circuit, LOSSLESS_AND_LEVEL), row)) {
            return CaseVerdict.STARVED;
        }
        return over || reliefOpen(result.usual()) ? CaseVerdict.OUT_OF_CONTROL : CaseVerdict.PUMP_SHORT;
    }

    /** Whether a relief valve lets go of more than a trace of what is pumped. */
    static boolean reliefOpen(Result result) {
        return result.devices().stream()
                .anyMatch(device -> device.kind().equals(OneWayValve.RELIEF)
                        && device.state().equals("open"));
    }

    private List<PartRow> way(LimitRow row) {
        return Way.to(result.usual(), row.limit());
    }

    /** The one with the smallest margin over its bound, null when there is none. */
    private static @Nullable LimitRow nearest(List<LimitRow> rows) {
        return rows.stream()
                .min(Comparator.comparingDouble(CaseJudge::closeness))
                .orElse(null);
    }

    /** Margin over bound; of a state without a figure what its verdict says. */
    private static double closeness(LimitRow row) {
        double ratio = row.margin() / Math.max(Math.abs(row.bound()), 1e-9);
        if (!Double.isNaN(ratio)) {
            return ratio;
        }
        return row.verdict() == Verdict.HOLDS ? Double.MAX_VALUE : -Double.MAX_VALUE;
    }

    /** A regulator that is wide open where it should hold. */
    private Optional<LimitRow> uncontrolled() {
        return result.limits().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN && row.ofState())
                .filter(row -> row.state().equals(WIDE_OPEN)
                        && circuit.device(row.limit().subject()).orElse(null) instanceof Regulator regulator
                        && regulator.bypass())
                .findFirst();
    }

    private CaseVerdict whenAllHolds() {
        if (result.limits().stream().anyMatch(row -> row.verdict() == Verdict.NOT_JUDGED)) {
            return CaseVerdict.ADEQUATE; // too much is not said where a limit could not be judged
        }
        List<Change> smaller = Sizes.smallerEverywhere(circuit);
        try {
            return !smaller.isEmpty() && CaseResult.of(circuit.with(smaller)).holds()
                    ? CaseVerdict.OVERSIZED
                    : CaseVerdict.ADEQUATE;
        } catch (ProblemsException notMade) {
            return CaseVerdict.ADEQUATE;
        }
    }

    private static boolean holds(Result other, LimitRow row) {
        return other.outcome() == Outcome.CONVERGED && other.margin(row.limit()) >= 0;
    }

    /** The hose or tube that loses most on the way to the limit's subject. */
    private CaseCheck.@Nullable Culprit culprit(List<PartRow> way) {
        Map<String, Double> losses = new LinkedHashMap<>();
        double all = 0;
        double height = 0;
        for (PartRow row : way) {
            if (!row.kind().endsWith("pump")) {
                double loss = row.frictionDropPa() + row.localDropPa();
                all += loss;
                height += row.liftDropPa();
                losses.merge(row.part(), loss, Double::sum);
            }
        }
        double total = all + Math.max(0, height); // height that is given back is no loss
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
    private CaseCheck.@Nullable Mend mend(LimitRow decisive, List<PartRow> way) {
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
        for (int up = 1; up <= MOST_SIZES_UP; up++) {
            List<Change> together = new ArrayList<>();
            List<String> words = new ArrayList<>();
            for (Candidate candidate : candidates) {
                Optional<Sizes.Step> step = Sizes.larger(circuit.catalogue(), candidate.run(), candidate.part(), up);
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
        }
        return null;
    }

    private static double loss(List<PartRow> way, Part part) {
        return way.stream()
                .filter(row -> row.part().equals(part.id()))
                .mapToDouble(row -> row.frictionDropPa() + row.localDropPa())
                .sum();
    }

    private static boolean heldAtUsualBores(LimitRow row) {
        return row.verdict() == Verdict.NOT_JUDGED
                || (row.ofState() ? row.verdict() != Verdict.BROKEN && !(row.margin() < 0) : row.margin() >= 0);
    }

    private Optional<CaseCheck.Mend> tried(List<Change> changes, String words, LimitRow decisive) {
        CaseResult changed;
        try {
            changed = CaseResult.of(circuit.with(changes));
        } catch (ProblemsException notMade) {
            return Optional.empty(); // a size that is sold without ends that are known
        }
        boolean holds = changed.outcome() == Outcome.CONVERGED
                && changed.limits().stream().allMatch(CaseJudge::heldAtUsualBores);
        return holds
                ? changed.limits().stream()
                        .filter(row -> row.limit().equals(decisive.limit()))
                        .findFirst()
                        .map(row -> new CaseCheck.Mend(changes, words, changed, row, null))
                : Optional.empty();
    }
}
