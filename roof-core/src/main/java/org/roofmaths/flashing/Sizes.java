package org.roofmaths.flashing;

import java.util.List;
import org.roofmaths.problem.Problem;
import org.roofmaths.problem.Problems;
import org.roofmaths.problem.ProblemsException;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/** The checks of sizes that all demands and lines of this package share, and the counts along a run. */
final class Sizes {
    private static final double RESOLUTION = Length.STORAGE_RESOLUTION.toSi();

    private Sizes() {}

    static void requirePositive(Problems problems, Term<Length> term, Figure<Length> figure) {
        problems.require(
                figure.value().isPositive(), FlashingDemand.WRONG_SIZE, term.name(), figure.value(), "be above 0 mm");
    }

    static void requireNotNegative(Problems problems, Term<Length> term, Figure<Length> figure) {
        problems.require(
                !figure.value().isNegative(),
                FlashingDemand.WRONG_SIZE,
                term.name(),
                figure.value(),
                "be 0 mm or more");
    }

    static void requireLongerThanLap(Problems problems, Figure<Length> longestPiece, Figure<Length> lap) {
        problems.require(
                longestPiece.value().minus(lap.value()).isLongerThan(Length.STORAGE_RESOLUTION),
                FlashingDemand.WRONG_SIZE,
                FlashingDemand.LONGEST_PIECE.name(),
                longestPiece.value(),
                "be longer than its lap of " + lap.value());
    }

    /** The water line of a demand for a flashing beside a slope, which cannot do without one. */
    static Figure<Length> requireWaterLine(FlashingDemand demand) {
        return demand.waterLine()
                .orElseThrow(() -> new ProblemsException(List.of(Problem.error(
                        FlashingDemand.MISSING_FIGURE,
                        FlashingDemand.WATER_LINE.name(),
                        "missing",
                        "be given for a flashing beside a slope"))));
    }

    /** How many steps cover a length; up to the storage resolution over a whole count does not ask for one more. */
    static int toCover(Length length, Length step) {
        return (int) StrictMath.ceil((length.toSi() - RESOLUTION) / step.toSi());
    }

    /** How many whole steps go into a length, below zero too. */
    static int timesIn(Length length, Length step) {
        return (int) StrictMath.floor((length.toSi() + RESOLUTION) / step.toSi());
    }
}
