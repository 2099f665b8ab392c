package org.roofmaths.drawing;

import java.util.Objects;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;

/**
 * A part of a circle.
 *
 * @param kind what it means
 * @param centre its centre
 * @param radius its radius, above zero
 * @param start where it starts: the angle from the right, against the clock
 * @param sweep how far it goes, against the clock; from above 0° to below 360°
 * @since 0.1
 */
public record Arc(LineKind kind, DrawingPoint centre, Length radius, Angle start, Angle sweep) implements Shape {
    /**
     * Checks radius and sweep.
     *
     * @throws IllegalArgumentException if the radius is not above zero, or the sweep not from above 0° to below 360°
     */
    public Arc {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(centre, "centre");
        Objects.requireNonNull(start, "start");
        if (!radius.isPositive()) {
            throw new IllegalArgumentException("radius must be above 0 mm, but was " + radius);
        }
        if (sweep.toDegrees() <= 0 || sweep.toDegrees() >= 360) {
            throw new IllegalArgumentException("sweep must be above 0° and below 360°, but was " + sweep);
        }
    }
}
