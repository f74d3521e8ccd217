package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.linedrop.study.SizeAnswer;
import org.linedrop.study.SizeAnswer.Decisive;
import org.linedrop.study.SizeAnswer.Fitting;
import org.linedrop.study.SizeAnswer.RunSize;
import org.linedrop.study.SizeAnswer.SizeSet;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;

/** The answer to "which sizes" as a list: the sets, and what each run of them becomes. */
public final class SizeReport {
    private static final Scale VOLUME = Cells.scale(Dimension.VOLUME, "L", 3, "US gal", 4);
    private static final Scale MASS = Cells.scale(Dimension.MASS, "kg", 3, "lb", 2);

    /** A set with its place. */
    private record Place(int number, SizeSet set) {}

    /** A run of a set. */
    private record RunOf(int number, RunSize run) {}

    private SizeReport() {}

    /**
     * The sets with their sentence on top.
     *
     * @param answer  the answer
     * @param display units of the sentence
     * @return the list
     */
    public static Listing<?> of(SizeAnswer answer, Display display) {
        List<Place> places = new ArrayList<>();
        List<RunOf> runs = new ArrayList<>();
        for (SizeSet set : answer.sets()) {
            int number = places.size() + 1;
            places.add(new Place(number, set));
            set.runs().forEach(run -> runs.add(new RunOf(number, run)));
        }
        List<String> notes = new ArrayList<>();
        notes.add(String.format(
                Locale.ROOT,
                "%.0f sets; %d looked at from the least upwards, %d of them solved in full in every case.%s",
                answer.combinations(),
                answer.lookedAt(),
                answer.solved(),
                answer.exact() ? " The first is the least of all." : " The first is not proven to be the least."));
        leftOut(answer.leftOut()).forEach(reason -> notes.add("Not chosen: " + reason + "."));
        notes.addAll(answer.notes());
        return Listing.of("size", answer.sentence(display), SETS, places, notes)
                .below("runs", "What each run becomes", RUNS, runs);
    }

    /** What is left out for the same reason stands together. */
    private static List<String> leftOut(List<String> each) {
        Map<String, List<String>> by = new LinkedHashMap<>();
        for (String one : each) {
            int cut = one.lastIndexOf(": ");
            by.computeIfAbsent(one.substring(Math.max(0, cut)), reason -> new ArrayList<>())
                    .add(one.substring(0, Math.max(0, cut)));
        }
        List<String> lines = new ArrayList<>();
        by.forEach((reason, choices) -> lines.add(String.join(", ", choices) + reason));
        return lines;
    }

    private static final List<Column<Place>> SETS = List.of(
            StudyCells.count("set", "set", "set", Place::number),
            Cells.words("sizes", "sizes", "sizes", row -> row.set().words()),
            Column.<Place>number("volumeM3", "fluid", VOLUME, row -> row.set().volumeM3())
                    .as("fluid", VOLUME),
            Column.<Place>number("massKg", "weight", MASS, row -> row.set().massKg())
                    .as("weight", MASS),
            Column.<Place>number("price", "price", Scale.PURE, row -> row.set().price())
                    .as("price", null, (row, look) -> price(row.set().price())),
            StudyCells.count(
                    "adaptersAdded",
                    "adapters added",
                    "adapters added",
                    row -> row.set().adaptersAdded()),
            StudyCells.count(
                    "adaptersDropped",
                    "adapters dropped",
                    "dropped",
                    row -> row.set().adaptersDropped()),
            StudyCells.count(
                    "sealingFacesMore",
                    "sealing faces more",
                    "faces added",
                    row -> row.set().sealingFacesMore()),
            Cells.words(
                    "decisive",
                    "limit that decides",
                    "decides",
                    row -> decisive(row.set().decisive())),
            Column.number(
                    "marginRatio",
                    "margin over bound",
                    Scale.PURE,
                    row -> ratio(row.set().decisive())),
            StudyCells.seen("margin", true, (row, look) -> {
                Decisive decisive = row.set().decisive();
                return decisive == null
                        ? "-"
                        : StudyCells.difference(decisive.limit().limit().bound().dimension())
                                .text(decisive.limit().margin(), look.display());
            }));

    private static double ratio(@Nullable Decisive decisive) {
        return decisive == null
                ? Double.NaN
                : decisive.limit().margin() / Math.abs(decisive.limit().bound());
    }

    private static String price(double price) {
        return Double.isNaN(price) ? "-" : String.format(Locale.ROOT, "%.2f", price);
    }

    private static final List<Column<RunOf>> RUNS = List.of(
            StudyCells.count("set", "set", "set", RunOf::number),
            Cells.words("run", "run", "run", row -> row.run().run()),
            Cells.words("size", "size", "size", row -> row.run().words()),
            Cells.words(
                    "added",
                    "adapters added",
                    "adapters added",
                    row -> words(row.run().added())),
            Cells.words(
                    "dropped",
                    "adapters dropped",
                    "adapters dropped",
                    row -> words(row.run().dropped())));

    private static @Nullable String decisive(@Nullable Decisive decisive) {
        return decisive == null
                ? null
                : decisive.limit().limit().subject() + " "
                        + decisive.limit().limit().quantity() + ", " + decisive.caseName();
    }

    private static @Nullable String words(List<Fitting> fittings) {
        List<String> words = new ArrayList<>();
        for (Fitting fitting : fittings) {
            words.add(String.format(
                    Locale.ROOT,
                    "%s (%.2f to %.2f mm, %d faces)",
                    fitting.words(),
                    fitting.fromBoreM() * 1000,
                    fitting.toBoreM() * 1000,
                    fitting.sealingFaces()));
        }
        return words.isEmpty() ? null : String.join("; ", words);
    }
}
