package org.linedrop.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Collectors;
import org.linedrop.fact.Words;
import org.linedrop.report.Library;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/**
 * The command line as a function: arguments in, bytes out, exit code back. Exit codes: 0 solved and all limits hold,
 * 1 a limit is broken or unsure, 2 bad input, 3 not solved.
 */
@Command(
        name = "linedrop",
        description = {
            "Where flow and pressure go in the hose plumbing of a vehicle.",
            "You describe the lines in a circuit file; linedrop says what arrives at the other end, whether your"
                    + " limits hold, and which part costs most."
        },
        versionProvider = Runner.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footerHeading = "%nExamples:%n",
        footer = {
            "  linedrop check feed.yaml             Is this feed undersized? All cases, the worst in full.",
            "  linedrop solve feed.yaml             Every row of every line, for the case as written.",
            "  linedrop report feed.yaml --help     A page with pictures, to read and to print.",
            "  linedrop write feed.yaml             The file as linedrop reads it: metric units, keys in order.",
            "  linedrop kit fuel.yaml oil.yaml      What to buy and how to make it up.",
            "  linedrop gauges feed.yaml            What gauges should read on a test day.",
            "  linedrop catalogue hoses --dash 6    What is known of hose, and who says so.",
            "  linedrop new feed --out feed.yaml    A commented file to start from.",
            "  linedrop compare --help              Rubber or PTFE at this dash size?",
            "  linedrop bottleneck feed.yaml        Where the loss sits; what one size up of each gives.",
            "  linedrop how-far feed.yaml           Longest run, highest power, least pump that still hold.",
            "  linedrop explain --help              How one row of a line came about, step by step.",
            "  linedrop check --help                What a command takes.",
            "",
            "Exit codes: 0 solved and all limits hold, 1 a limit is broken or unsure, 2 bad input, 3 not solved."
        },
        sortOptions = false)
final class Runner implements Runnable {
    static final int BAD_INPUT = 2;
    static final int NOT_SOLVED = 3;
    private static final int HELP_WIDTH = 100;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by the parser
    private CommandSpec spec;

    @CommandLine.Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help.")
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private boolean help;

    @CommandLine.Option(
            names = {"-V", "--version"},
            versionHelp = true,
            description = "Show the version.")
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private boolean version;

    /** The version line. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"linedrop " + Library.version()};
        }
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "which command? Write linedrop check FILE or linedrop solve" + " FILE. See: linedrop --help");
    }

    /**
     * Runs one command.
     *
     * @param arguments the command line
     * @param out       takes the report, in UTF-8
     * @param err       takes messages, in UTF-8
     * @return the exit code
     */
    static int run(String[] arguments, OutputStream out, OutputStream err) {
        StringWriter said = new StringWriter();
        StringWriter complaints = new StringWriter();
        int code = commandLine(said, complaints, arguments).execute(arguments);
        try {
            write(printable(complaints.toString()), err);
        } catch (IOException e) {
            // nobody listens to messages; the code still says it
        }
        try {
            write(said.toString(), out);
        } catch (IOException e) {
            String why = String.valueOf(e.getMessage());
            if (!why.toLowerCase(Locale.ROOT).contains("pipe")) {
                return unwritable(why, err);
            }
            // the reader has seen enough (head, a pager that was left): no trouble of ours
        }
        return code;
    }

    private static int unwritable(String why, OutputStream err) {
        say("cannot write the report: " + why, err);
        return BAD_INPUT;
    }

    /** Says something in a line of its own. */
    static void say(String message, OutputStream err) {
        try {
            write(message + System.lineSeparator(), err);
        } catch (IOException e) {
            // nowhere left to say it
        }
    }

    /** Messages repeat what a file or an argument says; none of it may steer the terminal. */
    private static String printable(String messages) {
        return messages.lines().map(Words::printable).collect(Collectors.joining(System.lineSeparator()))
                + (messages.isEmpty() ? "" : System.lineSeparator());
    }

    private static void write(String text, OutputStream to) throws IOException {
        to.write(text.getBytes(StandardCharsets.UTF_8));
        to.flush();
    }

    private static CommandLine commandLine(StringWriter out, StringWriter err, String... arguments) {
        CommandLine line = new CommandLine(new Runner());
        Commands.addTo(line, arguments);
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setUsageHelpAutoWidth(false);
        line.setParameterExceptionHandler(Complaints::print);
        line.setExecutionExceptionHandler(Runner::failed);
        return line;
    }

    /** Anything nobody foresaw: no stack trace for the reader, but enough for whoever is asked about it. */
    private static int failed(Exception e, CommandLine line, ParseResult parsed) {
        StackTraceElement[] trace = e.getStackTrace();
        line.getErr()
                .println("linedrop failed: " + e + (trace.length == 0 ? "" : " at " + trace[0])
                        + ". Nothing was solved. This is an error of the program: please report it with the file.");
        return NOT_SOLVED;
    }
}
