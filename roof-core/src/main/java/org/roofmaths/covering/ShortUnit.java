package org.roofmaths.covering;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;
import org.roofmaths.units.Mass;

/**
 * A short unit made for the under-eaves course or for the tops course under the ridge.
 *
 * @param length from head to tail
 * @param hangingLength from the line on the batten (underside of the nibs, or nail hole) to the tail
 * @param mass the mass of one
 * @since 0.1
 */
public record ShortUnit(Length length, Length hangingLength, Mass mass) implements Serializable {
    /** Keeps the three parts; {@link DoubleLapUnit} checks them with the rest of the unit. */
    public ShortUnit {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(hangingLength, "hangingLength");
        Objects.requireNonNull(mass, "mass");
    }

    /** Returns for example {@code length 190 mm, hanging 175 mm, 0.8 kg}. */
    @Override
    public String toString() {
        return "length " + length + ", hanging " + hangingLength + ", " + mass;
    }
}
