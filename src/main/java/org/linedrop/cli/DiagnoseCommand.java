package org.linedrop.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.DiagnosisReport;
import org.linedrop.study.Diagnosis;
import org.linedrop.study.Diagnosis.Finding;
import org.linedrop.study.Reading;
import org.linedrop.study.Suspect;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop diagnose}. */
@Command(
        name = "diagnose",
        description = {
            "My gauges say this: what is wrong?",
            "Holds measured pressures and flows against the file and ranks single causes: filters "
                    + "clogged, hoses and tubes pinched, pumps off their tables, pressures set otherwise. Says when "
                    + "the readings cannot tell, and which gauge would. With --fit it fits the keys you name "
                    + "instead."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop diagnose src/examples/carburettor-feed.yaml --reading \"pump outlet 30 kPa\""
                    + " --reading \"fine filter inlet 27 kPa\" --reading \"front carb 15 kPa\"",
            "  linedrop diagnose feed.yaml --case idle --readings test-day.txt --fit filter.clog",
            "",
            "A reading names a point (rail), an inlet, outlet, drop or flow of a device (pump outlet), a place behind a"
                    + " part",
            "(behind feed 4) or the flow of a run (feed 216 L/h); +- 5 kPa behind it is its error. A file of readings has"
                    + " one in",
            "each line; what follows # is for you.",
            "Exit codes: 0 nothing wrong or fitted, 1 something is, 2 bad input, 3 the file as written has no answer."
        },
        sortOptions = false)
final class DiagnoseCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(
            names = "--reading",
            paramLabel = "TEXT",
            description = "What a gauge reads: \"rail 310 kPa\". Give it once for each.")
    private List<String> readings = new ArrayList<>();

    @Option(names = "--readings", paramLabel = "FILE", description = "A file with a reading in each line.")
    private @Nullable String file;

    @Option(
            names = "--fit",
            paramLabel = "KEY",
            description = "A key to fit: filter.clog, \"feed 1.bore\". One to three; all of them together.")
    private List<String> fits = new ArrayList<>();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (options.cases.size() > 1) {
            throw FileOptions.bad(spec.commandLine(), "readings are of one case. Name one --case");
        }
        List<String> all = new ArrayList<>(readings);
        all.addAll(lines());
        if (all.isEmpty()) {
            throw FileOptions.bad(
                    spec.commandLine(), "what do the gauges read? Write for example --reading \"rail 310 kPa\"");
        }
        return new FileJob(options, spec.commandLine())
                .answer(
                        (circuit, cases) -> answer(circuit.in(cases.get(0)), all),
                        circuit -> List.of(circuit.caseName()));
    }

    private FileJob.Answer answer(Circuit circuit, List<String> all) {
        try {
            List<Reading> read =
                    all.stream().map(text -> Reading.read(circuit, text)).toList();
            Diagnosis answer = fits.isEmpty()
                    ? Diagnosis.of(circuit, read)
                    : Diagnosis.fit(
                            circuit,
                            read,
                            fits.stream()
                                    .map(path -> Suspect.key(circuit, path))
                                    .toList());
            boolean clear = answer.finding() == Finding.NOTHING_WRONG || answer.finding() == Finding.FITTED;
            return new FileJob.Answer(
                    StudyOptions.text(options, circuit, DiagnosisReport.of(answer, options.shown(circuit))),
                    clear ? 0 : 1);
        } catch (ProblemsException wrong) {
            throw StudyOptions.wrong(spec.commandLine(), wrong);
        } catch (IllegalStateException noAnswer) {
            spec.commandLine().getErr().println(noAnswer.getMessage());
            return new FileJob.Answer("", Runner.NOT_SOLVED);
        } catch (IllegalArgumentException wrong) {
            throw FileOptions.bad(spec.commandLine(), String.valueOf(wrong.getMessage()));
        }
    }

    private List<String> lines() {
        if (file == null) {
            return List.of();
        }
        try {
            return Files.readAllLines(Path.of(file), StandardCharsets.UTF_8).stream()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList();
        } catch (InvalidPathException | IOException e) {
            throw FileOptions.bad(
                    spec.commandLine(), "cannot read the readings in " + file + ". Check its name; it is UTF-8 text");
        }
    }
}
