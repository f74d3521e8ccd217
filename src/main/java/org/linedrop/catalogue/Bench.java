package org.linedrop.catalogue;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Source;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;

/**
 * What is known of making hose up on the bench: tolerances of lengths, densities of hard line, tools and reminders.
 *
 * @param notes   tools and reminders
 * @param figures densities and tolerances
 */
public record Bench(List<Note> notes, List<Rule> figures) implements Serializable {

    /** Copies the lists. */
    public Bench {
        notes = List.copyOf(notes);
        figures = List.copyOf(figures);
    }

    /**
     * A tool or reminder.
     *
     * @param what   tool, reminder or routing
     * @param kind   lining and build of a hose end ({@code PTFE three-piece}), a seat ({@code O-ring boss}), tube or hose
     * @param family hose family it is for; empty for all
     * @param text   the note in words
     * @param source who says so
     */
    public record Note(String what, String kind, String family, String text, Source source) implements Serializable {}

    /**
     * A figure that holds for a range of lengths, or for a material.
     *
     * @param quantity density, assembly tolerance, cut tolerance, slack, length change or clocking tolerance
     * @param name     the material of a density, else empty
     * @param figure   the figure: kg/m3, m, rad, or a share of the length
     * @param share    true when it is a share of the length
     * @param overM    length over which it holds, m
     * @param toM      length up to which it holds, m; infinite for the last
     */
    public record Rule(String quantity, String name, Figure figure, boolean share, double overM, double toM)
            implements Serializable {}

    /** Read once, on first use; immutable. */
    private static final class Standard {
        private static final Bench ROWS = read();
    }

    /**
     * The rows that come with the library.
     *
     * @return the same immutable rows every time
     */
    public static Bench standard() {
        return Standard.ROWS;
    }

    /**
     * Density of a tube's material.
     *
     * @param material name of the tube table
     * @return kg/m3, if it is known
     */
    public Optional<Figure> densityKgPerM3(String material) {
        return figures.stream()
                .filter(rule -> rule.quantity().equals("density") && rule.name().equals(material))
                .map(Rule::figure)
                .findFirst();
    }

    /**
     * How far a made-up hose may be off its overall length.
     *
     * @param lengthM overall length, m, above zero
     * @return m, each way
     */
    public Figure assemblyToleranceM(double lengthM) {
        return atLength("assembly tolerance", lengthM);
    }

    /**
     * How far a cut may be off.
     *
     * @param lengthM length of the cut piece, m, above zero
     * @return m, each way
     */
    public Figure cutToleranceM(double lengthM) {
        return atLength("cut tolerance", lengthM);
    }

    /**
     * How far the angle between two bent ends may be off.
     *
     * @param lengthM overall length, m, above zero
     * @return rad, each way
     */
    public Figure clockingToleranceRad(double lengthM) {
        return atLength("clocking tolerance", lengthM);
    }

    /**
     * Slack of an installed hose over its path; it takes up the change of length under pressure too.
     *
     * @return share of the path, low and high its two ends
     */
    public Figure slackShare() {
        return only("slack");
    }

    /**
     * How much hose grows or shrinks under pressure.
     *
     * @return share of the length, low and high its two ends
     */
    public Figure lengthChangeShare() {
        return only("length change");
    }

    private Figure only(String quantity) {
        return figures.stream()
                .filter(rule -> rule.quantity().equals(quantity))
                .findFirst()
                .orElseThrow()
                .figure();
    }

    private Figure atLength(String quantity, double lengthM) {
        for (Rule rule : figures) {
            if (rule.quantity().equals(quantity) && lengthM > rule.overM() && lengthM <= rule.toM()) {
                return rule.share() ? rule.figure().times(lengthM) : rule.figure();
            }
        }
        throw new IllegalArgumentException("a length must be above zero, but is " + lengthM);
    }

    private static Bench read() {
        Sources sources = new Sources();
        List<Note> notes = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("bench_notes")) {
            notes.add(new Note(
                    row.text("what"),
                    row.text("kind"),
                    row.text("family"),
                    row.text("text"),
                    sources.of(row, "source", "status", "")));
        }
        List<Rule> rules = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.rows("bench_figures")) {
            String unit = row.text("unit");
            Double over = row.numberOrNull("over");
            Double to = row.numberOrNull("to");
            rules.add(new Rule(
                    row.text("quantity"),
                    row.text("name"),
                    new Figure(
                            si(sources, row, "low", unit),
                            si(sources, row, "usual", unit),
                            si(sources, row, "high", unit),
                            sources.of(row)),
                    unit.equals("1"),
                    over == null ? 0 : sources.toSi(row, over, "in"),
                    to == null ? Double.POSITIVE_INFINITY : sources.toSi(row, to, "in")));
        }
        return new Bench(notes, rules);
    }

    private static double si(Sources sources, CsvTable.Row row, String column, String unit) {
        double value = row.number(column);
        return switch (unit) {
            case "1" -> value;
            case "kg/m3" -> value;
            case "deg" -> Units.from(value, Units.unit("deg", Dimension.ANGLE));
            default -> sources.toSi(row, value, unit);
        };
    }
}
