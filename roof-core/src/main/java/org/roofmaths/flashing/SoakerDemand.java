package org.roofmaths.flashing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of soakers: the sheet, the leg up the wall, the leg under the covering, and the turn over the head of the unit.
 *
 * <p>Rule data fills these figures from an edition, with the source of each; or the caller does.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface SoakerDemand extends Serializable {
    /** The leg of a soaker up the wall. */
    Term<Length> UP_THE_WALL = Term.of("soaker up the wall", "su", Length.class);
    /** The leg of a soaker under the covering. */
    Term<Length> UNDER_COVERING = Term.of("soaker under the covering", "so", Length.class);
    /** What is turned over the head of the unit. */
    Term<Length> TURN_OVER = Term.of("soaker turned over the head", "st", Length.class);

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the leg up the wall. */
    Figure<Length> upTheWall();

    /** Returns the leg under the covering. */
    Figure<Length> underCovering();

    /** Returns what is turned over the head of the unit, so that the soaker cannot slip. */
    Figure<Length> turnOver();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static SoakerDemandBuilderStages.BuildStart builder() {
        return SoakerDemandBuilderStages.start();
    }

    /**
     * Checks that the legs are above zero.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, UP_THE_WALL, upTheWall());
        Sizes.requirePositive(problems, UNDER_COVERING, underCovering());
        Sizes.requireNotNegative(problems, TURN_OVER, turnOver());
        problems.throwIfErrors();
    }
}
