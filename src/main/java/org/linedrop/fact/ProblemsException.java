package org.linedrop.fact;

import java.util.List;
import java.util.stream.Collectors;

/** All problems of an input at once; nothing was built. */
public final class ProblemsException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** What is wrong, in the order of the input. */
    private final List<Problem> problems;

    /**
     * Carries the problems; the message lists them a line each.
     *
     * @param problems at least one problem
     */
    public ProblemsException(List<Problem> problems) {
        super(problems.stream().map(Problem::line).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /**
     * What is wrong.
     *
     * @return the problems, in the order of the input
     */
    public List<Problem> problems() {
        return problems;
    }
}
