package org.linedrop.circuit.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Inner;
import org.linedrop.fact.Source;
import org.linedrop.fact.Status;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.Unit;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** Quantities with what is said about them, to figures and back. */
@Inner
public final class Forms {
    /** Title of the source of every figure that a file gives. */
    public static final String TITLE = "circuit file";

    private static final Pattern BETWEEN = Pattern.compile("(.+?) between (.+) and (.+)");

    private Forms() {}

    /**
     * Reads a quantity with its words.
     *
     * @param text    for example {@code 10.2 mm +/- 0.1 mm measured}; the spread may have its own unit, none, or per
     *                cent; a lopsided band is {@code 10.2 mm between 10.0 mm and 10.3 mm}
     * @param allowed the dimensions it may have, the likeliest first
     * @return the figure, its source being {@value #TITLE}
     * @throws UnitException when the text is anything else
     */
    public static Figure figure(String text, Dimension... allowed) {
        return given(text, "", allowed).figure();
    }

    /**
     * Reads a quantity with its words and keeps its dimension.
     *
     * @param text    as for {@link #figure}
     * @param locator where in the file, for example {@code line 23}; may be empty
     * @param allowed the dimensions it may have, the likeliest first
     * @return the figure with its dimension
     * @throws UnitException when the text is anything else
     */
    public static Given given(String text, String locator, Dimension... allowed) {
        Said said = Said.of(text);
        Source source = new Source(TITLE, locator, said.status());
        Matcher between = BETWEEN.matcher(said.value());
        if (said.spread().isEmpty() && between.matches()) {
            Quantity value = Units.read(between.group(1), allowed);
            double low =
                    Wording.first(between.group(2), value, value.dimension()).si();
            double high =
                    Wording.first(between.group(3), value, value.dimension()).si();
            if (!(low <= value.si() && value.si() <= high)) {
                throw Wording.wrong(text, ": the value lies outside its band", "Write the lower end first");
            }
            return new Given(new Figure(low, value.si(), high, source), value.dimension(), said.really());
        }
        Quantity value = Units.read(said.value(), allowed);
        double half = said.spread().isEmpty() ? 0 : half(said.spread(), value);
        return new Given(
                new Figure(value.si() - half, value.si(), value.si() + half, source), value.dimension(), said.really());
    }

    /** Half the width of a band, in SI. */
    private static double half(String spread, Quantity value) {
        Dimension difference = value.dimension().ofDifference();
        double half;
        if (Wording.bare(spread)) {
            half = Units.read(spread + " " + differenceSymbol(value.unit()), difference)
                    .si();
        } else {
            Quantity read = Units.read(spread, difference, Dimension.RATIO);
            // per cent of a multiple is a share of it; of per cent it is taken off as it stands: 90 % +/- 5 %
            boolean share = read.dimension() != difference
                    || (read.unit().symbol().equals("%")
                            && !value.unit().symbol().equals("%"));
            half = share ? Math.abs(value.si()) * read.si() : read.si();
        }
        if (!(half >= 0)) {
            throw Wording.wrong("+/- " + spread, " is negative", "Write it without a minus");
        }
        return half;
    }

    private static String differenceSymbol(Unit unit) {
        return unit.symbol().replace(" abs", "").replace(" vacuum", "");
    }

    /**
     * Reads numbers with one unit at the end and the words behind it.
     *
     * @param text    for example {@code 7.9 10.2 12.8 mm measured}; one spread may stand for all
     * @param locator where in the file; may be empty
     * @param allowed the dimensions they may have, the likeliest first
     * @return the figures in the order of the text
     * @throws UnitException when the text is anything else
     */
    public static List<Figure> figures(String text, String locator, Dimension... allowed) {
        Said said = Said.of(text);
        Source source = new Source(TITLE, locator, said.status());
        List<Figure> figures = new ArrayList<>();
        for (Quantity each : Units.readList(said.value(), allowed)) {
            double half = said.spread().isEmpty() ? 0 : half(said.spread(), each);
            figures.add(new Figure(each.si() - half, each.si(), each.si() + half, source));
        }
        return List.copyOf(figures);
    }

