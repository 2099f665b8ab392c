package org.roofmaths.drawing;

import java.util.Objects;

/**
 * A line with a head at its end, such as the fall of a slope.
 *
 * @param kind what it means
 * @param from where it starts
 * @param to where its head is
 * @since 0.1
 */
public record Arrow(LineKind kind, DrawingPoint from, DrawingPoint to) implements Shape {
    /** Refuses null. */
    public Arrow {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
