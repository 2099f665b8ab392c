package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;

/**
 * One straight side of the plan of a roof, with its name and what the roof does along it. The roof lies to the left of
 * the way from its start to its end: as seen from outside, the start is at the left.
 *
 * @param name the name, which the face that rises from this side takes too
 * @param from where it starts, at the left as seen from outside
 * @param to where it ends
 * @param treatment what the roof does along it
 * @since 0.1
 */
public record PlanSide(String name, PlanPoint from, PlanPoint to, EdgeTreatment treatment) implements Serializable {

    /** Refuses null. */
    public PlanSide {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(treatment, "treatment");
    }

    /** Returns for example {@code front: eaves at 35°, from (0 mm, 0 mm) to (6000 mm, 0 mm)}. */
    @Override
    public String toString() {
        return name + ": " + treatment + ", from " + from + " to " + to;
    }
}
