package org.linedrop.cli;

import java.io.IOException;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.CatalogueException;
import org.linedrop.fluid.UnknownFluidException;
import org.linedrop.report.Listing;
import org.linedrop.units.Display;
import org.linedrop.units.UnitException;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What commands that list something take. */
final class ListOptions {
    @Option(
            names = "--units",
            paramLabel = "metric|us",
            converter = FileOptions.Units.class,
            description =
                    "Units of text and CSV: metric (mm, kPa, C) or us (in, psi, F). Default: metric. JSON is always"
                            + " SI.")
    Display units = Display.METRIC;

    @Option(
            names = "--format",
            paramLabel = "text|json|csv",
            converter = FileOptions.Formats.class,
            description = "text to read, json for programs, csv for a spreadsheet. Default: text.")
    FileOptions.Format format = FileOptions.Format.TEXT;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write the list to this file, whole or not at all, instead of showing it.")
    @Nullable String out;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    /**
     * Prints a list, or says what of the options is wrong.
     *
     * @param line    the command
     * @param listing looks up what was asked for
     * @return the exit code
     */
    int print(CommandLine line, Supplier<Listing<?>> listing) {
        return print(line, listing, display -> display);
    }

    /** The same with the units that people read flows in; CSV keeps one unit. */
    int print(CommandLine line, Supplier<Listing<?>> listing, UnaryOperator<Display> shown) {
        try {
            OutFile file = out == null ? null : OutFile.of(out, null);
            Listing<?> list = listing.get();
            String text = switch (format) {
                case TEXT -> list.text(shown.apply(units));
                case JSON -> list.json();
                case CSV -> list.csv(units);
            };
            if (file == null) {
                line.getOut().print(text);
                line.getOut().flush();
            } else {
                file.write(text);
            }
            return 0;
        } catch (CatalogueException | UnknownFluidException | UnitException wrong) {
            throw FileOptions.bad(line, String.valueOf(wrong.getMessage()));
        } catch (OutFile.Trouble trouble) {
            throw FileOptions.bad(line, String.valueOf(trouble.getMessage()));
        } catch (IOException e) {
            throw FileOptions.bad(line, "cannot write " + out + ": " + e.getMessage());
        }
    }
}
