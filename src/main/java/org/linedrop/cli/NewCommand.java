package org.linedrop.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code linedrop new}. */
@Command(
        name = "new",
        description = {
            "Writes a commented circuit file to start from: replace what is invented by what is on your vehicle.",
            "feed: one line from a tank to a rail. twin: two rails and a return. oil: a cooler with a thermostat.",
            "coolant: pump, thermostat and radiator. A file that is there is never written over."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop new feed                    Shows it.",
            "  linedrop new oil --out oil.yaml      Writes it; then: linedrop check oil.yaml",
            "",
            "Exit codes: 0 written, 2 bad input."
        },
        sortOptions = false)
final class NewCommand implements Callable<Integer> {
    /** The starter files, by the word of the command. */
    static final List<String> KINDS = List.of("feed", "twin", "oil", "coolant");

    @Parameters(index = "0", paramLabel = "feed|twin|oil|coolant", description = "What kind of circuit.")
    @SuppressWarnings("NullAway.Init") // required
    private String kind;

    @Mixin
    private final TextOptions options = new TextOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return options.print(
                spec.commandLine(), starter(TextOptions.oneOf(spec.commandLine(), "new", kind, KINDS)), false);
    }

    /** The starter file of a kind. */
    static String starter(String kind) {
        String name = "new-" + kind + ".yaml";
        try (InputStream file = NewCommand.class.getResourceAsStream(name)) {
            if (file == null) {
                throw new IllegalStateException("the library has no " + name);
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
