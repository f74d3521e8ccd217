package org.linedrop.cli;

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

/** {@code linedrop catalogue hoses}. */
@Command(
        name = "hoses",
        description = {
            "Hose by family and size: the smallest, usual and largest bore sold, and who says so.",
            "The bore of one dash size differs by a quarter from family to family."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop catalogue hoses --dash 6",
            "  linedrop catalogue hoses --family \"race PTFE\"",
            "  linedrop catalogue hoses --dash 8 --fluid \"E85 summer\"",
            "  linedrop catalogue hoses --format csv --out hoses.csv"
        },
        sortOptions = false)
final class HosesCommand implements Callable<Integer> {
    @Option(names = "--dash", paramLabel = "SIZE", description = "Only this dash size: 6, -6 or -6AN.")
    private @Nullable String dash;

    @Option(names = "--family", paramLabel = "NAME", description = "Only this hose family, for example \"race PTFE\".")
    private @Nullable String family;

    @Option(names = "--liner", paramLabel = "NAME", description = "Only this liner, for example PTFE.")
    private @Nullable String liner;

    @Option(
            names = "--fluid",
            paramLabel = "NAME",
            description = "Say beside each hose how its liner stands this fluid.")
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
        return CatalogueReport.hoses(
                catalogue,
                CatalogueNames.hoses(catalogue, dash, family, liner),
                CatalogueNames.gradedFluid(catalogue, fluid));
    }
}
