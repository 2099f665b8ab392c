package org.roofmaths.order;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.roofmaths.units.Length;

/**
 * Rows of one length that may be joined, but only on supports: battens over rafters.
 *
 * <p>Every piece of a row is at least as long as the shortest piece allowed and lies on at least so many supports, those under its two
 * ends included. Where joints of neighbouring rows must not lie on one support, the rows are arranged afterwards: each row's
 * joints are told.
 *
 * @param name what the rows are, such as {@code front}
 * @param length the length of each row, above zero
 * @param supports where the supports lie, from the left end of the row, in rising order; one at an end of the row counts for the end piece
 * @param leastPiece the shortest piece allowed, above zero
 * @param leastSupports the fewest supports under a piece, 1 or more
 * @param count how many rows, 1 or more
 * @since 0.1
 */
public record JointedRun(
        String name, Length length, List<Length> supports, Length leastPiece, int leastSupports, long count)
        implements Serializable {
    /** Keeps the parts and copies the supports; they are checked with the demand they become part of. */
    public JointedRun {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(length, "length");
        supports = List.copyOf(supports);
        Objects.requireNonNull(leastPiece, "leastPiece");
    }

    /**
     * Returns rows over evenly spaced supports.
     *
     * @param name what the rows are
     * @param length the length of each row
     * @param firstSupport the first support, from the left end
     * @param centres the distance from support to support, above zero
     * @param leastPiece the shortest piece allowed
     * @param leastSupports the fewest supports under a piece
     * @param count how many rows
     * @return the rows, with supports up to their right end
     */
    public static JointedRun over(
            String name,
            Length length,
            Length firstSupport,
            Length centres,
            Length leastPiece,
            int leastSupports,
            long count) {
        List<Length> supports = new ArrayList<>();
        if (centres.isLongerThan(Length.STORAGE_RESOLUTION)) {
            for (Length at = firstSupport; at.meetsGreatest(length); at = at.plus(centres)) {
                supports.add(at);
            }
        }
        return new JointedRun(name, length, supports, leastPiece, leastSupports, count);
    }

    /** Returns for example {@code 11 rows of 5245 mm (front)}. */
    @Override
    public String toString() {
        return count + " rows of " + length + " (" + name + ")";
    }
}
