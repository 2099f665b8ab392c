package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.roof.Ends;
import org.roofmaths.units.Length;

/**
 * The line of one course on its batten, as distances up the slope from the fascia line.
 *
 * @param number the number of the line, from 1 at the eaves
 * @param kind which kind of course it carries
 * @param exact the distances in full precision
 * @param mark the distances as they are marked, rounded as running values
 * @since 0.1
 */
public record CourseLine(int number, CourseKind kind, Ends<Length> exact, Ends<Length> mark) implements Serializable {
    /** Refuses null. */
    public CourseLine {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(exact, "exact");
        Objects.requireNonNull(mark, "mark");
    }

    /** Returns for example {@code 3 course: 936 mm left, 935 mm right}. */
    @Override
    public String toString() {
        return number + " " + kind + ": " + mark;
    }
}
