package org.roofmaths.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A closed shape with straight sides.
 *
 * @param meaning what it is, in a word or two, such as {@code whole unit}; written into the picture, so that shapes can be counted
 * @param kind what its outline means
 * @param fill how it is filled
 * @param corners the corners once round, at least three
 * @since 0.1
 */
public record Polygon(String meaning, LineKind kind, Fill fill, List<DrawingPoint> corners) implements Shape {
    /**
     * Copies the corners.
     *
     * @throws IllegalArgumentException if there are fewer than three
     */
    public Polygon {
        Objects.requireNonNull(meaning, "meaning");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(fill, "fill");
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("a polygon must have at least three corners, but had " + corners.size());
        }
    }
}
