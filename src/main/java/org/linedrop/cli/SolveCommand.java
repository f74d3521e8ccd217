package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.CsvReport;
import org.linedrop.report.JsonReport;
import org.linedrop.report.TextReport;
import org.linedrop.study.FeedCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop solve}. */
@Command(
        name = "solve",
        description = {
            "Solves the circuit and prints every row of every line: bore, speed, and where the pressure goes.",
            "Takes the case as written, unless --case or --all says otherwise."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop solve feed.yaml",
            "  linedrop solve feed.yaml --case launch --case \"hot idle\"",
            "  linedrop solve feed.yaml --all --format csv --out rows.csv",
            "",
            "CSV has a line for each row and case.",
            "Exit codes: 0 all limits hold, 1 a limit is broken or unsure, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class SolveCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(names = "--all", description = "All cases of the file.")
    private boolean all;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (all && !options.cases.isEmpty()) {
            throw FileOptions.bad(spec.commandLine(), "--all and --case do not go together. Write one of them");
        }
        return new FileJob(options, spec.commandLine()).run(this::usual, FeedCheck::withoutDraws, this::report);
    }

    private List<String> usual(Circuit circuit) {
        return all ? circuit.caseNames() : List.of(circuit.caseName());
    }

    private String report(FeedCheck check) {
        return switch (options.format) {
            case TEXT -> TextReport.solve(check, options.units);
            case JSON -> JsonReport.text(check);
            case CSV -> CsvReport.rows(check, options.units);
        };
    }
}
