package org.linedrop.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.linedrop.catalogue.RatingResult;
import org.linedrop.circuit.Circuit;
import org.linedrop.fact.Problem;
import org.linedrop.fact.ProblemsException;
import org.linedrop.io.CircuitFile;
import org.linedrop.result.RatingRow;
import org.linedrop.solver.Outcome;
import org.linedrop.study.CaseCheck;
import org.linedrop.study.FeedCheck;
import picocli.CommandLine;

/** Reads a circuit file, checks the cases asked for, hands over the report. */
final class FileJob {
    private final FileOptions options;
    private final CommandLine line;

    FileJob(FileOptions options, CommandLine line) {
        this.options = options;
        this.line = line;
    }

    /**
     * Does it.
     *
     * @param usual  the cases run when none is asked for
     * @param check  how they are checked
     * @param report what to write
     * @return the exit code
     */
    int run(
            Function<Circuit, List<String>> usual,
            BiFunction<Circuit, List<String>, FeedCheck> check,
            Function<FeedCheck, String> report) {
        return answer(
                (circuit, cases) -> {
                    FeedCheck checked = check.apply(circuit, cases);
                    return new Answer(report.apply(checked), code(checked));
                },
                usual);
    }

    /**
     * What a command says.
     *
     * @param text what to write
     * @param code the exit code
     */
    record Answer(String text, int code) {}

    /**
     * Reads the file, asks, writes the answer.
     *
     * @param question from the circuit and the names of the cases asked for
     * @param usual    the cases when none is asked for
     * @return the exit code
     */
    int answer(BiFunction<Circuit, List<String>, Answer> question, Function<Circuit, List<String>> usual) {
        return run((circuit, out) -> {
            Answer answer = question.apply(circuit, cases(circuit, usual));
            if (!answer.text().isEmpty()) { // nothing to say is no reason to leave an empty file
                give(out, answer.text());
            }
            return answer.code();
        });
    }

    /** Writes something of the circuit without solving it. */
    int write(Function<Circuit, String> text) {
        return run((circuit, out) -> {
            give(out, text.apply(circuit));
            return 0;
        });
    }

    /** What is done with a circuit that was read. */
    private interface Job {
        int done(Circuit circuit, @Nullable OutFile out) throws IOException, OutFile.Trouble;
    }

    private void give(@Nullable OutFile out, String text) throws IOException, OutFile.Trouble {
        if (out == null) {
            line.getOut().print(text);
            line.getOut().flush();
        } else {
            out.write(text);
        }
    }

    private int run(Job job) {
        try {
            Circuit circuit = CircuitFile.read(path());
            return job.done(circuit, options.out == null ? null : OutFile.of(options.out, options.file));
        } catch (ProblemsException wrong) {
            return problems(wrong);
        } catch (OutFile.Trouble trouble) {
            throw FileOptions.bad(line, String.valueOf(trouble.getMessage()));
        } catch (AccessDeniedException e) {
            throw FileOptions.bad(line, "may not read " + options.file + ". Check who owns it");
        } catch (IOException e) {
            throw FileOptions.bad(line, "cannot read " + options.file + ": " + e.getMessage());
        }
    }

    private Path path() {
        if (options.file.isBlank()) {
            throw FileOptions.bad(line, "which file? Its name is empty");
        }
        try {
            Path path = Path.of(options.file);
            if (Files.isDirectory(path)) {
                throw FileOptions.bad(line, options.file + " is a directory. Name a circuit file in it");
            }
            if (!Files.exists(path)) {
                throw FileOptions.bad(line, "no file " + options.file + " here. Check its name and directory");
            }
            return path;
        } catch (InvalidPathException e) {
            throw FileOptions.bad(line, "\"" + options.file + "\" is no file name: " + e.getReason());
        }
    }

    private List<String> cases(Circuit circuit, Function<Circuit, List<String>> usual) {
        List<String> known = circuit.caseNames();
        for (String name : options.cases) {
            if (!known.contains(name)) {
                throw FileOptions.bad(
                        line,
                        "no case \"" + name + "\" in " + options.file + "." + Complaints.meant(name, known) + " Cases: "
                                + String.join(", ", known));
            }
        }
        return options.cases.isEmpty()
                ? usual.apply(circuit)
                : options.cases.stream().distinct().toList();
    }

    private int problems(ProblemsException wrong) {
        List<Problem> problems = wrong.problems();
        String things = problems.size() == 1 ? "1 thing" : problems.size() + " things";
        line.getErr().println(things + " to correct in " + options.file + "; nothing was solved.");
        problems.forEach(problem -> line.getErr().println(problem.line()));
        return Runner.BAD_INPUT;
    }

    /** The highest over the cases; a hose over a rating that can be judged counts as a broken limit. */
    static int code(FeedCheck check) {
        int code = 0;
        for (CaseCheck each : check.cases()) {
            boolean solved = each.result().outcome() == Outcome.CONVERGED;
            code = Math.max(code, solved ? each.result().holds() ? 0 : 1 : Runner.NOT_SOLVED);
        }
        boolean over = RatingRow.of(
                        check.cases().stream().map(CaseCheck::result).toList())
                .stream()
                .anyMatch(row -> row.rating().verdict() == RatingResult.Verdict.OVER);
        return over ? Math.max(code, 1) : code;
    }
}
