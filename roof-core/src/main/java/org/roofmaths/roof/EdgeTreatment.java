package org.roofmaths.roof;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Pitch;
import org.roofmaths.working.Figure;

/**
 * What a roof does along one side of its plan: it rises there from an eaves, it is cut off over a gable wall, or it
 * ends against a wall.
 *
 * @since 0.1
 */
public sealed interface EdgeTreatment extends Serializable
        permits EdgeTreatment.Eaves, EdgeTreatment.Gable, EdgeTreatment.Abutment {

    /**
     * Returns an eaves from which a face rises.
     *
     * @param pitch the pitch of that face
     * @return the treatment, without overhang, its plate line at height zero
     */
    static Eaves eaves(Pitch pitch) {
        return eaves(Figure.given(Objects.requireNonNull(pitch, "pitch")));
    }

    /**
     * Returns an eaves from which a face rises, with the origin of its pitch.
     *
     * @param pitch the pitch of that face and where it came from
     * @return the treatment, without overhang, its plate line at height zero
     */
    static Eaves eaves(Figure<Pitch> pitch) {
        return new Eaves(pitch, Figure.given(Length.ZERO), Figure.given(Length.ZERO));
    }

    /** Returns a gable: the faces beside it are cut off plumb over this side of the plan, each with a verge. */
    static EdgeTreatment gable() {
        return new Gable();
    }

    /** Returns an abutment: the faces end at the face of a wall that goes on above them. */
    static EdgeTreatment abutment() {
        return new Abutment();
    }

    /**
     * An eaves from which a face rises.
     *
     * @param pitch the pitch of the face
     * @param overhang how far this side of the plan, the fascia line, lies outside the plate line, measured level
     * @param plateHeight the height of the rafter plane at the plate line
     * @since 0.1
     */
    record Eaves(Figure<Pitch> pitch, Figure<Length> overhang, Figure<Length> plateHeight) implements EdgeTreatment {
        /** Refuses null. */
        public Eaves {
            Objects.requireNonNull(pitch, "pitch");
            Objects.requireNonNull(overhang, "overhang");
            Objects.requireNonNull(plateHeight, "plateHeight");
        }

        /**
         * Returns the same eaves with the fascia line, which is the side of the plan, outside the plate line.
         *
         * @param level the eaves overhang, measured level
         * @return the eaves with that overhang
         */
        public Eaves withOverhang(Length level) {
            return new Eaves(pitch, Figure.given(level), plateHeight);
        }

        /**
         * Returns the same eaves with its plate line at another height.
         *
         * @param height the height of the rafter plane at the plate line
         * @return the eaves at that height
         */
        public Eaves withPlateAt(Length height) {
            return new Eaves(pitch, overhang, Figure.given(height));
        }

        /** Returns the height of the rafter plane at the fascia line: plate height − overhang × tan(pitch). */
        public Length fasciaHeight() {
            return plateHeight.value().minus(pitch.value().riseOver(overhang.value()));
        }

        /** Returns for example {@code eaves at 35°}. */
        @Override
        public String toString() {
            return "eaves at " + pitch.value();
        }
    }

    /**
     * A gable.
     *
     * @since 0.1
     */
    record Gable() implements EdgeTreatment {
        /** Returns {@code gable}. */
        @Override
        public String toString() {
            return "gable";
        }
    }

    /**
     * An abutment to a wall.
     *
     * @since 0.1
     */
    record Abutment() implements EdgeTreatment {
        /** Returns {@code abutment}. */
        @Override
        public String toString() {
            return "abutment";
        }
    }
}
