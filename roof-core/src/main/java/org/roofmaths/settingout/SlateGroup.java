package org.roofmaths.settingout;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/**
 * The slates of one length in a pile, and how wide they are together.
 *
 * @param length the effective length: head to tail, or hole to tail where they hang from the hole
 * @param together their widths added up
 * @since 0.1
 */
public record SlateGroup(Length length, Length together) implements Serializable {
    /** A size of a group is not above zero. */
    public static final ProblemCode SIZE = ProblemCode.of("slate-group.size", "Measure the pile again.");

    /**
     * Keeps the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException if one is not above zero
     */
    public SlateGroup {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(together, "together");
        Problems problems = Problems.none();
        problems.require(length.isPositive(), SIZE, "length", length, "be above 0 mm");
        problems.require(together.isPositive(), SIZE, "together", together, "be above 0 mm");
        problems.throwIfErrors();
    }

    /**
     * Returns a group by the number of its slates.
     *
     * @param length the effective length
     * @param width the mean width
     * @param count how many there are
     * @return the group
     */
    public static SlateGroup of(Length length, Length width, long count) {
        return new SlateGroup(length, width.times(count));
    }

    /**
     * Returns how many whole courses the group makes over a width.
     *
     * @param width the width of the roof where the group is laid
     * @return the number, rounded down
     */
    public long coursesOver(Length width) {
        return width.timesIn(together).count();
    }

    /** Returns for example {@code slates of 600 mm, 34000 mm wide together}. */
    @Override
    public String toString() {
        return "slates of " + length + ", " + together + " wide together";
    }
}
