package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.BandReport;
import org.linedrop.study.BandQuestion;
import org.linedrop.study.ToleranceBand;
import org.linedrop.units.Dimension;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop band}. */
@Command(
        name = "band",
        description = {
            "What all tolerances together make of the limits.",
            "Bores, roughness, laws, fluid and pump are drawn from their bands: margins at 5, 50 and 95 "
                    + "%%, the probability that each limit holds, and what spreads it most. Takes the case as "
                    + "written, unless --case or --all says otherwise."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop band src/examples/fuel-feed-38.yaml",
            "  linedrop band feed.yaml --all --pump \"8 %%\" --points 2048 --format csv --out band.csv",
            "",
            "Exit codes: 0 every limit holds in 95 %% or more, 1 some limit does not, 2 bad input."
        },
        sortOptions = false)
final class BandCommand implements Callable<Integer> {
    private static final double ENOUGH = 0.95;

    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(names = "--all", description = "All cases of the file.")
    private boolean all;

    @Option(names = "--points", paramLabel = "N", description = "Sets of values in each case. Default: 512.")
    private int points = BandQuestion.USUAL_POINTS;

    @Option(
            names = "--friction",
            paramLabel = "SHARE",
            description = "Friction within this of its law. Default: 10 %%.")
    private String friction = "10 %";

    @Option(
            names = "--local",
            paramLabel = "SHARE",
            description = "Losses of ends, fittings and bends within this of their laws. Default: 25 %%.")
    private String local = "25 %";

    @Option(names = "--pump", paramLabel = "SHARE", description = "Pumps within this of their tables. Default: 5 %%.")
    private String pump = "5 %";

    @Option(names = "--threads", paramLabel = "N", description = "Threads; the answer is the same. Default: all.")
    private int threads;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
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
        BandQuestion question;
        try {
            question = new BandQuestion(
                    cases, points, share("--friction", friction), share("--local", local), share("--pump", pump));
        } catch (IllegalArgumentException wrong) {
            throw FileOptions.bad(spec.commandLine(), String.valueOf(wrong.getMessage()));
        }
        ToleranceBand band = ToleranceBand.of(circuit, question, used, new ProgressLine("sets"));
        boolean enough =
                band.rows().stream().allMatch(row -> Double.isNaN(row.probability()) || row.probability() >= ENOUGH);
        return new FileJob.Answer(StudyOptions.text(options, circuit, BandReport.of(band)), enough ? 0 : 1);
    }

    private double share(String option, String text) {
        return StudyOptions.read(spec.commandLine(), option, text, Dimension.RATIO);
    }
}
