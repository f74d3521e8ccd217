package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.linedrop.circuit.TradeUnits;
import org.linedrop.fact.ProblemsException;
import org.linedrop.fluid.Fluids;
import org.linedrop.report.CompareReport;
import org.linedrop.study.LinerComparison;
import org.linedrop.study.LinerQuestion;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop compare}. */
@Command(
        name = "compare",
        description = {
            "Rubber or PTFE at this dash size? The same made-up hose in several families, side by side.",
            "Bore, loss, what the bores sold make of it, and whether the liner stands the fluid. The "
                    + "first family is what the others are compared with.",
            "It takes no file. In a circuit of your own ask by a case: PTFE: {feed 1: {hose: race PTFE -6}}"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop compare --fluid \"E85 summer\" --temperature \"40 C\" --flow \"216 L/h\" --length \"1 m\""
                    + " --ends \"straight to 90\" --dash \"6 8 10\"",
            "  linedrop compare --fluid \"engine oil 15W-50\" --temperature \"110 C\" --flow \"45 L/min\" --length \"2 m\""
                    + " --ends \"90 to 45\" --dash 12 --family \"race rubber\" --family \"race PTFE\""
        },
        sortOptions = false)
final class CompareCommand implements Callable<Integer> {
    @Option(names = "--fluid", required = true, paramLabel = "NAME", description = "What flows: \"E85 summer\".")
    @SuppressWarnings("NullAway.Init") // required
    private String fluid;

    @Option(names = "--temperature", required = true, paramLabel = "T", description = "Its temperature: \"40 C\".")
    @SuppressWarnings("NullAway.Init") // required
    private String temperature;

    @Option(names = "--flow", required = true, paramLabel = "FLOW", description = "The flow: \"216 L/h\".")
    @SuppressWarnings("NullAway.Init") // required
    private String flow;

    @Option(names = "--length", paramLabel = "LENGTH", description = "Length made up. Default: 1 m.")
    private String length = "1 m";

    @Option(names = "--ends", paramLabel = "ENDS", description = "Its two ends, or none. Default: straight to 90.")
    private String ends = "straight to 90";

    @Option(names = "--dash", paramLabel = "SIZES", description = "Dash sizes: \"6 8 10\". Default: 4 6 8 10 12 16 20.")
    private String dash = "4 6 8 10 12 16 20";

    @Option(
            names = "--family",
            paramLabel = "NAME",
            description = "A hose family; give it once for each. Default: race rubber, MIL-H-8794, MIL-H-8788, race"
                    + " PTFE, AS1946, true-size PTFE.")
    private List<String> families = new ArrayList<>();

    @Mixin
    private final ListOptions options = new ListOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return options.print(
                spec.commandLine(),
                () -> CompareReport.of(answer(), options.units),
                display -> TradeUnits.of(Fluids.find(fluid), display));
    }

    private LinerComparison answer() {
        try {
            return LinerComparison.of(new LinerQuestion(
                    fluid,
                    temperature,
                    flow,
                    length,
                    ends,
                    dashes(),
                    families.isEmpty() ? LinerQuestion.USUAL_FAMILIES : families));
        } catch (ProblemsException wrong) {
            String message = wrong.problems().get(0).line();
            throw FileOptions.bad(spec.commandLine(), message.replaceFirst("^line 1: ", ""));
        }
    }

    private List<Integer> dashes() {
        List<Integer> sizes = new ArrayList<>();
        for (String word : dash.strip().split("[ ,]+", -1)) {
            if (!word.matches("-?\\d{1,2}(AN)?")) {
                throw FileOptions.bad(
                        spec.commandLine(),
                        "dash \"" + word + "\" is no dash size. Write for example --dash \"6 8 10\"");
            }
            sizes.add(Integer.parseInt(word.replace("-", "").replace("AN", "")));
        }
        return sizes;
    }
}
