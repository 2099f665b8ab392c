package org.roofmaths.drawing;

import java.util.Objects;

/**
 * A few words beside a point. Where two labels would lie over each other, one is moved, with a thin line back to its point.
 *
 * @param text the words
 * @param at the point
 * @param anchor which part of the words stands at the point
 * @since 0.1
 */
public record Label(String text, DrawingPoint at, Anchor anchor) implements Shape {
    /** Refuses null. */
    public Label {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(anchor, "anchor");
    }
}
