package org.linedrop.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.concurrent.CancellationException;
import org.linedrop.circuit.Change;
import org.linedrop.circuit.Circuit;
import org.linedrop.study.SizeAnswer.RunSize;
import org.linedrop.study.SizeAnswer.SizeSet;
import org.linedrop.study.SizeAnswer.Smaller;
import org.linedrop.study.SizeOptions.Option;
import org.linedrop.study.kit.KitItem;
import org.linedrop.study.kit.OwnFigures;

/**
 * The smallest, lightest or cheapest set of sizes that holds every limit in every case. Sets are looked at from the
 * least upwards, so that the first that holds is the least of all; where there are more than the question allows, a set
 * is found by stepping down from the largest, and the least that was not looked at is its bound.
 */
public final class SizeSearch {
    private static final List<String> NOTES = List.of(
            "A run is bought in one size throughout: hose, tube, bulkheads and unions. What it meets at its ends, and"
                    + " the devices in it, keep the size they are written with; a change of size there takes an adapter,"
                    + " whose loss is counted. A plain joint is bought in the sizes that meet.",
            "Holds: at usual, smallest and largest bores sold, in every case of the file. A hose over a rating that can"
                    + " be judged, or whose liner is not recommended for the fluid, is not chosen.",
            "Fluid: what hoses and tubes hold. Weight: hose, tube metal and fluid; ends and fittings weigh nothing here,"
                    + " and metal is taken at 2700 (aluminium), 7850 (steel) and 8900 kg/m3 (copper nickel), from"
                    + " memory.");

    private final SizeQuestion question;
    private final Progress progress;
    private final Circuit circuit;
    private final SizeTrial trial;
    private final List<List<Option>> options = new ArrayList<>();
    private final List<String> leftOut;
    private final PriorityQueue<int[]> queue;
    private TreePressures tree;
    private int lookedAt;

    private SizeSearch(Circuit circuit, SizeQuestion question, Progress progress) {
        this.circuit = circuit.in(circuit.caseNames().get(0));
        this.question = question;
        this.progress = progress;
        this.trial = new SizeTrial(circuit);
        SizeOptions possible = new SizeOptions(question, this.circuit);
        for (String run : possible.runs()) {
            options.add(possible.of(run));
        }
        leftOut = possible.leftOut();
        queue = new PriorityQueue<>(Comparator.comparingDouble(this::amount).thenComparing(Arrays::compare));
        tree = TreePressures.of(List.of(), options);
    }

    /**
     * Looks for it.
     *
     * @param circuit  the circuit, whose cases all count
     * @param question what is wanted
     * @param progress told how many sets were looked at, and asked whether to stop
     * @return the answer
     * @throws IllegalArgumentException when the question names a run that is not there
     * @throws CancellationException    when it was told to stop
     */
    public static SizeAnswer of(Circuit circuit, SizeQuestion question, Progress progress) {
        return new SizeSearch(circuit, question, progress).answer();
    }

    /**
     * What the sizes to choose from take: the list whose prices {@link SizeQuestion.Objective#CHEAPEST} asks for.
     *
     * @param circuit  the circuit
     * @param question what is wanted; its prices and what is to be least do not count
     * @return the things of all sizes of all runs asked for, each once, under the names of a kit
     * @throws IllegalArgumentException when the question names a run that is not there
     */
    public static List<KitItem> items(Circuit circuit, SizeQuestion question) {
        SizeQuestion all = new SizeQuestion(
                SizeQuestion.Objective.SMALLEST,
                question.runs(),
                question.families(),
                question.dashes(),
                OwnFigures.NONE,
                question.most(),
                question.runnersUp());
        SizeOptions possible =
                new SizeOptions(all, circuit.in(circuit.caseNames().get(0)));
        possible.runs().forEach(possible::of);
        return possible.items();
    }

    private SizeAnswer answer() {
        double combinations = 1;
        int singles = 0;
        for (List<Option> list : options) {
            combinations *= list.size();
            singles += list.size();
        }
        if (options.isEmpty() || combinations == 0) {
            return new SizeAnswer(
                    question, List.of(), true, Double.NaN, combinations, 0, 0, List.of(), null, leftOut, NOTES);
        }
        if (combinations > 2 * singles) {
            tree = TreePressures.of(trial.cases(), options);
        }
        List<int[]> found = upwards();
        boolean exact = !found.isEmpty() || queue.isEmpty();
        double bound = exact ? found.isEmpty() ? Double.NaN : amount(found.get(0)) : amount(queue.peek());
        if (!exact) {
            downwards().ifPresent(found::add);
        }
        int[] largest = largest();
        SizeAnswer.Decisive nearest = found.isEmpty() ? trial.of(set(largest)).decisive() : null;
        List<Smaller> smaller = found.isEmpty() ? List.of() : smaller(found.get(0));
        return new SizeAnswer(
                question,
                found.stream().map(this::made).toList(),
                exact,
                bound,
                combinations,
                lookedAt,
                trial.solved(),
                smaller,
                nearest,
                leftOut,
                NOTES);
    }

