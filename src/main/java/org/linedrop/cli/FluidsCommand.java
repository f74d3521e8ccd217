package org.linedrop.cli;

import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.linedrop.fluid.Fluids;
import org.linedrop.report.CatalogueReport;
import org.linedrop.report.Listing;
import org.linedrop.units.Dimension;
import org.linedrop.units.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code linedrop catalogue fluids}. */
@Command(
        name = "fluids",
        description = {
            "Fluids with density, viscosity, vapour pressure and how far to trust each.",
            "With --fluid: one fluid over temperature, and where its figures come from."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop catalogue fluids",
            "  linedrop catalogue fluids --temperature \"40 C\"",
            "  linedrop catalogue fluids --fluid \"engine oil 15W-50\""
        },
        sortOptions = false)
final class FluidsCommand implements Callable<Integer> {
    /** 20 C, at which most tables of fluids are given. */
    private static final double USUAL_K = 293.15;

    @Option(names = "--fluid", paramLabel = "NAME", description = "Only this fluid, over temperature.")
    private @Nullable String fluid;

    @Option(
            names = "--temperature",
            paramLabel = "T",
            description = "At this temperature, for example \"40 C\" or \"104 F\". Default: 20 C.")
    private @Nullable String temperature;

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
        double kelvin = temperature == null
                ? Double.NaN
                : Units.read(temperature, Dimension.TEMPERATURE).si();
        return fluid == null
                ? CatalogueReport.fluids(Fluids.all(), temperature == null ? USUAL_K : kelvin, options.units)
                : CatalogueReport.fluid(Fluids.find(fluid), kelvin, options.units);
    }
}
