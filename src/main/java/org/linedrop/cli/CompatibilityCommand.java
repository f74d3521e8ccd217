package org.linedrop.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.report.CatalogueReport;
import org.linedrop.report.Listing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop catalogue compatibility}. */
@Command(
        name = "compatibility",
        description = {"How the liners of hose stand fluids, what to ask the seller for, and who says so."},
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop catalogue compatibility --fluid \"E85 summer\"",
            "  linedrop catalogue compatibility --liner PTFE",
            "  linedrop catalogue compatibility --family \"push-on\""
        },
        sortOptions = false)
final class CompatibilityCommand implements Callable<Integer> {
    @Option(
            names = "--family",
            paramLabel = "NAME",
            description = "Only the liners of this hose family, for example \"race PTFE\".")
    private @Nullable String family;

    @Option(names = "--liner", paramLabel = "NAME", description = "Only this liner, for example PTFE.")
    private @Nullable String liner;

    @Option(names = "--fluid", paramLabel = "NAME", description = "Only this fluid.")
    private @Nullable String fluid;

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
        Catalogue catalogue = Catalogue.standard();
        String wanted = CatalogueNames.gradedFluid(catalogue, fluid);
        String lining = CatalogueNames.liner(catalogue, liner);
        List<String> linings = family == null
                ? List.of()
                : CatalogueNames.families(catalogue, family, liner).get(0).liners();
        return CatalogueReport.compatibility(catalogue.compatibility().stream()
                .filter(row -> wanted == null || row.fluid().equals(wanted))
                .filter(row -> lining == null || row.liner().equals(lining))
                .filter(row -> family == null || linings.contains(row.liner()))
                .toList());
    }
}
