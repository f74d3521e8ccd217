package org.linedrop.study;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.Limit;
import org.linedrop.circuit.form.LimitText;
import org.linedrop.fact.ProblemsException;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;

/**
 * What the tolerances of a circuit make of its limits. Sets of values are Sobol points turned by a fixed seed, so that
 * the same question has the same answer, to the bit, on any number of threads.
 *
 * @param question  what was asked
 * @param uncertain what is not known exactly, by case
 * @param rows      a row for each limit of each case
 */
public record ToleranceBand(BandQuestion question, List<OfCase> uncertain, List<Row> rows) implements Serializable {
    private static final long SEED = 1_967_0101;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final int SHOWN = 3;

    /** Copies the lists. */
    public ToleranceBand {
        uncertain = List.copyOf(uncertain);
        rows = List.copyOf(rows);
    }

    /**
     * What is not known exactly in a case.
     *
     * @param caseName  the case
     * @param uncertain with their bands
     */
    public record OfCase(String caseName, List<Uncertain> uncertain) implements Serializable {
        /** Copies the list. */
        public OfCase {
            uncertain = List.copyOf(uncertain);
        }
    }

    /**
     * One limit in one case.
     *
     * @param caseName    the case
     * @param limit       the limit
     * @param usual       margin with everything usual, SI; NaN when not known
     * @param low         margin that 5 % of the sets are under; minus infinity where more than that are not solved
     * @param median      margin that half of them are under
     * @param high        margin that 95 % of them are under
     * @param probability that it holds, 0 to 1; a set that cannot be solved does not hold it; NaN when not known
     * @param unsolved    how many of the sets have no answer
     * @param causes      what spreads it most, the most first
     */
    public record Row(
            String caseName,
            Limit limit,
            double usual,
            double low,
            double median,
            double high,
            double probability,
            int unsolved,
            List<Cause> causes)
            implements Serializable {
        /** Copies the list. */
        public Row {
            causes = List.copyOf(causes);
        }
    }

    /**
     * One uncertainty and what it does alone.
     *
     * @param uncertain what
     * @param swing     what the margin gains when it alone goes from its 5 % to its 95 % value, SI
     * @param share     its square over the sum of the squares of all, 0 to 1
     */
    public record Cause(Uncertain uncertain, double swing, double share) implements Serializable {}

    /**
     * Solves it.
     *
     * @param circuit  the circuit
     * @param question how uncertain, in which cases
     * @param threads  on how many threads, at least 1
     * @param progress told how far it is, asked whether to stop
     * @return the answer
     * @throws java.util.concurrent.CancellationException when it was told to stop
     */
    public static ToleranceBand of(Circuit circuit, BandQuestion question, int threads, Progress progress) {
        List<OfCase> uncertain = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        for (String name : question.cases()) {
            Circuit inCase = circuit.in(name);
            List<Uncertain> found = Uncertainties.of(inCase, question);
            uncertain.add(new OfCase(name, found));
            if (!inCase.limits().isEmpty()) {
                rows.addAll(rows(inCase, found, question.points(), threads, progress));
            }
        }
        return new ToleranceBand(question, uncertain, rows);
    }

    private static List<Row> rows(Circuit inCase, List<Uncertain> found, int points, int threads, Progress progress) {
        double[][] shares = points(found.size(), points);
        int alone = 2 * found.size();
        // first everything usual, then each alone at either end, then the sets
        List<double[]> margins = Workers.run(1 + alone + points, threads, progress, i -> {
            double[] values = new double[found.size()];
            for (int k = 0; k < values.length; k++) {
                Uncertain each = found.get(k);
                if (i > alone) {
                    values[k] = each.at(shares[i - 1 - alone][k]);
                } else {
                    boolean moved = i > 0 && (i - 1) / 2 == k;
                    values[k] = moved ? each.at(i % 2 == 1 ? LOW : HIGH) : each.usual();
                }
            }
            return margins(inCase, found, values);
        });
        List<Row> rows = new ArrayList<>();
        for (int limit = 0; limit < inCase.limits().size(); limit++) {
            rows.add(row(inCase, limit, found, margins));
        }
        return rows;
    }

