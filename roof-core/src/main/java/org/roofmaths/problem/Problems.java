package org.roofmaths.problem;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Collects the problems of one definition, so that all of them can be reported at once.
 *
 * <p>For one thread. Calls return this collector, so checks can be chained.
 *
 * @since 0.1
 */
public final class Problems {
    private final List<Problem> found = new ArrayList<>();

    private Problems() {}

    /**
     * Starts with no problem.
     *
     * @return an empty collector
     */
    public static Problems none() {
        return new Problems();
    }

    /**
     * Adds a problem.
     *
     * @param problem the problem
     * @return this
     */
    public Problems add(Problem problem) {
        found.add(problem);
        return this;
    }

    /**
     * Adds problems.
     *
     * @param problems the problems
     * @return this
     */
    public Problems addAll(List<Problem> problems) {
        found.addAll(problems);
        return this;
    }

    /**
     * Adds an error unless a condition holds.
     *
     * @param holds the condition
     * @param code the kind of problem
     * @param where the argument's name
     * @param given the value as given
     * @param allowed what it must be, to follow the word "must"
     * @return this
     */
    public Problems require(boolean holds, ProblemCode code, String where, Object given, String allowed) {
        return holds ? this : add(Problem.error(code, where, given, allowed));
    }

    /** Returns what was collected so far, in order. */
    public List<Problem> list() {
        return List.copyOf(found);
    }

    /** Tells whether an error, which stops everything, is among them. */
    public boolean hasErrors() {
        return found.stream().anyMatch(problem -> problem.severity() == Severity.ERROR);
    }

    /**
     * Throws if there is an error.
     *
     * @throws ProblemsException with every problem collected, if one of them is an error
     */
    public void throwIfErrors() {
        if (hasErrors()) {
            throw new ProblemsException(list());
        }
    }

    /**
     * Makes a value if there is no error.
     *
     * @param <T> the type of the value
     * @param maker makes the value; called only if there is no error
     * @return the value with the findings and notices, or the problems alone
     */
    public <T> Attempt<T> attempt(Supplier<? extends T> maker) {
        return hasErrors() ? Attempt.failed(list()) : Attempt.of(maker.get(), list());
    }
}
