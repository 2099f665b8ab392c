package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;

/**
 * What a rule, or the caller, asks of the laps of the covering.
 *
 * @param leastHeadlap the least headlap, for the unit, the pitch and the exposure in hand
 * @since 0.1
 */
public record LapDemand(Figure<Length> leastHeadlap) implements Serializable {
    /** Refuses null. */
    public LapDemand {
        Objects.requireNonNull(leastHeadlap, "leastHeadlap");
    }
}
