package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.roof.End;
import org.roofmaths.units.Angle;
import org.roofmaths.units.Length;

/**
 * One unit cut to a hip, a valley, a verge out of square, or round an opening.
 *
 * <p>The cut runs straight from tail to head. What is left of the unit is {@code widthAtTail} wide at its tail and {@code widthAtHead}
 * at its head; zero means that the cut leaves the unit at its side before it reaches that end.
 *
 * @param line the line of its course
 * @param kind what it is cut from
 * @param piece the place of the whole unit in its course
 * @param where what it is cut to, such as {@code right hip}
 * @param gone the side of the unit that is cut away
 * @param widthAtTail what is left at the tail
 * @param widthAtHead what is left at the head
 * @param angle the angle of the cut from the line of the course: 90° for a cut straight up
 * @since 0.1
 */
public record UnitCut(
        CourseLine line,
        PieceKind kind,
        Piece piece,
        String where,
        End gone,
        Length widthAtTail,
        Length widthAtHead,
        Angle angle)
        implements Serializable {
    /** Refuses null. */
    public UnitCut {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(gone, "gone");
        Objects.requireNonNull(widthAtTail, "widthAtTail");
        Objects.requireNonNull(widthAtHead, "widthAtHead");
        Objects.requireNonNull(angle, "angle");
    }

    /** Returns the greater of the widths that are left. */
    public Length widest() {
        return widthAtTail.max(widthAtHead);
    }

    /** Returns the width of the offcut at the tail: it may serve another cut, if the unit can be laid that way round. */
    public Length offcutAtTail() {
        return piece.width().minus(widthAtTail);
    }

    /** Returns the width of the offcut at the head. */
    public Length offcutAtHead() {
        return piece.width().minus(widthAtHead);
    }

    /** Returns for example {@code 3 course, right hip: cut unit 210 mm at the tail, 0 mm at the head}. */
    @Override
    public String toString() {
        return line.number() + " " + line.kind() + ", " + where + ": " + kind + " " + widthAtTail + " at the tail, "
                + widthAtHead + " at the head";
    }
}