    /** From the least set upwards, until enough hold or enough were looked at. */
    private List<int[]> upwards() {
        List<int[]> found = new ArrayList<>();
        queue.add(new int[options.size()]);
        while (!queue.isEmpty() && lookedAt < question.most() && found.size() <= question.runnersUp()) {
            if (progress.cancelled()) {
                throw new CancellationException("told to stop");
            }
            int[] set = queue.remove();
            lookedAt++;
            progress.at(lookedAt, question.most());
            if (!tree.breaks(set) && trial.of(set(set)).holds()) {
                found.add(set);
            }
            // every set but the first has one that it comes from: one less in its last run that is not least
            int last = set.length - 1;
            while (last > 0 && set[last] == 0) {
                last--;
            }
            for (int run = last; run < set.length; run++) {
                if (set[run] + 1 < options.get(run).size()) {
                    int[] next = set.clone();
                    next[run]++;
                    queue.add(next);
                }
            }
        }
        return found;
    }

    /** From the largest set downwards, the largest saving first, while it holds. */
    private Optional<int[]> downwards() {
        int[] set = largest();
        if (!trial.of(set(set)).holds()) {
            return Optional.empty();
        }
        boolean moved = true;
        while (moved) {
            moved = false;
            List<int[]> steps = new ArrayList<>();
            for (int run = 0; run < set.length; run++) {
                for (int less = set[run] - 1; less >= 0; less--) {
                    int[] step = set.clone();
                    step[run] = less;
                    steps.add(step);
                }
            }
            steps.sort(Comparator.comparingDouble(this::amount).thenComparing(Arrays::compare));
            for (int[] step : steps) {
                if (progress.cancelled()) {
                    throw new CancellationException("told to stop");
                }
                if (!tree.breaks(step) && trial.of(set(step)).holds()) {
                    set = step;
                    moved = true;
                    break;
                }
            }
        }
        return Optional.of(set);
    }

    /** The option of each run that holds most fluid. */
    private int[] largest() {
        int[] largest = new int[options.size()];
        for (int run = 0; run < largest.length; run++) {
            List<Option> list = options.get(run);
            for (int i = 1; i < list.size(); i++) {
                if (list.get(i).volumeM3() > list.get(largest[run]).volumeM3()) {
                    largest[run] = i;
                }
            }
        }
        return largest;
    }

    private double amount(int[] set) {
        double amount = 0;
        for (int run = 0; run < set.length; run++) {
            amount += options.get(run).get(set[run]).amount(question.by());
        }
        return amount;
    }

    private List<Option> set(int[] numbers) {
        List<Option> set = new ArrayList<>();
        for (int run = 0; run < numbers.length; run++) {
            set.add(options.get(run).get(numbers[run]));
        }
        return set;
    }

    private SizeSet made(int[] numbers) {
        List<Option> set = set(numbers);
        double volume = 0;
        double mass = 0;
        double price = 0;
        List<RunSize> runs = new ArrayList<>();
        List<Change> changes = new ArrayList<>();
        for (Option option : set) {
            volume += option.volumeM3();
            mass += option.massKg();
            price += option.price();
            runs.add(new RunSize(option.run(), option.words(), option.added(), option.dropped()));
            option.change(circuit).ifPresent(changes::add);
        }
        return new SizeSet(
                runs, amount(numbers), volume, mass, price, trial.of(set).decisive(), changes);
    }

    /** What the next lesser size of each run breaks. */
    private List<Smaller> smaller(int[] best) {
        List<Smaller> smaller = new ArrayList<>();
        for (int run = 0; run < best.length; run++) {
            if (best[run] > 0) {
                int[] less = best.clone();
                less[run]--;
                List<Option> set = set(less);
                SizeTrial.Tried tried = trial.of(set);
                if (!tried.holds()) {
                    smaller.add(new Smaller(set.get(run).run(), set.get(run).words(), tried.decisive(), tried.why()));
                }
            }
        }
        return smaller;
    }
}
