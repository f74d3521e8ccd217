package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.GaugeReport;
import org.linedrop.study.GaugePlan;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code linedrop gauges}. */
@Command(
        name = "gauges",
        description = {
            "What a gauge should read at every named point, and at the inlet and outlet of every device, in each case:"
                    + " the list to take to a test day. Behind each reading, what the bores sold make of it.",
            "A point gets a name of its own where two runs meet at a point of kind joint."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop gauges feed.yaml",
            "  linedrop gauges feed.yaml --case \"hot idle\" --units us",
            "  linedrop gauges feed.yaml --format csv --out gauges.csv",
            "",
            "\"rail 376.2 (374.9 to 377.0)\" reads: 376.2 at usual bores; with the narrowest hose and ends sold under",
            "their names 374.9, with the widest 377.0. A gauge outside of that says that something else is wrong.",
            "",
            "CSV has a line for each place and case.",
            "Exit codes: 0 solved, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class GaugesCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return new FileJob(options, spec.commandLine()).answer(this::plan, Circuit::caseNames);
    }

    private FileJob.Answer plan(Circuit circuit, List<String> cases) {
        GaugePlan plan = GaugePlan.of(circuit, cases);
        String text = switch (options.format) {
            case TEXT -> GaugeReport.text(plan, circuit, options.shown(circuit));
            case JSON -> GaugeReport.json(plan, circuit);
            case CSV -> GaugeReport.csv(plan, circuit, options.units);
        };
        boolean solved = plan.cases().stream().allMatch(GaugePlan.Case::solved);
        return new FileJob.Answer(text, solved ? 0 : Runner.NOT_SOLVED);
    }
}
