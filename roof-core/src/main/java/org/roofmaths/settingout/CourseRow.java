package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * What lies in one course: its pieces from left to right, and how those that meet a hip, a valley or an opening are cut.
 *
 * @param line the line of the course
 * @param row the pieces, each at its place as if it were whole; gaps are openings
 * @param cuts the pieces that are cut, with what is left of them
 * @since 0.1
 */
public record CourseRow(CourseLine line, Row row, List<UnitCut> cuts) implements Serializable {
    /** Refuses null and copies the list. */
    public CourseRow {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(row, "row");
        cuts = List.copyOf(cuts);
    }

    /** Returns for example {@code 3 course: 12 whole units, 1 cut unit}. */
    @Override
    public String toString() {
        return line.number() + " " + line.kind() + ": " + row;
    }
}
