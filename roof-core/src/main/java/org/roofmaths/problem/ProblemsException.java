package org.roofmaths.problem;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Thrown when an input or a definition is wrong; it carries every problem at once.
 *
 * @since 0.1
 */
public final class ProblemsException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final List<Problem> problems;

    /**
     * Makes an exception whose message is the problems' messages, one a line.
     *
     * @param problems at least one problem
     */
    public ProblemsException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** Returns every problem, in the order in which they were found. */
    public List<Problem> problems() {
        return problems;
    }
}
