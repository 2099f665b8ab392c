package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * What a rule, or the caller, asks of the underlay.
 *
 * @param horizontalLap how far each row laps over the row below
 * @param verticalLap how far two pieces of a row lap at their ends
 * @param topExtension how far the underlay goes past the apex line: over a ridge on to the other slope, or up a wall
 * @since 0.1
 */
public record UnderlayDemand(Figure<Length> horizontalLap, Figure<Length> verticalLap, Figure<Length> topExtension)
        implements Serializable {
    /** Refuses null. */
    public UnderlayDemand {
        Objects.requireNonNull(horizontalLap, "horizontalLap");
        Objects.requireNonNull(verticalLap, "verticalLap");
        Objects.requireNonNull(topExtension, "topExtension");
    }
}
