package org.roofmaths.sheet;

import java.io.Serializable;
import java.util.Map;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.roof.Ends;
import org.roofmaths.roof.RoofEnd;
import org.roofmaths.roof.Slope;
import org.roofmaths.units.Length;
import org.roofmaths.units.Offset;

/**
 * The roof of a job: its kind, the sizes on the drawing, and what was found to differ from it.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface JobRoof extends Serializable {

    /** The kinds of roof that a job can have. */
    enum Kind {
        /** One slope against a wall: wall length and projection. */
        LEAN_TO("lean-to", "wallLength", "projection"),
        /** Two equal slopes to a central ridge: length and span. */
        DUO_PITCH("duo-pitch", "length", "span");

        private final String word;
        private final String alongField;
        private final String acrossField;

        Kind(String word, String alongField, String acrossField) {
            this.word = word;
            this.alongField = alongField;
            this.acrossField = acrossField;
        }

        /** Returns the word used in job files. */
        @Override
        public String toString() {
            return word;
        }

        String alongField() {
            return alongField;
        }

        String acrossField() {
            return acrossField;
        }
    }

    /** Returns the kind of roof. */
    Kind kind();

    /** Returns the level length along the eaves: the wall length of a lean-to, the length of a duo-pitch between its end walls. */
    Length along();

    /** Returns the level width at right angles to the eaves: the projection of a lean-to, the span of a duo-pitch between plate lines. */
    Length across();

    /** Returns the slope as the drawing gives it. */
    Slope slope();

    /** Returns how far the fascia stands out from the plate. */
    Offset eavesOverhang();

    /** Returns what ends the roof at the left, seen from outside looking up the slope. */
    RoofEnd left();

    /** Returns what ends the roof at the right. */
    RoofEnd right();

    /** Returns the slope lengths that were measured, by the name of the face, where the roof was not built to the drawing. */
    Map<String, Ends<Length>> asFound();

    /** Returns what a lean-to must stay below; empty if nothing is in the way. */
    Optional<UpperLimit> upperLimit();

    /**
     * Something in the wall above a lean-to that its flashing must stay below.
     *
     * @param height its height above the datum of the drawing
     * @param what what it is, such as {@code window sill}
     */
    record UpperLimit(Length height, String what) implements Serializable {}

    /** Starts the roof of a job. */
    static JobRoofBuilderStages.BuildStart builder() {
        return JobRoofBuilderStages.start();
    }
}
