package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.VaryReport;
import org.linedrop.study.Knob;
import org.linedrop.study.Vary;
import org.linedrop.study.VaryQuestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop vary}. */
@Command(
        name = "vary",
        description = {
            "One or two keys of the file over a range: what is delivered, and which limits hold, at each " + "value.",
            "Takes the case as written, unless --case or --all says otherwise."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop vary src/examples/fuel-feed-38.yaml --key engine.power --from \"400 hp\" --to \"700 hp\""
                    + " --steps 7",
            "  linedrop vary feed.yaml --key \"feed 1.length\" --from \"0.3 m\" --to \"2 m\" --steps 18"
                    + " --key temperature --from \"0 C\" --to \"60 C\" --steps 13 --format csv --out map.csv",
            "",
            "A key is named by element and key: \"feed 1.length\", \"pump.runs at\", engine.power, temperature.",
            "Exit codes: 0 all was solved, 2 bad input, 3 some variant was not solved."
        },
        sortOptions = false)
final class VaryCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(names = "--all", description = "All cases of the file.")
    private boolean all;

    @Option(
            names = "--key",
            required = true,
            paramLabel = "KEY",
            description = "The key to vary; a second one with a --from, --to and --steps of its own.")
    private List<String> keys = new ArrayList<>();

    @Option(names = "--from", required = true, paramLabel = "VALUE", description = "Its first value, with unit.")
    private List<String> from = new ArrayList<>();

    @Option(names = "--to", required = true, paramLabel = "VALUE", description = "Its last value, with unit.")
    private List<String> to = new ArrayList<>();

    @Option(names = "--steps", required = true, paramLabel = "N", description = "How many values, both ends counted.")
    private List<Integer> steps = new ArrayList<>();

    @Option(names = "--threads", paramLabel = "N", description = "Threads; the answer is the same. Default: all.")
    private int threads;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (keys.size() > 2) {
            throw FileOptions.bad(
                    spec.commandLine(), "one or two keys can be varied, but --key is there " + keys.size() + " times");
        }
        if (from.size() != keys.size() || to.size() != keys.size() || steps.size() != keys.size()) {
            throw FileOptions.bad(spec.commandLine(), "each --key needs a --from, a --to and --steps of its own");
        }
        if (all && !options.cases.isEmpty()) {
            throw FileOptions.bad(spec.commandLine(), "--all and --case do not go together. Write one of them");
        }
        int used = StudyOptions.threads(spec.commandLine(), threads);
        return new FileJob(options, spec.commandLine())
                .answer(
                        (circuit, cases) -> answer(circuit, cases, used),
                        circuit -> all ? circuit.caseNames() : List.of(circuit.caseName()));
    }

    private FileJob.Answer answer(Circuit circuit, List<String> cases, int used) {
        try {
            List<VaryQuestion.Axis> axes = new ArrayList<>();
            for (int i = 0; i < keys.size(); i++) {
                Circuit inCase = circuit.in(cases.get(0));
                Knob knob = Knob.of(inCase, keys.get(i));
                axes.add(VaryQuestion.Axis.of(
                        inCase,
                        keys.get(i),
                        StudyOptions.read(spec.commandLine(), "--from", from.get(i), knob.dimension()),
                        StudyOptions.read(spec.commandLine(), "--to", to.get(i), knob.dimension()),
                        steps.get(i)));
            }
            Vary answer = Vary.of(circuit, new VaryQuestion(axes, cases), used, new ProgressLine("variants"));
            boolean solved = answer.rows().stream().allMatch(row -> row.status().equals("converged"));
            return new FileJob.Answer(
                    StudyOptions.text(options, circuit, VaryReport.of(answer)), solved ? 0 : Runner.NOT_SOLVED);
        } catch (ProblemsException wrong) {
            throw StudyOptions.wrong(spec.commandLine(), wrong);
        } catch (IllegalArgumentException wrong) {
            throw FileOptions.bad(spec.commandLine(), String.valueOf(wrong.getMessage()));
        }
    }
}
