package org.linedrop.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.Catalogue;
import org.linedrop.catalogue.SizeText;
import org.linedrop.report.CatalogueReport;
import org.linedrop.report.Listing;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop catalogue nipples}. */
@Command(
        name = "nipples",
        description = {"Nipples: the part of a hose end that stands inside the hose, its narrowest place."},
        footerHeading = "%nExamples:%n",
        footer = {"  linedrop catalogue nipples --dash 6", "  linedrop catalogue nipples --family \"race rubber\""},
        sortOptions = false)
final class NipplesCommand implements Callable<Integer> {
    @Option(names = "--dash", paramLabel = "SIZE", description = "Only this dash size: 6, -6 or -6AN.")
    private @Nullable String dash;

    @Option(names = "--family", paramLabel = "NAME", description = "Only this hose family, for example \"race PTFE\".")
    private @Nullable String family;

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
        String only = family == null ? "" : catalogue.family(family).name();
        return CatalogueReport.nipples(catalogue.nipples().stream()
                .filter(row -> only.isEmpty() || row.family().equals(only))
                .filter(row -> wanted == 0 || SizeText.dashNumber(row.size()) == wanted)
                .toList());
    }
}