    /**
     * Writes a figure in metric units, with its band and the word for its status.
     *
     * @param figure    the figure in the SI unit of the dimension, finite
     * @param dimension what it measures
     * @return text that reads back to the same low, value and high, bit for bit; the status as
     *     {@link Said#suffix(Status)} says
     * @throws IllegalArgumentException when a number of the figure is not finite
     */
    public static String write(Figure figure, Dimension dimension) {
        return band(figure, dimension) + Said.suffix(figure.status());
    }

    /** Value and band without the word for the status. */
    static String band(Figure figure, Dimension dimension) {
        String value = Wording.metric(figure.value(), dimension);
        if (!figure.hasBand()) {
            return value;
        }
        return spread(figure, dimension).map(half -> value + " +/- " + half).orElseGet(() -> {
            Unit unit = Units.metric(figure.value(), dimension);
            return value + " between " + Units.write(figure.low(), unit) + " and " + Units.write(figure.high(), unit);
        });
    }

    /** The band alone, with a space before it; empty when the figure has none that is even. */
    static String spreadText(Figure figure, Dimension dimension) {
        return figure.hasBand()
                ? spread(figure, dimension).map(half -> " +/- " + half).orElse("")
                : "";
    }

    /** The shortest spread that gives both ends of the band bit for bit, empty when the band is lopsided. */
    private static Optional<String> spread(Figure figure, Dimension dimension) {
        double up = figure.high() - figure.value();
        double down = figure.value() - figure.low();
        // Either end was rounded by up to half its own step: the spread lies between the two, nearer to the finer,
        // or, where an end was a tie, a step beside.
        double share = Math.ulp(figure.high()) / (Math.ulp(figure.high()) + Math.ulp(figure.low()));
        double half = up + (down - up) * share;
        for (double centre : new double[] {half, up, down, Math.nextUp(half), Math.nextDown(half)}) {
            if (fits(centre, figure)) {
                return Optional.of(shortest(centre, figure, dimension.ofDifference()));
            }
        }
        return Optional.empty();
    }

    private static String shortest(double half, Figure figure, Dimension difference) {
        Unit unit = Units.metric(half, difference);
        BigDecimal exact = new BigDecimal(Units.number(half, unit));
        int leading = exact.scale() - exact.precision();
        for (int scale = leading; scale < exact.scale(); scale++) {
            String text = exact.setScale(scale, RoundingMode.HALF_EVEN).toPlainString() + " " + unit.symbol();
            double read = Units.read(text, difference).si();
            if (fits(read, figure)) {
                return Units.write(read, unit);
            }
        }
        return Units.write(half, unit);
    }

    private static boolean fits(double half, Figure figure) {
        return figure.value() + half == figure.high() && figure.value() - half == figure.low();
    }

    /**
     * Writes several figures with one unit at the end; bands are not written.
     *
     * @param figures   the figures in the SI unit of the dimension, finite, at least one
     * @param dimension what they measure
     * @return for example {@code 7.9 10.2 12.8 mm measured}, with the word of the weakest
     * @throws IllegalArgumentException when a number is not finite or there is none
     */
    static String writeList(List<Figure> figures, Dimension dimension) {
        double[] values = figures.stream().mapToDouble(Figure::value).toArray();
        double largest = 0;
        Status weakest = Status.MEASURED;
        for (Figure figure : figures) {
            largest = Math.max(largest, Math.abs(figure.value()));
            weakest = Status.weaker(weakest, figure.status());
        }
        return Units.writeList(values, Units.metric(largest, dimension)) + Said.suffix(weakest);
    }

    /** The same numbers under another status: words at the end of a compound form hold for all its figures. */
    static Figure as(Figure figure, Status status) {
        return status == Status.GIVEN
                ? figure
                : new Figure(
                        figure.low(),
                        figure.value(),
                        figure.high(),
                        new Source(figure.source().title(), figure.source().locator(), status));
    }
}
