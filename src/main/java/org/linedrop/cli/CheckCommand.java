package org.linedrop.cli;

import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.CsvReport;
import org.linedrop.report.JsonReport;
import org.linedrop.report.TextReport;
import org.linedrop.study.FeedCheck;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code linedrop check}. */
@Command(
        name = "check",
        description = {
            "Says whether the limits hold in every case, which part costs most, and what would mend it.",
            "Prints the answer first, then cases, limits, and the rows of the worst case."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop check feed.yaml",
            "  linedrop check feed.yaml --case \"hot idle\" --units us",
            "  linedrop check feed.yaml --format json --out feed.json",
            "",
            "CSV has a line for each limit and case.",
            "Exit codes: 0 all limits hold, 1 a limit is broken or unsure, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return new FileJob(options, spec.commandLine()).run(Circuit::caseNames, FeedCheck::of, this::report);
    }

    private String report(FeedCheck check) {
        return switch (options.format) {
            case TEXT -> TextReport.check(check, options.units);
            case JSON -> JsonReport.text(check);
            case CSV -> CsvReport.limits(check, options.units);
        };
    }
}
