package org.linedrop.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import org.linedrop.study.Diagnosis.Accused;
import org.linedrop.study.Diagnosis.Compared;
import org.linedrop.study.Diagnosis.Finding;
import org.linedrop.study.Diagnosis.Fitted;
import org.linedrop.study.Diagnosis.Hint;

/**
 * Finds what would make a circuit read as it does. What each suspect does to the gauges is solved once over its range;
 * readings are then held against it, and what comes near is fitted by least squares with solves of its own.
 */
final class Diagnoser {
    private static final int STEPS = 24;
    /** A rough fit this much worse than the best is not worth fitting finely. */
    private static final double HOPELESS = 15;
    /** Suspects are rivals where their misfits differ by less: 99 % of chi squared with one degree of freedom. */
    private static final double RIVALS = 6.635;

    private static final double EXPLAINED = 0.99;
    /** One in ten thousand honest sets of readings is called unexplained. */
    private static final double NOT_EXPLAINED = 0.9999;
    /** Deviation of what cannot be solved, in standard deviations: worse than anything that can. */
    private static final double FAR = 1e3;

    private final Circuit circuit;
    private final List<Gauge> gauges;
    private final List<Suspect> suspects;
    private final double[] asWritten;
    private final List<double[][]> reach;

    private Diagnoser(Circuit circuit, List<Gauge> gauges, List<Suspect> suspects) {
        this.circuit = circuit;
        this.gauges = List.copyOf(gauges);
        this.suspects = List.copyOf(suspects);
        this.asWritten = read(Result.of(circuit).orThrow());
        this.reach = new ArrayList<>();
        for (Suspect suspect : suspects) {
            double[][] over = new double[STEPS + 1][];
            for (int i = 0; i <= STEPS; i++) {
                over[i] = at(List.of(suspect), new double[] {(double) i / STEPS});
            }
            reach.add(over);
        }
    }

    /** Solves what each suspect does to the gauges. */
    static Diagnoser of(Circuit circuit, List<Gauge> gauges, List<Suspect> suspects) {
        if (gauges.isEmpty()) {
            throw new IllegalArgumentException("at least one reading is needed");
        }
        return new Diagnoser(circuit, gauges, suspects);
    }

    private double[] read(Result result) {
        return gauges.stream().mapToDouble(gauge -> gauge.of(result)).toArray();
    }

    /** What the gauges read with this wrong, by shares; empty when it cannot be solved. */
    private double[] at(List<Suspect> wrong, double[] shares) {
        try {
            Circuit changed = circuit;
            for (int i = 0; i < shares.length; i++) {
                changed = wrong.get(i).in(changed, wrong.get(i).value(shares[i]));
            }
            Result result = Result.of(changed);
            return result.outcome() == Outcome.CONVERGED ? read(result) : new double[0];
        } catch (ProblemsException notThere) {
            return new double[0];
        }
    }

    /** Deviations over standard deviations. */
    private static double[] deviations(double[] values, List<Reading> readings) {
        double[] deviations = new double[readings.size()];
        for (int i = 0; i < deviations.length; i++) {
            Reading reading = readings.get(i);
            double deviation = values.length == 0 ? FAR : (values[i] - reading.value()) / (reading.error() / 2);
            deviations[i] = Double.isNaN(deviation) ? FAR : deviation;
        }
        return deviations;
    }

    /** The best of a suspect where what it does is joined by straight lines: share and misfit. */
    private double[] rough(int suspect, List<Reading> readings) {
        double[][] over = reach.get(suspect);
        double[] best = {suspects.get(suspect).share(suspects.get(suspect).healthy()), Double.POSITIVE_INFINITY};
        for (int i = 0; i < STEPS; i++) {
            if (over[i].length == 0 || over[i + 1].length == 0) {
                continue;
            }
            double[] from = deviations(over[i], readings);
            double[] to = deviations(over[i + 1], readings);
            double along = 0;
            double square = 0;
            for (int k = 0; k < from.length; k++) {
                along -= from[k] * (to[k] - from[k]);
                square += (to[k] - from[k]) * (to[k] - from[k]);
            }
            double share = square > 0 ? Math.min(1, Math.max(0, along / square)) : 0;
            double misfit = 0;
            for (int k = 0; k < from.length; k++) {
                double deviation = from[k] + share * (to[k] - from[k]);
                misfit += deviation * deviation;
            }
            if (misfit < best[1]) {
                best = new double[] {(i + share) / STEPS, misfit};
            }
        }
        return best;
    }

