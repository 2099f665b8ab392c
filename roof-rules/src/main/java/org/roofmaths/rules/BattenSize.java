package org.roofmaths.rules;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * The section of a batten: its width, which lies along the slope, and its depth, square to the slope.
 *
 * @param width how wide it lies along the slope
 * @param depth how deep it is, square to the slope
 * @since 0.1
 */
public record BattenSize(Length width, Length depth) implements Serializable {

    /** Refuses a size that is not above zero. */
    public BattenSize {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(depth, "depth");
        if (!width.isPositive() || !depth.isPositive()) {
            throw new IllegalArgumentException("width and depth must be above 0 mm, but was " + width + " x " + depth);
        }
    }

    /** Returns the size as the trade writes it, width first: {@code 50 mm x 25 mm}. */
    @Override
    public String toString() {
        return width + " x " + depth;
    }
}
