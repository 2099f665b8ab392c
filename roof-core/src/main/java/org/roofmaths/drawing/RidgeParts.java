package org.roofmaths.drawing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * The parts of a ridge that a layout does not know and a section shows.
 *
 * @param rafterDepth the depth of the rafters, square to the slope
 * @param ridgeBoard the thickness of the board between the rafters; zero if they meet
 * @param unitLeg the length of each side of an angular ridge unit, on the slope
 * @param unitThickness the thickness of the ridge unit
 * @since 0.1
 */
public record RidgeParts(Length rafterDepth, Length ridgeBoard, Length unitLeg, Length unitThickness)
        implements Serializable {
    /** Refuses null. */
    public RidgeParts {
        Objects.requireNonNull(rafterDepth, "rafterDepth");
        Objects.requireNonNull(ridgeBoard, "ridgeBoard");
        Objects.requireNonNull(unitLeg, "unitLeg");
        Objects.requireNonNull(unitThickness, "unitThickness");
    }
}
