package org.linedrop.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.linedrop.study.HowFar;
import org.linedrop.study.Knob;
import org.linedrop.units.Display;

/** How far keys can be moved, as a list: a line for each key, and every edge with its bracket. */
public final class HowFarReport {
    private HowFarReport() {}

    /**
     * An edge with the key it belongs to.
     *
     * @param answer the answer
     * @param edge   one of its edges
     */
    record Placed(HowFar answer, HowFar.Edge edge) {}

    /**
     * The list.
     *
     * @param answers at least one answer
     * @param display units
     * @return the list, with the sentence of a single answer on top
     */
    public static Listing<HowFar> of(List<HowFar> answers, Display display) {
        String heading = answers.size() == 1
                ? answers.get(0).sentence(display)
                : "How far each key can be moved alone while every limit holds, all cases asked for.";
        List<Placed> edges = new ArrayList<>();
        answers.forEach(answer -> answer.edges().forEach(edge -> edges.add(new Placed(answer, edge))));
        List<String> notes = new ArrayList<>();
        notes.add(
                "Every figure was solved. The whole range was tried first, in steps; between two steps that do not differ"
                        + " nothing is looked for.");
        notes.add(
                "known to: how near to each other the two sides were solved. worst bores: the same edge over the smallest and largest bores sold; - where nothing holds over all of"
                        + " them.");
        if (!edges.isEmpty()) {
            notes.add(
                    "passes: the figure passes its bound; jumps: it leaps over it; refused: beyond it there is no answer.");
        }
        edges.stream()
                .filter(placed -> !placed.edge().decides().trouble().isEmpty())
                .map(placed -> placed.answer().knob().path() + " past "
                        + shown(placed.answer().knob(), placed.edge().inside(), display) + ": "
                        + placed.edge().decides().trouble())
                .distinct()
                .forEach(notes::add);
        return Listing.of("how far", heading, columns(display), answers, notes)
                .below("edges", "Where holding ends, each end solved on both sides", edges(), edges);
    }

    private static List<Column<HowFar>> columns(Display display) {
        return List.of(
                Cells.words("key", "key", "key", answer -> answer.knob().path()),
                Column.<HowFar>number(
                                "now",
                                "now",
                                Scale.PURE,
                                answer -> answer.knob().si())
                        .as(
                                "now",
                                null,
                                (row, look) -> shown(row.knob(), row.knob().si(), look.display())),
                Column.text("unit", "unit", answer -> answer.knob().dimension().si()),
                Cells.words("holdsNow", "holds now", "holds now", answer -> answer.holdsNow() ? "yes" : "no"),
                Column.<HowFar>number("from", "from", Scale.PURE, HowFarReport::from)
                        .as("from", null, (row, look) -> shown(row.knob(), from(row), look.display())),
                Column.<HowFar>number("to", "to", Scale.PURE, HowFarReport::to)
                        .as("to", null, (row, look) -> shown(row.knob(), to(row), look.display())),
                Cells.words("decides", "decides", "what ends it", HowFarReport::decides),
                Column.number("triedFrom", "tried from", Scale.PURE, HowFar::from),
                Column.number("triedTo", "tried to", Scale.PURE, HowFar::to),
                Column.text("sentence", "sentence", answer -> answer.sentence(display)));
    }

    private static String shown(Knob knob, double si, Display display) {
        return knob.shown(si, display);
    }

    private static boolean isTarget(HowFar answer) {
        return !answer.question().target().isEmpty();
    }

    /** The lower edge; NaN where the range tried ends first. */
    private static double from(HowFar answer) {
        return isTarget(answer) ? met(answer) : end(answer.stretch().map(HowFar.Stretch::low));
    }

    /** The upper edge; NaN where the range tried ends first. */
    private static double to(HowFar answer) {
        return isTarget(answer) ? met(answer) : end(answer.stretch().map(HowFar.Stretch::high));
    }

    private static double met(HowFar answer) {
        return end(answer.nearest());
    }

    private static double end(Optional<HowFar.Edge> edge) {
        return edge.map(HowFar.Edge::inside).orElse(Double.NaN);
    }

    private static String decides(HowFar answer) {
        if (isTarget(answer)) {
            return answer.question().target();
        }
        List<String> ends = new ArrayList<>();
        answer.stretch().ifPresent(stretch -> {
            for (HowFar.Edge edge : new HowFar.Edge[] {stretch.low(), stretch.high()}) {
                if (edge != null && !ends.contains(words(edge))) {
                    ends.add(words(edge));
                }
            }
        });
        return answer.stretch().isEmpty()
                ? "nothing holds"
                : ends.isEmpty() ? "nothing that was tried" : String.join("; ", ends);
    }

    private static String words(HowFar.Edge edge) {
        HowFar.Trial out = edge.decides();
        String what = out.decides().isEmpty() ? "refused" : out.decides();
        return what + " at " + out.caseName();
    }

    private static List<Column<Placed>> edges() {
        return List.of(
                Cells.words("key", "key", "key", row -> row.answer().knob().path()),
                Column.<Placed>number(
                                "holds", "holds", Scale.PURE, row -> row.edge().inside())
                        .as(
                                "holds at",
                                null,
                                (row, look) -> exact(row, row.edge().inside(), look.display())),
                Column.<Placed>number(
                                "holdsNot",
                                "holds not",
                                Scale.PURE,
                                row -> row.edge().outside())
                        .as("known to", null, (row, look) -> bracket(row.edge())),
                Cells.words(
                        "side",
                        "side",
                        "holds",
                        row -> isTarget(row.answer()) ? "-" : row.edge().holdsBelow() ? "below" : "above"),
                Cells.words("kind", "kind", "there", row -> row.edge().kind().word(), row -> switch (row.edge()
                        .kind()) {
                    case ROOT -> "passes";
                    case JUMP -> "jumps";
                    case REFUSED -> "refused";
                }),
                Cells.words(
                        "decides",
                        "decides",
                        "decides",
                        row -> row.edge().decides().decides()),
                Column.text(
                        "trouble",
                        "trouble",
                        row -> Cells.known(row.edge().decides().trouble())),
                Cells.words("case", "case", "case", row -> row.edge().decides().caseName()),
                Column.<Placed>number(
                                "worstBores",
                                "worst bores",
                                Scale.PURE,
                                row -> row.edge().atLeastSi())
                        .as(
                                "worst bores",
                                null,
                                (row, look) ->
                                        shown(row.answer().knob(), row.edge().atLeastSi(), look.display())));
    }

    /** To nine digits: the bracket is that narrow. */
    private static String exact(Placed row, double si, Display display) {
        return row.answer().knob().shown(si, display, 9);
    }

    /** Its width over its size. */
    private static String bracket(HowFar.Edge edge) {
        double size = Math.max(Math.abs(edge.inside()), Math.abs(edge.outside()));
        return String.format(Locale.ROOT, "%.0e", Math.abs(edge.outside() - edge.inside()) / size);
    }
}
