package org.linedrop.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The runner's entry point. */
@Command(name = "linedrop", mixinStandardHelpOptions = true, version = "linedrop 0.1.0")
public final class Main {
    private Main() {}

    /**
     * Runs one command and exits with its code.
     *
     * @param arguments the command line
     */
    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }
}
