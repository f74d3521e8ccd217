package org.linedrop.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code linedrop catalogue}: lists of what the library knows. */
@Command(
        name = "catalogue",
        description = {
            "Lists what is known of sizes, hose, hard line, liners and fluids, each figure with its source and status.",
            "A figure from memory is marked: measure it or read it off the part before it decides anything."
        },
        subcommands = {
            SizesCommand.class,
            HosesCommand.class,
            EndsCommand.class,
            NipplesCommand.class,
            TubesCommand.class,
            CompatibilityCommand.class,
            FluidsCommand.class
        },
        synopsisSubcommandLabel = "LIST",
        commandListHeading = "%nLists:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop catalogue hoses --dash 6",
            "  linedrop catalogue compatibility --fluid \"E85 summer\"",
            "  linedrop catalogue fluids --fluid \"engine oil 15W-50\" --units us",
            "",
            "Exit codes: 0 listed, 2 bad input."
        },
        sortOptions = false)
final class CatalogueCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "which list? Write for example linedrop catalogue hoses. Lists: "
                        + String.join(", ", spec.subcommands().keySet()) + ". See: linedrop catalogue --help");
    }
}
