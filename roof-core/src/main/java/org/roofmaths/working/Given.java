package org.roofmaths.working;

import java.util.Objects;
import java.util.Optional;
import org.roofmaths.units.Tolerance;

/**
 * A number that the caller gave, with the tolerance to which it was measured where the caller says so.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class Given<T> implements Figure<T> {
    private static final long serialVersionUID = 1L;

    private static final String SAID_SO = "given";

    private final T value;
    private final String origin;

    private Given(T value, String origin) {
        this.value = Objects.requireNonNull(value, "value");
        this.origin = origin;
    }

    /**
     * Returns a given figure.
     *
     * @param <T> the type of the value
     * @param value the value
     * @return the figure
     */
    public static <T> Given<T> of(T value) {
        return new Given<>(value, SAID_SO);
    }

    /**
     * Returns a figure that was not typed as a number but lies in something else that the caller gave, such as a plan.
     *
     * @param <T> the type of the value
     * @param value the value
     * @param where where it lies, such as {@code the plan}
     * @return the figure
     */
    public static <T> Given<T> takenFrom(T value, String where) {
        return new Given<>(value, "taken from " + Objects.requireNonNull(where, "where"));
    }

    /**
     * Returns the same figure, measured to a tolerance that its working will show.
     *
     * @param tolerance how far the true value may lie from the measured one
     * @return the figure with its tolerance
     */
    public Given<T> measuredWithin(Tolerance<?> tolerance) {
        return new Given<>(value, origin + ", measured " + tolerance);
    }

    @Override
    public T value() {
        return value;
    }

    @Override
    public Optional<Provenance> weakestProvenance() {
        return Optional.empty();
    }

    @Override
    public String origin() {
        return origin;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Given<?> g && value.equals(g.value) && origin.equals(g.origin);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, origin);
    }

    /** Returns the value and its origin, such as {@code 3600 mm (given)}. */
    @Override
    public String toString() {
        return value + " (" + origin() + ")";
    }
}
