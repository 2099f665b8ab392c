package org.roofmaths.roof;

import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/** The limits within which a size on a roof must lie, and the words in which they are said. */
final class Sizes {
    /**
     * No roof is longer than this; a size beyond it is a slip of units, and products of two sizes stay well inside a
     * long.
     */
    static final Length LONGEST = Length.ofMetres(1000);

    /** The pole from the equator: coordinates of any survey grid lie nearer to its origin. */
    static final Length FURTHEST = Length.ofMetres(10_000_000);

    private Sizes() {}

    /** Asks that a size be above zero and at most a kilometre. */
    static void requireSize(Problems problems, ProblemCode code, String where, Length given) {
        problems.require(
                given.isPositive() && !given.isLongerThan(LONGEST),
                code,
                where,
                given,
                "be above 0 mm and at most " + LONGEST);
    }

    /** Asks that a size be zero or more and at most a kilometre. */
    static void requireNoLessThanZero(Problems problems, ProblemCode code, String where, Length given) {
        problems.require(
                !given.isNegative() && !given.isLongerThan(LONGEST), code, where, given, "be from 0 mm to " + LONGEST);
    }

    /** Asks that a height or a difference be at most a kilometre either way. */
    static void requireWithin(Problems problems, ProblemCode code, String where, Length given) {
        problems.require(
                !given.abs().isLongerThan(LONGEST),
                code,
                where,
                given,
                "be from " + LONGEST.negated() + " to " + LONGEST);
    }

    /** Asks that a point of a plan have coordinates that a survey grid could have. */
    static void requireInReach(Problems problems, ProblemCode code, String where, PlanPoint given) {
        problems.require(
                !given.x().abs().isLongerThan(FURTHEST) && !given.y().abs().isLongerThan(FURTHEST),
                code,
                where,
                given,
                "have coordinates from " + FURTHEST.negated() + " to " + FURTHEST);
    }
}
