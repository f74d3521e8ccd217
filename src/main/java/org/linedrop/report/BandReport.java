package org.linedrop.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.linedrop.study.ToleranceBand;
import org.linedrop.study.ToleranceBand.Cause;
import org.linedrop.study.ToleranceBand.OfCase;
import org.linedrop.study.ToleranceBand.Row;
import org.linedrop.study.Uncertain;

/** What tolerances make of the limits, as a list. */
public final class BandReport {
    private BandReport() {}

    /** Something not known exactly. */
    private record Known(Uncertain uncertain, String cases) {}

    /**
     * A row for each limit of each case, and what was taken as uncertain below.
     *
     * @param answer the answer
     * @return the list
     */
    public static Listing<?> of(ToleranceBand answer) {
        List<String> notes = new ArrayList<>();
        notes.add("margins are distances to the limit, negative when broken; 5 %: one in twenty such cars is worse.");
        notes.add(String.format(
                Locale.ROOT,
                "%d sets of values in each case: Sobol points with a fixed seed. All hose of one family and size counts as"
                        + " one roll, all ends of one size as one make; different things vary by themselves.",
                answer.question().points()));
        notes.add(
                "spreads most: what the margin does when that alone goes from its 5 % to its 95 % value, as a share of"
                        + " the squares of all. Not spread: lengths and figures that the file gives without a band, tube bores,"
                        + " heights, temperatures.");
        return Listing.of("band", heading(answer), ROWS, answer.rows(), notes)
                .below("uncertain", "Taken as uncertain", KNOWN, known(answer));
    }

    private static String heading(ToleranceBand answer) {
        Row worst = null;
        for (Row row : answer.rows()) {
            if (!Double.isNaN(row.probability()) && (worst == null || row.probability() < worst.probability())) {
                worst = row;
            }
        }
        if (worst == null) {
            return "No limit of the file can be judged.";
        }
        String most = worst.causes().isEmpty()
                ? ""
                : " What spreads it most is the "
                        + worst.causes().get(0).uncertain().words() + ".";
        return "With all tolerances together the limit most at risk is " + StudyCells.name(worst.limit()) + " in case "
                + worst.caseName() + ": it holds in " + chance(worst.probability()) + " of such cars." + most;
    }

    private static List<Known> known(ToleranceBand answer) {
        Map<Uncertain, List<String>> cases = new LinkedHashMap<>();
        for (OfCase each : answer.uncertain()) {
            each.uncertain()
                    .forEach(uncertain -> cases.computeIfAbsent(uncertain, key -> new ArrayList<>())
                            .add(each.caseName()));
        }
        List<Known> known = new ArrayList<>();
        cases.forEach((uncertain, names) -> known.add(
                new Known(uncertain, names.size() == answer.uncertain().size() ? "all" : String.join(", ", names))));
        return known;
    }

    private static String chance(double probability) {
        return Double.isNaN(probability) ? "-" : String.format(Locale.ROOT, "%.1f %%", 100 * probability);
    }

    private static Column<Row> margin(
            String key, String name, String heading, java.util.function.ToDoubleFunction<Row> value) {
        Column<Row> column = Column.varying(
                key, name, row -> StudyCells.difference(row.limit().bound().dimension()), value);
        return column.as(heading, null, (row, look) -> {
            double si = value.applyAsDouble(row);
            return si == Double.NEGATIVE_INFINITY
                    ? "not solved"
                    : StudyCells.difference(row.limit().bound().dimension()).signed(si, look.display());
        });
    }

    private static final List<Column<Row>> ROWS = List.of(
            Cells.words("case", "case", "case", Row::caseName),
            Cells.words("limit", "limit", "limit", row -> StudyCells.name(row.limit())),
            Cells.words("bound", "bound", "bound", row -> row.limit().bound().write()),
            margin("usualMargin", "margin, all usual", "usual", Row::usual),
            margin("margin5", "margin 5 %", "5 %", Row::low),
            margin("margin50", "margin 50 %", "50 %", Row::median),
            margin("margin95", "margin 95 %", "95 %", Row::high),
            StudyCells.seen(
                    "unit",
                    false,
                    (row, look) -> StudyCells.difference(row.limit().bound().dimension())
                            .unit(look.display())
                            .symbol()),
            Column.<Row>number("probability", "probability that it holds", Scale.PURE, Row::probability)
                    .as("holds in", null, (row, look) -> chance(row.probability())),
            StudyCells.count("unsolved", "sets not solved", "not solved", Row::unsolved),
            Cells.words(
                    "causes",
                    "spreads most",
                    "spreads most",
                    row -> String.join(
                            "; ", row.causes().stream().map(BandReport::words).toList())));

    private static String words(Cause cause) {
        return cause.uncertain().words() + " " + StudyCells.percent(cause.share());
    }

    private static final List<Column<Known>> KNOWN = List.of(
            Cells.words("what", "what", "what", row -> row.uncertain().words()),
            Column.number("low", "low SI", Scale.PURE, row -> row.uncertain().low()),
            Column.number(
                    "usual", "usual SI", Scale.PURE, row -> row.uncertain().usual()),
            Column.number("high", "high SI", Scale.PURE, row -> row.uncertain().high()),
            StudyCells.seen(
                    "low",
                    true,
                    (row, look) -> figure(row.uncertain(), row.uncertain().low(), look)),
            StudyCells.seen(
                    "usual",
                    true,
                    (row, look) -> figure(row.uncertain(), row.uncertain().usual(), look)),
            StudyCells.seen(
                    "high",
                    true,
                    (row, look) -> figure(row.uncertain(), row.uncertain().high(), look)),
            Cells.words(
                    "distribution",
                    "distribution",
                    "spreads as",
                    row -> row.uncertain().distribution()),
            Cells.words("source", "source", "from", row -> row.uncertain().source()),
            Cells.words("cases", "cases", "cases", Known::cases));

    private static String figure(Uncertain uncertain, double value, Column.Look look) {
        return switch (uncertain.kind()) {
            case HOSE_BORE, END_BORE, FITTING_BORE -> Scale.BORE.text(value, look.display());
            case ROUGHNESS -> Cells.ROUGHNESS.text(value, look.display());
            case FRICTION, LOCAL, PUMP -> String.format(Locale.ROOT, "x %.2f", value);
            case FLUID -> value < 0 ? "thin" : value > 0 ? "thick" : "usual";
            case FIGURE -> String.format(Locale.ROOT, "%.4g SI", value);
        };
    }
}
