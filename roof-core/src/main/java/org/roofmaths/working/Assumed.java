package org.roofmaths.working;

import java.util.Objects;
import java.util.Optional;

/**
 * A number that the library supplied because the caller did not, with the reason and the way to change it.
 *
 * <p>An assumed figure is always printed; nothing is assumed in silence.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class Assumed<T> implements Figure<T> {
    private static final long serialVersionUID = 1L;

    private final T value;
    private final String why;
    private final String howToChange;

    private Assumed(T value, String why, String howToChange) {
        this.value = Objects.requireNonNull(value, "value");
        this.why = Objects.requireNonNull(why, "why");
        this.howToChange = Objects.requireNonNull(howToChange, "howToChange");
    }

    /**
     * Returns an assumed figure.
     *
     * @param <T> the type of the value
     * @param value the value
     * @param why the reason, such as {@code common practice}
     * @param howToChange what the caller sets to use another value
     * @return the figure
     */
    public static <T> Assumed<T> of(T value, String why, String howToChange) {
        return new Assumed<>(value, why, howToChange);
    }

    @Override
    public T value() {
        return value;
    }

    /** Returns the reason for this value. */
    public String why() {
        return why;
    }

    /** Returns what to set to use another value. */
    public String howToChange() {
        return howToChange;
    }

    @Override
    public Optional<Provenance> weakestProvenance() {
        return Optional.empty();
    }

    @Override
    public String origin() {
        return "assumed: " + why + "; to change it, " + howToChange;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Assumed<?> a
                && value.equals(a.value)
                && why.equals(a.why)
                && howToChange.equals(a.howToChange);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, why, howToChange);
    }

    /** Returns the value and the reason for it. */
    @Override
    public String toString() {
        return value + " (" + origin() + ")";
    }
}
