package org.linedrop.cli;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What commands take that print a text as it stands. */
final class TextOptions {
    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "Write to this file, whole or not at all, instead of showing it.")
    @Nullable String out;

    @Mixin
    @SuppressWarnings("UnusedVariable") // the parser acts on it
    private final HelpOption help = new HelpOption();

    /** The word said, which must be one of a few. */
    static String oneOf(CommandLine line, String command, String said, List<String> known) {
        if (!known.contains(said)) {
            throw FileOptions.bad(
                    line,
                    command + " \"" + said + "\" is none of " + String.join(", ", known) + "."
                            + Complaints.meant(said, known));
        }
        return said;
    }

    /**
     * Shows a text or writes it.
     *
     * @param line      the command
     * @param text      what to write
     * @param overwrite whether a file that is there may be replaced
     * @return the exit code
     */
    int print(CommandLine line, String text, boolean overwrite) {
        try {
            if (out == null) {
                line.getOut().print(text);
                line.getOut().flush();
            } else {
                OutFile file = OutFile.of(out, null);
                if (overwrite) {
                    file.write(text);
                } else {
                    file.writeNew(text);
                }
            }
            return 0;
        } catch (OutFile.Trouble trouble) {
            throw FileOptions.bad(line, String.valueOf(trouble.getMessage()));
        } catch (IOException e) {
            throw FileOptions.bad(line, "cannot write " + out + ": " + e.getMessage());
        }
    }
}
