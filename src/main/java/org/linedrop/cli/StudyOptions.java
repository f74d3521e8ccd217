package org.linedrop.cli;

import org.linedrop.circuit.Circuit;
import org.linedrop.fact.ProblemsException;
import org.linedrop.report.Listing;
import org.linedrop.units.Dimension;
import org.linedrop.units.UnitException;
import org.linedrop.units.Units;
import picocli.CommandLine;

/** What commands that study one file have in common. */
final class StudyOptions {
    private StudyOptions() {}

    /** A list as it was asked for. */
    static String text(FileOptions options, Circuit circuit, Listing<?> list) {
        return switch (options.format) {
            case TEXT -> list.text(options.shown(circuit));
            case JSON -> list.json();
            case CSV -> list.csv(options.units);
        };
    }

    /** A value of an option in SI, or a message that ends the command. */
    static double read(CommandLine line, String option, String text, Dimension... allowed) {
        try {
            return Units.read(text, allowed).si();
        } catch (UnitException wrong) {
            throw FileOptions.bad(line, option + " " + wrong.getMessage());
        }
    }

    /** What is wrong with an option, where the study found it. */
    static CommandLine.ParameterException wrong(CommandLine line, ProblemsException wrong) {
        var problem = wrong.problems().get(0);
        return FileOptions.bad(line, problem.message() + (problem.hint().isEmpty() ? "" : ". " + problem.hint()));
    }

    /** The number of threads asked for: all there are unless it is said. */
    static int threads(CommandLine line, int threads) {
        if (threads < 0 || threads > 1024) {
            throw FileOptions.bad(line, "--threads must be 1 to 1024, but is " + threads + ". Leave it out for all");
        }
        return threads == 0 ? Runtime.getRuntime().availableProcessors() : threads;
    }
}
