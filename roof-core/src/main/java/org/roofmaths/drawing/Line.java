package org.roofmaths.drawing;

import java.util.Objects;

/**
 * A straight line.
 *
 * @param kind what it means
 * @param from where it starts
 * @param to where it ends
 * @since 0.1
 */
public record Line(LineKind kind, DrawingPoint from, DrawingPoint to) implements Shape {
    /** Refuses null. */
    public Line {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
