package org.roofmaths.flashing;

import java.io.Serializable;
import java.util.Optional;
import org.immutables.value.Value;
import org.roofmaths.internal.style.StagedStyle;
import org.roofmaths.problem.Problems;
import org.roofmaths.units.Length;
import org.roofmaths.working.Figure;
import org.roofmaths.working.Term;

/**
 * What is asked of the sheet metal round a stack: at its walls, behind it, and at its corners.
 *
 * @since 0.1
 */
@Value.Immutable
@StagedStyle
public interface StackDemand extends Serializable {
    /** How far the cover flashing at the back laps down over the upstand of the gutter. */
    Term<Length> LAP_DOWN = Term.of("lap down over the back gutter", "ld", Length.class);
    /** The width above which a stack cricket is asked for. */
    Term<Length> CRICKET_ABOVE = Term.of("widest stack without a cricket", "wc", Length.class);

    /** Returns what is asked of apron, sides and cover flashing. */
    FlashingDemand walls();

    /** Returns how the apron goes past the front corners. */
    Returns apronReturns();

    /** Returns what is asked of the back gutter. */
    BackGutterDemand gutter();

    /** Returns how the back gutter goes past the back corners. */
    Returns gutterReturns();

    /** Returns how far the cover flashing at the back laps down over the upstand of the gutter. */
    Figure<Length> lapDown();

    /** Returns the metal of each side beyond the front of the stack, along the slope; empty if none is asked. */
    Optional<Figure<Length>> sideBeyondFront();

    /** Returns the metal of each side beyond the back of the stack, along the slope; empty if none is asked. */
    Optional<Figure<Length>> sideBeyondBack();

    /** Returns the width above which a rule asks for a stack cricket; empty if none does. */
    Optional<Figure<Length>> cricketAbove();

    /**
     * Starts a demand; the builder asks for the parts in the order in which a person would say them.
     *
     * @return the first stage of the builder
     */
    static StackDemandBuilderStages.BuildStart builder() {
        return StackDemandBuilderStages.start();
    }

    /**
     * Checks the sizes.
     *
     * @throws org.roofmaths.problem.ProblemsException with every size that is wrong
     */
    @Value.Check
    default void check() {
        Problems problems = Problems.none();
        Sizes.requirePositive(problems, LAP_DOWN, lapDown());
        cricketAbove().ifPresent(figure -> Sizes.requirePositive(problems, CRICKET_ABOVE, figure));
        problems.throwIfErrors();
    }
}
