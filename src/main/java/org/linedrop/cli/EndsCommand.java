package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.HoseSize;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.EndReport;
import org.linedrop.report.Listing;
import org.linedrop.study.EndCosts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop catalogue ends}. */
@Command(
        name = "ends",
        description = {
            "Hose ends by family, size and angle: nipple and through bores.",
            "With --fluid, --temperature and --flow: what each costs, and how many feet of its own hose that is."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop catalogue ends --dash 6",
            "  linedrop catalogue ends --dash 6 --family \"race PTFE\" --fluid \"E85 summer\" --temperature \"40 C\""
                    + " --flow \"216 L/h\""
        },
        sortOptions = false)
final class EndsCommand implements Callable<Integer> {
    @Option(names = "--dash", paramLabel = "SIZE", description = "Only this dash size: 6, -6 or -6AN.")
    private @Nullable String dash;

    @Option(names = "--family", paramLabel = "NAME", description = "Only this hose family, for example \"race PTFE\".")
    private @Nullable String family;

    @Option(names = "--fluid", paramLabel = "NAME", description = "What flows: \"E85 summer\".")
    private @Nullable String fluid;

    @Option(names = "--temperature", paramLabel = "T", description = "Its temperature: \"40 C\".")
    private @Nullable String temperature;

    @Option(names = "--flow", paramLabel = "FLOW", description = "The flow: \"216 L/h\".")
    private @Nullable String flow;

    @Mixin
    private final ListOptions options = new ListOptions();

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Override
    public Integer call() {
        return options.print(spec.commandLine(), this::listing);
    }

    private Listing<?> listing() {
        List<HoseSize> hoses = CatalogueNames.hoses(Catalogue.standard(), dash, family, null);
        EndCosts.Flow flows = flows();
        try {
            return EndReport.of(EndCosts.of(hoses, flows), flows);
        } catch (ProblemsException wrong) {
            throw FileOptions.bad(spec.commandLine(), wrong.problems().get(0).line());
        }
    }

    private EndCosts.@Nullable Flow flows() {
        if (fluid == null && temperature == null && flow == null) {
            return null;
        }
        if (fluid == null || temperature == null || flow == null) {
            throw FileOptions.bad(
                    spec.commandLine(),
                    "what an end costs needs --fluid, --temperature and --flow. Write for example --fluid \"E85 summer\""
                            + " --temperature \"40 C\" --flow \"216 L/h\"");
        }
        return new EndCosts.Flow(fluid, temperature, flow);
    }
}
