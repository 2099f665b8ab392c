package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One step of a step flashing: the bed joint it is let into, and the stretch of wall over which it goes.
 *
 * @param number which step, from 1 at the lower end
 * @param joint the height of its bed joint
 * @param start where it starts, level from the lower end of the line
 * @param end where it ends, level from the lower end of the line: where the water line reaches the joint, or the end of the line
 * @param endAlongSlope the same end, along the slope from the lower end of the line
 * @since 0.1
 */
public record Step(int number, Length joint, Length start, Length end, Length endAlongSlope) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Step {
        Objects.requireNonNull(joint, "joint");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
        Objects.requireNonNull(endAlongSlope, "endAlongSlope");
    }

    /** Returns for example {@code step 1 in the joint at 2550 mm, 0 mm to 73.1 mm}. */
    @Override
    public String toString() {
        return "step " + number + " in the joint at " + joint + ", " + start + " to " + end;
    }
}
