package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * A point on a face laid flat: along the eaves from its left end, and up the slope from the fascia line.
 *
 * @param along distance along the eaves, to the right of the left end of the eaves
 * @param up distance up the slope from the fascia line, measured on the slope
 * @since 0.1
 */
public record FacePoint(Length along, Length up) implements Serializable {

    /** Refuses null. */
    public FacePoint {
        Objects.requireNonNull(along, "along");
        Objects.requireNonNull(up, "up");
    }

    /**
     * Returns a point on a face laid flat.
     *
     * @param along distance along the eaves, to the right of the left end of the eaves
     * @param up distance up the slope from the fascia line, measured on the slope
     * @return the point
     */
    public static FacePoint of(Length along, Length up) {
        return new FacePoint(along, up);
    }

    /** Returns for example {@code 5200 mm along, 3714.5 mm up}. */
    @Override
    public String toString() {
        return along + " along, " + up + " up";
    }
}
