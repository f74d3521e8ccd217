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

/** {@code linedrop catalogue sizes}. */
@Command(
        name = "sizes",
        description = {"Dash sizes: tube, threads, O-ring boss, taper pipe and what they are usually used for."},
        footerHeading = "%nExamples:%n",
        footer = {"  linedrop catalogue sizes", "  linedrop catalogue sizes --dash 8 --units us"},
        sortOptions = false)
final class SizesCommand implements Callable<Integer> {
    @Option(names = "--dash", paramLabel = "SIZE", description = "Only this dash size: 6, -6 or -6AN.")
    private @Nullable String dash;

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
        int wanted = CatalogueNames.dash(catalogue, dash);
        return CatalogueReport.sizes(
                catalogue,
                catalogue.dashSizes().stream()
                        .filter(row -> wanted == 0 || row.dash() == wanted)
                        .toList());
    }
}
