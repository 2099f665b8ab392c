package org.roofmaths.order;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.roofmaths.units.Length;

/**
 * Rows that are joined at the same supports.
 *
 * @param run the name of the rows
 * @param joints where the joints lie, from the left end of the row; empty if the row is one piece
 * @param times how many rows are joined so
 * @since 0.1
 */
public record JointedRows(String run, List<Length> joints, long times) implements Serializable {
    /** Copies the list. */
    public JointedRows {
        Objects.requireNonNull(run, "run");
        joints = List.copyOf(joints);
    }

    /** Returns for example {@code 6 rows (front) joined at 2400 mm}. */
    @Override
    public String toString() {
        return times + (times == 1 ? " row (" : " rows (") + run + ") "
                + (joints.isEmpty()
                        ? "in one piece"
                        : "joined at " + joints.stream().map(Length::toString).collect(Collectors.joining(", ")));
    }
}
