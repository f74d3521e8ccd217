package org.linedrop.cli;

import java.util.List;
import picocli.CommandLine;

/** The commands by name, in the order of the help. Only what is asked for is taken apart: all of them take a fifth of a start. */
final class Commands {
    private static final List<Named> ALL = List.of(
            new Named("solve", SolveCommand.class),
            new Named("check", CheckCommand.class),
            new Named("explain", ExplainCommand.class),
            new Named("compare", CompareCommand.class),
            new Named("bottleneck", BottleneckCommand.class),
            new Named("how-far", HowFarCommand.class),
            new Named("write", WriteCommand.class),
            new Named("size", SizeCommand.class),
            new Named("vary", VaryCommand.class),
            new Named("band", BandCommand.class),
            new Named("diagnose", DiagnoseCommand.class),
            new Named("kit", KitCommand.class),
            new Named("gauges", GaugesCommand.class),
            new Named("report", ReportCommand.class),
            new Named("new", NewCommand.class),
            new Named("schema", SchemaCommand.class),
            new Named("catalogue", CatalogueCommand.class));

    private record Named(String name, Class<?> command) {}

    private Commands() {}

    /** Adds the command that the arguments start with, or all where they start with none. */
    static void addTo(CommandLine line, String... arguments) {
        List<Named> wanted = ALL.stream()
                .filter(named -> arguments.length > 0 && named.name().equals(arguments[0]))
                .toList();
        for (Named named : wanted.isEmpty() ? ALL : wanted) {
            line.addSubcommand(named.name(), named.command());
        }
    }
}
