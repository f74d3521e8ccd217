package org.linedrop.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.linedrop.fact.Words;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in plain words what is wrong with the arguments. */
final class Complaints {
    private Complaints() {}

    static int print(ParameterException wrong, String[] arguments) {
        CommandLine line = wrong.getCommandLine();
        line.getErr().println(words(wrong, line));
        return Runner.BAD_INPUT;
    }

    private static String words(ParameterException wrong, CommandLine line) {
        if (wrong instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched.getUnmatched().get(0), line);
        }
        if (wrong instanceof OverwrittenOptionException twice) {
            return name(twice.getOverwritten()) + " is given twice. Write it once";
        }
        if (wrong instanceof MissingParameterException missing
                && !missing.getMissing().isEmpty()) {
            return missing(missing.getMissing().get(0), line);
        }
        return String.valueOf(wrong.getMessage());
    }

    private static String unmatched(String said, CommandLine line) {
        String help = " See: " + line.getCommandSpec().qualifiedName() + " --help";
        if (said.startsWith("-")) {
            String bare = said.split("=", 2)[0];
            List<String> options = new ArrayList<>();
            line.getCommandSpec().options().forEach(option -> options.add(option.longestName()));
            return "no option \"" + bare + "\"." + meant(bare, options) + help;
        }
        if (!line.getSubcommands().isEmpty()) {
            List<String> commands = new ArrayList<>(line.getSubcommands().keySet());
            return "no command \"" + said + "\"." + meant(said, commands) + help;
        }
        if (line.getCommandSpec().positionalParameters().isEmpty()) {
            return "\"" + said + "\" is one argument too many: put a name with spaces in quotes." + help;
        }
        return "\"" + said
                + "\" is one argument too many: one FILE is read at a time. Put a name with spaces in quotes." + help;
    }

    static String meant(String said, List<String> known) {
        Optional<String> near = Words.nearest(said, known);
        return near.map(word -> " Did you mean " + word + "?").orElse("");
    }

    private static String missing(ArgSpec missing, CommandLine line) {
        String help = " See: " + line.getCommandSpec().qualifiedName() + " --help";
        return missing.isOption()
                ? name(missing) + " needs a value: " + missing.paramLabel() + "." + help
                : "which file? Write " + line.getCommandSpec().qualifiedName() + " " + missing.paramLabel() + "."
                        + help;
    }

    private static String name(ArgSpec spec) {
        return spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
    }
}
