package org.roofmaths.working;

import java.util.Objects;
import java.util.Optional;

/**
 * A number that stands in a document, with the citation of its row.
 *
 * @param <T> the type of the value
 * @since 0.1
 */
public final class Sourced<T> implements Figure<T> {
    private static final long serialVersionUID = 1L;

    private final T value;
    private final Citation citation;

    private Sourced(T value, Citation citation) {
        this.value = Objects.requireNonNull(value, "value");
        this.citation = Objects.requireNonNull(citation, "citation");
    }

    /**
     * Returns a sourced figure.
     *
     * @param <T> the type of the value
     * @param value the value, converted from the print where the units differ
     * @param citation where it stands
     * @return the figure
     */
    public static <T> Sourced<T> of(T value, Citation citation) {
        return new Sourced<>(value, citation);
    }

    @Override
    public T value() {
        return value;
    }

    /** Returns where the figure stands. */
    public Citation citation() {
        return citation;
    }

    @Override
    public Optional<Provenance> weakestProvenance() {
        return Optional.of(citation.provenance());
    }

    @Override
    public String origin() {
        return citation.toText();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Sourced<?> s && value.equals(s.value) && citation.equals(s.citation);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, citation);
    }

    /** Returns the value and its citation. */
    @Override
    public String toString() {
        return value + " (" + origin() + ")";
    }
}
