package org.roofmaths.ventilation;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One bay between two rafters.
 *
 * @param number which bay, from 1 at the left as seen from outside looking up the slope
 * @param start its left side, from the left end of the edge
 * @param end its right side, from the left end of the edge
 * @since 0.1
 */
public record Bay(int number, Length start, Length end) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Bay {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    /** Returns the clear width between the two rafters. */
    public Length clearWidth() {
        return end.minus(start);
    }

    /** Returns the middle of the bay, from the left end of the edge. */
    public Length middle() {
        return start.plus(end).dividedBy(2);
    }

    /** Returns for example {@code bay 1, 47 mm to 600 mm}. */
    @Override
    public String toString() {
        return "bay " + number + ", " + start + " to " + end;
    }
}
