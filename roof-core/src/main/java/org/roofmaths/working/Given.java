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

    private final T value;
    private final String measured;

    private Given(T value, String measured) {
        this.value = Objects.requireNonNull(value, "value");
        this.measured = measured;
    }

    /**
     * Returns a given figure.
     *
     * @param <T> the type of the value
     * @param value the value
     * @return the figure
     */
    public static <T> Given<T> of(T value) {
        return new Given<>(value, "");
    }

    /**
     * Returns the same figure, measured to a tolerance that its working will show.
     *
     * @param tolerance how far the true value may lie from the measured one
     * @return the figure with its tolerance
     */
    public Given<T> measuredWithin(Tolerance<?> tolerance) {
        return new Given<>(value, tolerance.toString());
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
        return measured.isEmpty() ? "given" : "given, measured " + measured;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Given<?> g && value.equals(g.value) && measured.equals(g.measured);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, measured);
    }

    /** Returns the value and its origin, such as {@code 3600 mm (given)}. */
    @Override
    public String toString() {
        return value + " (" + origin() + ")";
    }
}
