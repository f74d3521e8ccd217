package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.io.CircuitWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code linedrop write}. */
@Command(
        name = "write",
        description = {
            "Writes the circuit file again as linedrop reads it: metric units, one spelling, keys in one order.",
            "Nothing is solved. Comments are not kept; sections used with a prefix are written out, and hoses of catalogue"
                    + " files beside the file are written into it, so that it stands alone."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop write feed.yaml                                  Shows it.",
            "  linedrop write feed.yaml --format json --out feed.json    The same circuit as JSON.",
            "",
            "Exit codes: 0 written, 2 bad input."
        },
        sortOptions = false)
final class WriteCommand implements Callable<Integer> {
    @Parameters(index = "0", paramLabel = "FILE", description = "Circuit file, YAML or JSON.")
    @SuppressWarnings("NullAway.Init") // required
    private String circuitFile;

    @Option(
            names = "--format",
            paramLabel = "yaml|json",
            description = "yaml to read and edit, json for programs. Default: yaml.")
    private String format = "yaml";

    @Mixin
    private final TextOptions options = new TextOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<String> known = List.of("yaml", "json");
        if (!known.contains(format)) {
            throw FileOptions.bad(
                    spec.commandLine(),
                    "--format \"" + format + "\" is none of yaml, json." + Complaints.meant(format, known));
        }
        FileOptions file = new FileOptions();
        file.file = circuitFile;
        file.out = options.out;
        return new FileJob(file, spec.commandLine())
                .write(circuit ->
                        format.equals("json") ? CircuitWriter.writeJson(circuit) : CircuitWriter.write(circuit));
    }
}
