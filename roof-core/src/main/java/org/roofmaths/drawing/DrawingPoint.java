package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A point of a drawing in real size: to the right and up from the drawing's origin.
 *
 * @param x to the right
 * @param y up
 * @since 0.1
 */
public record DrawingPoint(Length x, Length y) implements Serializable {
    /** Refuses null. */
    public DrawingPoint {
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }

    /**
     * Returns a point.
     *
     * @param x to the right
     * @param y up
     * @return the point
     */
    public static DrawingPoint of(Length x, Length y) {
        return new DrawingPoint(x, y);
    }

    /** Returns the point so far to the right and up from this one. */
    DrawingPoint plus(Length right, Length up) {
        return new DrawingPoint(x.plus(right), y.plus(up));
    }

    /** Returns for example {@code (5245 mm, 300 mm)}. */
    @Override
    public String toString() {
        return "(" + x + ", " + y + ")";
    }
}
