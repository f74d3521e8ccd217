package org.linedrop.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.study.Bottleneck;
import org.linedrop.study.Bottleneck.Measure;
import org.linedrop.study.Bottleneck.Thing;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.Output;
import org.linedrop.units.Dimension;
import org.linedrop.units.Display;
import org.linedrop.units.Units;

/** Where the loss sits, as a list: by the thing one would change, with what its next size gives. */
public final class BottleneckReport {
    private static final Scale STEP = Cells.scale(Dimension.LENGTH, "mm", 2, "in", 4);

    private BottleneckReport() {}

    /**
     * The bottleneck of the worst of some cases.
     *
     * @param check   checked cases
     * @param display units of the sentence
     * @return the list
     */
    public static Listing<Thing> of(FeedCheck check, Display display) {
        return of(Bottleneck.of(worst(check)), display);
    }

    /**
     * The case that a reader should look at first.
     *
     * @param check checked cases
     * @return one that was not solved, else the one with the worst verdict and the least margin
     */
    public static CaseCheck worst(FeedCheck check) {
        return Standing.worstFirst(check.cases()).get(0);
    }

    /**
     * One case.
     *
     * @param answer  the answer
     * @param display units of the sentence
     * @return the list
     */
    public static Listing<Thing> of(Bottleneck answer, Display display) {
        List<String> notes = new ArrayList<>();
        notes.add(
                "One size up is that thing alone, solved: what it meets must be made to fit, and that is not counted. Not"
                        + " one part each, but one thing you would change each: the ends go with their hose.");
        if (answer.things().stream().anyMatch(thing -> !thing.with().isEmpty())) {
            notes.add("go with ...: adapters that change or fall away when the tube changes; counted in its figures.");
        }
        notes.add("? from memory or guessed   * measured");
        if (!answer.measures().isEmpty()) {
            notes.add(
                    "decides: what lies between the lowest and the highest that is sold, to first order; 0 where nothing is"
                            + " in doubt.");
        }
        Output output = answer.output();
        Scale scale = output == null ? Scale.PRESSURE : Scale.usual(output.dimension());
        return Listing.of("bottleneck", answer.sentence(display), things(output, scale), answer.things(), notes)
                .below("measures", "Worth measuring first", measures(difference(scale, output)), answer.measures());
    }

    private static Scale difference(Scale scale, @Nullable Output output) {
        boolean pressure = output == null || output.dimension() == Dimension.GAUGE_PRESSURE;
        return pressure ? Scale.DROP : scale;
    }

    private static List<Column<Thing>> things(@Nullable Output output, Scale scale) {
        Scale gives = difference(scale, output);
        String then = output == null ? "then" : output.subject() + " then";
        return List.of(
                Column.<Thing>number("rank", "rank", Scale.PURE, Thing::rank)
                        .as("", null, (row, look) -> String.valueOf(row.rank())),
                Cells.words("place", "place", "line", Thing::place),
                Cells.words("part", "part", "part", Thing::words),
                Column.<Thing>number("lossPa", "loses", Scale.DROP, Thing::lossPa)
                        .as("loses", Scale.DROP),
                Column.<Thing>number("share", "share", Scale.SHARE, Thing::share)
                        .as("share", Scale.SHARE),
                Cells.words(
                        "larger",
                        "one size up",
                        "one size up",
                        row -> Cells.known(row.larger()),
                        BottleneckReport::larger),
                Column.text("with", "goes with", row -> Cells.known(row.with())),
                Column.<Thing>number("gives", "gives", gives, Thing::gives)
                        .as("gives", gives, (row, look) -> signed(row.gives(), gives, look)),
                Column.<Thing>number("then", then, scale, Thing::then).as(then, scale),
                Column.text(
                        "unit",
                        "unit",
                        row -> output == null ? null : output.dimension().si()),
                Column.text("holds", "holds", row -> Double.isNaN(row.then()) ? null : row.holds() ? "yes" : "no"),
                Column.number("boreM", "bore", Scale.BORE, Thing::boreM),
                Cells.words(
                        "boreSource",
                        "bore source",
                        "bore known from",
                        row -> row.boreFrom() == null ? null : Cells.said(row.boreFrom()),
                        row -> known(row.boreFrom())),
                Column.text(
                        "boreStatus",
                        "bore status",
                        row -> row.boreFrom() == null
                                ? null
                                : row.boreFrom().status().word()));
    }

    private static String larger(Thing row) {
        if (!row.with().isEmpty()) {
            return "go with " + row.with();
        }
        return row.larger().isEmpty() ? "-" : row.larger() + (row.holds() ? ": holds" : "");
    }

    private static String signed(double si, Scale scale, Column.Look look) {
        return Double.isFinite(si) ? scale.signed(si, look.display()) : "-";
    }

    private static String known(@Nullable Source from) {
        if (from == null) {
            return "-";
        }
        Status status = from.status();
        return status.doubtful() ? status.word() + " ?" : status == Status.MEASURED ? "measured *" : from.title();
    }

    private static List<Column<Measure>> measures(Scale scale) {
        return List.of(
                Cells.words("words", "what", "what", Measure::words),
                Column.<Measure>number("count", "count", Scale.PURE, Measure::count)
                        .as("of them", null, (row, look) -> String.valueOf(row.count())),
                Cells.words("status", "status", "known", row -> row.status().word()),
                Column.<Measure>number("step", "step", Scale.PURE, Measure::stepSi)
                        .as("more by", null, (row, look) -> step(row, look.display())),
                Column.<Measure>number("gives", "gives", scale, Measure::gives)
                        .as("gives", scale, (row, look) -> digits(row.gives(), scale, look.display())),
                Column.number("band", "band", Scale.PURE, Measure::bandSi),
                Column.<Measure>number("decides", "decides", scale, Measure::decides)
                        .as("decides", scale, (row, look) -> digits(row.decides(), scale, look.display())));
    }

    private static String step(Measure row, Display display) {
        return row.words().startsWith("bore of") || row.words().startsWith("hose-end bore")
                ? STEP.text(row.stepSi(), display)
                : "1 %";
    }

    /** With a sign where it falls, to three digits: effects spread over decades. */
    static String digits(double si, Scale scale, Display display) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        double shown = Units.to(si, scale.unit(display));
        if (Math.abs(shown) < 5e-7) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(shown).round(new MathContext(3));
        return rounded.scale() < 0
                ? String.format(Locale.ROOT, "%.0f", rounded)
                : rounded.setScale(Math.max(2, rounded.scale())).toPlainString();
    }
}
