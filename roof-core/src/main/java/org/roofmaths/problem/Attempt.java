package org.roofmaths.problem;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * A value, or the problems that stand against it. A value may come with findings and notices beside it.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class Attempt<T> implements Serializable {
    private static final long serialVersionUID = 1L;

    private final @Nullable T value;
    private final List<Problem> problems;

    private Attempt(@Nullable T value, List<Problem> problems) {
        this.value = value;
        this.problems = List.copyOf(problems);
    }

    /**
     * Returns an attempt that succeeded.
     *
     * @param <T> the type of the value
     * @param value the value
     * @return the attempt, without problems
     */
    public static <T> Attempt<T> of(T value) {
        return of(value, List.of());
    }

    /**
     * Returns an attempt that succeeded, with what a person should know beside it.
     *
     * @param <T> the type of the value
     * @param value the value
     * @param findings findings and notices
     * @return the attempt
     */
    public static <T> Attempt<T> of(T value, List<Problem> findings) {
        return new Attempt<>(Objects.requireNonNull(value, "value"), findings);
    }

    /**
     * Returns an attempt that failed.
     *
     * @param <T> the type the value would have had
     * @param problems at least one problem
     * @return the attempt
     */
    public static <T> Attempt<T> failed(List<Problem> problems) {
        if (problems.isEmpty()) {
            throw new IllegalArgumentException("a failed attempt must carry at least one problem");
        }
        return new Attempt<>(null, problems);
    }

    /**
     * Runs a call that throws and returns what it gave, or its problems.
     *
     * @param <T> the type of the value
     * @param call the call
     * @return the attempt
     */
    public static <T> Attempt<T> call(Supplier<? extends T> call) {
        try {
            return of(call.get());
        } catch (ProblemsException e) {
            return failed(e.problems());
        }
    }

    /** Returns the value; empty if the attempt failed. */
    public Optional<T> value() {
        return Optional.ofNullable(value);
    }

    /** Tells whether there is a value. */
    public boolean hasValue() {
        return value != null;
    }

    /** Returns every problem; with a value these are findings and notices only. */
    public List<Problem> problems() {
        return problems;
    }

    /**
     * Returns the value.
     *
     * @return the value
     * @throws ProblemsException with every problem, if the attempt failed
     */
    public T orThrow() {
        if (value == null) {
            throw new ProblemsException(problems);
        }
        return value;
    }

    /**
     * Returns the attempt with another value made from this one; a failed attempt stays failed.
     *
     * @param <R> the type of the other value
     * @param step makes the other value
     * @return the attempt
     */
    public <R> Attempt<R> map(Function<? super T, ? extends R> step) {
        return value == null ? failed(problems) : of(step.apply(value), problems);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Attempt<?> a && Objects.equals(value, a.value) && problems.equals(a.problems);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, problems);
    }

    /** Returns the value, if there is one, and the problems, one a line. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(value == null ? "no value" : value.toString());
        problems.forEach(problem ->
                text.append('\n').append(problem.severity()).append(": ").append(problem));
        return text.toString();
    }
}
