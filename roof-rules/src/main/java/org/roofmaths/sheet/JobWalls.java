package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.units.Length;

/**
 * The brick walls that a roof meets: their courses, and one bed joint of each to count from.
 *
 * @since 0.1
 */
@Value.Immutable
public interface JobWalls extends Serializable {

    /** Returns the height from bed joint to bed joint. */
    Length course();

    /** Returns the height of any bed joint of the wall above the top edge, over the datum of the drawing. */
    Optional<Length> topJoint();

    /** Returns the height of any bed joint of the wall at the side, over the datum of the drawing. */
    Optional<Length> sideJoint();

    /** Starts the walls of a job. */
    static JobWallsBuilder builder() {
        return new JobWallsBuilder();
    }
}
