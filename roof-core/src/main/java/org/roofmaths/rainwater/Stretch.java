package org.roofmaths.rainwater;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Area;
import org.roofmaths.units.Length;

/**
 * A stretch of gutter that drains one way to an outlet.
 *
 * @param outlet which outlet, from 1 at the left
 * @param from its left end, from the left end of the eaves
 * @param to its right end
 * @param area the effective area whose water it carries
 * @since 0.1
 */
public record Stretch(int outlet, Length from, Length to, Area area) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public Stretch {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(area, "area");
    }

    /** Returns its length: the drained length of a length factor. */
    public Length length() {
        return to.minus(from);
    }

    /** Returns for example {@code 0 mm to 3000 mm to outlet 1: 24 m²}. */
    @Override
    public String toString() {
        return from + " to " + to + " to outlet " + outlet + ": " + area;
    }
}
