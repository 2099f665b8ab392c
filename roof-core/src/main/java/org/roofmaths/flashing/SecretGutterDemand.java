package org.roofmaths.flashing;

import java.io.Serializable;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of a secret gutter beside a wall: the sheet, its width and depth, its upstand, its leg under the covering, and how the
 * pieces lap.
 *
 * <p>Documents measure the width at different points (channel, visible gap, batten stop): give the clear width of the channel between
 * the wall and the side of the sinking.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface SecretGutterDemand extends Serializable {
    /** The clear width of the channel. */
    Term<Length> WIDTH = Term.of("width of the secret gutter", "gb", Length.class);
    /** The depth of the channel below the roof plane. */
    Term<Length> DEPTH = Term.of("depth of the secret gutter", "gd", Length.class);
    /** The upstand on the wall, above the top of the covering. */
    Term<Length> ABOVE_COVERING = Term.of("secret gutter above the covering", "ga", Length.class);
    /** The leg from the side of the channel under the covering. */
    Term<Length> UNDER_COVERING = Term.of("secret gutter under the covering", "go", Length.class);

    /** Returns the sheet to cut from. */
    MetalSheet sheet();

    /** Returns the clear width of the channel. */
    Figure<Length> width();

    /** Returns the depth of the channel below the roof plane. */
    Figure<Length> depth();

    /** Returns the upstand on the wall, above the top of the covering. */
    Figure<Length> aboveCovering();

    /** Returns the leg under the covering, with its turned edge. */
    Figure<Length> underCovering();

    /** Returns the height that each lap must rise. */
    Figure<Length> weatheringHeight();

    /** Returns the least lap, however steep the roof. */
    Figure<Length> leastLap();

    /** Returns the longest piece in which the metal may be fixed. */
    Figure<Length> longestPiece();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static SecretGutterDemandBuilderStages.BuildStart builder() {
        return SecretGutterDemandBuilderStages.start();
    }

    /**
     * Checks the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, WIDTH, width());
        Sizes.requirePositive(problems, DEPTH, depth());
        Sizes.requirePositive(problems, ABOVE_COVERING, aboveCovering());
        Sizes.requirePositive(problems, UNDER_COVERING, underCovering());
        Sizes.requirePositive(problems, LeadLap.WEATHERING_HEIGHT, weatheringHeight());
        Sizes.requireNotNegative(problems, LeadLap.LEAST_LAP, leastLap());
        Sizes.requirePositive(problems, FlashingDemand.LONGEST_PIECE, longestPiece());
        problems.throwIfErrors();
    }
}
