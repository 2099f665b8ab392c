package org.roofmaths.flashing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of a back gutter: the sheet and its legs. There is no default: each is a rule's figure or the plumber's.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface BackGutterDemand extends Serializable {
    /** The leg up the back of the stack. */
    Term<Length> UP_THE_STACK = Term.of("back gutter up the stack", "bu", Length.class);
    /** The flat bottom of the gutter. */
    Term<Length> SOLE = Term.of("sole of the back gutter", "bs", Length.class);
    /** The leg up the slope under the covering. */
    Term<Length> UP_THE_SLOPE = Term.of("back gutter up the slope", "bv", Length.class);

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the leg up the back of the stack. */
    Figure<Length> upTheStack();

    /** Returns the flat bottom of the gutter. */
    Figure<Length> sole();

    /** Returns the leg up the slope under the covering, with what is dressed over a fillet there. */
    Figure<Length> upTheSlope();

    /** Returns how far one length laps the next. */
    Figure<Length> sideLap();

    /** Returns the longest piece in which the metal may be fixed. */
    Figure<Length> longestPiece();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static BackGutterDemandBuilderStages.BuildStart builder() {
        return BackGutterDemandBuilderStages.start();
    }

    /**
     * Checks the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, UP_THE_STACK, upTheStack());
        Sizes.requirePositive(problems, SOLE, sole());
        Sizes.requirePositive(problems, UP_THE_SLOPE, upTheSlope());
        Sizes.requireNotNegative(problems, FlashingDemand.SIDE_LAP, sideLap());
        Sizes.requirePositive(problems, FlashingDemand.LONGEST_PIECE, longestPiece());
        Sizes.requireLongerThanLap(problems, longestPiece(), sideLap());
        problems.throwIfErrors();
    }
}