    /** The margin of every limit; minus infinity where there is no answer, NaN where it cannot be judged. */
    private static double[] margins(Circuit inCase, List<Uncertain> found, double[] values) {
        List<Limit> limits = inCase.limits();
        double[] margins = new double[limits.size()];
        Arrays.fill(margins, Double.NEGATIVE_INFINITY);
        try {
            Result result = Uncertainties.solved(inCase, found, values);
            if (result.outcome() == Outcome.CONVERGED) {
                for (int i = 0; i < margins.length; i++) {
                    margins[i] = result.margin(limits.get(i));
                }
            }
        } catch (ProblemsException notThere) {
            return margins;
        }
        return margins;
    }

    private static Row row(Circuit inCase, int limit, List<Uncertain> found, List<double[]> margins) {
        Limit what = inCase.limits().get(limit);
        int alone = 2 * found.size();
        double[] sets = margins.subList(1 + alone, margins.size()).stream()
                .mapToDouble(of -> of[limit])
                .toArray();
        Arrays.sort(sets);
        double usual = margins.get(0)[limit];
        boolean known = !Double.isNaN(sets[sets.length - 1]) && what.bound().kind() != LimitText.Kind.STATE;
        long holds = Arrays.stream(sets).filter(margin -> margin >= 0).count();
        long unknown = Arrays.stream(sets).filter(Double::isNaN).count();
        int unsolved = (int) Arrays.stream(sets)
                .filter(margin -> margin == Double.NEGATIVE_INFINITY)
                .count();
        return new Row(
                inCase.caseName(),
                what,
                Double.isInfinite(usual) ? Double.NaN : usual,
                known ? quantile(sets, LOW) : Double.NaN,
                known ? quantile(sets, 0.5) : Double.NaN,
                known ? quantile(sets, HIGH) : Double.NaN,
                unknown > 0 ? Double.NaN : (double) holds / sets.length,
                unsolved,
                known ? causes(limit, found, margins) : List.of());
    }

    private static List<Cause> causes(int limit, List<Uncertain> found, List<double[]> margins) {
        double sum = 0;
        double[] swings = new double[found.size()];
        for (int k = 0; k < swings.length; k++) {
            double swing = margins.get(2 + 2 * k)[limit] - margins.get(1 + 2 * k)[limit];
            swings[k] = Double.isNaN(swing) ? 0 : swing;
            sum += swings[k] * swings[k];
        }
        List<Cause> causes = new ArrayList<>();
        for (int k = 0; k < swings.length; k++) {
            if (sum > 0 && swings[k] != 0) {
                double share = Double.isInfinite(sum) ? Double.NaN : swings[k] * swings[k] / sum;
                causes.add(new Cause(found.get(k), swings[k], share));
            }
        }
        causes.sort(Comparator.comparingDouble(cause -> -Math.abs(cause.swing())));
        return causes.size() > SHOWN ? causes.subList(0, SHOWN) : causes;
    }

    /** Between the two nearest of sorted values. */
    private static double quantile(double[] sorted, double probability) {
        double at = probability * (sorted.length - 1);
        int below = (int) at;
        double low = sorted[below];
        double high = sorted[Math.min(below + 1, sorted.length - 1)];
        return at == below || Double.isInfinite(low) ? low : low + (at - below) * (high - low);
    }

    /** Sobol points, turned so that none lies on an edge. */
    private static double[][] points(int dimensions, int count) {
        double[][] points = new double[count][dimensions];
        if (dimensions == 0) {
            return points;
        }
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        Random seeded = new Random(SEED);
        double[] turn = new double[dimensions];
        for (int k = 0; k < dimensions; k++) {
            turn[k] = seeded.nextDouble();
        }
        for (int i = 0; i < count; i++) {
            double[] point = sobol.nextVector();
            for (int k = 0; k < dimensions; k++) {
                double turned = point[k] + turn[k];
                points[i][k] = turned - Math.floor(turned);
            }
        }
        return points;
    }
}
