package org.roofmaths.framing;

import org.roofmaths.problem.ProblemCode;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;

/** The limits within which a size of a timber must lie, and the words in which they are said. */
final class Checks {
    /** No roof is longer than this; a size beyond it is a slip of units. */
    static final Length LONGEST = Length.ofMetres(1000);

    private Checks() {}

    static void requireSize(Problems problems, ProblemCode code, String where, Length given) {
        problems.require(
                given.isPositive() && !given.isLongerThan(LONGEST),
                code,
                where,
                given,
                "be above 0 mm and at most " + LONGEST);
    }

    static void requireNoLessThanZero(Problems problems, ProblemCode code, String where, Length given) {
        problems.require(
                !given.isNegative() && !given.isLongerThan(LONGEST), code, where, given, "be from 0 mm to " + LONGEST);
    }
}
