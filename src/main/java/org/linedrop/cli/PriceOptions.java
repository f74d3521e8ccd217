package org.linedrop.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.PriceForm;
import org.linedrop.study.kit.OwnFigures;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** The user's list of prices: one form, written and read by every command that asks what things cost. */
final class PriceOptions {
    @Option(
            names = "--prices",
            paramLabel = "LIST",
            description = "What you know of prices, masses and cut-offs: a form of --price-form, filled in. One list"
                    + " serves kit and size.")
    @Nullable String list;

    @Option(names = "--price-form", description = "Write that form instead of the answer: CSV, its figures empty.")
    boolean form;

    /** What the list says; nothing when none is given. */
    OwnFigures read(CommandLine line) {
        if (list == null) {
            return OwnFigures.NONE;
        }
        try {
            Path path = Path.of(list);
            if (!Files.isRegularFile(path)) {
                throw FileOptions.bad(line, "no file " + list + " here. Write one with --price-form --out " + list);
            }
            return PriceForm.read(Files.readString(path, StandardCharsets.UTF_8), list);
        } catch (InvalidPathException e) {
            throw FileOptions.bad(line, "--prices \"" + list + "\" is no file name: " + e.getReason());
        } catch (IOException e) {
            throw FileOptions.bad(line, "cannot read " + list + " as UTF-8 text: " + e.getMessage());
        }
    }

    /** Says what is wrong with the list, a line each. */
    int complain(CommandLine line, ProblemsException wrong) {
        List<Problem> problems = wrong.problems();
        line.getErr()
                .println((problems.size() == 1 ? "1 thing" : problems.size() + " things") + " to correct in " + list
                        + ".");
        problems.forEach(problem -> line.getErr().println(problem.line()));
        return Runner.BAD_INPUT;
    }
}
