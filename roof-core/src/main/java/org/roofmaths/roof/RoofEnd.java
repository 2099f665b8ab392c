package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;

/**
 * How a roof ends at the left or the right: with a verge over a gable wall, or against a wall beside it.
 *
 * @since 0.1
 */
public sealed interface RoofEnd extends Serializable permits RoofEnd.Verge, RoofEnd.Abutment {

    /**
     * Returns a verge.
     *
     * @param overhang how far the covering reaches beyond the outer face of the end wall, measured level
     * @return the end
     */
    static RoofEnd verge(Offset overhang) {
        return new Verge(overhang);
    }

    /** Returns a verge flush with the outer face of the end wall. */
    static RoofEnd verge() {
        return new Verge(Offset.level(Length.ZERO));
    }

    /** Returns an end against the face of a wall that goes on above the roof. */
    static RoofEnd abutment() {
        return new Abutment();
    }

    /**
     * A verge over the end wall.
     *
     * @param overhang how far the covering reaches beyond the outer face of the end wall, measured level
     * @since 0.1
     */
    record Verge(Offset overhang) implements RoofEnd {
        /** Refuses null. */
        public Verge {
            Objects.requireNonNull(overhang, "overhang");
        }

        /** Returns for example {@code verge, overhang 50 mm level}. */
        @Override
        public String toString() {
            return "verge, overhang " + overhang;
        }
    }

    /**
     * An end against the face of a wall.
     *
     * @since 0.1
     */
    record Abutment() implements RoofEnd {
        /** Returns {@code abutment}. */
        @Override
        public String toString() {
            return "abutment";
        }
    }
}
