package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One piece of sheet to cut.
 *
 * @param name which piece of which flashing, such as {@code cover flashing 2 of 4}
 * @param start where it starts along the run of metal
 * @param length its length along the run
 * @param girth its width across, before folding
 * @since 0.1
 */
public record FlashingPiece(String name, Length start, Length length, Length girth) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** Keeps the parts. */
    public FlashingPiece {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(girth, "girth");
    }

    /** Returns for example {@code cover flashing 2 of 4: 1386.25 mm × 319 mm}. */
    @Override
    public String toString() {
        return name + ": " + length + " × " + girth;
    }
}
