package org.roofmaths.roof;

import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/** The limits within which a size on a roof must lie, and the words in which they are said. */
final class Sizes {
    /** No roof is longer than this; a size beyond it is a slip of units, and products of two sizes stay well inside a long. */
    static final Length LONGEST = Length.ofMetres(1000);

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
                !given.isNegative() && !given.isLongerThan(LONGEST),
                code,
                where,
                given,
                "be from 0 mm to " + LONGEST);
    }
}
