package org.roofmaths.flashing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of the sheet over a ridge or hip: its wings over the covering, what the roll takes, and how the pieces lap.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface CappingDemand extends Serializable {
    /** The wing over the covering at each side. */
    Term<Length> WING = Term.of("wing of the capping", "wi", Length.class);
    /** The metal that goes round the roll. */
    Term<Length> OVER_ROLL = Term.of("metal over the roll", "ro", Length.class);

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the wing over the covering at each side. */
    Figure<Length> wing();

    /** Returns the metal that goes round the roll, from wing to wing. */
    Figure<Length> overRoll();

    /** Returns how far one length laps the next on a level ridge. */
    Figure<Length> sideLap();

    /** Returns the height that each lap on a hip must rise. */
    Figure<Length> weatheringHeight();

    /** Returns the least lap on a hip, however steep. */
    Figure<Length> leastLap();

    /** Returns the longest piece in which the metal may be fixed. */
    Figure<Length> longestPiece();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static CappingDemandBuilderStages.BuildStart builder() {
        return CappingDemandBuilderStages.start();
    }

    /**
     * Checks the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, WING, wing());
        Sizes.requireNotNegative(problems, OVER_ROLL, overRoll());
        Sizes.requireNotNegative(problems, FlashingDemand.SIDE_LAP, sideLap());
        Sizes.requirePositive(problems, LeadLap.WEATHERING_HEIGHT, weatheringHeight());
        Sizes.requireNotNegative(problems, LeadLap.LEAST_LAP, leastLap());
        Sizes.requirePositive(problems, FlashingDemand.LONGEST_PIECE, longestPiece());
        Sizes.requireLongerThanLap(problems, longestPiece(), sideLap());
        problems.throwIfErrors();
    }
}
