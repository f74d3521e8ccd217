package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Explanation;
import org.linedrop.report.ExplainReport;
import org.linedrop.result.Result;
import org.linedrop.solver.Outcome;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop explain}. */
@Command(
        name = "explain",
        description = {
            "Takes one row apart: every figure, coefficient and equation that its pressure drop is made of, and how far"
                    + " it is known.",
            "Takes the case as written, unless --case says otherwise. There is no CSV: a worked example is no table."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop explain feed.yaml --row \"feed 6.3\"",
            "  linedrop explain feed.yaml --row \"supply entry\" --case \"hot idle\" --units us",
            "",
            "Exit codes: 0 explained, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class ExplainCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(
            names = "--row",
            required = true,
            paramLabel = "ROW",
            description = "Run and row as solve numbers them, for example \"feed 6.3\"; \"supply entry\" at a tank.")
    @SuppressWarnings("NullAway.Init") // required
    private String row;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (options.format == FileOptions.Format.CSV) {
            throw FileOptions.bad(
                    spec.commandLine(), "--format \"csv\": explain writes text or json. Write one of them");
        }
        return new FileJob(options, spec.commandLine()).answer(this::explained, circuit -> List.of(circuit.caseName()));
    }

    private FileJob.Answer explained(Circuit circuit, List<String> cases) {
        List<Explanation> explanations = new ArrayList<>();
        int code = 0;
        for (String name : cases) {
            Result result = Result.of(circuit.in(name));
            if (result.outcome() != Outcome.CONVERGED) {
                spec.commandLine()
                        .getErr()
                        .println("NOT SOLVED: case " + name + ": "
                                + result.outcome().word() + ". " + result.detail());
                code = Runner.NOT_SOLVED;
            } else {
                try {
                    explanations.add(result.explain(row));
                } catch (IllegalArgumentException unknown) {
                    throw FileOptions.bad(spec.commandLine(), "case " + name + ": " + unknown.getMessage());
                }
            }
        }
        if (explanations.isEmpty()) {
            return new FileJob.Answer("", code);
        }
        String text = options.format == FileOptions.Format.JSON
                ? ExplainReport.json(explanations)
                : ExplainReport.text(explanations, options.shown(circuit));
        return new FileJob.Answer(text, code);
    }
}
