package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Area;

/**
 * The effective area of an upper roof, and where its water lands.
 *
 * @param strip where it lands
 * @param area its effective area
 * @since 0.1
 */
public record LandedArea(LandingStrip strip, Area area) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public LandedArea {
        Objects.requireNonNull(strip, "strip");
        Objects.requireNonNull(area, "area");
    }
}
