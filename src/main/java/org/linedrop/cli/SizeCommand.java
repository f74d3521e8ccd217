package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.PriceForm;
import org.linedrop.report.SizeReport;
import org.linedrop.study.SizeAnswer;
import org.linedrop.study.SizeQuestion;
import org.linedrop.study.SizeQuestion.Objective;
import org.linedrop.study.SizeSearch;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop size}. */
@Command(
        name = "size",
        description = {
            "The smallest, lightest or cheapest set of hose and tube sizes that holds every limit in " + "every case.",
            "With the adapters it takes, the limit that decides, and the next best sets."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop size src/examples/fuel-feed-516.yaml --run feed",
            "  linedrop size feed.yaml --price-form --out mine.csv    then fill in what you know, and:",
            "  linedrop size feed.yaml --by cheapest --prices mine.csv",
            "",
            "The form has a line for all that any of the sizes takes, under the names that kit prints. A set whose price"
                    + " is not known whole is not chosen.",
            "Exit codes: 0 a set was found, 1 none holds, 2 bad input."
        },
        sortOptions = false)
final class SizeCommand implements Callable<Integer> {
    @Mixin
    private final FileOptions options = new FileOptions();

    @Option(
            names = "--by",
            paramLabel = "smallest|lightest|cheapest",
            description = "What is to be least: the fluid in the lines, their weight, or the prices given. Default:"
                    + " smallest.")
    private String by = "smallest";

    @Option(
            names = "--run",
            paramLabel = "NAME",
            description = "A run whose size may change; give it once for each. Default: all.")
    private List<String> runs = new ArrayList<>();

    @Option(
            names = "--family",
            paramLabel = "NAME",
            description = "A hose family to choose from; give it once for each. Default: the family each run has.")
    private List<String> families = new ArrayList<>();

    @Option(
            names = "--dash",
            paramLabel = "SIZES",
            description = "Sizes to choose from: \"6 8 10\". Default: two under to three over what a run has.")
    private String dash = "";

    @Mixin
    private final PriceOptions prices = new PriceOptions();

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "How many sets are looked at before the answer is no longer proven. Default: 5000.")
    private int most = SizeQuestion.USUAL_MOST;

    @Option(names = "--next", paramLabel = "N", description = "How many further sets to show. Default: 2.")
    private int next = 2;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (!options.cases.isEmpty()) {
            throw bad("size holds the limits in every case of the file: leave --case out");
        }
        if (prices.form && (prices.list != null || options.format != FileOptions.Format.TEXT)) {
            throw bad("--price-form writes an empty form, always as CSV. Leave --prices and --format out");
        }
        if (options.out != null && options.out.equals(prices.list)) {
            throw bad("--out " + options.out + " is the list of --prices itself. Name another file");
        }
        try {
            SizeQuestion question = question();
            return new FileJob(options, spec.commandLine())
                    .answer((circuit, cases) -> answer(circuit, question), Circuit::caseNames);
        } catch (ProblemsException wrong) {
            return prices.complain(spec.commandLine(), wrong);
        }
    }

    private CommandLine.ParameterException bad(String message) {
        return FileOptions.bad(spec.commandLine(), message);
    }

    private FileJob.Answer answer(Circuit circuit, SizeQuestion question) {
        try {
            for (String family : question.families()) {
                circuit.catalogue().family(family);
            }
            if (prices.form) {
                return new FileJob.Answer(PriceForm.empty(SizeSearch.items(circuit, question), options.units), 0);
            }
            SizeAnswer answer = SizeSearch.of(circuit, question, new ProgressLine("sets"));
            return new FileJob.Answer(
                    StudyOptions.text(options, circuit, SizeReport.of(answer, options.shown(circuit))),
                    answer.sets().isEmpty() ? 1 : 0);
        } catch (ProblemsException wrong) {
            return new FileJob.Answer("", prices.complain(spec.commandLine(), wrong));
        } catch (IllegalArgumentException wrong) {
            throw bad(String.valueOf(wrong.getMessage()));
        }
    }

    private SizeQuestion question() {
        List<Integer> dashes = new ArrayList<>();
        for (String word : dash.isBlank() ? new String[0] : dash.strip().split("[ ,]+", -1)) {
            if (!word.matches("-?\\d{1,2}")) {
                throw bad("dash \"" + word + "\" is no dash size. Write for example --dash \"6 8 10\"");
            }
            dashes.add(Integer.parseInt(word.replace("-", "")));
        }
        if (most < 1 || next < 0) {
            throw bad("--most must be at least 1 and --next at least 0");
        }
        Objective asked = objective();
        if (asked == Objective.CHEAPEST && prices.list == null && !prices.form) {
            throw bad("--by cheapest needs your prices: write a form with --price-form --out mine.csv, fill it in, and"
                    + " give it as --prices mine.csv");
        }
        return new SizeQuestion(asked, runs, families, dashes, prices.read(spec.commandLine()), most, next);
    }

    private Objective objective() {
        List<String> words = new ArrayList<>();
        for (Objective each : Objective.values()) {
            if (each.word().equals(by)) {
                return each;
            }
            words.add(each.word());
        }
        throw bad("--by \"" + by + "\" is none of " + String.join(", ", words) + "." + Complaints.meant(by, words));
    }
}
