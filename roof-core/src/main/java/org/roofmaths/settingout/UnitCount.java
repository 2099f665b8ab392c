package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;

/**
 * How many pieces of one kind lie in the courses of one kind.
 *
 * @param course the kind of course
 * @param piece the kind of piece
 * @param count how many
 * @since 0.1
 */
public record UnitCount(CourseKind course, PieceKind piece, long count) implements Serializable {
    /** Refuses null. */
    public UnitCount {
        Objects.requireNonNull(course, "course");
        Objects.requireNonNull(piece, "piece");
    }

    /** Returns for example {@code 187 whole units}, or {@code under-eaves course: 21 whole units}. */
    @Override
    public String toString() {
        return (course == CourseKind.FULL ? "" : course + ": ") + count + " " + piece.words(count);
    }
}
