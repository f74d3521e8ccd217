package org.linedrop.circuit;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.circuit.form.Forms;
import org.linedrop.circuit.form.RatedPoint;
import org.linedrop.circuit.form.Said;
import org.linedrop.fact.Figure;
import org.linedrop.fact.Words;
import org.linedrop.fluid.Fluid;
import org.linedrop.fluid.Fluids;
import org.linedrop.fluid.UnknownFluidException;
import org.linedrop.units.Dimension;
import org.linedrop.units.Quantity;
import org.linedrop.units.Unit;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;

/** The value forms that keys are made of. */
final class KeyForms {
    private static final String REALLY = " really";

    private KeyForms() {}

    /** A figure of one dimension, with the span that is believed without a second word. */
    static Key.Form<Figure> number(Dimension dimension, String unit, double least, double most, String doubt) {
        return new NumberForm(dimension, unit, least, most, doubt);
    }

    /** A flow by volume or mass. */
    record Flow(Figure figure, boolean byMass) {}

    static Key.Form<Flow> flow() {
        Key.Form<Flow> form = of("216 L/h", KeyForms::writtenFlow, (text, scope) -> {
            String plain = without(REALLY, text);
            boolean byMass = isMass(plain);
            Figure figure = byMass
                    ? Forms.figure(plain, Dimension.MASS_FLOW)
                    : Forms.figure(plain, Dimension.VOLUME_FLOW, Dimension.MASS_FLOW);
            if (!(figure.value() >= 0)) {
                throw new Key.FormException(
                        "\"" + text + "\" is below zero", "A flow is 0 or more: turn the run round");
            }
            return new Flow(figure, byMass);
        });
        return new Measured<>(form, List.of(Dimension.VOLUME_FLOW, Dimension.MASS_FLOW));
    }

    /** A rated point that is named after its flow, which stands first. */
    static Key.Form<RatedPoint> flowFirst(Key.Form<RatedPoint> form) {
        return new Measured<>(form, List.of(), Dimension.VOLUME_FLOW);
    }

    private static String writtenFlow(String text) {
        return Forms.given(text, "", isMass(without(REALLY, text)) ? Dimension.MASS_FLOW : Dimension.VOLUME_FLOW)
                .write();
    }

    static boolean isMass(String text) {
        try {
            Forms.figure(text, Dimension.VOLUME_FLOW);
            return false;
        } catch (UnitException noVolume) {
            try {
                Forms.figure(text, Dimension.MASS_FLOW);
                return true;
            } catch (UnitException noMass) {
                return false;
            }
        }
    }

    /** Numbers with one unit at the end. */
    static Key.Form<List<Quantity>> list(String example, Dimension... dimensions) {
        return new Measured<>(
                of(
                        example,
                        text -> writtenList(Units.readList(text, dimensions)),
                        (text, scope) -> Units.readList(text, dimensions)),
                List.of(dimensions));
    }

    private static String writtenList(List<Quantity> values) {
        double[] si = values.stream().mapToDouble(Quantity::si).toArray();
        double largest = 0;
        for (double each : si) {
            largest = Math.max(largest, Math.abs(each));
        }
        return Units.writeList(si, Units.metric(largest, values.get(0).dimension()));
    }

    /** Figures with one unit and one word at the end: a line of a sheet. */
    static Key.Form<List<Figure>> column(String example, Dimension dimension, double least, double most) {
        // a line of a sheet is written as it was: its figures may have come with different words
        Key.Form<List<Figure>> form = of(example, String::strip, (text, scope) -> {
            List<Figure> figures = Forms.figures(text, "", dimension);
            for (Figure figure : figures) {
                if (!(figure.value() >= least && figure.value() <= most)) {
                    Unit shown = Units.metric(figure.value(), dimension);
                    throw new Key.FormException(
                            "\"" + text + "\": " + Units.write(figure.value(), shown) + " is out of reason: "
                                    + Units.write(least, shown) + " to " + Units.write(most, shown) + " is believed",
                            "Is the unit right? Write for example " + example);
                }
            }
            return figures;
        });
        return new Measured<>(form, List.of(dimension));
    }

