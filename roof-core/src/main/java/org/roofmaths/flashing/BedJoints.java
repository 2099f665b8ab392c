package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Objects;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Formula;
import org.roofmaths.working.Given;
import org.roofmaths.working.Term;
import org.roofmaths.working.Worked;

/**
 * The level bed joints of a masonry wall: the height of any one of them, and how far apart they are.
 *
 * <p>A flashing in brickwork can only be let into a joint, and joints do not start where the roof starts. Heights are
 * over the same datum as the roof's heights. Stone and render have no joints to follow: there a straight chase is cut.
 *
 * @param datum the height of one joint, above or below the roof alike
 * @param course the height from one joint to the next, above zero
 * @since 0.1
 */
public record BedJoints(Figure<Length> datum, Figure<Length> course) implements Serializable {
    private static final long serialVersionUID = 1L;

    /** The height of one bed joint of the wall. */
    public static final Term<Length> DATUM = Term.of("bed-joint datum", "d", Length.class);
    /** The height from one bed joint to the next. */
    public static final Term<Length> COURSE = Term.of("brick course", "c", Length.class);

    /** The height that a flashing must stay under. */
    public static final Term<Length> LIMIT = Term.of("limit of height", "u", Length.class);
    /** The highest bed joint under a limit. */
    public static final Term<Length> JOINT = Term.of("bed joint under the limit", "b", Length.class);

    private static final Formula HIGHEST_UNDER =
            Formula.of(JOINT, DATUM.plus(LIMIT.minus(DATUM).timesIn(COURSE).times(COURSE)));

    /**
     * Checks the course.
     *
     * @throws org.roofmaths.problem.ProblemsException if the course is not above zero
     */
    public BedJoints {
        Objects.requireNonNull(datum, "datum");
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, COURSE, course);
        problems.throwIfErrors();
    }

    /**
     * Returns the joints of a wall.
     *
     * @param datum the height of one joint
     * @param course the height from one joint to the next, above zero
     * @return the joints
     * @throws org.roofmaths.problem.ProblemsException if the course is not above zero
     */
    public static BedJoints of(Length datum, Length course) {
        return new BedJoints(Given.of(datum), Given.of(course));
    }

    /**
     * Returns the lowest joint at or above a height. For example, with joints every 75 mm from 0, the joint at or above
     * 3785 mm lies at 3825 mm.
     *
     * @param height a height over the datum of the roof
     * @return the height of the joint; up to 100 nm below {@code height} where that is a joint as stored
     */
    public Length atOrAbove(Length height) {
        return joint(Sizes.toCover(height.minus(datum.value()), course.value()));
    }

    /**
     * Returns the highest joint at or below a height, such as a sill that a flashing must stay under. For example, with
     * joints every 75 mm from 0, the joint at or below 3785 mm lies at 3750 mm.
     *
     * @param height a height over the datum of the roof
     * @return the height of the joint
     */
    public Length atOrBelow(Length height) {
        return joint(Sizes.timesIn(height.minus(datum.value()), course.value()));
    }

    /**
     * Returns the highest joint at or below a limit, with its working: the height from which a flashing must stay under
     * a sill is let in.
     *
     * @param limit the limit, such as the underside of a sill, over the datum of the roof
     * @return the height of the joint
     */
    public Worked<Length> highestUnder(Figure<Length> limit) {
        Objects.requireNonNull(limit, "limit");
        return Worked.by(JOINT, r -> {
            Length height = r.use(LIMIT, limit);
            r.use(DATUM, datum);
            r.use(COURSE, course);
            return r.record(JOINT, atOrBelow(height), HIGHEST_UNDER);
        });
    }

    Length joint(int number) {
        return datum.value().plus(course.value().times((long) number));
    }

    /** Returns for example {@code bed joints every 75 mm from 4200 mm}. */
    @Override
    public String toString() {
        return "bed joints every " + course.value() + " from " + datum.value();
    }
}
