package org.roofmaths.framing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Angle;

/**
 * A saw cut on a timber: what it is, its angle, and from what the angle is measured.
 *
 * @param what the name of the cut, such as {@code plumb cut}
 * @param angle its angle
 * @param datum from what the angle is measured
 * @since 0.1
 */
public record Cut(String what, Angle angle, Datum datum) implements Serializable {

    /**
     * From what an angle on a timber is measured. The same number from the other datum is another cut.
     *
     * @since 0.1
     */
    public enum Datum {
        /** From a line square across the timber. */
        FROM_SQUARE("from square"),
        /** From the edge of the timber. */
        FROM_EDGE("from the edge");

        private final String words;

        Datum(String words) {
            this.words = words;
        }

        /** Returns the words that follow the angle, such as {@code from square}. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** Refuses null. */
    public Cut {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(angle, "angle");
        Objects.requireNonNull(datum, "datum");
    }

    /** Returns for example {@code plumb cut 35° from square}. */
    @Override
    public String toString() {
        return what + " " + angle + " " + datum;
    }
}