    Diagnosis diagnose(List<Reading> readings) {
        double healthy = ShareFit.misfit(deviations(asWritten, readings));
        List<double[]> rough = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < suspects.size(); i++) {
            rough.add(rough(i, readings));
            least = Math.min(least, rough.get(i)[1]);
        }
        // straight lines between solved points fit no better than the curve by more than this
        boolean worthIt = healthy - least > RIVALS - 1
                || healthy > new ChiSquaredDistribution(readings.size()).inverseCumulativeProbability(EXPLAINED);
        List<Accused> accused = new ArrayList<>();
        for (int i = 0; i < suspects.size(); i++) {
            boolean near = worthIt && rough.get(i)[1] <= least + HOPELESS;
            accused.add(near ? fine(suspects.get(i), rough.get(i), readings) : plain(suspects.get(i), rough.get(i)));
        }
        accused.sort(Comparator.comparingDouble(Accused::misfit));
        accused = shared(accused);
        Finding finding = finding(healthy, accused, readings.size());
        int rivals = finding == Finding.CANNOT_TELL || finding == Finding.FOUND ? rivals(accused) : 0;
        List<Hint> hints = finding == Finding.CANNOT_TELL ? hints(accused.subList(0, rivals)) : List.of();
        double[] best = accused.isEmpty()
                ? new double[0]
                : at(List.of(accused.get(0).suspect()), new double[] {
                    accused.get(0).suspect().share(accused.get(0).value())
                });
        return new Diagnosis(
                circuit.caseName(), finding, compared(readings, best), healthy, accused, List.of(), rivals, hints);
    }

    private static int rivals(List<Accused> accused) {
        double least = accused.get(0).misfit();
        return (int)
                accused.stream().filter(each -> each.misfit() <= least + RIVALS).count();
    }

    private static Finding finding(double healthy, List<Accused> accused, int readings) {
        double best =
                accused.isEmpty() ? Double.POSITIVE_INFINITY : accused.get(0).misfit();
        boolean explained = healthy <= new ChiSquaredDistribution(readings).inverseCumulativeProbability(EXPLAINED);
        if (explained && healthy - best <= RIVALS) {
            return Finding.NOTHING_WRONG;
        }
        double most = new ChiSquaredDistribution(Math.max(1, readings - 1)).inverseCumulativeProbability(NOT_EXPLAINED);
        if (!(best <= most)) {
            return Finding.NO_SINGLE_CAUSE;
        }
        return rivals(accused) == 1 ? Finding.FOUND : Finding.CANNOT_TELL;
    }

    private List<Compared> compared(List<Reading> readings, double[] best) {
        List<Compared> compared = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            compared.add(new Compared(readings.get(i), asWritten[i], best.length == 0 ? Double.NaN : best[i]));
        }
        return compared;
    }

    /** Shares of the likelihood. */
    private static List<Accused> shared(List<Accused> accused) {
        if (accused.isEmpty()) {
            return accused;
        }
        double least = accused.get(0).misfit();
        double sum = accused.stream()
                .mapToDouble(each -> Math.exp((least - each.misfit()) / 2))
                .sum();
        return accused.stream()
                .map(each -> new Accused(
                        each.suspect(),
                        each.words(),
                        each.value(),
                        each.low(),
                        each.high(),
                        each.misfit(),
                        Math.exp((least - each.misfit()) / 2) / sum))
                .toList();
    }

    private Accused plain(Suspect suspect, double[] rough) {
        double value = suspect.value(rough[0]);
        return new Accused(suspect, suspect.words(circuit, value), value, Double.NaN, Double.NaN, rough[1], Double.NaN);
    }

    private ShareFit fit(List<Suspect> unknowns, double[] start, List<Reading> readings) {
        return ShareFit.of(shares -> deviations(at(unknowns, shares), readings), start, readings.size());
    }

    private Accused fine(Suspect suspect, double[] rough, List<Reading> readings) {
        ShareFit fit = fit(List.of(suspect), new double[] {rough[0]}, readings);
        double share = fit.shares[0];
        double value = suspect.value(share);
        double width = 2 * fit.deviations[0];
        boolean known = !Double.isNaN(width);
        return new Accused(
                suspect,
                suspect.words(circuit, value),
                value,
                known ? suspect.value(share - width) : Double.NaN,
                known ? suspect.value(share + width) : Double.NaN,
                fit.misfit,
                Double.NaN);
    }

    Diagnosis fitTogether(List<Reading> readings) {
        if (suspects.isEmpty() || suspects.size() > 3 || suspects.size() > readings.size()) {
            throw new IllegalArgumentException(suspects.size() + " unknowns cannot be fitted to " + readings.size()
                    + " readings: one to three can, and not more than there are readings");
        }
        double[] start = new double[suspects.size()];
        double[] single = null;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < start.length; i++) {
            start[i] = suspects.get(i).share(suspects.get(i).healthy());
        }
        for (int i = 0; i < start.length; i++) {
            double[] rough = rough(i, readings);
            if (rough[1] < least) {
                least = rough[1];
                single = start.clone();
                single[i] = rough[0];
            }
        }
        ShareFit fit = fit(suspects, start, readings);
        if (single != null) {
            ShareFit other = fit(suspects, single, readings);
            fit = other.misfit < fit.misfit ? other : fit;
        }
        List<Fitted> fitted = new ArrayList<>();
        for (int i = 0; i < start.length; i++) {
            Suspect suspect = suspects.get(i);
            double share = fit.shares[i];
            double width = 2 * fit.deviations[i];
            double value = suspect.value(share);
            boolean known = !Double.isNaN(width);
            fitted.add(new Fitted(
                    suspect,
                    suspect.words(circuit, value),
                    value,
                    known ? suspect.value(share - width) : Double.NaN,
                    known ? suspect.value(share + width) : Double.NaN));
        }
        return new Diagnosis(
                circuit.caseName(),
                Finding.FITTED,
                compared(readings, at(suspects, fit.shares)),
                ShareFit.misfit(deviations(asWritten, readings)),
                List.of(),
                fitted,
                0,
                List.of());
    }

    /** The places where rivals differ by more than a usual gauge is wrong, the best first. */
    private List<Hint> hints(List<Accused> rivals) {
        List<Result> results = new ArrayList<>();
        for (Accused rival : rivals) {
            Result result = Result.of(rival.suspect().in(circuit, rival.value()));
            if (result.outcome() != Outcome.CONVERGED) {
                return List.of();
            }
            results.add(result);
        }
        List<Hint> hints = new ArrayList<>();
        for (Gauge gauge : Gauge.all(circuit)) {
            if (gauges.contains(gauge)) {
                continue;
            }
            List<Double> values = results.stream().map(gauge::of).toList();
            double low = values.stream().mapToDouble(value -> value).min().orElse(Double.NaN);
            double high = values.stream().mapToDouble(value -> value).max().orElse(Double.NaN);
            double spread = (high - low) / gauge.usualError(Math.max(Math.abs(low), Math.abs(high)));
            if (spread > 1) {
                hints.add(new Hint(gauge, spread, values));
            }
        }
        hints.sort(Comparator.comparingDouble(hint -> -hint.spread()));
        return hints.size() > 3 ? hints.subList(0, 3) : hints;
    }
}
