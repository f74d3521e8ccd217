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

/** {@code linedrop catalogue tubes}. */
@Command(
        name = "tubes",
        description = {"Hard line by material, outside diameter and wall."},
        footerHeading = "%nExamples:%n",
        footer = {"  linedrop catalogue tubes --dash 6", "  linedrop catalogue tubes --material aluminium"},
        sortOptions = false)
final class TubesCommand implements Callable<Integer> {
    /** The catalogue knows a material by its tubes; which one makes no difference to its name. */
    private static final double ANY_OUTSIDE_M = 0.01;

    private static final double ANY_WALL_M = 0.001;

    @Option(names = "--dash", paramLabel = "SIZE", description = "Only this dash size: 6, -6 or -6AN.")
    private @Nullable String dash;

    @Option(names = "--material", paramLabel = "NAME", description = "Only this material, for example aluminium.")
    private @Nullable String material;

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
        String only = material == null
                ? ""
                : catalogue.tube(material, ANY_OUTSIDE_M, ANY_WALL_M).material();
        return CatalogueReport.tubes(catalogue.tubes().stream()
                .filter(row -> only.isEmpty() || row.material().equals(only))
                .filter(row -> wanted == 0 || row.dash() == wanted)
                .toList());
    }
}
