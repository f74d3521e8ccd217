package org.linedrop.cli;

import picocli.CommandLine.Option;

/** What every command takes. */
final class HelpOption {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private boolean help;
}
