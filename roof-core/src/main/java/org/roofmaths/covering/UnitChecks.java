package org.roofmaths.covering;

import java.util.Optional;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.units.Range;

/** The checks that both kinds of unit share, in one wording. */
final class UnitChecks {
    private UnitChecks() {}

    static void above(Problems problems, String where, Length given, Length limit) {
        problems.require(given.isLongerThan(limit), CoveringUnit.IMPOSSIBLE_UNIT, where, given, "be above " + limit);
    }

    static void least(Problems problems, String where, Length given, String limitWords, Length limit) {
        problems.require(
                !given.isShorterThan(limit),
                CoveringUnit.IMPOSSIBLE_UNIT,
                where,
                given,
                "be at least " + limitWords + limit);
    }

    static void aboveAndBelow(Problems problems, String where, Length given, String limitWords, Length limit) {
        problems.require(
                given.isPositive() && given.isShorterThan(limit),
                CoveringUnit.IMPOSSIBLE_UNIT,
                where,
                given,
                "be above 0 mm and below " + limitWords + limit);
    }

    static void inRange(
            Problems problems, String where, Length given, String rangeName, Range<Length> range, String what) {
        if (range.lower().isEmpty() || range.upper().isEmpty()) {
            problems.add(Problem.error(
                    CoveringUnit.IMPOSSIBLE_UNIT, rangeName, range, "have a least and a greatest " + what));
            return;
        }
        problems.require(
                range.contains(given), CoveringUnit.IMPOSSIBLE_UNIT, where, given, "lie in " + rangeName + " " + range);
    }

    static void gaugeLimits(Problems problems, Optional<Length> least, Optional<Length> greatest, Length length) {
        least.ifPresent(limit -> aboveAndBelow(problems, "leastGauge", limit, "the length of ", length));
        greatest.ifPresent(limit -> aboveAndBelow(problems, "greatestGauge", limit, "the length of ", length));
        if (least.isPresent() && greatest.isPresent()) {
            least(problems, "greatestGauge", greatest.orElseThrow(), "the least gauge of ", least.orElseThrow());
        }
    }
}
