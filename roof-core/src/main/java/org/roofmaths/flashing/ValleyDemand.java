package org.roofmaths.flashing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of an open valley lining: the sheet, the clear channel, what goes under the covering at each side, and how the pieces
 * lap.
 *
 * <p>A channel by rule is a least clear width; its capacity is another matter.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface ValleyDemand extends Serializable {
    /** The clear width between the coverings. */
    Term<Length> CHANNEL = Term.of("clear channel of the valley", "ch", Length.class);
    /** The metal beyond the channel at each side. */
    Term<Length> BEYOND_CHANNEL = Term.of("lining beyond the channel, each side", "by", Length.class);

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the clear width between the coverings, square to the valley. */
    Figure<Length> channel();

    /** Returns the metal beyond the channel at each side: under the covering, over the fillet, and its turned edge. */
    Figure<Length> beyondChannel();

    /** Returns the height that each lap must rise. */
    Figure<Length> weatheringHeight();

    /** Returns the least lap, however steep the valley. */
    Figure<Length> leastLap();

    /** Returns the longest piece in which the metal may be fixed. */
    Figure<Length> longestPiece();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static ValleyDemandBuilderStages.BuildStart builder() {
        return ValleyDemandBuilderStages.start();
    }

    /**
     * Checks the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, CHANNEL, channel());
        Sizes.requirePositive(problems, BEYOND_CHANNEL, beyondChannel());
        Sizes.requirePositive(problems, LeadLap.WEATHERING_HEIGHT, weatheringHeight());
        Sizes.requireNotNegative(problems, LeadLap.LEAST_LAP, leastLap());
        Sizes.requirePositive(problems, FlashingDemand.LONGEST_PIECE, longestPiece());
        problems.throwIfErrors();
    }
}
