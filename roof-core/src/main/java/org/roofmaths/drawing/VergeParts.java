package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * The parts of a verge that a layout does not know and a section shows.
 *
 * @param wallThickness the thickness of the end wall
 * @param rafterWidth the width of the rafters
 * @param rafterDepth the depth of the rafters, square to the slope
 * @param undercloak the thickness of the undercloak on the wall
 * @since 0.1
 */
public record VergeParts(Length wallThickness, Length rafterWidth, Length rafterDepth, Length undercloak)
        implements Serializable {
    /** Refuses null. */
    public VergeParts {
        Objects.requireNonNull(wallThickness, "wallThickness");
        Objects.requireNonNull(rafterWidth, "rafterWidth");
        Objects.requireNonNull(rafterDepth, "rafterDepth");
        Objects.requireNonNull(undercloak, "undercloak");
    }
}
