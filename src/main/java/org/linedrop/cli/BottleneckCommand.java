package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.BottleneckReport;
import org.linedrop.report.Listing;
import org.linedrop.report.SensitivityReport;
import org.linedrop.solver.Outcome;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import org.linedrop.study.Sensitivities;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop bottleneck}. */
@Command(
        name = "bottleneck",
        description = {
            "Where the loss sits, by the thing you would change, and what one size up of each gives.",
            "A hose goes with its ends, a tube with its adapters; one size up is solved; the bore that is "
                    + "worth measuring first is named. Without --case: the worst case."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop bottleneck src/examples/fuel-feed-516.yaml",
            "  linedrop bottleneck src/examples/fuel-feed-516.yaml --case \"low volts\" --units us",
            "  linedrop bottleneck src/examples/fuel-feed-516.yaml --sensitivities --format csv",
            "",
            "Exit codes: 0 answered, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class BottleneckCommand implements Callable<Integer> {
    @Option(
            names = "--sensitivities",
            description = "Instead: what a small step of every key does to every pressure, flow and limit.")
    private boolean sensitivities;

    @Mixin
    private final FileOptions options = new FileOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (options.cases.size() > 1) {
            throw FileOptions.bad(spec.commandLine(), "one case at a time. Give --case once");
        }
        return new FileJob(options, spec.commandLine()).answer(this::answer, Circuit::caseNames);
    }

    private FileJob.Answer answer(Circuit circuit, List<String> cases) {
        FeedCheck check = FeedCheck.withoutDraws(circuit, cases);
        CaseCheck worst = BottleneckReport.worst(check);
        if (worst.result().outcome() != Outcome.CONVERGED) {
            return new FileJob.Answer(worst.sentence(options.shown(circuit)) + "\n", Runner.NOT_SOLVED);
        }
        if (sensitivities) {
            Sensitivities answer = Sensitivities.of(worst.result().circuit());
            return new FileJob.Answer(
                    switch (options.format) {
                        case TEXT -> SensitivityReport.text(answer, options.shown(circuit));
                        case JSON -> SensitivityReport.pairs(answer).json();
                        case CSV -> SensitivityReport.pairs(answer).csv(options.units);
                    },
                    0);
        }
        Listing<?> listing = BottleneckReport.of(check, options.shown(circuit));
        return new FileJob.Answer(StudyOptions.text(options, circuit, listing), 0);
    }
}
