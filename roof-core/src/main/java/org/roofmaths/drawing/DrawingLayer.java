package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Shapes that belong together, such as the battens of a face; later layers lie over earlier ones.
 *
 * @param name what they are
 * @param shapes the shapes, later ones over earlier ones
 * @since 0.1
 */
public record DrawingLayer(String name, List<Shape> shapes) implements Serializable {
    /** Copies the list. */
    public DrawingLayer {
        Objects.requireNonNull(name, "name");
        shapes = List.copyOf(shapes);
    }
}
