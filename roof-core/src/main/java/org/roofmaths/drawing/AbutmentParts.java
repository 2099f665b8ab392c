package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * The parts of a top abutment that a layout does not know and a section shows.
 *
 * @param rafterDepth the depth of the rafters, square to the slope
 * @param wallThickness the thickness of the wall above
 * @param upstand how far the flashing goes up the wall over the covering, plumb
 * @param cover how far the flashing goes down over the covering, on the slope
 * @param tuck how far the flashing goes into the wall
 * @since 0.1
 */
public record AbutmentParts(Length rafterDepth, Length wallThickness, Length upstand, Length cover, Length tuck)
        implements Serializable {
    /** Refuses null. */
    public AbutmentParts {
        Objects.requireNonNull(rafterDepth, "rafterDepth");
        Objects.requireNonNull(wallThickness, "wallThickness");
        Objects.requireNonNull(upstand, "upstand");
        Objects.requireNonNull(cover, "cover");
        Objects.requireNonNull(tuck, "tuck");
    }
}
