package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.Circuit;
import org.linedrop.report.SizeReport;
import org.linedrop.study.SizeAnswer;
import org.linedrop.study.SizeQuestion;
import org.linedrop.study.SizeQuestion.Objective;
import org.linedrop.study.SizeQuestion.Price;
import org.linedrop.study.SizeSearch;
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
            "  linedrop size feed.yaml --by cheapest --price \"hose -6=18\" --price \"hose -8=22\" --price end=14"
                    + " --price tube=9 --price adapter=8 --price bulkhead=7",
            "",
            "Prices: hose and tube by the metre, ends and fittings by the piece; \"hose -8\" wins over \"hose\".",
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

    @Option(
            names = "--price",
            paramLabel = "ITEM=AMOUNT",
            description = "What a thing costs, in your money: \"hose -8=22\". Give it once for each.")
    private List<String> prices = new ArrayList<>();

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
            throw FileOptions.bad(
                    spec.commandLine(), "size holds the limits in every case of the file: leave --case out");
        }
        SizeQuestion question = question();
        return new FileJob(options, spec.commandLine())
                .answer((circuit, cases) -> answer(circuit, question), Circuit::caseNames);
    }

    private FileJob.Answer answer(Circuit circuit, SizeQuestion question) {
        try {
            for (String family : question.families()) {
                circuit.catalogue().family(family);
            }
            SizeAnswer answer = SizeSearch.of(circuit, question, new ProgressLine("sets"));
            return new FileJob.Answer(
                    StudyOptions.text(options, SizeReport.of(answer, options.units)),
                    answer.sets().isEmpty() ? 1 : 0);
        } catch (IllegalArgumentException wrong) {
            throw FileOptions.bad(spec.commandLine(), String.valueOf(wrong.getMessage()));
        }
    }

    private SizeQuestion question() {
        List<Integer> dashes = new ArrayList<>();
        for (String word : dash.isBlank() ? new String[0] : dash.strip().split("[ ,]+", -1)) {
            if (!word.matches("-?\\d{1,2}")) {
                throw FileOptions.bad(
                        spec.commandLine(),
                        "dash \"" + word + "\" is no dash size. Write for example --dash \"6 8 10\"");
            }
            dashes.add(Integer.parseInt(word.replace("-", "")));
        }
        if (most < 1 || next < 0) {
            throw FileOptions.bad(spec.commandLine(), "--most must be at least 1 and --next at least 0");
        }
        return new SizeQuestion(objective(), runs, families, dashes, prices(), most, next);
    }

    private Objective objective() {
        List<String> words = new ArrayList<>();
        for (Objective each : Objective.values()) {
            if (each.word().equals(by)) {
                return each;
            }
            words.add(each.word());
        }
        throw FileOptions.bad(
                spec.commandLine(),
                "--by \"" + by + "\" is none of " + String.join(", ", words) + "." + Complaints.meant(by, words));
    }

    private List<Price> prices() {
        List<Price> read = new ArrayList<>();
        for (String price : prices) {
            int cut = price.lastIndexOf('=');
            String amount = price.substring(cut + 1).strip();
            if (cut < 1 || !amount.matches("\\d{1,9}(\\.\\d{1,9})?")) {
                throw FileOptions.bad(
                        spec.commandLine(),
                        "--price \"" + price + "\" is no price. Write for example --price \"hose -8=22.50\"");
            }
            read.add(new Price(price.substring(0, cut).strip(), Double.parseDouble(amount)));
        }
        return read;
    }
}
