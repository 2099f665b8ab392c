package org.roofmaths.order;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * Pieces of one length that are to be cut from stock.
 *
 * @param name what they are for, such as {@code left verge}
 * @param length the length of each, above zero
 * @param count how many, 1 or more
 * @since 0.1
 */
public record CutPiece(String name, Length length, long count) implements Serializable {
    /** Keeps the parts; they are checked with the demand they become part of. */
    public CutPiece {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(length, "length");
    }

    /**
     * Returns pieces of one length.
     *
     * @param name what they are for
     * @param length the length of each
     * @param count how many
     * @return the pieces
     */
    public static CutPiece of(String name, Length length, long count) {
        return new CutPiece(name, length, count);
    }

    /** Returns for example {@code 6 of 2400 mm (left verge)}. */
    @Override
    public String toString() {
        return count + " of " + length + " (" + name + ")";
    }
}