    /** Figures with one unit and one word at the end, and what they measure. */
    record Column(Dimension dimension, List<Figure> figures) {}

    /** A line of a sheet whose unit says which of several things it holds. */
    static Key.Form<Column> columnOf(String example, Dimension... dimensions) {
        Key.Form<Column> form = of(example, String::strip, (text, scope) -> {
            List<Figure> figures = Forms.figures(text, "", dimensions);
            Dimension dimension =
                    Units.readList(Said.of(text).value(), dimensions).get(0).dimension();
            for (Figure figure : figures) {
                if (!(figure.value() > 0)) {
                    throw new Key.FormException(
                            "\"" + text + "\": figures above 0 are wanted", "Write for example " + example);
                }
            }
            return new Column(dimension, figures);
        });
        return new Measured<>(form, List.of(dimensions));
    }

    /** A quantity of one of several dimensions, without provenance. */
    static Key.Form<Quantity> quantity(String example, Dimension... dimensions) {
        return new Measured<>(
                of(
                        example,
                        text -> {
                            Quantity value = Units.read(text, dimensions);
                            return Units.write(value.si(), Units.metric(value.si(), value.dimension()));
                        },
                        (text, scope) -> Units.read(text, dimensions)),
                List.of(dimensions));
    }

    /** A count, written bare. */
    static Key.Form<Integer> count(String example, int most) {
        return of(example, String::strip, (text, scope) -> {
            String plain = text.strip();
            int count = plain.matches("\\d{1,4}") ? Integer.parseInt(plain) : 0;
            if (!(count >= 1 && count <= most)) {
                throw new Key.FormException(
                        "\"" + text + "\" is no count from 1 to " + most, "Write for example " + example);
            }
            return count;
        });
    }

    /** Any text that is not empty. */
    static Key.Form<String> words(String example) {
        return of(example, String::strip, (text, scope) -> {
            if (text.isBlank()) {
                throw new Key.FormException("it is empty", "Write for example " + example);
            }
            return text.strip();
        });
    }

    /** One of a few words. */
    static <V> Key.Form<V> choice(List<V> values, Function<V, String> word) {
        List<String> known = values.stream().map(word).toList();
        Key.Form<V> form = of(known.get(0), String::strip, (text, scope) -> {
            int index = known.indexOf(text.strip());
            if (index < 0) {
                String near = Words.nearest(text, known)
                        .map(best -> "Did you mean " + best + "?")
                        .orElse("Write one of: " + String.join(", ", known));
                throw new Key.FormException("\"" + text + "\" is not known here", near);
            }
            return values.get(index);
        });
        return new OneOf<>(form, known);
    }

    /** The name of a fluid. */
    static Key.Form<Fluid> fluid() {
        return of("E85 summer", String::strip, (text, scope) -> {
            Fluid own = scope.fluids().get(text.strip());
            if (own != null) {
                return own;
            }
            try {
                return Fluids.find(text);
            } catch (UnknownFluidException unknown) {
                String near = Words.nearest(text.strip(), scope.fluids().keySet())
                        .map(name -> "Or did you mean your own " + name + "?")
                        .orElse("");
                throw new Key.FormException(unknown.getMessage(), near);
            }
        });
    }

    /** A value form: a static reader of another layer, and how it is written. */
    static <V> Key.Form<V> form(String example, Function<String, V> read, Function<V, String> write) {
        return of(
                example,
                text -> {
                    boolean really = text.endsWith(REALLY);
                    String written = write.apply(read.apply(text));
                    return really ? written + REALLY : written;
                },
                (text, scope) -> read.apply(text));
    }

    static <V> Key.Form<V> of(String example, UnaryOperator<String> writer, Reader<V> reader) {
        return new ReaderForm<>(example, writer, reader);
    }

