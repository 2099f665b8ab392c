package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * One piece of a course.
 *
 * @param kind what it is
 * @param from where its left edge lies, to the right of the left wall line
 * @param width the width it fills: the cover of a single-lap unit, the own width of a double-lap one
 * @since 0.1
 */
public record Piece(PieceKind kind, Length from, Length width) implements Serializable {
    /** Refuses null. */
    public Piece {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(width, "width");
    }

    /** Returns where its right edge lies, to the right of the left wall line. */
    public Length to() {
        return from.plus(width);
    }

    /** Returns for example {@code whole unit from 155 mm, 297.647059 mm wide}. */
    @Override
    public String toString() {
        return kind + " from " + from + ", " + width + " wide";
    }
}
