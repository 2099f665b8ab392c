package org.roofmaths.drawing;

import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A measured distance: two thin lines out from its points, a line between them, and the number on it.
 *
 * <p>The number is never given: it is the distance between the two points, so it cannot differ from what is drawn.
 *
 * @param name what is measured, in a few words, or empty for the number alone
 * @param from the first point
 * @param to the second point
 * @param side which way it measures, and where it stands
 * @param away how far on paper the dimension stands from the nearer of its points, zero or more
 * @since 0.1
 */
public record Dimension(String name, DrawingPoint from, DrawingPoint to, DimensionSide side, Length away)
        implements Shape {
    /** Refuses null. */
    public Dimension {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(away, "away");
    }

    /** Returns the distance measured: level, plumb, or from point to point, as the side says. */
    public Length value() {
        return switch (side) {
            case ABOVE, BELOW -> to.x().minus(from.x()).abs();
            case LEFT, RIGHT -> to.y().minus(from.y()).abs();
            case LEFT_OF_THE_WAY, RIGHT_OF_THE_WAY ->
                Length.ofMetres(StrictMath.hypot(
                        to.x().minus(from.x()).toMetres(),
                        to.y().minus(from.y()).toMetres()));
        };
    }
}
