package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A point on the plan of a roof, seen from above: x to the right, y away from the reader.
 *
 * @param x distance to the right of the origin
 * @param y distance away from the reader
 * @since 0.1
 */
public record PlanPoint(Length x, Length y) implements Serializable {

    /** Refuses null. */
    public PlanPoint {
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }

    /**
     * Returns a point on plan.
     *
     * @param x distance to the right of the origin
     * @param y distance away from the reader
     * @return the point
     */
    public static PlanPoint of(Length x, Length y) {
        return new PlanPoint(x, y);
    }

    /** Returns for example {@code (5200 mm, 3000 mm)}. */
    @Override
    public String toString() {
        return "(" + x + ", " + y + ")";
    }
}
