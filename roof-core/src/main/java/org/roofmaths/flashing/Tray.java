package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One cavity tray over a step flashing. It lies over the flashing in its joint, never under.
 *
 * @param kind a stepped tray, or the catch tray at the foot
 * @param joint the height of its bed joint
 * @param start where its stretch starts, level from the lower end of the line
 * @param end where its stretch ends, level from the lower end of the line
 * @since 0.1
 */
public record Tray(TrayKind kind, Length joint, Length start, Length end) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Tray {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(joint, "joint");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    /** Returns for example {@code stepped tray in the joint at 2550 mm, 0 mm to 73.1 mm}. */
    @Override
    public String toString() {
        return kind + " in the joint at " + joint + ", " + start + " to " + end;
    }
}
