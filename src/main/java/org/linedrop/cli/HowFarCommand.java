package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.HowFarReport;
import org.linedrop.report.Listing;
import org.linedrop.study.HowFar;
import org.linedrop.study.Knob;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop how-far}. */
@Command(
        name = "how-far",
        description = {
            "How far one figure can go while every limit holds, or the figure that reaches a target.",
            "The longest run, the highest power or temperature, the lowest volts, the least pump; a "
                    + "target is a pressure, a flow or an equal split. Without --key: power, temperature, pumps and "
                    + "lengths, one after the other."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop how-far src/examples/fuel-feed-38.yaml --key engine.power",
            "  linedrop how-far src/examples/fuel-feed-516.yaml --key \"feed 4.length\" --case \"full load\"",
            "  linedrop how-far src/examples/fuel-feed-38.yaml --key pump.table",
            "  linedrop how-far src/examples/fuel-feed-516.yaml --key \"feed 4.bore\" --target \"rail pressure 375 kPa\"",
            "  linedrop how-far src/examples/twin-rails.yaml --key \"left leg 1.length\""
                    + " --target \"left rail pressure equal to right rail pressure\"",
            "",
            "A key is an element and one of its keys as the file writes them, with a full stop between; a key of the",
            "file itself stands alone: temperature. pump.table is a factor on the flows of a pump's tables. Without",
            "--case all cases count and the file's own value is moved; with one, the value in that case.",
            "Exit codes: 0 it holds now (or the target was found), 1 not, 2 bad input."
        },
        sortOptions = false)
final class HowFarCommand implements Callable<Integer> {
    @Option(names = "--key", paramLabel = "KEY", description = "What to move: \"feed 4.length\", engine.power.")
    private List<String> keys = new ArrayList<>();

    @Option(
            names = "--target",
            paramLabel = "FIGURE",
            description = "What to reach in place of the limits: \"rail pressure 375 kPa\", \"feed flow 200 L/h\",\n"
                    + "\"left leg flow equal to right leg flow\".")
    private String target = "";

    @Mixin
    private final FileOptions options = new FileOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!target.isEmpty() && options.cases.size() > 1) {
            throw FileOptions.bad(spec.commandLine(), "a target is reached in one case. Give --case once");
        }
        if (!target.isEmpty() && keys.isEmpty()) {
            throw FileOptions.bad(
                    spec.commandLine(), "what may be moved to reach it? Add --key, for example --key \"feed 4.bore\"");
        }
        return new FileJob(options, spec.commandLine())
                .answer(
                        this::answer,
                        circuit -> target.isEmpty()
                                ? circuit.caseNames()
                                : circuit.caseNames().subList(0, 1));
    }

    private FileJob.Answer answer(Circuit circuit, List<String> cases) {
        List<String> paths = keys.isEmpty() ? usual(circuit) : keys;
        List<HowFar> answers = new ArrayList<>();
        for (String path : paths) {
            answers.add(HowFar.of(circuit, new HowFar.Question(path, cases, target)));
        }
        Listing<HowFar> listing = HowFarReport.of(answers, options.shown(circuit));
        boolean good = answers.stream()
                .allMatch(answer ->
                        target.isEmpty() ? answer.holdsNow() : answer.nearest().isPresent());
        return new FileJob.Answer(StudyOptions.text(options, circuit, listing), good ? 0 : 1);
    }

    /** What people ask about: power, heat, pumps, lengths. */
    private static List<String> usual(Circuit circuit) {
        return Knob.all(circuit).stream()
                .filter(knob -> knob.said()
                        && switch (knob.key()) {
                            case "power", "table", "runs at", "moves" -> true;
                            case "flow" -> knob.subject().equals("engine");
                            case "temperature" -> knob.subject().isEmpty();
                            case "length" -> true;
                            default -> false;
                        })
                .map(Knob::path)
                .toList();
    }
}