    /** Reads one text. */
    interface Reader<V> {
        V read(String text, Scope scope) throws Key.FormException;
    }

    private record ReaderForm<V>(String example, UnaryOperator<String> writer, Reader<V> reader)
            implements Key.Form<V> {
        @Override
        public String canonical(String text) throws Key.FormException {
            try {
                return writer.apply(text);
            } catch (UnitException wrong) {
                throw new Key.FormException(wrong.message(), wrong.hint());
            }
        }

        @Override
        public V read(String text, Scope scope) throws Key.FormException {
            try {
                return reader.read(text, scope);
            } catch (UnitException wrong) {
                throw new Key.FormException(wrong.message(), wrong.hint());
            } catch (CatalogueException wrong) {
                throw new Key.FormException(wrong.message(), wrong.hint());
            }
        }
    }

    /** A form that is a measure of something. */
    private record Measured<V>(Key.Form<V> form, List<Dimension> dimensions, Dimension named) implements Key.Form<V> {
        Measured(Key.Form<V> form, List<Dimension> dimensions) {
            this(form, dimensions, dimensions.get(0));
        }

        @Override
        public V read(String text, Scope scope) throws Key.FormException {
            return form.read(text, scope);
        }

        @Override
        public String example() {
            return form.example();
        }

        @Override
        public String canonical(String text) throws Key.FormException {
            return form.canonical(text);
        }
    }

    /** A form that takes one of a few words. */
    private record OneOf<V>(Key.Form<V> form, List<String> words) implements Key.Form<V> {
        @Override
        public V read(String text, Scope scope) throws Key.FormException {
            return form.read(text, scope);
        }

        @Override
        public String example() {
            return form.example();
        }

        @Override
        public String canonical(String text) throws Key.FormException {
            return form.canonical(text);
        }
    }

    record NumberForm(Dimension dimension, String unit, double least, double most, String doubt)
            implements Key.Form<Figure> {
        @Override
        public Figure read(String text, Scope scope) throws Key.FormException {
            boolean really = text.endsWith(REALLY);
            Figure figure;
            try {
                figure = Forms.figure(without(REALLY, text), dimension);
            } catch (UnitException wrong) {
                throw new Key.FormException(wrong.message(), wrong.hint());
            }
            Unit shown = Units.unit(unit);
            if (!(figure.value() >= least)) {
                throw new Key.FormException(
                        String.format(Locale.ROOT, "\"%s\" is too low: at least %s", text, Units.write(least, shown)),
                        doubt);
            }
            if (least > 0 ? !(figure.low() > 0) : !(figure.low() >= least)) {
                throw new Key.FormException(
                        String.format(
                                Locale.ROOT, "the low end of \"%s\" is %s", text, Units.write(figure.low(), shown)),
                        "Write a narrower band: this one says nothing");
            }
            if (!(figure.value() <= most) && !really) {
                throw new Key.FormException(
                        String.format(Locale.ROOT, "\"%s\" is more than %s", text, Units.write(most, shown)),
                        doubt + (doubt.endsWith("?") ? " " : ". ") + "If it is so, write " + text + REALLY);
            }
            return figure;
        }

        @Override
        public String canonical(String text) throws Key.FormException {
            try {
                return Forms.given(text, "", dimension).write();
            } catch (UnitException wrong) {
                throw new Key.FormException(wrong.message(), wrong.hint());
            }
        }

        @Override
        public String example() {
            return Units.write(Math.max(least, 0), Units.unit(unit));
        }

        @Override
        public List<Dimension> dimensions() {
            return List.of(dimension);
        }

        @Override
        public String range() {
            Unit shown = Units.unit(unit);
            String most = "up to " + Units.write(this.most, shown) + ", beyond that with \"really\" behind it";
            return Double.isFinite(least) ? "from " + Units.write(least, shown) + " " + most : most;
        }
    }

    private static String without(String ending, String text) {
        return text.endsWith(ending) ? text.substring(0, text.length() - ending.length()) : text;
    }
}
