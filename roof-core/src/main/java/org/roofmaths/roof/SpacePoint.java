package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A point of a roof in space: its place on plan and its height.
 *
 * @param x distance to the right of the origin of the plan
 * @param y distance away from the reader of the plan
 * @param height height over the datum of the plan; where no plate height was given, over the plate line
 * @since 0.1
 */
public record SpacePoint(Length x, Length y, Length height) implements Serializable {

    /** Refuses null. */
    public SpacePoint {
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
        Objects.requireNonNull(height, "height");
    }

    /**
     * Returns a point in space.
     *
     * @param x distance to the right of the origin of the plan
     * @param y distance away from the reader of the plan
     * @param height height over the datum
     * @return the point
     */
    public static SpacePoint of(Length x, Length y, Length height) {
        return new SpacePoint(x, y, height);
    }

    /** Returns where the point lies on plan. */
    public PlanPoint onPlan() {
        return new PlanPoint(x, y);
    }

    /** Returns for example {@code (5200 mm, 3000 mm) at height 4175 mm}. */
    @Override
    public String toString() {
        return onPlan() + " at height " + height;
    }
}
