package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.units.Display;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** What commands on one circuit file take. */
final class FileOptions {
    @Parameters(index = "0", paramLabel = "FILE", description = "Circuit file, YAML or JSON.")
    @SuppressWarnings("NullAway.Init") // required
    String file;

    @Option(
            names = "--case",
            paramLabel = "NAME",
            description = "Only this case; may be given several times. \"this case\" of the file counts as one.")
    List<String> cases = new ArrayList<>();

    @Option(
            names = "--units",
            paramLabel = "metric|us",
            converter = Units.class,
            description =
                    "Units of text and CSV: metric (mm, kPa) or us (in, psi). Default: metric. JSON is always SI.")
    Display units = Display.METRIC;

    @Option(
            names = "--format",
            paramLabel = "text|json|csv",
            converter = Formats.class,
            description = "text to read, json for programs, csv for a spreadsheet. Default: text.")
    Format format = Format.TEXT;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the report to this file, whole or not at all, instead of showing it.")
    @Nullable String out;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    /** What people read flows in: fuel by the hour, the rest by the minute. CSV keeps one unit. */
    Display shown(Circuit circuit) {
        return TradeUnits.of(circuit, units);
    }

    /** What a report is written as. */
    enum Format {
        TEXT("text"),
        JSON("json"),
        CSV("csv");

        private final String word;

        Format(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** Reads the words of --units. */
    static final class Units implements ITypeConverter<Display> {
        @Override
        public Display convert(String value) {
            return word(value, "--units", new Display[] {Display.METRIC, Display.US}, Display::word);
        }
    }

    /** Reads the words of --format. */
    static final class Formats implements ITypeConverter<Format> {
        @Override
        public Format convert(String value) {
            return word(value, "--format", Format.values(), Format::word);
        }
    }

    private static <T> T word(String said, String option, T[] values, Function<T, String> word) {
        List<String> words = new ArrayList<>();
        for (T value : values) {
            if (word.apply(value).equals(said)) {
                return value;
            }
            words.add(word.apply(value));
        }
        throw new TypeConversionException(option + " \"" + said + "\" is none of " + String.join(", ", words) + "."
                + Complaints.meant(said, words));
    }

    /** A message for the reader that ends the command. */
    static CommandLine.ParameterException bad(CommandLine line, String message) {
        return new CommandLine.ParameterException(line, message);
    }
}
