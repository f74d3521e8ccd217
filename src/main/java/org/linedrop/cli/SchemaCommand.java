package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.report.SchemaReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code linedrop schema}. */
@Command(
        name = "schema",
        description = {
            "Prints the JSON Schema (draft 2020-12) of circuit files, of catalogue files or of results.",
            "An editor that is given it completes and explains keys; a program checks what it hands over."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop schema circuit --out circuit.schema.json",
            "  linedrop schema catalogue",
            "  linedrop schema result",
            "",
            "Exit codes: 0 printed, 2 bad input."
        },
        sortOptions = false)
final class SchemaCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "circuit|catalogue|result",
            description = "circuit and catalogue are files to write, result is what --format json prints.")
    @SuppressWarnings("NullAway.Init") // required
    private String what;

    @Mixin
    private final TextOptions options = new TextOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return options.print(spec.commandLine(), schema(), true);
    }

    private String schema() {
        return switch (TextOptions.oneOf(
                spec.commandLine(), "schema", what, List.of("circuit", "catalogue", "result"))) {
            case "circuit" -> SchemaReport.circuit();
            case "catalogue" -> SchemaReport.catalogue();
            default -> SchemaReport.result();
        };
    }
}
