package org.roofmaths.covering;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

/**
 * A unit made for one place in a course, such as a half unit or a left-hand verge unit: the width it fills, and its
 * mass.
 *
 * @param width the width it fills in a course: the cover of a single-lap unit, the whole width of a double-lap one; above zero
 * @param mass the mass of one
 * @since 0.1
 */
public record PartUnit(Length width, Mass mass) implements Serializable {
    /** Keeps the two parts; the unit that it belongs to checks them. */
    public PartUnit {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(mass, "mass");
    }

    /** Returns for example {@code width 150 mm, 2.6 kg}. */
    @Override
    public String toString() {
        return "width " + width + ", " + mass;
    }
}
